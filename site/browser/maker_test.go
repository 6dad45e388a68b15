package browser

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// inFrame runs a script in the frame that the page shows; it is of the same site.
func inFrame[T any](p *tab, script string) T {
	p.t.Helper()
	return evaluate[T](p, `((document) => `+script+`)(document.querySelector("#maker-frame iframe").contentDocument)`)
}

func (p *tab) waitInFrame(what, script string) {
	p.t.Helper()
	p.waitUntil(what, `((document) => Boolean(document?.body && (`+script+`)))(document.querySelector("#maker-frame iframe")?.contentDocument)`)
}

// A trainer fills a calculator in where it stands, locks and hides, and takes the lines away; they work on another site.
func TestATrainerMakesAFrame(t *testing.T) {
	p := open(t, serve(t), "put-on-page.html", phone)
	p.waitInFrame("the job stands in the frame", `document.querySelector('main[data-calculator="job"]')`)
	p.choose("frame.of", "wet-film")
	p.waitInFrame("another calculator", `document.querySelector('main[data-calculator="wet-film"] #needed:not([hidden])')`)
	for name, text := range map[string]string{"dry_film": "60", "coats": "2", "volume_solids": "45"} {
		inFrame[bool](p, `((box) => { box.value = `+quoted(text)+`; box.dispatchEvent(new Event("input", {bubbles: true})); return true; })(document.querySelector('[name="`+name+`"]'))`)
	}
	p.waitUntil("what is filled in is in the lines", `document.getElementById("maker-script").value.includes("coats=2&amp;dry_film=60&amp;volume_solids=45")`)
	p.choose("language", "es")
	p.choose("frame.theme", "dark")
	p.choose("frame.working", "open")
	p.enter("frame.title", `Our "first" <coat>`)
	p.waitInFrame("the frame follows", `document.documentElement.lang === "es" && document.documentElement.dataset.theme === "dark" && document.querySelector("h1")?.textContent === 'Our "first" <coat>' && document.querySelector("#card details.figure[open]")`)
	evaluate[bool](p, `(document.querySelector(".maker-fields").open = true)`)
	for key, what := range map[string]string{"coats": "lock", "comb_step": "hide"} {
		p.waitUntil("the fields are listed", `document.querySelector('#maker-fields [data-key="`+key+`"]') !== null`)
		evaluate[bool](p, `((s) => { s.value = "`+what+`"; s.dispatchEvent(new Event("input", {bubbles: true})); return true; })(document.querySelector('#maker-fields [data-key="`+key+`"]'))`)
	}
	p.waitInFrame("it is locked and hidden", `document.querySelector('[name="coats"]')?.readOnly && document.querySelector('[data-field="comb_step"].withheld') && document.querySelector('[data-out="wet_film"] .num')?.textContent === "67"`)
	p.fits()
	p.shotWhole("maker")

	script, frame, address := p.value2("#maker-script"), p.value2("#maker-tag"), p.link()
	p.visit("about.html")
	p.visit(address[strings.Index(address, "put-on-page"):])
	p.waitInFrame("the address holds it all", `document.querySelector('[name="coats"]')?.readOnly && document.querySelector('[data-out="wet_film"] .num')?.textContent === "67"`)
	assert.Equal(t, script, p.value2("#maker-script"))

	for _, lines := range []string{script, frame, strings.Replace(frame, "<iframe ", `<iframe sandbox="allow-scripts" `, 1)} {
		pages := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if strings.HasSuffix(r.URL.Path, "host.js") {
				hostPage(w, r, "", "")
				return
			}
			w.Header().Set("Content-Security-Policy", fmt.Sprintf(strict, strings.TrimSuffix(p.server.url(""), "/")))
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			fmt.Fprint(w, `<!doctype html><html lang="en"><title>A lesson</title><link rel="icon" href="data:,"><script src="host.js"></script><body>`+lines)
		}))
		h := &hosted{tab: open(t, &server{t: t, build: p.server.build, address: strings.TrimPrefix(pages.URL, "http://")}, "lesson.html", phone)}
		h.forgive("data:,")
		h.answers(0, "wet_film", "67 µm")
		assert.Empty(t, evaluate[[]string](h.tab, `forbidden.filter((f) => !f.startsWith("img-src"))`), lines)
		pages.Close()
	}
}

