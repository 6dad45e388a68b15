package main

import (
	"path"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every script asks each that it imports for the build's name, and the pages have that name.
func TestScriptsOfTwoBuildsCannotBeLinked(t *testing.T) {
	site := finished(t)
	found := builtAs.FindSubmatch(site[buildFile])
	require.NotNil(t, found)
	build := string(found[1])
	n := 0
	for name, text := range site {
		if path.Ext(name) == ".html" && name != oneFile {
			assert.Equal(t, 1, strings.Count(string(text), `data-build="`+build+`"`), name)
		}
		if !bound(name) {
			continue
		}
		n++
		own, binding, found := strings.Cut(string(text), "export const v_"+build+" = 0;\n")
		require.True(t, found, name)
		for _, m := range importsOf.FindAllStringSubmatch(own, -1) {
			assert.Contains(t, binding, `from "./`+m[1]+`"`, name)
		}
		if name != buildFile {
			assert.Contains(t, binding, "import { v_"+build, name)
		}
	}
	assert.Greater(t, n, 100)
}

func TestWhatScriptsFetchIsHeldToItsHash(t *testing.T) {
	site := finished(t)
	for name, text := range site {
		if ext := path.Ext(name); ext == ".wasm" || ext == ".words" {
			assert.Contains(t, string(site[buildFile]), integrity(text), name)
			assert.Contains(t, string(site["embedded.js"]), integrity(text), name)
		}
	}
	styled := regexp.MustCompile(`rel="stylesheet" href="[^"]*site\.css" integrity="([^"]+)"`)
	pages(t, func(t *testing.T, site bundle, name string, _ []element) {
		m := styled.FindSubmatch(site[name])
		require.NotNil(t, m)
		assert.Equal(t, integrity(site["site.css"]), strings.ReplaceAll(string(m[1]), "&#43;", "+"))
	})
}
