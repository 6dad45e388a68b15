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

	"github.com/stretchr/testify/assert"
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
	pages := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path == "/favicon.ico" {
			return
		}
		text, err := template.ParseFiles("../../testdata/embed/" + path.Base(r.URL.Path))
		if err != nil {
			http.NotFound(w, r)
			return
		}
		if strings.HasSuffix(r.URL.Path, ".js") {
			w.Header().Set("Content-Type", "text/javascript")
		}
		if policy != "" {
			w.Header().Set("Content-Security-Policy", fmt.Sprintf(policy, site.URL))
		}
		text.Execute(w, template.HTML(site.URL+"/"))
	}))
	t.Cleanup(pages.Close)
	h.tab = open(t, &server{t: t, build: s.build, address: strings.TrimPrefix(pages.URL, "http://")}, page, l)
	return h
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

// figures is the figures that a frame told last, as texts by key.
func (h *hosted) figures(frame int) map[string]string {
	h.t.Helper()
	return evaluate[map[string]string](h.tab, fmt.Sprintf(`Object.fromEntries((heard.findLast((m) => m.kind === "answer" && m.frame === %d)?.figures ?? []).map((f) => [f.key, f.text + " " + (f.unit ?? "")]))`, frame))
}

func (h *hosted) answers(frame int, figure, text string) {
	h.t.Helper()
	h.waitUntil("frame answers "+text, fmt.Sprintf(`heard.findLast((m) => m.kind === "answer" && m.frame === %d)?.figures.some((f) => f.key === %q && f.text + " " + f.unit === %q) ?? false`, frame, figure, text))
}

func TestAFrameOnAnotherSiteAnswers(t *testing.T) {
	h := host(t, "plain.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	first := evaluate[map[string]any](h.tab, `heard.find((m) => m.kind === "ready")`)
	assert.Equal(t, "wet-film", first["of"])
	assert.Len(t, first["fields"], 6)
	h.shot("embed-plain")
	h.log(t)
}

func (h *hosted) log(t *testing.T) {
	h.mu.Lock()
	defer h.mu.Unlock()
	t.Log(strings.Join(h.asked, "\n"))
}

func TestAFrameInASandboxAnswers(t *testing.T) {
	h := host(t, "sandbox.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	h.answers(1, "wet_film", "67 µm")
	assert.Equal(t, "null", evaluate[string](h.tab, `heard.find((m) => m.kind === "answer").origin`))
	h.shot("embed-sandbox")
	h.log(t)
}

func TestSeveralFramesOnAStrictHost(t *testing.T) {
	h := host(t, "several.html", strict, desk)
	for frame := range 3 {
		h.waitUntil("each frame is ready", fmt.Sprintf(`heard.some((m) => m.kind === "ready" && m.frame === %d)`, frame))
	}
	h.waitUntil("answers", `heard.filter((m) => m.kind === "answer").length >= 3`)
	h.waitUntil("the last has its height", `document.querySelectorAll("iframe")[2].height !== "480"`)
	h.shotWhole("embed-several")
	assert.Empty(t, evaluate[[]string](h.tab, `forbidden`))
	h.log(t)
}
