package browser

import (
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What a frame shows, seen without a host: the frame page opens on its own, too.

func TestWhatIsLockedIsShownAndWhatIsHiddenIsUsed(t *testing.T) {
	p := open(t, serve(t), "embed.html#frame.of=wet-film&frame.lock=coats,dry_film,solids_for&frame.hide=volume_solids,comb_step&frame.title=Our+%3Cb%3Efirst&frame.theme=dark&frame.working=open&dry_film=60&volume_solids=45&coats=2", phone)
	p.waitIn("#card", "67 µm")
	assert.Equal(t, "Our <b>first", p.text("h1"))
	assert.Equal(t, "dark", evaluate[string](p, `document.documentElement.dataset.theme`))
	assert.False(t, p.sees(box("volume_solids")))
	assert.True(t, evaluate[bool](p, `document.querySelector('[data-out="wet_film"] details').open`))
	p.has(`[data-out="wet_film"] .steps`, "2.1.5 — read in the work itself")
	assert.True(t, evaluate[bool](p, `document.querySelector('[name="coats"]').readOnly && document.querySelector('[name="dry_film.unit"]').disabled && [...document.querySelectorAll('[name="solids_for"]')].every((c) => c.disabled)`))
	p.enter("coats", "3")
	assert.Equal(t, "2", p.value("coats"))
	p.has("#card", "67 µm")
	for _, gone := range []string{".top", ".foot", ".bar", "#share", "#try", ".grounds"} {
		assert.False(t, p.sees(gone), gone)
	}
	p.fits()
	p.shotWhole("frame-locked")
}

func TestAnAnswerThatTheLearnerShallFind(t *testing.T) {
	p := open(t, serve(t), "embed.html#frame.of=wet-film&frame.answer=hidden&dry_film=60&volume_solids=45", phone)
	p.waitUntil("the form stands", `document.querySelector('[name="coats"]') !== null`)
	p.enter("coats", "2")
	p.waitUntil("it is worked out", `document.querySelector('[data-out="wet_film"] .num')?.textContent === "67"`)
	assert.False(t, p.sees("#card"))
	assert.NotContains(t, p.text("body"), "67")
	assert.False(t, p.sees(".frame-foot"), "a way out to the answer")
	p.pressIn("form", "Start again")
	p.waitUntil("it is as at first", `document.querySelector('[name="coats"]').value === "" && document.querySelector('[name="dry_film"]').value === "60"`)
	assert.Empty(t, p.text("#notices"))
}

func TestALockedTableKeepsItsRows(t *testing.T) {
	p := open(t, serve(t), "embed.html#frame.of=job&frame.lock=part,coat.dry_film&frame.hide=gun&part.1.name=Lid&part.1.shape=flat&part.1.length=800&part.1.width=600&part.1.sides=one&part.1.count=2&coat.1.product=Clear&coat.1.dry_film=50&coat.1.coats=2", phone)
	p.waitIn(`[data-row="part.1"]`, "2 pieces")
	assert.False(t, p.sees(`[data-table="part"] > .add`))
	assert.False(t, p.sees(`[data-table="coat"] > .add`), "a new row could not be filled in")
	p.opens("part.1")
	assert.True(t, evaluate[bool](p, `document.querySelector('[name="part.1.length"]').readOnly`))
	assert.False(t, p.sees(`[data-row="part.1"] [data-do="remove"]`))
	p.opens("coat.1")
	assert.True(t, evaluate[bool](p, `document.querySelector('[name="coat.1.dry_film"]').readOnly && !document.querySelector('[name="coat.1.coats"]').readOnly`))
	assert.False(t, p.sees(`[data-row="coat.1"] [data-do="remove"]`))
	assert.False(t, p.sees(`[data-field="gun"]`))
	p.fits()
}

func TestAFrameKeepsNothing(t *testing.T) {
	p := open(t, serve(t), "embed.html#frame.of=data-sheet", phone)
	p.waitUntil("the form stands", `document.querySelector('[name="product"]') !== null`)
	p.enter("product", "Clear")
	p.enter("dry_film", "50")
	p.waitIn("#verdict", "For a job card it still lacks")
	assert.Zero(t, evaluate[int](p, `localStorage.length + sessionStorage.length`))
	assert.Zero(t, evaluate[int](p, `indexedDB.databases().then((all) => all.length)`))
	assert.Equal(t, "#frame.of=data-sheet", evaluate[string](p, `location.hash`))
}

func TestWhatIsNoCalculatorIsNotFramed(t *testing.T) {
	s := serve(t)
	p := open(t, s, "embed.html", phone)
	p.waitFor("There is no calculator “” to show in this frame.")
	p.forgive("404")
	for _, name := range []string{"no-such", "menu", "shelf", "../shelf", "https://example.org/x", "index", "wet-film.html", "<img src=x onerror=ran=1>", "__proto__"} {
		p.visit("about.html")
		p.visit("embed.html#frame.of=" + strings.ReplaceAll(name, "&", "%26"))
		p.waitFor("There is no calculator “" + name + "” to show in this frame.")
	}
}

func TestAHostileFrameLinkIsOnlyText(t *testing.T) {
	s := serve(t)
	p := open(t, s, "about.html", phone)
	for _, link := range append(hostile, "frame.title=<script>ran=1</script>&frame.theme=\"><b>&frame.lock=__proto__,constructor,\"],[x&frame.hide=*,[name]", "frame.lock="+strings.Repeat("a,", 5000)) {
		p.visit("about.html")
		p.visit("embed.html#frame.of=job&" + link)
		p.waitUntil("the core has answered", `document.querySelector("#needed:not([hidden])") !== null`)
		assert.False(t, evaluate[bool](p, `"ran" in window || "ran" in {} || document.querySelector("main script, main img, h1 *") !== null`), link)
	}
}

// Every kind of calculator stands in a frame as narrow as a phone.
func TestEveryKindOfCalculatorFitsAFrame(t *testing.T) {
	p := open(t, serve(t), "about.html", narrow)
	for _, page := range fewPages {
		id := strings.TrimSuffix(page, ".html")
		if page == "index.html" {
			id = "job"
		}
		p.visit("about.html")
		p.visit("embed.html#frame.of=" + id)
		p.waitUntil(id+" stands", `document.querySelector("#needed:not([hidden]), #card .out:not([hidden])") !== null || document.body.innerText.includes("There is no calculator")`)
		p.fitsFor(id)
	}
}

// A page without an origin can start no worker by its address: it is given the worker's text.
func TestTheCoreOfASandboxRunsInAWorker(t *testing.T) {
	s := serve(t)
	target, err := url.Parse(s.url(""))
	require.NoError(t, err)
	proxy := httputil.NewSingleHostReverseProxy(target)
	proxy.ModifyResponse = func(r *http.Response) error {
		if strings.HasSuffix(r.Request.URL.Path, "embed.html") {
			r.Header.Add("Content-Security-Policy", "sandbox allow-scripts")
		}
		return nil
	}
	site := httptest.NewServer(proxy)
	t.Cleanup(site.Close)
	p := open(t, &server{t: t, build: s.build, address: strings.TrimPrefix(site.URL, "http://")}, "about.html", phone)
	p.before(`globalThis.started = [], globalThis.Worker = class extends Worker { constructor(...a) { super(...a); started.push(String(a[0])); } }`)
	p.visit("embed.html#frame.of=wet-film&dry_film=60&volume_solids=45&coats=2")
	p.waitIn("#card", "67 µm")
	assert.Equal(t, "null", evaluate[string](p, `self.origin`))
	started := evaluate[[]string](p, `started`)
	require.Len(t, started, 1)
	assert.True(t, strings.HasPrefix(started[0], "blob:null/"), started[0])
	assert.False(t, evaluate[bool](p, `"Go" in globalThis`), "the core runs on the page")
}
