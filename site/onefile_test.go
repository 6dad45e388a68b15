package main

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"encoding/json"
	"io"
	"path"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// packed is what a script element of the one file holds.
func packed(t *testing.T, file, id string) []byte {
	t.Helper()
	found := regexp.MustCompile(`<script type="application/gzip" id="` + id + `">([^<]*)</script>`).FindStringSubmatch(file)
	require.NotNil(t, found, id)
	data, err := base64.StdEncoding.DecodeString(found[1])
	require.NoError(t, err)
	r, err := gzip.NewReader(bytes.NewReader(data))
	require.NoError(t, err)
	text, err := io.ReadAll(r)
	require.NoError(t, err)
	return text
}

func TestTheOneFileHoldsThePagesAndTheCore(t *testing.T) {
	site := finished(t)
	file := string(site[oneFile])
	assert.Equal(t, "core", string(packed(t, file, "pack-core")))
	assert.NotContains(t, site, coreFile(wholeCore), "nobody else needs it")
	var pages map[string]packedPage
	require.NoError(t, json.Unmarshal(packed(t, file, "pack-pages"), &pages))
	for name := range site {
		if page, html := strings.CutSuffix(name, ".html"); html && name != oneFile && path.Base(name) != frameFile {
			assert.Contains(t, pages[page].Body, "<main", name)
			assert.NotContains(t, pages[page].Body, "<script", name)
			assert.NotEmpty(t, pages[page].Title, name)
			delete(pages, page)
		}
	}
	assert.Empty(t, pages)
}

// The policy is what keeps the file from asking for anything, so it names each thing that runs and no more.
func TestTheOneFileRunsWhatItNamesAlone(t *testing.T) {
	file := string(finished(t)[oneFile])
	policy := regexp.MustCompile(`Content-Security-Policy" content="([^"]*)"`).FindStringSubmatch(file)[1]
	for _, part := range []string{"default-src 'none'", "worker-src blob:", "require-trusted-types-for 'script'"} {
		assert.Contains(t, policy, part)
	}
	for _, loose := range []string{"unsafe-inline", "'unsafe-eval'", "http", "'self'", "*", "connect-src"} {
		assert.NotContains(t, policy, loose)
	}
	run := regexp.MustCompile(`(?s)<(?:script|script type="module"|style)>(.*?)</(?:script|style)>`).FindAllStringSubmatch(file, -1)
	require.Len(t, run, 3)
	for _, m := range run {
		assert.Contains(t, policy, hashSource(m[1]))
		assert.NotContains(t, m[1], "import.meta", "there are no other files to find")
	}
	assert.Equal(t, 3, strings.Count(policy, "'sha256-"))
	for _, m := range regexp.MustCompile(`(?:src|href)="([^"]*)"`).FindAllStringSubmatch(file[:strings.Index(file, "<style>")], -1) {
		assert.True(t, strings.HasPrefix(m[1], "data:"), m[1])
	}
	assert.NotRegexp(t, `url\(|@import`, file[strings.Index(file, "<style>"):strings.Index(file, "</style>")])
}

// What takes a script's place must offer what the others import from it.
func TestWhatTakesAScriptsPlaceExportsTheSame(t *testing.T) {
	exported := regexp.MustCompile(`(?m)^export (?:async )?(?:const|function|let|class) (\w+)`)
	names := func(text []byte) (all []string) {
		for _, m := range exported.FindAllStringSubmatch(string(text), -1) {
			all = append(all, m[1])
		}
		return all
	}
	for _, v := range []variant{inOneFile, inFrame} {
		for _, script := range v.replaced {
			own, err := v.scripts.ReadFile(path.Join(v.folder, script))
			require.NoError(t, err)
			replaced, err := assets.ReadFile("scripts/" + script)
			require.NoError(t, err)
			assert.Subset(t, names(own), names(replaced), script)
		}
	}
}

func TestEveryLanguageComesAlong(t *testing.T) {
	site := bundle{"es/words.js": nil, "scripts/words.js": nil}
	got := everyLanguage(site, "const w = await import(`../${lang}/words.js`);")
	assert.Equal(t, `const w = await ({ es: () => import("../es/words.js"), })[lang]();`, got)
}
