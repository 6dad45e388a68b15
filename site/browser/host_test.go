package browser

import (
	"fmt"
	"html/template"
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"path"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// strict is what a careful host allows: its own script, and our script and frame. No styles at all.
const strict = "default-src 'none'; script-src 'self' %[1]s; frame-src %[1]s; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'"

// A hosted is a page of testdata/embed on another origin, and what its frames ask of the site.
type hosted struct {
	*tab
	mu    sync.Mutex
	asked []string // "200 /wet-film.html"
}

// host opens a page that frames the site, under a policy where one is given.
func host(t *testing.T, page, policy string, l look) *hosted {
	t.Helper()
	s, h := serve(t), &hosted{}
	target, err := url.Parse(s.url(""))
	require.NoError(t, err)
	proxy := httputil.NewSingleHostReverseProxy(target)
	proxy.ModifyResponse = func(r *http.Response) error {
		h.mu.Lock()
		defer h.mu.Unlock()
		h.asked = append(h.asked, fmt.Sprint(r.StatusCode, " ", r.Request.URL.Path))
		return nil
	}
	site := httptest.NewServer(proxy)
	t.Cleanup(site.Close)
	pages := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { hostPage(w, r, site.URL, policy) }))
	t.Cleanup(pages.Close)
	h.tab = open(t, &server{t: t, build: s.build, address: strings.TrimPrefix(pages.URL, "http://")}, page, l)
	return h
}

// hostPage sends a file of testdata/embed with the address of the site put in.
func hostPage(w http.ResponseWriter, r *http.Request, site, policy string) {
	text, err := template.ParseFiles("../../testdata/embed/" + path.Base(r.URL.Path))
	if err != nil {
		w.WriteHeader(http.StatusNoContent) // a browser asks for an icon
		return
	}
	if strings.HasSuffix(r.URL.Path, ".js") {
		w.Header().Set("Content-Type", "text/javascript")
	}
	if policy != "" {
		w.Header().Set("Content-Security-Policy", fmt.Sprintf(policy, site))
	}
	text.Execute(w, template.HTML(site+"/"))
}

// count is how often a file was sent whole.
func (h *hosted) count(file string) (n int) {
	h.mu.Lock()
	defer h.mu.Unlock()
	for _, a := range h.asked {
		if a == "200 /"+file {
			n++
		}
	}
	return n
}

// answers waits until a frame tells a figure.
func (h *hosted) answers(frame int, figure, text string) {
	h.t.Helper()
	h.waitUntil("the frame answers "+text, fmt.Sprintf(`heard.findLast((m) => m.kind === "answer" && m.frame === %d)?.figures.some((f) => f.key === %q && f.text + " " + f.unit === %q) ?? false`, frame, figure, text))
}
