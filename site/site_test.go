package main

import (
	"encoding/xml"
	"maps"
	"os"
	"path"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// made is the site with a stand-in for the compiled core, made once for all tests.
var made = sync.OnceValues(func() (bundle, error) {
	return assemble(bundle{"job.wasm": []byte("core"), coreFile(wholeCore): []byte("core")}, []byte("runtime"), os.DirFS("../testdata"))
})

func finished(t *testing.T) bundle {
	t.Helper()
	site, err := made()
	require.NoError(t, err)
	return site
}

// An element is a start tag of a page with where it stands.
type element struct {
	name       string
	attributes map[string]string
	within     []string // names of the elements around it
}

// elements reads a page. The pages close what they open, so that a forgiving XML reader can follow.
func elements(t *testing.T, page []byte) []element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(string(page)))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var all []element
	var open []string
	for {
		token, err := d.Token()
		if token == nil {
			require.ErrorContains(t, err, "EOF")
			return all
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{token.Name.Local, map[string]string{}, slices.Clone(open)}
			for _, a := range token.Attr {
				e.attributes[a.Name.Local] = a.Value
			}
			all, open = append(all, e), append(open, e.name)
		case xml.EndElement:
			open = open[:len(open)-1]
		}
	}
}

// pages runs a test on every page. The one file holds them all again, packed.
func pages(t *testing.T, test func(t *testing.T, site bundle, name string, es []element)) {
	site := finished(t)
	for _, name := range slices.Sorted(maps.Keys(site)) {
		if path.Ext(name) == ".html" && name != oneFile {
			t.Run(name, func(t *testing.T) { test(t, site, name, elements(t, site[name])) })
		}
	}
}

func TestEveryCalculatorHasAPage(t *testing.T) {
	site := finished(t)
	for _, c := range calculators() {
		assert.Contains(t, string(site[pageFile(c)]), `data-calculator="`+c.ID+`"`)
	}
	for _, name := range []string{"index.html", "menu.html", "sources.html", "help.html", "about.html"} {
		assert.NotEmpty(t, site[name], name)
	}
}

func TestIDsAreUnique(t *testing.T) {
	pages(t, func(t *testing.T, _ bundle, _ string, es []element) {
		seen := map[string]bool{}
		for _, e := range es {
			if id := e.attributes["id"]; id != "" {
				assert.False(t, seen[id], "id %s stands twice", id)
				seen[id] = true
			}
		}
	})
}

func TestNothingInlineThatThePolicyForbids(t *testing.T) {
	pages(t, func(t *testing.T, _ bundle, _ string, es []element) {
		for _, e := range es {
			assert.NotEqual(t, "style", e.name)
			assert.False(t, e.name == "script" && e.attributes["src"] == "", "a script without a file")
			for a := range e.attributes {
				assert.False(t, a == "style" || strings.HasPrefix(a, "on"), "%s has %s", e.name, a)
			}
		}
	})
}

func TestEveryControlHasALabel(t *testing.T) {
	pages(t, func(t *testing.T, _ bundle, _ string, es []element) {
		labelled := map[string]bool{}
		for _, e := range es {
			labelled[e.attributes["for"]] = true
		}
		for _, e := range es {
			if e.name == "input" || e.name == "select" {
				named := e.attributes["id"] != "" && labelled[e.attributes["id"]] || e.attributes["aria-label"] != "" || slices.Contains(e.within, "label")
				assert.True(t, named, "%s %s has no label", e.name, e.attributes["name"])
			}
		}
	})
}

func TestDescriptionsExist(t *testing.T) {
	pages(t, func(t *testing.T, _ bundle, _ string, es []element) {
		ids := idsOf(es)
		for _, e := range es {
			for _, a := range []string{"aria-describedby", "aria-labelledby", "for", "form"} {
				for id := range strings.FieldsSeq(e.attributes[a]) {
					assert.True(t, ids[id], "%s of %s names %s", a, e.name, id)
				}
			}
		}
	})
}

func idsOf(es []element) map[string]bool {
	ids := map[string]bool{}
	for _, e := range es {
		ids[e.attributes["id"]] = true
	}
	return ids
}

func TestLinksWithinTheSiteLeadSomewhere(t *testing.T) {
	pages(t, func(t *testing.T, site bundle, name string, es []element) {
		for _, e := range es {
			for _, a := range []string{"href", "src"} {
				link, has := e.attributes[a]
				if !has {
					continue
				}
				file, fragment, _ := strings.Cut(link, "#")
				require.False(t, strings.Contains(file, ":") || strings.HasPrefix(file, "/"), "%s leaves the folder", link)
				file, _, _ = strings.Cut(file, "?")
				switch file {
				case "":
					file = name
				case "./":
					file = path.Join(path.Dir(name), "index.html")
				default:
					file = path.Join(path.Dir(name), file)
				}
				require.True(t, site[file] != nil, "there is no %s", file)
				// A fragment with an equals sign is a form filled in.
				if fragment != "" && !strings.Contains(fragment, "=") {
					assert.True(t, idsOf(elements(t, site[file]))[fragment], "%s has no %s", file, fragment)
				}
			}
		}
	})
}
