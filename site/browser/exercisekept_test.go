package browser

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Opening a link keeps nothing of the learner's and puts nothing of it out; the first key does.
func TestALinkToExercisesKeepsNothing(t *testing.T) {
	const set = "exercises.html#units=us&q.1.of=wet-film"
	p := open(t, serve(t), set, phone)
	p.waitFor("Work out: Wet film of one coat")
	given := p.text("#task-given")
	kept := `Object.keys(localStorage).filter((key) => key.includes("exercise")).length`
	assert.Zero(t, evaluate[int](p, kept))
	p.reload()
	p.waitFor("Work out: Wet film of one coat")
	assert.Equal(t, given, p.text("#task-given"), "other numbers")
	p.enter("answer", "1 um")
	p.waitUntil("it is kept", kept+" === 2") // the record, and the list of them
	p.tap("#task-form .action")
	p.waitUntil("it is judged", `!document.getElementById("task-result").hidden`)
	assert.Equal(t, "task-result", evaluate[string](p, `document.activeElement.id`))
	assert.Regexp(t, `Wet film of one coat [\d.]+ µm[^§]*In the unit asked for: [\d.]+ mil$`, strings.Join(strings.Fields(p.text("#task-steps")), " "), "the working is in the source's unit")

	// A record that was damaged is as much as can be read of it.
	for _, slots := range []string{`[null]`, `[{"tries":[null,{"judged":"x"},{"judged":"right","given":7}],"draw":"x"}]`, `7`, `[[]]`} {
		evaluate[bool](p, `((key) => (localStorage.setItem(key, '{"seed":5,"name":null,"begun":"x","at":9,"slots":`+slots+`}'), true))(Object.keys(localStorage).find((key) => /exercise:/.test(key)))`)
		p.reload()
		p.waitFor("Work out: Wet film of one coat")
		p.tap("#slip-show")
		p.waitIn("#slip", "0 of 1 answered")
	}
}

func TestTheTrainerKeepsThePlaceInTheList(t *testing.T) {
	p := open(t, serve(t), "exercise-set.html#q.1.of=wet-film&q.2.of=mix&q.3.of=pot-life", phone)
	p.waitUntil("the set stands", `document.querySelectorAll("#exercises > li").length === 3`)
	press := func(n, label string) {
		evaluate[bool](p, `((li) => { li.firstElementChild.open = true; const b = [...li.querySelectorAll("button")].find((b) => b.textContent === `+quoted(label)+`); b.focus(); b.click(); return true; })(document.querySelector("#exercises > li:nth-child(`+n+`)"))`)
	}
	press("2", "Up")
	assert.Equal(t, "Up", evaluate[string](p, `document.activeElement.textContent`))
	press("1", "Remove")
	assert.Equal(t, "1Wet film for a dry film", evaluate[string](p, `document.activeElement.textContent`), "the next one")
	p.pressIn("#notices", "Undo")
	assert.Equal(t, "1Mix by scale or cup", evaluate[string](p, `document.activeElement.textContent`))
}
