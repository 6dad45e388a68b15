package main

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc/menu"
)

// The names of a frame's options begin so that no form can have them.
func TestNoFormHasTheNameOfAnOption(t *testing.T) {
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			assert.Nil(t, c.Input("frame"), c.ID)
		}
	}
}

// A frame never touches storage, because where it stands there may be none, and it asks the site alone.
func TestTheFramesScriptKeepsNothing(t *testing.T) {
	script := string(finished(t)["embedded.js"])
	assert.NotRegexp(t, `\b(localStorage|sessionStorage|indexedDB)\b`, script)
	assert.NotContains(t, script, "import.meta", "it stands elsewhere than the scripts it was made of")
	for _, m := range regexp.MustCompile(`import\("([^"]+)"\)`).FindAllStringSubmatch(script, -1) {
		assert.NotNil(t, finished(t)[strings.TrimPrefix(m[1], "./")], m[1])
	}
	assert.Nil(t, finished(t)["embedded/worker-text.js"])
}

func TestTheFramePageNamesItsPolicy(t *testing.T) {
	for _, name := range []string{frameFile, "es/" + frameFile} {
		page := string(finished(t)[name])
		assert.Contains(t, page, `content="default-src &#39;none&#39;`, name)
		assert.Contains(t, page, "worker-src blob:", name)
	}
}