// The list of fields stays where somebody is in it, and what a link asks for that is not there is passed over.
func TestTheMakerKeepsTheFocus(t *testing.T) {
	p := open(t, serve(t), "put-on-page.html#frame.of=no-such&language=xx&frame.theme=purple&coats=2", phone)
	p.waitIn("#notices", "There is no calculator “no-such”")
	p.waitInFrame("the first stands in its place", `document.querySelector('main[data-calculator="job"]')`)
	assert.Equal(t, []string{"en", ""}, evaluate[[]string](p, `["language", "frame.theme"].map((name) => document.getElementById("form").elements[name].value)`))
	p.visit("about.html")
	p.visit("put-on-page.html#frame.of=wet-film&coats=2")
	p.waitUntil("the fields are listed", `document.querySelector('#maker-fields [data-key="coats"]') !== null`)
	evaluate[bool](p, `(document.querySelector(".maker-fields").open = true, document.querySelector('#maker-fields [data-key="coats"]').focus(), true)`)
	p.keys(kb.ArrowDown)
	p.waitInFrame("it is locked", `document.querySelector('[name="coats"]')?.readOnly && document.querySelector("#needed:not([hidden])")`)
	assert.Equal(t, "coats", evaluate[string](p, `document.activeElement.dataset.key ?? document.activeElement.tagName`))
	// Nothing but the frame is heard.
	p.waitUntil("it has its height", `document.querySelector("#maker-frame iframe").height !== "480"`)
	height := evaluate[string](p, `document.querySelector("#maker-frame iframe").height`)
	evaluate[bool](p, `(postMessage({ spraywright: 1, kind: "height", height: 9 }, "*"), postMessage({ spraywright: 1, kind: "answer", form: "coats=9" }, "*"), true)`)
	evaluate[bool](p, `new Promise((done) => setTimeout(() => done(true), 100))`)
	assert.Equal(t, height, evaluate[string](p, `document.querySelector("#maker-frame iframe").height`))
	assert.NotContains(t, p.value2("#maker-script"), "coats=9")
}

func TestTakePicturesOfWhatIsHandedOn(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "put-on-page.html#frame.of=wet-film&frame.lock=coats&coats=2&volume_solids=45&dry_film=60", l)
		p.waitInFrame("it is answered", `document.querySelector('[data-out="wet_film"] .num')?.textContent === "67"`)
		evaluate[bool](p, `(document.querySelector(".maker-fields").open = true)`)
		p.shotWhole("put-on-page")
		p.visit("customer-sheets.html#sender=Trike+paint+counter&shop_note=Ask+<us>+https://example.org&sheet.1.product=Grey+primer&sheet.1.dry_film=60&sheet.1.coats=2&sheet.2.product=Ivory+base&sheet.2.sheet_dated=2026-01")
		p.waitIn("#handing", "Copy the link")
		p.tap(`[data-hand="code"]`)
		p.waitUntil("the code is drawn", `document.querySelector("#customer-code .code") !== null`)
		p.tap("#customer-preview summary")
		p.waitUntil("the frame is there", `document.querySelector("#customer-frame iframe")?.contentDocument?.querySelector("#needed:not([hidden])") != null`)
		p.shotWhole("customer-sheets")
		p.visit(p.value2("#customer-link")[len(s.url("")):])
		p.waitIn("#received-from", "From: Trike paint counter")
		p.pressIn("#received-tools", "Keep on this device")
		p.waitIn(".import", "Would be added: 2")
		p.shotWhole("received")
		p.visit("shelf.html")
		p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
		p.shotWhole("shelf-site")
		p.visit("embed.html#frame.of=job&frame.theme=" + map[bool]string{true: "booth"}[l == desk])
		p.waitUntil("the job stands", `document.querySelector("#needed:not([hidden])") !== null`)
		p.shotWhole("frame-job")
	}
}
