package browser

import (
	"strings"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What people do on the page, and what they see there.

// tap puts a finger on the middle of the first element that a selector finds, wherever it stands on the page. It
// fails when something else lies on top.
func (p *tab) tap(selector string) {
	p.t.Helper()
	e := `document.querySelector(` + quoted(selector) + `)`
	p.waitUntil(selector+" can be seen", `Boolean(`+e+`?.checkVisibility({contentVisibilityAuto: true, visibilityProperty: true}) && `+e+`.getClientRects().length)`)
	at := p.aim(selector)
	evaluate[bool](p, `(() => {
		globalThis.hits = 0;
		removeEventListener("click", globalThis.counts, true);
		globalThis.counts = ({target}) => {
			const e = `+e+`;
			if (e?.contains(target) || [...(e?.labels ?? [])].some((l) => l.contains(target))) globalThis.hits++;
		};
		addEventListener("click", globalThis.counts, true);
		return true;
	})()`)
	p.do(chromedp.TapXY(at[0], at[1]))
	// On a busy machine the page may move in the moment between aiming and touching: then a person taps again.
	for end := time.Now().Add(2 * time.Second); p.holds(`globalThis.hits === 0`); time.Sleep(30 * time.Millisecond) {
		if time.Now().After(end) {
			at = p.aim(selector)
			p.do(chromedp.TapXY(at[0], at[1]))
			return
		}
	}
}

// aim brings an element into sight and says where its middle is, once it stands still there.
func (p *tab) aim(selector string) []float64 {
	p.t.Helper()
	e := `document.querySelector(` + quoted(selector) + `)`
	at := evaluate[[]float64](p, `(async () => {
		let at, was, hit;
		do { // a page that is still growing carries it away, or draws it anew
			was = String(at);
			const e = `+e+`, r = (e?.scrollIntoView({block: "center", behavior: "instant"}), e?.getClientRects()[0]);
			at = r && [r.x + r.width / 2, r.y + r.height / 2];
			hit = at && document.elementFromPoint(...at);
			hit &&= e.contains(hit) || [...(e.labels ?? [])].some((l) => l.contains(hit));
		} while ((!at || was !== String(at)) && await new Promise((done) => setTimeout(() => done(true), 40)));
		return [...at, hit ? 1 : 0];
	})()`)
	require.Equal(p.t, 1.0, at[2], "something lies on top of %s", selector)
	return at
}

// afresh goes to a page of the site with nothing kept from before, which is quicker than a new profile.
func (p *tab) afresh(path string) {
	p.t.Helper()
	p.visit("about.html")
	evaluate[bool](p, `(localStorage.clear(), sessionStorage.clear(), true)`)
	p.visit(path)
}

// keys presses keys, one after another, wherever the focus is.
func (p *tab) keys(keys string) { p.t.Helper(); p.do(chromedp.KeyEvent(keys)) }

// next is what the keypad's Next does.
func (p *tab) next() { p.t.Helper(); p.keys(kb.Enter) }

// paste puts text in at the focus, all at once.
func (p *tab) paste(text string) {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, input.InsertText, input.InsertTextParams{Text: text})
	require.NoError(p.t, err)
}

// focused is the key of the field that the focus is in.
func (p *tab) focused() string {
	p.t.Helper()
	return evaluate[string](p, `document.activeElement.name ?? ""`)
}

// value is what stands in the box of a form's key.
func (p *tab) value(name string) string {
	p.t.Helper()
	return evaluate[string](p, `document.querySelector(`+quoted(box(name))+`)?.value ?? "no such box"`)
}

func box(name string) string { return `[name="` + name + `"]` }

// inOneLine reads the first element that a selector finds, every kind of space as one space. What is hidden is not read.
func (p *tab) inOneLine(selector string) string {
	p.t.Helper()
	return strings.Join(strings.Fields(p.text(selector)), " ")
}

// waitIn waits until a text can be read within an element.
func (p *tab) waitIn(selector, text string) {
	p.t.Helper()
	p.waitUntil(selector+" says “"+text+"”", `(document.querySelector(`+quoted(selector)+`)?.innerText ?? "").replace(/\s+/g, " ").includes(`+quoted(text)+`)`)
}

// card is everything that the card says, but for what it says again to those who listen.
func (p *tab) card() string {
	p.t.Helper()
	return evaluate[string](p, `[...document.querySelectorAll("#verdict, #card .out:not([hidden]), #pictures, #cautions")].map((e) => e.innerText).join("\n").replace(/[\s]+/g, " ")`)
}

// has holds an element to texts that must be readable in it.
func (p *tab) has(selector string, texts ...string) {
	p.t.Helper()
	says := p.inOneLine(selector)
	for _, text := range texts {
		assert.Contains(p.t, says, text, selector)
	}
}

// sees reports whether anything that a selector finds takes room on the page.
func (p *tab) sees(selector string) bool {
	p.t.Helper()
	return evaluate[bool](p, `[...document.querySelectorAll(`+quoted(selector)+`)].some((e) => e.checkVisibility({visibilityProperty: true}) && e.getClientRects().length > 0)`)
}

// link is the address of the page once it holds the form as it stands.
func (p *tab) link() string {
	p.t.Helper()
	return evaluate[string](p, `new Promise((done) => setTimeout(() => done(location.href), 500))`)
}

// before has a script run in every page before the page's own.
func (p *tab) before(script string) {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
	require.NoError(p.t, err)
}

// media shows the page as on "screen" or in "print".
func (p *tab) media(kind string) {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: kind})
	require.NoError(p.t, err)
}

// fits holds the page to the width of the screen.
func (p *tab) fits() {
	p.t.Helper()
	wide := evaluate[string](p, `(() => {
		const room = document.documentElement.clientWidth;
		if (document.documentElement.scrollWidth <= room) return "";
		const e = [...document.querySelectorAll("body *")].find((e) => e.getBoundingClientRect().right > room + 1 && !e.closest(".unseen"));
		return document.documentElement.scrollWidth + " px on " + room + ": " + (e?.outerHTML.slice(0, 200) ?? "?");
	})()`)
	assert.Empty(p.t, wide, "the page is wider than the screen")
}

// demo fills the form in by the demo link and waits for the card.
func (p *tab) demo() {
	p.t.Helper()
	p.tap("#try a")
	p.waitIn("#card", "Call sheet")
}
