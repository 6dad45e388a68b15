package browser

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// breaches lists what in a file is not as its rules have it.
func breaches(text []byte, rules map[string]element) (all []string) {
	d, seen := xml.NewDecoder(strings.NewReader(string(text))), &idents{}
	type open struct {
		name, text string
		children   []string
	}
	stack := []*open{{}}
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return append(all, err.Error())
		}
		here := stack[len(stack)-1]
		switch e := token.(type) {
		case xml.StartElement:
			name := e.Name.Space + " " + e.Name.Local
			here.children = append(here.children, name)
			all = append(all, wrongAttributes(name, e.Attr, rules[name].attributes, seen)...)
			stack = append(stack, &open{name: name})
		case xml.CharData:
			here.text += string(e)
		case xml.EndElement:
			stack = stack[:len(stack)-1]
			rule, known := rules[here.name]
			switch {
			case !known:
				all = append(all, here.name+" has no place here")
			case rule.text == nil && strings.TrimSpace(here.text) != "", rule.text != nil && !rule.text(here.text, seen):
				all = append(all, fmt.Sprintf("%s has the text %q", here.name, here.text))
			}
			all = append(all, wrongChildren(here.name, here.children, rule.children)...)
		}
	}
	for _, ref := range seen.refs {
		if !slices.Contains(seen.ids, ref) {
			all = append(all, "nothing has the ID "+ref)
		}
	}
	return all
}

func wrongAttributes(name string, have []xml.Attr, rules map[string]attribute, seen *idents) (all []string) {
	found := map[string]bool{}
	for _, a := range have {
		key := strings.TrimSpace(a.Name.Space + " " + a.Name.Local)
		if key == "xmlns" || strings.HasPrefix(key, "xmlns ") {
			continue
		}
		rule, known := rules[key]
		if found[key] = true; !known || !rule.fits(a.Value, seen) {
			all = append(all, fmt.Sprintf("%s has %s=%q", name, key, a.Value))
		}
	}
	for key, rule := range rules {
		if rule.must && !found[key] {
			all = append(all, name+" lacks "+key)
		}
	}
	return all
}

func wrongChildren(name string, have []string, rules []child) (all []string) {
	for _, r := range rules {
		n := 0
		for ; len(have) > 0 && have[0] == r.name; have = have[1:] {
			n++
		}
		if n < r.least || n > r.most {
			all = append(all, fmt.Sprintf("%s has %d × %s there", name, n, r.name))
		}
	}
	for _, left := range have {
		all = append(all, name+" has "+left+" out of place")
	}
	return all
}

// The rules themselves find what is wrong.
func TestTheRulesForManifestsFindBreaches(t *testing.T) {
	scorm := `<manifest identifier="m" version="1" xmlns="` + strings.TrimSpace(cp) + `" xmlns:adlcp="` + strings.TrimSpace(adlcp) + `">
<metadata><schema>ADL SCORM</schema><schemaversion>1.2</schemaversion></metadata>
<organizations default="o"><organization identifier="o"><title>T</title><item identifier="i" identifierref="r"><title>T</title><adlcp:masteryscore>80</adlcp:masteryscore></item></organization></organizations>
<resources><resource identifier="r" type="webcontent" adlcp:scormtype="sco" href="index.html"><file href="index.html"/></resource></resources></manifest>`
	cmi5 := `<courseStructure xmlns="` + strings.TrimSpace(five) + `"><course id="urn:c"><title><langstring lang="en">T</langstring></title><description><langstring lang="en">D</langstring></description></course>
<au id="urn:c#a" moveOn="Passed" masteryScore="0.8" launchMethod="AnyWindow"><title><langstring lang="en">T</langstring></title><description><langstring lang="en">D</langstring></description><url>index.html</url></au></courseStructure>`
	for _, c := range []struct {
		text   string
		rules  map[string]element
		breaks []string // what is put in place of what, parted by →
	}{
		{scorm, scormStructure, []string{
			`identifier="i"→identifier="r"`, `default="o"→default="x"`, `identifierref="r"→identifierref="x"`, `adlcp:scormtype→scormtype`, `identifier="m"→`, `type="webcontent"→`,
			`>1.2<→>1.3<`, `>80<→>101<`, `<title>T</title><item→<item`, `sco"→page"`, `<file href="index.html"/>→<file/>`, ` href="index.html"><file→ href="index.html"><adlcp:masteryscore>1</adlcp:masteryscore><file`,
			`identifier="m"→identifier="4m"`, `</metadata>→</metadata>text`, `>T</title><item→>` + strings.Repeat("T", 201) + `</title><item`, `imscp_rootv1p1p2→imscp_rootv1p1p3`,
		}},
		{cmi5, cmi5Rules, []string{
			`id="urn:c"→`, `id="urn:c#a"→id="a"`, `moveOn="Passed"→moveOn="passed"`, `masteryScore="0.8"→masteryScore="80"`, `masteryScore="0.8"→masteryScore="8e-1"`, `AnyWindow→Window`,
			`<url>index.html</url>→`, `<url>index.html</url>→<url></url>`, `lang="en">D→lang="english please">D`, `<au →<block `, `<url>index.html</url></au>→</au><url>index.html</url>`,
		}},
	} {
		require.Empty(t, breaches([]byte(c.text), c.rules))
		for _, b := range c.breaks {
			old, anew, _ := strings.Cut(b, "→")
			require.Contains(t, c.text, old)
			assert.NotEmpty(t, breaches([]byte(strings.Replace(c.text, old, anew, 1)), c.rules), b)
		}
	}
}
