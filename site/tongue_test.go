package main

import (
	"encoding/xml"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

// bracketed is a tongue that puts every text in brackets, so that what was never looked up stands outside them.
var bracketed = tongue{Code: "xx", Name: "⟦⟧", Within: "⟦⟧", Language: calc.Language{Words: func(_, phrase string) string { return "⟦" + phrase + "⟧" }, Comma: true}}

var inner = regexp.MustCompile(`⟦[^⟦⟧]*⟧`)

// spoken are the attributes that a person reads or hears.
var spoken = []string{"aria-label", "title", "alt", "placeholder", "data-label", "data-row-name", "data-name", "data-edit", "data-close", "data-open", "data-given", "data-stale"}

func TestEveryTextOfThePagesIsLookedUp(t *testing.T) {
	site := bundle{}
	require.NoError(t, addPagesIn(site, os.DirFS("../testdata"), bracketed, []tongue{bracketed}))
	told := map[string]bool{} // one complaint for each text will do
	for _, name := range slices.Sorted(maps.Keys(site)) {
		for _, text := range textsOf(t, site[name]) {
			text = strings.ReplaceAll(text, siteName, "")
			for inner.MatchString(text) {
				text = inner.ReplaceAllString(text, "")
			}
			if strings.ContainsFunc(text, unicode.IsLetter) && !told[text] {
				told[text] = true
				t.Errorf("%s: %q was not looked up", name, strings.TrimSpace(text))
			}
		}
	}
}

// textsOf is what a page says, but for formulas, titles of works and the like, which stay as they are.
func textsOf(t *testing.T, page []byte) []string {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(string(page)))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var all []string
	var asTheyAre []bool // for each open element
	for {
		token, err := d.Token()
		if token == nil {
			require.ErrorContains(t, err, "EOF")
			return all
		}
		switch token := token.(type) {
		case xml.StartElement:
			inside := len(asTheyAre) > 0 && asTheyAre[len(asTheyAre)-1]
			as := inside || stays(token)
			asTheyAre = append(asTheyAre, as)
			for _, a := range token.Attr {
				if !as && slices.Contains(spoken, a.Name.Local) && !(token.Name.Local == "button" && a.Name.Local == "data-label") {
					all = append(all, a.Value)
				}
			}
		case xml.EndElement:
			asTheyAre = asTheyAre[:len(asTheyAre)-1]
		case xml.CharData:
			if len(asTheyAre) > 0 && !asTheyAre[len(asTheyAre)-1] {
				all = append(all, string(token))
			}
		}
	}
}

// stays reports whether what an element holds is the same in every tongue.
func stays(e xml.StartElement) bool {
	if e.Name.Local == "code" {
		return true
	}
	for _, a := range e.Attr {
		switch {
		case a.Name.Local == "class" && slices.ContainsFunc(strings.Fields(a.Value), func(c string) bool {
			return slices.Contains([]string{"formula", "numbers", "legend", "source", "home", "work", "grounds", "checks"}, c)
		}):
			return true
		case a.Name.Local == "data-same": // a mark of the template for a name of ours or the like
			return true
		}
	}
	return false
}

// What a style sheet puts on the page cannot be translated.
func TestStylesSayNothing(t *testing.T) {
	content := regexp.MustCompile(`content:((?:"[^"]*"|[^;}"])*)`)
	for _, m := range content.FindAllStringSubmatch(string(finished(t)["site.css"]), -1) {
		for _, quoted := range regexp.MustCompile(`"[^"]*"`).FindAllString(m[1], -1) {
			assert.NotRegexp(t, `\pL`, quoted, "a style sheet says this")
		}
	}
}
