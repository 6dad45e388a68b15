package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What a step is done with: the sheet opens from the call sheet, and the plan is made again around what is done.
func TestAStepIsDoneAndTheDayPlannedAgainFromNow(t *testing.T) {
	s := serve(t)
	p := open(t, s, "about.html", phone)
	p.before(atNine)
	p.visit("day.html")
	demoDay(p)
	rested(p)
	p.waitIn(`[data-out="call"] .clock-now`, "Now 9:10")
	p.waitUntil("the timeline marks it", `document.querySelector('[data-picture="by_place"] .present') !== null`)
	p.tap("#day-present")
	p.waitUntil("the mark is gone", `document.querySelector(".clock-now, .present") === null`)
	p.tap("#day-present")

	first := evaluate[string](p, `document.querySelector('[data-out="call"] .clock-done').dataset.done`)
	p.tap(`[data-out="call"] .clock-done`)
	p.waitIn("#notices", "to 9:10: ")
	p.waitUntil("it has left the call sheet", `document.querySelector('[data-out="call"] [data-done="`+first+`"]') === null`)
	p.waitUntil("the form has it", `new URLSearchParams(location.hash.slice(1)).get("done.1.ended_at") === "9:10"`)
	rested(p)
	before := unplanned(p)

	// What was to begin before now is asked about: nothing counts as done that nobody has ticked.
	again := func() {
		t.Helper()
		p.tap("#day-again")
		p.waitIn("#day-again-sheet", "Plan again from 9:10")
	}
	again()
	assert.Zero(t, evaluate[int](p, `document.querySelectorAll(".day-ticks :checked").length`))
	assert.False(t, p.sees(`.day-ticks [value="`+first+`"]`), "what is ticked off already")
	p.fits()
	p.shot("day-again")
	p.tap(`[data-again="plan"]`)
	p.waitIn("#notices", "Planned again from 9:10.")
	p.waitUntil("the form has it", `new URLSearchParams(location.hash.slice(1)).get("now") === "9:10"`)
	assert.NotContains(t, unplanned(p), "done.2.")
	p.presses("Undo")
	p.waitUntil("the form is as it was", `!location.hash.includes("now=")`)
	assert.Equal(t, before, unplanned(p))
	p.waitIn("#day-search", "The plan after") // it is made again in as many steps, mostly too soon to stop it

	again()
	p.tap(`[data-again="all"]`)
	p.tap(`[data-again="plan"]`)
	p.waitIn("#notices", "Counted at the plan’s times: ")
	p.waitUntil("the form has it", `new URLSearchParams(location.hash.slice(1)).get("now") === "9:10"`)
	assert.Contains(t, unplanned(p), "done.2.")
	p.waitUntil("nothing on the call sheet is past", `[...document.querySelectorAll('[data-out="call"] .clock-time .cell:first-child')].every((e) => e.innerText.length > 4 || e.innerText >= "9:10")`)
	rested(p)
	p.tap(`[data-out="call"] .clock-open`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	p.tap(`[data-day="close"]`)
	p.presses("Undo")
	p.waitUntil("the form is as it was", `!location.hash.includes("now=")`)
	assert.Equal(t, before, unplanned(p))
}

// A cup that is spilt is said so in one tap from a step that it is for, and another is mixed.
func TestACupIsGone(t *testing.T) {
	s := serve(t)
	p := open(t, s, "about.html", phone)
	p.before(atNine)
	p.visit("day.html#paint.1.product=Ivory&job.1.job_name=Lids&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10&clock=9:00")
	p.waitIn("#verdict", "All is done at")
	p.tap(`[data-out="call"] [data-done="1-5-1"]`)
	p.waitIn("#notices", "Done from")
	p.waitUntil("the form has it", `location.hash.includes("done.1.cup_number=1")`)
	assert.False(t, evaluate[bool](p, `document.querySelector('[data-out="call"]').textContent.includes("Mix cup")`))
	p.tap(`[data-out="call"] [data-open="1-5-2"]`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	p.fits()
	p.shot("day-gone")
	p.tap(`[data-day="gone"]`)
	p.waitIn("#notices", "Cup 1 is gone.")
	p.waitIn(`[data-out="call"]`, "Mix cup 2")
	p.waitUntil("the form has it", `location.hash.includes("done.1.cup_gone=yes")`)
	assert.False(t, p.sees("dialog[open]"))
	p.presses("Undo")
	p.waitUntil("the form is as it was", `!location.hash.includes("cup_gone")`)
}

// unplanned is the form in the address, without the steps tried.
func unplanned(p *tab) string {
	p.t.Helper()
	return evaluate[string](p, `[...new URLSearchParams(location.hash.slice(1))].filter(([key]) => key !== "tried").sort().join("\n")`)
}

// atNine sets the clock to ten past nine, and lets it run.
const atNine = `{
	const now = Date.now.bind(Date), nine = new Date();
	nine.setHours(9, 10, 0, 0);
	const moved = nine - now();
	Date.now = () => now() + moved;
}`

// The sheet of a step: times by hand, another painter, a timer.
func TestTheSheetOfAStep(t *testing.T) {
	p := calmDay(t, phone)
	first := `[data-out="call"] .clock-line:has(.clock-done):has([data-timer]):has(.clock-who) .clock-open`
	of := evaluate[string](p, `document.querySelector(`+quoted(first)+`).dataset.open`)
	openSheet := func() {
		t.Helper()
		p.tap(first)
		p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	}
	openSheet()
	p.has("#day-sheet", "Spray coat 1 of", "Painter 1", "Painter 2", "Timer: Flash-off")
	evaluate[bool](p, `(document.getElementById("day-hold").value = "8:58", true)`)
	p.tap(`[data-day="later"]`)
	assert.Equal(t, "9:05", evaluate[string](p, `document.getElementById("day-hold").value`))
	p.tap("#day-timers .time")
	p.waitIn(".strip", "Flash-off")
	openSheet()
	p.tap(`#day-sheet [data-painter="2"]`)
	p.waitIn("#notices", "Held")
	p.waitUntil("the form holds the painter", `location.hash.includes("pin.1.painter_number=2")`)
	rested(p)
	p.fits()
	p.tap(`[data-out="call"] .clock-line:has(.clock-done) [data-open="` + of + `"]`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	assert.Equal(t, "Painter 2", p.text(`#day-sheet [data-slot="who"]`))
	p.has("#day-sheet", "It is held")
	p.tap(`[data-day="close"]`)
	openSheet()
	p.tap(`#day-sheet details summary`)
	evaluate[bool](p, `(document.getElementById("day-started").value = "8:20", document.getElementById("day-ended").value = "8:05", true)`)
	p.tap(`[data-day="at"]`)
	p.waitIn(`#day-sheet [data-slot="wrong"]`, "comes before it started")
	evaluate[bool](p, `(document.getElementById("day-ended").value = "8:32", true)`)
	p.tap(`[data-day="at"]`)
	p.waitIn("#notices", "Done from 8:20 to 8:32")
	p.waitUntil("the sheet is closed", `!document.getElementById("day-sheet").open`)
}
