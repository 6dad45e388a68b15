package main

import (
	"path"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What takes a script's place in a course package offers what the others import from it, and none of its scripts reads a
// number or makes markup of a text.
func TestTheScriptsOfACoursePackage(t *testing.T) {
	exported := regexp.MustCompile(`(?m)^export (?:async )?(?:const|function|let) (\w+)`)
	names := func(text []byte) (all []string) {
		for _, m := range exported.FindAllStringSubmatch(string(text), -1) {
			all = append(all, m[1])
		}
		return all
	}
	for _, script := range inCourse.replaced {
		own, err := oneFileAssets.ReadFile(path.Join("course", script))
		require.NoError(t, err)
		replaced, err := assets.ReadFile("scripts/" + script)
		require.NoError(t, err)
		assert.Subset(t, names(own), names(replaced), script)
	}
	files, err := oneFileAssets.ReadDir("course")
	require.NoError(t, err)
	for _, f := range files {
		text, err := oneFileAssets.ReadFile("course/" + f.Name())
		require.NoError(t, err)
		assert.NotRegexp(t, `parseFloat|parseInt|toFixed|toPrecision|toLocale|Intl\.|innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function`, string(text), f.Name())
	}
	assert.NotContains(t, string(finished(t)[courseScript]), "import.meta", "a package knows its files by the page")
}
