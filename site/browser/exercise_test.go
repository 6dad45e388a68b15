package browser

import (
	"encoding/json"
	"fmt"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/exercise"
	"spraywright/calc/menu"
)

// set puts a text into a control of the trainer's page as a person would: the n-th exercise's, by its key in the link.
func (p *tab) set(n int, key, text string) {
	p.t.Helper()
	done := evaluate[bool](p, fmt.Sprintf(`(() => {
		const c = document.querySelector('#exercises > li:nth-child(%d) [data-key=%s]');
		if (!c) return false;
		c.value = %s;
		for (const e of ["input", "change"]) c.dispatchEvent(new Event(e, { bubbles: true }));
		return c.value === %[3]s;
	})()`, n, quoted(key), quoted(text)))
	require.True(p.t, done, "exercise %d has no %s", n, key)
}

// trainersSet makes a set of two exercises with fixed numbers on the trainer's page and returns its link.
func trainersSet(p *tab) string {
	p.t.Helper()
	p.waitFor("Make a set of exercises")
	p.waitUntil("there is an exercise", `document.querySelector("#exercises .preview .task-given") !== null`)
	p.enter("title", "Films")
	p.enter("note", "Take a comb to hand")
	evaluate[bool](p, `(() => { const s = document.querySelector("#exercises select"); s.value = "wet-film"; for (const e of ["input", "change"]) s.dispatchEvent(new Event(e, { bubbles: true })); return true; })()`)
	p.waitIn("#exercises .preview", "How wet must one coat be")
	p.set(1, "ask", "wet_film")
	p.set(1, "dry_film", "60")
	p.set(1, "coats", "2")
	p.set(1, "volume_solids", "40")
	p.set(1, "solids_for", "mix")
	p.waitIn("#exercises .preview", "Answer: 75 µm") // 60 µm in 2 coats at 40 %
	p.tap("#exercise-add")
	p.waitUntil("there is a second exercise", `document.querySelectorAll("#exercises > li").length === 2`)
	evaluate[bool](p, `(() => { const s = document.querySelector("#exercises > li:nth-child(2) select"); s.value = "condensation"; for (const e of ["input", "change"]) s.dispatchEvent(new Event(e, { bubbles: true })); return true; })()`)
	p.waitIn("#exercises > li:nth-child(2) .preview", "Work out:")
	p.enter("tasks", "3")
	p.waitUntil("the link holds the tasks", `document.getElementById("set-link").value.includes("tasks=3")`)
	return evaluate[string](p, `document.getElementById("set-link").value`)
}

// A trainer makes a set; a learner opens its link, answers, reloads, asks for other numbers and gets the slip.
func TestATrainersSetIsDoneByALearner(t *testing.T) {
	s := serve(t)
	trainer := open(t, s, "exercise-set.html", desk)
	link := trainersSet(trainer)
	trainer.shotWhole("exercise-set")
	trainer.visit("about.html")
	trainer.visit("exercise-set.html#" + strings.SplitN(link, "#", 2)[1])
	trainer.waitIn("#exercises .preview", "Answer: 75 µm")
	assert.Equal(t, link, evaluate[string](trainer, `document.getElementById("set-link").value`), "the set read back from its own link")

	p := open(t, s, "exercises.html#"+strings.SplitN(link, "#", 2)[1], phone)
	p.waitIn("#task-asked", "Work out: Wet film of one coat, in µm")
	p.has("main", "Films", "Take a comb to hand", "Task 1 of 3", "Dry film wanted 60 µm", "Coats 2", "Volume solids 40 %")
	assert.NotContains(t, evaluate[string](p, `document.documentElement.outerHTML`), ">75", "the answer stands on the page")
	p.shotWhole("exercise-task")

	assert.Equal(t, "um", evaluate[string](p, `document.getElementById("task-unit").value`), "the unit that the question names")
	p.enter("answer", "150 um")
	p.reload()
	p.waitUntil("what was typed is kept", `document.getElementById("task-answer")?.value === "150 um"`)
	p.tap("#task-form .action")
	p.waitIn("#task-result", "Off")
	p.has("#task-result", "Your answer: 150 µm. The calculator’s: 75 µm", "Likely mistake: This comes out where “Coats” is left out")
	p.has("#task-steps", "WFT = DFT ÷ n ÷ (VS ÷ 100)")
	p.shotWhole("exercise-off")

	p.reload()
	p.waitIn("#task-result", "Off")
	p.tap("#task-next")
	p.waitIn("#task-number", "Task 2 of 3")
	first := p.text("#task-given")
	p.tap("#task-other")
	p.waitUntil("there are other numbers", `document.getElementById("task-given").innerText !== `+quoted(first))
	p.tap("#tasks li:nth-child(3) button")
	p.waitIn("#task-number", "Task 3 of 3")
	p.enter("answer", "3 mil") // 76.2 µm; a comb in mil shows tenths
	p.tap("#task-form .action")
	p.waitIn("#task-result", "Right")

	p.tap("#slip-show")
	p.enterIn("#slip-name", "A. Learner")
	p.waitIn("#slip", "1 right, 0 close, 1 off; 2 of 3 answered")
	p.has("#slip", "A. Learner", "Films", "Seed: ", "Task 1: off", "Task 2: not answered yet", "Task 3: right", "Wet film of one coat")
	p.shotWhole("exercise-slip")
	assert.Equal(t, 1, p.onPaper("exercise-slip", a4), "pages of paper")
	evaluate[bool](p, `(navigator.clipboard.writeText = async (s) => { globalThis.copied = s; }, true)`)
	p.tap("#slip-copy")
	p.waitUntil("the slip is copied", `globalThis.copied !== undefined`)
	assert.Contains(t, evaluate[string](p, `copied`), "Task 1: off\nWet film for a dry film — Wet film of one coat\nDry film wanted 60")
	p.fits()
}

