package browser

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A reader whose text is twice as large, on the narrowest phone (WCAG 2.2, 1.4.4 and 1.4.10).
func TestLargeTextNeedsNoSidewaysScroll(t *testing.T) {
	p := open(t, serve(t), "", narrow)
	evaluate[string](p, `document.documentElement.style.fontSize = "212.5%"`)
	p.fits()
	p.demo()
	p.fits()
	p.tap(`[data-row="part.1"] summary`)
	p.tap(`[data-row="coat.1"] summary`)
	p.enter("air", "warm")
	p.waitIn("#gathered", "Air temperature must be a number")
	p.fits()
	p.enter("air", "29")
	p.waitIn("#card", "Call sheet")
	p.tap(`[data-out="dew_point"] summary`)
	p.tap(`[data-out="pour"] button.cell`)
	p.waitUntil("the working is open", `document.querySelector('[data-out="pour"] .beneath') !== null`)
	p.fits()
	assert.Less(t, evaluate[float64](p, `document.getElementById("bar").getBoundingClientRect().height / innerHeight`), 0.4, "the bar hides the page")
	p.shot("large-text")
}

func TestOnADeskTheCardStandsBesideTheForm(t *testing.T) {
	for _, l := range []look{desk, deskDark} {
		p := open(t, serve(t), "", l)
		p.demo()
		assert.True(t, evaluate[bool](p, `document.getElementById("card").getBoundingClientRect().left > document.getElementById("form").getBoundingClientRect().right`))
		assert.False(t, p.sees("#bar"), "the bar says what the card beside says")
		assert.LessOrEqual(t, evaluate[float64](p, `document.querySelector("main").getBoundingClientRect().width`), 1200.0)
		evaluate[bool](p, `(scrollTo(0, 1500), true)`)
		assert.True(t, evaluate[bool](p, `(({top, bottom}) => top >= 0 && bottom <= innerHeight + 1)(document.getElementById("card").getBoundingClientRect())`), "the card has scrolled away")
		p.fits()
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
	}
}

// Text that can be told from what lies behind it (WCAG 2.2, 1.4.3: 4.5 to 1), in each of the looks.
func TestEveryTextStandsOutFromItsGround(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.tap(`[data-out="dew_point"] summary`)
	p.enter("humidity", "120")
	p.waitIn("#gathered", "Relative humidity")
	for _, theme := range []string{"light", "dark", "booth"} {
		evaluate[bool](p, `document.querySelector('#themes input[value="`+theme+`"]').click() ?? true`)
		assert.Empty(t, evaluate[[]string](p, faint), theme)
	}
	assert.Equal(t, "booth", evaluate[string](p, `localStorage.getItem("spraywright:theme")`))
	p.visit("menu.html")
	p.waitUntil("the look is kept", `document.documentElement?.dataset.theme === "booth" && document.readyState === "complete"`)
	p.waitFor("All calculators")
	assert.Empty(t, evaluate[[]string](p, faint))
}

// faint lists texts whose contrast with their ground is under 4.5 to 1. Grounds here are plain colours.
const faint = `(() => {
	const rgb = (c) => { const n = c.match(/[\d.]+/g).map(Number); return n.length > 3 && n[3] === 0 ? undefined : n.slice(0, 3); };
	const light = (c) => { const [r, g, b] = c.map((v) => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
	const ground = (e) => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c) return c; } return [255, 255, 255]; };
	const found = new Set();
	for (const e of document.querySelectorAll("body *")) {
		if (![...e.childNodes].some((n) => n.nodeType === 3 && n.data.trim()) || !e.checkVisibility() || e.closest("button:disabled, svg, option")) continue;
		const [a, b] = [light(rgb(getComputedStyle(e).color)), light(ground(e))].sort((x, y) => y - x);
		if ((a + 0.05) / (b + 0.05) < 4.5) found.add(e.className + ": " + e.textContent.slice(0, 40) + " " + ((a + 0.05) / (b + 0.05)).toFixed(2));
	}
	return [...found];
})()`

