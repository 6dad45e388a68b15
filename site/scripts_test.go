package main

import (
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"path"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/menu"
)

func TestTheServiceWorkerListsEveryFileWithItsHash(t *testing.T) {
	site := finished(t)
	script := string(site["sw.js"])
	_, rest, found := strings.Cut(script, "const files = ")
	require.True(t, found)
	list, _, _ := strings.Cut(rest, "};")
	var listed map[string]string
	require.NoError(t, json.Unmarshal([]byte(list+"}"), &listed))
	for name, text := range site {
		if name == "sw.js" || name == oneFile || name == perFolder || name == perHost {
			continue
		}
		sum := sha256.Sum256(text)
		assert.Equal(t, base64.StdEncoding.EncodeToString(sum[:]), listed[name], name)
	}
	assert.Len(t, listed, len(site)-4)
	assert.NotContains(t, script, "__VERSION__")
}

func TestAnotherFileMakesAnotherVersion(t *testing.T) {
	versionOf := func(core string) string {
		site := bundle{"job.wasm": []byte(core)}
		require.NoError(t, addServiceWorker(site))
		return regexp.MustCompile(`const version = "([^"]+)"`).FindStringSubmatch(string(site["sw.js"]))[1]
	}
	assert.Equal(t, versionOf("one"), versionOf("one"))
	assert.NotEqual(t, versionOf("one"), versionOf("two"))
}

var imported = regexp.MustCompile(`(?m)(?:^import .*?|^import |import\()"(\.[^"]+)"`)

func TestScriptsImportWhatIsThere(t *testing.T) {
	site := finished(t)
	for name, text := range site {
		if path.Dir(name) != "scripts" {
			continue
		}
		for _, m := range imported.FindAllStringSubmatch(string(text), -1) {
			assert.Contains(t, site, path.Join("scripts", m[1]), name)
		}
	}
}

// No number is read, converted, rounded or worded outside the core, and no text becomes markup or script.
func TestScriptsLeaveNumbersAndMarkupAlone(t *testing.T) {
	forbidden := regexp.MustCompile(`parseFloat|parseInt|toFixed|toPrecision|toLocale|Intl\.|innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function|setAttribute\("style"`)
	// The browser is asked which language and region the device has, and which decimal mark is written there. It never
	// gets a number of the person's: the core writes them all, with that mark.
	allowed := strings.NewReplacer("new Intl.Locale(tag)", "", "new Intl.NumberFormat(locale).formatToParts(1.5)", "")
	for name, text := range finished(t) {
		if name == "scripts/tongue.js" {
			text = []byte(allowed.Replace(string(text)))
		}
		if path.Dir(name) == "scripts" || name == "sw.js" {
			assert.Empty(t, forbidden.FindString(string(text)), name)
		}
	}
}

func TestTheDescriptionIsComplete(t *testing.T) {
	var d description
	require.NoError(t, json.Unmarshal(finished(t)[descriptionFile], &d))
	assert.Equal(t, descriptionVersion, d.Schema)
	var all []*calc.Calculator
	for _, topic := range menu.Topics() {
		all = append(all, topic.Calculators()...)
	}
	require.Len(t, d.Calculators, len(all))
	for i, c := range all {
		got := d.Calculators[i]
		assert.Equal(t, []calc.Phrase{calc.Phrase(c.ID), c.Title, c.Question, c.Range}, []calc.Phrase{calc.Phrase(got.ID), got.Title, got.Question, got.Range})
		sameInputs(t, c.Inputs, got.Inputs)
		sameOutputs(t, c.Outputs, got.Outputs)
	}
}

func sameInputs(t *testing.T, ins []calc.Input, got []inputRecord) {
	t.Helper()
	require.Len(t, got, len(ins))
	for i, in := range ins {
		r := got[i]
		assert.Equal(t, []any{in.Key, in.Label, in.Help, in.Place, in.Heading, in.Optional, in.Prefill, in.Whole, in.RowName, in.Most},
			[]any{r.Key, r.Label, r.Help, r.Place, r.Heading, r.Optional, r.Prefill, r.Whole, r.RowName, r.Most})
		assert.Len(t, r.Choices, len(in.Choices), in.Key)
		assert.Equal(t, in.When != nil, r.When != nil, in.Key)
		if r.Kind == "number" {
			assert.Equal(t, []any{in.Unit.ID(), in.Limits.Min, in.Limits.Max, in.Example}, []any{*r.Unit, *r.Min, *r.Max, r.Example})
			assert.Len(t, r.Units, len(in.Units()), in.Key)
		}
		sameInputs(t, in.Rows, r.Rows)
	}
}

func sameOutputs(t *testing.T, outs []calc.Output, got []outputRecord) {
	t.Helper()
	require.Len(t, got, len(outs))
	for i, out := range outs {
		r := got[i]
		assert.Equal(t, []any{out.Key, out.Label, out.Place, out.Main, out.Look, out.Optional, out.Decimals},
			[]any{r.Key, r.Label, r.Place, r.Main, r.Look, r.Optional, r.Decimals})
		sameOutputs(t, out.Columns, r.Columns)
	}
}
