package main

import (
	"net/http"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
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
		h := http.Header{}
		setHeaders(h, "/"+name)
		assert.Equal(t, own[0], strings.TrimSuffix(h.Get(policyHeader), "; frame-ancestors 'none'"))
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
	h := http.Header{}
	setHeaders(h, "/index.html")
	for name := range h {
		assert.Equal(t, h.Get(name), said[name][0], name)
		if name != policyHeader {
			assert.Equal(t, h.Get(name), listed[name], name)
		}
	}
	assert.Len(t, said, len(h))
	assert.Len(t, listed, len(h)-1)
	setHeaders(h, "/es/"+frameFile)
	assert.Equal(t, h.Get(policyHeader), said[policyHeader][1])
}