// What is tapped with a glove is large enough, and what is read out has a name (WCAG 2.2, 2.5.8 and 4.1.2).
func TestControlsAreLargeAndNamed(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.tap(`[data-row="coat.1"] summary`)
	assert.Empty(t, evaluate[[]string](p, `[...document.querySelectorAll("button, input, select, summary, .top a, .places a, .foot a")].filter((e) => e.checkVisibility()).filter((e) => {
		const r = (e.closest("label") ?? e).getBoundingClientRect();
		return r.height < 43.5 || r.width < 24;
	}).map((e) => e.outerHTML.slice(0, 120))`), "too small for a thumb")
	assert.Empty(t, evaluate[[]string](p, `[...document.querySelectorAll("button, input, select, summary, a")].filter((e) => e.checkVisibility()).filter((e) =>
		!(e.ariaLabel || [...(e.labels ?? [])].some((l) => l.innerText.trim()) || e.innerText?.trim())).map((e) => e.outerHTML.slice(0, 120))`), "without a name")
	assert.Empty(t, evaluate[[]string](p, `[...document.querySelectorAll("[id]")].map((e) => e.id).filter((id, i, all) => all.indexOf(id) !== i)`), "ids used twice")
	assert.Empty(t, evaluate[[]string](p, `[...document.querySelectorAll("[aria-describedby]")].flatMap((e) => e.getAttribute("aria-describedby").split(" ")).filter((id) => !document.getElementById(id))`))
}

func TestOnPaperThereIsTheCardAlone(t *testing.T) {
	p := open(t, serve(t), "", phoneDark)
	p.demo()
	p.media("print")
	for _, gone := range []string{"#form", "#bar", "#share", ".top .switch", ".places", ".foot", "#try", "#notices"} {
		assert.False(t, p.sees(gone), gone)
	}
	p.waitIn("main", "Job card")
	p.has("main", "Go", "Grey two-pack primer, cups 1 to 5 of 5, each", "Scale reads", "Call sheet", "Mist from two-pack paint", "This job is invented.")
	assert.False(t, p.sees("#card"), "the card of the screen is printed as well")
	assert.True(t, p.sees(".box"), "there is nothing to tick on paper")
	assert.Equal(t, "rgb(255, 255, 255)", evaluate[string](p, `getComputedStyle(document.documentElement).backgroundColor`), "ink is spent on a dark ground")
	p.shotWhole("print")
}

// Without scripts the page is a form to print and an example to read.
func TestWithoutScriptsThePageCanBeRead(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	_, err := chromedp.Call(p.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	require.NoError(t, err)
	p.visit("")
	p.has("main", "The answers are worked out by a script, and none runs here.", "Air temperature", "Measured beside the part", "(−10",
		"Product 1", "Where this comes from", "ASHRAE", "Mist from two-pack paint")
	assert.True(t, evaluate[bool](p, `document.querySelector('details:not([open]) [name="coat.1.ratio"]') !== null`), "a row's fields are gone, or fill the page")
	assert.Less(t, evaluate[int](p, `document.documentElement.scrollHeight`), 25000, "nobody scrolls that far")
	p.click(`.intro a[href="#example-title"]`)
	p.waitFor("A worked example (invented)")
	p.has("main", "Go Panel 4.6 °C above dew point", "11.33", "Cup by cup", "12:30")
	assert.False(t, p.sees("#card"))
	assert.False(t, p.sees("#bar"))
	assert.False(t, p.sees("#share"), "a button that does nothing")
	p.fits()
	p.shotWhole("no-script")
}

// Short enough for a clipboard, with a painter's name, what it rests on, and a box for each cup.
func TestThePrintedCardIsWhole(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	assert.False(t, p.sees(".paper"), "what is for paper shows on the screen")
	p.media("print")
	p.waitIn("#paper-given", "Air temperature 29 °C; Relative humidity 72 %; Panel temperature 28 °C")
	p.has("#paper-given", "Cargo-box lid, box 800 mm × 600 mm × 120 mm, 12 pieces", "Two-pack clear, 2:1+10% by volume", "Kind of gun HVLP", "Cup size 1000 mL")
	p.has("#paper", "Date Painter", "Mist from two-pack paint", "12:30 Mix Grey two-pack primer, cup 1 of 5", "VOC as sprayed", "Pot life, shortest", "Start pressure")
	assert.Equal(t, 5*3+3*2+1*2+4*3, evaluate[int](p, `document.querySelectorAll("#paper .box").length`), "a box for each part of each cup")
	assert.Equal(t, 1, evaluate[int](p, `[...document.querySelectorAll("#paper *")].filter((c) => c.children.length === 0 && c.textContent.includes("Mist from two-pack paint")).length`))
	assert.GreaterOrEqual(t, evaluate[float64](p, `Math.min(...[...document.querySelectorAll("#paper *")].filter((e) => e.innerText?.trim()).map((e) => parseFloat(getComputedStyle(e).fontSize)))`), 8.49*96/72, "too small to read")
}