// reload loads the page once more and waits for the new one.
func (p *tab) reload() {
	p.t.Helper()
	evaluate[bool](p, `(globalThis.before = true, location.reload(), true)`)
	p.waitUntil("the page is loaded once more", `globalThis.before === undefined`)
}

// A course package listens to one event: how far the learner is.
func TestASetTellsHowFarTheLearnerIs(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(`document.addEventListener("exercise", (event) => (globalThis.told ??= []).push(event.detail))`)
	p.visit("exercises.html#seed=1&q.1.of=wet-film&q.1.dry_film=60&q.1.coats=2&q.1.volume_solids=40&q.1.solids_for=mix")
	p.waitFor("Work out: Wet film of one coat")
	p.enter("answer", "75 um")
	p.tap("#task-form .action")
	p.waitIn("#task-result", "Right")
	told := evaluate[[]map[string]any](p, `told`)
	require.Len(t, told, 2)
	assert.Equal(t, map[string]any{"set": told[0]["set"], "tasks": 1., "answered": 0., "right": 0., "close": 0., "off": 0., "complete": false}, told[0])
	assert.Equal(t, map[string]any{"set": told[0]["set"], "tasks": 1., "answered": 1., "right": 1., "close": 0., "off": 0., "complete": true}, told[1])
	p.tap("#task-again")
	p.waitUntil("there is another draw", `!document.getElementById("task-form").hidden`)
}

func TestABadLinkToExercisesSaysSo(t *testing.T) {
	s := serve(t)
	for link, want := range map[string]string{
		"":                                   "This link holds no exercises",
		"#q.1.of=no-such":                    "There is no calculator “no-such” here",
		"#q.1.of=wet-film&tasks=many":        "“many” is no number of tasks",
		"#q.1.ask=wet_film":                  "Exercise 1 names no calculator",
		"#q.1.of=wet-film&q.1.dry_film=9..3": "“Dry film wanted: 9..3” cannot be drawn from",
		"#q.1.of=wet-film&q.1.coat=3":        "“coat” is no setting of this calculator",
		"#fields=9&q.1.of=wet-film":          "This link is incomplete or damaged",
		"#q.1.of=%3Cscript%3E":               "There is no calculator “<script>” here",
	} {
		p := open(t, s, "exercises.html"+link, phone)
		p.waitFor(want)
	}
}

// What the compiled cores draw and judge is what the same Go draws and judges here.
func TestExercisesAreTheSameInTheBrowser(t *testing.T) {
	p := open(t, serve(t), "exercises.html#q.1.of=wet-film", phone)
	p.waitFor("Work out:")
	for _, core := range menu.Exercised() {
		for _, topic := range core.Topics {
			for _, c := range topic.Calculators() {
				if exercise.Usual(c) == "" || !topic.Listed() {
					continue
				}
				for _, set := range []calc.Form{{"seed": "1", "show": "answer"}, {"seed": "2", "level": "3", "answer": "12", "answer.unit": "mL"}, {"seed": "3", "level": "2", "units": "us"}} {
					pairs, _ := json.Marshal(set)
					text := evaluate[string](p, `(async () => {
						const { task } = await import("./scripts/exercise-core.js");
						return JSON.stringify(await task(`+quoted(core.Name+".wasm")+`, `+quoted(c.ID)+`, new Map(Object.entries(`+string(pairs)+`))));
					})()`)
					assert.Empty(t, difference("task", parsed(t, exercise.Answer(calc.Language{}, c, set)), parsed(t, text)), "%s %v", c.ID, set)
				}
			}
		}
	}
}

func TestExercisesInTheDarkAndOnADesk(t *testing.T) {
	s := serve(t)
	hash := url.PathEscape("Mixed units")
	link := "#title=" + hash + "&level=3&seed=4&tasks=4&q.1.of=paint-needed&q.2.of=mix-ratio&q.2.ask=component.2.by_weight&q.3.of=condensation"
	for _, l := range screens() {
		p := open(t, s, "exercises.html"+link, l)
		p.waitFor("Work out:")
		p.fits()
		p.enter("answer", "2 oz")
		p.tap("#task-form .action")
		p.waitUntil("it is judged", `!document.getElementById("task-result").hidden`)
		p.shotWhole("exercise-judged")
		p.tap("#tasks li:nth-child(2) button")
		p.waitIn("#task-number", "Task 2 of 4")
		p.shot("exercise-second")
		p.visit("exercise-set.html" + link)
		p.waitFor("Answer:")
		p.fits()
		p.shotWhole("exercise-editor")
	}
}
