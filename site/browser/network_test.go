package browser

import (
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Once the site is kept on the device nothing goes over the network, whatever is typed, shared or started: but the browser
// asks whether there is a new version.
func TestNothingIsAskedOnceTheSiteIsKept(t *testing.T) {
	s := serve(t)
	target, err := url.Parse(s.url(""))
	require.NoError(t, err)
	proxy := httputil.NewSingleHostReverseProxy(target)
	var mu sync.Mutex
	var asked []string
	front := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		mu.Lock()
		asked = append(asked, r.URL.String())
		mu.Unlock()
		proxy.ServeHTTP(w, r)
	}))
	t.Cleanup(front.Close)
	p := open(t, &server{t: t, build: s.build, address: strings.TrimPrefix(front.URL, "http://")}, "about.html", phone)
	p.waitIn("#kept", "works without a network")
	p.visit("menu.html") // the first page that comes from the device
	mu.Lock()
	asked = nil
	mu.Unlock()
	elsewhere := p.elsewhere()

	p.visit("")
	p.demo()
	p.tap(`[data-out="timeline"] .time`)
	p.waitIn(".strip", "Use up by")
	p.tap("#share")
	for _, page := range []string{"timers.html", "log.html", "shelf.html", "gauge.html", "exercises.html", "es/wet-film.html", "received.html#sender=Us&sheet.1.product=Clear"} {
		p.visit(page)
		p.waitFor("Spraywright")
	}
	mu.Lock()
	defer mu.Unlock()
	assert.Empty(t, slices.DeleteFunc(asked, func(name string) bool { return name == "/sw.js" }))
	assert.Empty(t, elsewhere())
}

// elsewhere notes what the page asks of others than the site, from now on.
func (p *tab) elsewhere() func() []string {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, network.Enable, network.EnableParams{})
	require.NoError(p.t, err)
	var mu sync.Mutex
	var others []string
	requests := chromedp.Events(p.ctx, network.RequestWillBeSent)
	go func() {
		for e, err := range requests {
			if err != nil {
				return // the tab is closed
			}
			if a := e.Request.URL; !strings.HasPrefix(a, p.server.url("")) && !strings.HasPrefix(a, "data:") && !strings.HasPrefix(a, "blob:") {
				mu.Lock()
				others = append(others, a)
				mu.Unlock()
			}
		}
	}()
	return func() []string {
		mu.Lock()
		defer mu.Unlock()
		return slices.Clone(others)
	}
}
