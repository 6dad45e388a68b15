package browser

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"net/http"
	"net/http/httptest"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// A release is what a host has of one version of the site: every file by its name.
type release map[string][]byte

var builtAs = regexp.MustCompile(`export const build = "([0-9a-f]{12})"`)

// wanted are the files that tests of releases need, so that a browser has a copy of the site quickly.
var wanted = regexp.MustCompile(`^(scripts/.*|site\.css|mark\.svg|manifest\.webmanifest|wasm_exec\.js|bench\.wasm|(about|wet-film|timers|index)\.html)$`)

// releaseOf is the site as its release n, 0 to 9, would be. The page, each script, the styles and the core show of which
// release they are; what they hold each other to is right.
func releaseOf(t *testing.T, dist string, n int) release {
	t.Helper()
	r := release{}
	require.NoError(t, fs.WalkDir(os.DirFS(dist), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !wanted.MatchString(name) {
			return err
		}
		r[name], err = os.ReadFile(filepath.Join(dist, name))
		return err
	}))
	build, number := builtAs.FindSubmatch(r["scripts/build.js"]), fmt.Sprint(n)
	require.NotNil(t, build)
	next := strings.Repeat(number, 12)
	sums := []string{string(build[1]), next}
	change := func(name string, text []byte) {
		require.NotEqual(t, r[name], text, name)
		sums = append(sums, sum(r[name]), sum(text), strings.ReplaceAll(sum(r[name]), "+", "&#43;"), sum(text))
		r[name] = text
	}
	change("site.css", fmt.Appendf(slices.Clone(r["site.css"]), "\n:root { --release: %s; }\n", next))
	change("bench.wasm", bytes.ReplaceAll(r["bench.wasm"], []byte("Wet film of one coat"), []byte("Wet film of release"+number)))
	for name, text := range r {
		if ext := path.Ext(name); ext == ".js" || ext == ".html" {
			r[name] = []byte(strings.NewReplacer(sums...).Replace(string(text)))
		}
		if strings.HasPrefix(name, "scripts/") && name != "scripts/theme.js" {
			r[name] = fmt.Appendf(r[name], "(globalThis.parts ??= new Set()).add(%q);\n", next)
		}
	}
	r["sw.js"] = keeperOf(t, dist, r, next)
	return r
}

// keeperOf is the service worker of a release.
func keeperOf(t *testing.T, dist string, r release, version string) []byte {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(dist, "sw.js"))
	require.NoError(t, err)
	files := map[string]string{}
	for name := range r {
		files[name] = sum(r[name])
	}
	list, err := json.Marshal(files)
	require.NoError(t, err)
	text = regexp.MustCompile(`(?s)const files = \{.*?\};`).ReplaceAllLiteral(text, []byte("const files = "+string(list)+";"))
	return regexp.MustCompile(`const version = "[^"]*"`).ReplaceAllLiteral(text, []byte(`const version = "`+version+`"`))
}

// A webHost is a host of static files whose owner puts releases on it.
type webHost struct {
	mu       sync.Mutex
	files    release
	keeps    bool // browsers may keep a file for ten minutes without asking
	asked    []string
	withheld string // a file that is not there
}

func (h *webHost) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	defer h.mu.Unlock()
	name := strings.TrimPrefix(r.URL.Path, "/")
	h.asked = append(h.asked, name)
	text, there := h.files[name]
	if !there || name == h.withheld {
		http.NotFound(w, r)
		return
	}
	kinds := map[string]string{".html": "text/html; charset=utf-8", ".js": "text/javascript", ".css": "text/css", ".wasm": "application/wasm", ".svg": "image/svg+xml", ".webmanifest": "application/manifest+json"}
	w.Header().Set("Content-Type", kinds[path.Ext(name)])
	w.Header().Set("Cache-Control", map[bool]string{true: "max-age=600", false: "no-cache"}[h.keeps])
	w.Write(text)
}

// put puts on the host what of a release a test says, all of it or a part.
func (h *webHost) put(r release, which func(name string) bool) {
	h.mu.Lock()
	defer h.mu.Unlock()
	for _, name := range slices.Sorted(maps.Keys(r)) {
		if which(name) {
			h.files[name] = r[name]
		}
	}
}

func (h *webHost) set(keeps bool, withheld string) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.keeps, h.withheld = keeps, withheld
}

func all(string) bool { return true }

// hosting starts a host with a release on it.
func hosting(t *testing.T, b build, r release) (*webHost, *server) {
	t.Helper()
	h := &webHost{files: maps.Clone(r)}
	s := httptest.NewServer(h)
	t.Cleanup(s.Close)
	return h, &server{t: t, build: b, address: strings.TrimPrefix(s.URL, "http://")}
}
