package main

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/site/server"
)

// What a page says of itself, for hosts that send no headers, is what the headers say; they add who may frame it, which a
// page cannot say (Content Security Policy Level 3, 6.3.2).
func TestPagesAndHeadersSayTheSame(t *testing.T) {
	pages(t, func(t *testing.T, site bundle, name string, es []element) {
		var own []string
		for _, e := range es {
			if e.name == "meta" && e.attributes["http-equiv"] == policyHeader {
				own = append(own, e.attributes["content"])
			}
		}
		require.Len(t, own, 1)
		assert.Equal(t, own[0], strings.TrimSuffix(server.Policy(name), "; frame-ancestors 'none'"))
		for _, no := range []string{"unsafe-inline", "'unsafe-eval'", "http:", "https:", "*", "strict-dynamic"} {
			assert.NotContains(t, own[0], no)
		}
		for _, yes := range []string{"default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "require-trusted-types-for 'script'", "base-uri 'none'", "form-action 'none'"} {
			assert.Contains(t, own[0], yes)
		}
	})
}

// The files for hosts say what our own server says.
func TestFilesForHostsSayWhatTheServerSays(t *testing.T) {
	site := finished(t)
	said := map[string][]string{}
	for _, m := range regexp.MustCompile(`(?m)^Header set (\S+) "([^"]*)"$`).FindAllStringSubmatch(string(site[perFolder]), -1) {
		said[m[1]] = append(said[m[1]], m[2])
	}
	listed := map[string]string{}
	for _, m := range regexp.MustCompile(`(?m)^  (\S+): (.*)$`).FindAllStringSubmatch(string(site[perHost]), -1) {
		listed[m[1]] = m[2]
	}
	for _, h := range server.Headers() {
		assert.Equal(t, []string{h.Value}, said[h.Name], h.Name)
		assert.Equal(t, h.Value, listed[h.Name], h.Name)
	}
	assert.Equal(t, []string{server.Policy("index.html"), server.Policy("es/" + server.FrameFile)}, said[policyHeader])
	assert.Len(t, said, len(server.Headers())+1)
	assert.Len(t, listed, len(server.Headers()))
}
