package browser

import (
	"fmt"
	"os"
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// openLesson opens the working of a figure and its lesson.
func (p *tab) openLesson(figure string) string {
	p.t.Helper()
	holder := `[data-out="` + figure + `"]`
	p.tap(holder + " summary")
	p.waitUntil("the working is open", `document.querySelector('`+holder+` .lesson > summary') !== null`)
	p.tap(holder + " .lesson > summary")
	p.waitUntil("the lesson is there", `document.querySelector('`+holder+` .lesson math') !== null`)
	p.waitUntil("the graph is drawn", `document.querySelector('`+holder+` .lesson-slider .picture') !== null`)
	return holder + " .lesson "
}

// A working as a lesson: sketch, formula, signs, numbers, source, and a slider with its graph.
func TestAWorkingIsShownAsALesson(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "wet-film.html#dry_film=60&coats=2&volume_solids=45&solids_for=mix", l)
		p.waitIn("#card", "67 µm")
		lesson := p.openLesson("wet_film")
		p.has(lesson, "From wet to dry", "Given", "Dry film wanted", "Wet film of one coat", "With the numbers put in:", "Result: 66.667 µm", "MIL-HDBK-1110")
		assert.Equal(t, "mfrac", evaluate[string](p, `document.querySelector('`+lesson+`math mrow').lastElementChild.tagName`))
		assert.Equal(t, "Dry film wanted", evaluate[string](p, `document.querySelector('`+lesson+`select').selectedOptions[0].textContent`))
		p.has(lesson+".lesson-says", "Dry film wanted 60 µm: Wet film of one coat 67 µm")
		p.has(lesson+".lesson-slider .picture figcaption", "Wet film of one coat by Dry film wanted", "As Dry film wanted goes from 30 µm to 120 µm, Wet film of one coat rises from 33 µm to 133 µm")
		p.shotWhole("lesson-wet-film")
		p.fits()
		if l != phone {
			continue
		}

		// The slider by keys, and its number into the form.
		evaluate[bool](p, `document.querySelector('`+lesson+`input[type=range]').focus() ?? true`)
		p.keys(kb.ArrowRight)
		p.waitIn(lesson+".lesson-says", "Dry film wanted 62 µm: Wet film of one coat 69 µm")
		assert.Contains(t, evaluate[string](p, `document.querySelector('`+lesson+`input[type=range]').getAttribute("aria-valuetext").replace(/\s/g, " ")`), "62 µm: Wet film of one coat 69 µm")
		p.tap(lesson + ".lesson-slider button")
		p.waitUntil("the form has the number", `document.querySelector('input[name="dry_film"]').value === "62"`)
		p.waitIn("#card", "69 µm")
		p.waitIn(lesson, "Result: 68.889 µm")
		p.has("#notices", "Dry film wanted is now 62 µm.")

		// Another number of the form, over all that is allowed.
		evaluate[bool](p, `(() => { const s = document.querySelector('`+lesson+`select'); s.value = "volume_solids"; s.dispatchEvent(new Event("change", { bubbles: true })); return true; })()`)
		p.waitIn(lesson+".lesson-says", "Volume solids 45 %: Wet film of one coat 69 µm")
		p.tap(lesson + ".lesson-wide input")
		p.waitIn(lesson+".lesson-slider figcaption", "As Volume solids goes from 2 % to 100 %, Wet film of one coat falls from 1550 µm to 31 µm")
	}
}

// Where the calculator refuses, the graph has a gap, and says why.
func TestTheGraphOfALessonHasGaps(t *testing.T) {
	s := serve(t)
	p := open(t, s, "index.html", desk)
	p.visit("part-warm-up.html")
	p.tap("#try a")
	p.waitUntil("there is an answer", `document.querySelector("#card .main summary") !== null`)
	figure := evaluate[string](p, `document.querySelector("#card .main").dataset.out`)
	lesson := p.openLesson(figure)
	gapped := false
	for i := range evaluate[int](p, `document.querySelector('`+lesson+`select').options.length`) {
		evaluate[bool](p, fmt.Sprintf(`(() => { const s = document.querySelector('%sselect'); s.selectedIndex = %d; s.dispatchEvent(new Event("change", { bubbles: true })); return true; })()`, lesson, i))
		name := evaluate[string](p, `document.querySelector('`+lesson+`select').selectedOptions[0].textContent`)
		p.waitUntil("the graph is of "+name, `document.querySelector('`+lesson+`.lesson-slider figcaption')?.textContent.includes(`+quoted("by "+name)+`)`)
		if gap := p.text(lesson + ".lesson-gap"); gap != "" {
			assert.Regexp(t, `^(From .* to|At) .* there is no answer\. .+\.$`, gap)
			gapped = true
			p.shotWhole("lesson-gap")
			break
		}
	}
	assert.True(t, gapped, "no number of the form is refused")
}

// The cell of a list has a lesson too, which stays open while the answer changes; and so has the job, with its many steps.
func TestACellOfAListHasALesson(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.tap(`[data-out="pour"] button.cell`)
	p.waitUntil("the lesson is offered", `document.querySelector('[data-out="pour"] .beneath .lesson > summary') !== null`)
	p.tap(`[data-out="pour"] .beneath .lesson > summary`)
	p.waitUntil("the lesson is there", `document.querySelector('[data-out="pour"] .beneath .lesson math') !== null`)
	p.waitUntil("the graph is drawn", `document.querySelector('[data-out="pour"] .beneath .lesson-slider .picture') !== null`)
	p.shot("lesson-pour")
	p.enter("losses", "120")
	p.waitUntil("the answer has changed", `document.querySelector('[data-out="to_mix_all"] .num').textContent !== "11.33"`)
	p.waitUntil("the lesson is there again", `document.querySelector('[data-out="pour"] .beneath .lesson math') !== null`)
	p.fits()
}

// What a lesson takes is fetched with the first one.
func TestALessonCostsTheFirstPageNothing(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phone)
	wetFilm(p)
	loaded := `performance.getEntriesByType("resource").map((e) => e.name).filter((n) => /lesson-(?!part)|booth\.wasm/.test(n)).length`
	assert.Zero(t, evaluate[int](p, loaded))
}

// The sketches of lessons, for somebody to look at.
func TestTakePicturesOfLessons(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, deskDark} {
		for _, name := range []string{"overlap", "gun-distance", "cup-seconds", "mix"} {
			p := open(t, s, name+".html", l)
			p.tap("#try a")
			p.waitUntil("there is an answer", `document.querySelector("#card .figure summary, #card button.cell") !== null`)
			p.tap("#card .figure summary, #card button.cell")
			p.tap("#card .lesson > summary")
			p.waitUntil("the sketch is drawn", `document.querySelector(".lesson .picture") !== null`)
			evaluate[bool](p, `(document.querySelector(".lesson .picture").scrollIntoView({ block: "center" }), true)`)
			p.shot("sketch-" + name)
		}
	}
}
