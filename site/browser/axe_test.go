package browser

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// checker reads the accessibility checker. Where it is missing the test is passed over, but never in CI.
func checker(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	if err != nil && os.Getenv("CI") == "" {
		t.Skip("the accessibility checker is not here: run .ci/axe, which gets it")
	}
	require.NoError(t, err, "run .ci/axe first")
	return string(text)
}

// A finding is one rule that a page breaks, and where.
type finding struct {
	Rule  string   `json:"rule"`
	Help  string   `json:"help"`
	Where []string `json:"where"`
}

// everyRule is the WCAG 2.2 rules of levels A and AA and what the checker calls best practice. A scrolled card may be
// out of the picture, so hidden text is not told to be shown.
const everyRule = `axe.run(document, {resultTypes: ["violations"], runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]})
	.then((r) => r.violations.map((v) => ({rule: v.id, help: v.help, where: v.nodes.slice(0, 4).map((n) => n.target.flat().join(" ") + "  " + n.html.slice(0, 150) + "  " + (n.any[0]?.message ?? ""))})))`

// axe runs the checker on the page as it stands and reports what it finds.
func (p *tab) axe(program, state string) {
	p.t.Helper()
	evaluate[bool](p, `globalThis.axe ? true : (`+"() => {"+program+"\n return true })()")
	// A long page takes the checker a while on a busy machine.
	ctx, cancel := context.WithTimeout(p.ctx, 6*patience)
	defer cancel()
	found, err := chromedp.Run(ctx, chromedp.Evaluate[[]finding](everyRule, chromedp.EvalAwaitPromise))
	require.NoError(p.t, err, state)
	for _, f := range found {
		assert.Fail(p.t, fmt.Sprintf("%s: %s (%s)", state, f.Help, f.Rule), strings.Join(f.Where, "\n"))
	}
}

// everyPage is the pages of the built site.
func everyPage(t *testing.T) []string {
	t.Helper()
	b, err := built()
	require.NoError(t, err)
	var pages []string
	for _, pattern := range []string{"*.html", "*/*.html"} {
		found, err := filepath.Glob(filepath.Join(b.dist, pattern))
		require.NoError(t, err)
		for _, file := range found {
			name, err := filepath.Rel(b.dist, file)
			require.NoError(t, err)
			pages = append(pages, filepath.ToSlash(name))
		}
	}
	return slices.DeleteFunc(pages, func(name string) bool { return name == "spraywright.html" })
}

// isLoaded holds once the page's scripts have run; a calculator then says what it needs, or answers.
const isLoaded = `document.readyState === "complete" && (!document.querySelector("main")?.dataset.calculator ||
	document.querySelector(".bar-needed:not([hidden]), .bar-answer:not([hidden]), #card .out:not([hidden])") !== null)`

// How we know that the checker would find something.
func TestTheCheckerFindsWhatIsWrong(t *testing.T) {
	p := open(t, serve(t), "menu.html", phone)
	program := checker(t)
	p.axe(program, "as it is")
	evaluate[bool](p, `document.querySelector("main").append(Object.assign(document.createElement("button"), {type: "button"})) ?? true`)
	found := evaluate[[]finding](p, everyRule)
	require.Len(t, found, 1)
	assert.Equal(t, "button-name", found[0].Rule)
}

// The few pages that stand for the kinds of page are looked at on every screen.
func TestEveryPageIsAccessible(t *testing.T) {
	t.Parallel() // after the tests that do as a person does, and beside the like
	s := serve(t)
	program := checker(t)
	p := open(t, s, "about.html", phone)
	for i, name := range everyPage(t) {
		stands := slices.Contains(fewPages, name)
		if testing.Short() && !stands && i%3 != 0 {
			continue // they are all built alike
		}
		if strings.Contains(name, "/") && !stands {
			continue // built from the same templates
		}
		p.wear(phone)
		p.visit(name)
		p.waitUntil(name+" is loaded", isLoaded)
		p.axe(program, name)
		if evaluate[bool](p, `document.querySelector("#try a")?.checkVisibility() ?? false`) {
			fillIn(p)
			p.axe(program, name+" answered")
		}
		if stands {
			p.inEveryLook(program, name)
		}
	}
}

func (p *tab) inEveryLook(program, name string) {
	p.t.Helper()
	for _, l := range []look{phoneDark, desk} {
		theme := ""
		if l == desk {
			theme = "booth"
		}
		p.wear(l)
		evaluate[bool](p, `document.querySelector('#themes input[value="`+theme+`"]').click() ?? true`)
		p.axe(program, name+" "+l.name+" "+theme)
	}
	evaluate[bool](p, `document.querySelector('#themes input[value=""]').click() ?? true`)
}

// fillIn takes the page's example and opens the working of the first figure.
func fillIn(p *tab) {
	p.t.Helper()
	p.tap("#try a")
	p.waitUntil("it is answered", `document.querySelector(".bar-needed").hidden && document.querySelector(".bar-answer:not([hidden]), #card .out:not([hidden])") !== null`)
	evaluate[bool](p, `document.querySelector("#card .out:not([hidden]) details > summary")?.click() ?? true`)
}

// fewPages stand for the kinds of page there are.
var fewPages = []string{"index.html", "day.html", "settings.html", "wet-film.html", "mix.html", "gauge-readings.html", "gun-delivery.html", "shelf.html", "data-sheet.html", "timers.html", "log.html", "gauge.html", "es/index.html", "menu.html", "sources.html", "help.html"}

// What stands on the page only for a while: problems, rows and working open, something removed, a link arrived.
func TestPassingStatesAreAccessible(t *testing.T) {
	t.Parallel()
	s := serve(t)
	program := checker(t)
	for _, l := range []look{phone, deskDark} {
		t.Run(l.name, func(t *testing.T) {
			p := open(t, s, "#air=18&humidity=140&panel=warm", l)
			p.waitIn("#gathered", "To put right")
			p.waitIn("#notices", fromLink)
			p.axe(program, "with problems, from a link")
			p.presses("Close")
			p.tap("#empty")
			p.waitUntil("the form is empty", `!document.getElementById("try").hidden`)
			p.demo()
			for _, row := range []string{"part.1", "coat.1"} {
				p.tap(`[data-row="` + row + `"] summary`)
			}
			p.tap(`[data-out="pour"] button.cell`)
			evaluate[bool](p, `[...document.querySelectorAll("#card details:not([open]) > summary")].forEach((s) => s.checkVisibility() && s.click()) ?? true`)
			p.axe(program, "rows and working open")
			p.tap(`[data-row="part.2"] summary`)
			p.tap(`[data-row="part.2"] [data-do="remove"]`)
			p.axe(program, "a row removed")
		})
	}
}

// cut lists texts that their box cuts off. The bar's two lines are a short answer, whole on the card.
const cut = `[...document.querySelectorAll("body *")].filter((e) => e.checkVisibility() && getComputedStyle(e).overflowX !== "visible" && e.scrollWidth > e.clientWidth + 1 &&
	!e.closest(".unseen, #bar, svg, .skip") && !e.matches("input, #card")).map((e) => e.outerHTML.slice(0, 160))`

// Text twice as large, and the page zoomed to twice its size, on the narrowest phone (WCAG 2.2, 1.4.4; 1.4.10 asks for
// less than the second).
func TestEveryPageGrows(t *testing.T) {
	t.Parallel()
	s := serve(t)
	p := open(t, s, "about.html", narrow)
	for i, name := range everyPage(t) {
		if testing.Short() && i%3 != 0 {
			continue
		}
		if !strings.Contains(name, "/") {
			continue // the same page in Spanish has the longer words
		}
		p.visit(name)
		p.waitUntil(name+" is loaded", isLoaded)
		p.grows(name)
		if evaluate[bool](p, `document.querySelector("#try a")?.checkVisibility() ?? false`) {
			evaluate[bool](p, `document.querySelector("#try a").click() ?? true`)
			p.waitUntil("it is answered", `document.querySelector(".bar-needed").hidden`)
			p.grows(name + " answered")
		}
	}
}

func (p *tab) grows(state string) {
	p.t.Helper()
	evaluate[string](p, `document.documentElement.style.fontSize = "212.5%"`)
	p.fitsFor(state + " text")
	assert.Empty(p.t, evaluate[[]string](p, cut), state+" text")
	evaluate[string](p, `document.documentElement.style.fontSize = ""`)
	half := narrow
	half.width /= 2
	p.wear(half)
	p.fitsFor(state + " zoom")
	assert.Empty(p.t, evaluate[[]string](p, cut), state+" zoom")
	p.wear(narrow)
}

func (p *tab) fitsFor(state string) {
	p.t.Helper()
	wide := evaluate[[]string](p, `(() => {
		const room = document.documentElement.clientWidth;
		if (document.documentElement.scrollWidth <= room) return [];
		return [document.documentElement.scrollWidth + " px on " + room].concat([...document.querySelectorAll("body *")].filter((e) => e.getBoundingClientRect().right > room + 1 && !e.closest(".unseen")).slice(0, 3).map((e) => e.outerHTML.slice(0, 200)));
	})()`)
	assert.Empty(p.t, wide, state)
}

// Where the reader's own colours rule, what is chosen, and which verdict it is, can still be told.
func TestTheReadersOwnColours(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	_, err := chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "forced-colors", Value: "active"}, {Name: "prefers-reduced-motion", Value: "reduce"}}})
	require.NoError(t, err)
	assert.True(t, evaluate[bool](p, `matchMedia("(forced-colors: active)").matches`))
	for _, switched := range []string{".switch", ".chips"} {
		assert.True(t, evaluate[bool](p, `(() => {
			const ground = (e) => getComputedStyle(e).backgroundColor;
			const on = [...document.querySelectorAll("`+switched+` input:checked + span")].find((e) => e.checkVisibility()), off = on.closest("`+switched+`").querySelector("input:not(:checked) + span");
			return ground(on) !== ground(off);
		})()`), "what is chosen looks like the rest: %s", switched)
	}
	assert.NotEqual(t, "none", evaluate[string](p, `getComputedStyle(document.querySelector("#verdict .go .for-go")).fill`))
	assert.Zero(t, evaluate[int](p, `document.getAnimations().length`))
	p.shot("own-colours")
	p.tap(".bar-answer")
	p.shot("own-colours-card")
}
