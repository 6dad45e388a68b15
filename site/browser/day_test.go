package browser

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// demoDay opens the invented day of six jobs and waits for its plan.
func demoDay(p *tab) {
	p.t.Helper()
	p.tap("#try a")
	p.waitIn("#verdict", "Every promise is kept")
	p.waitUntil("the day is drawn", `document.querySelector('[data-picture="by_place"] rect[data-of]') !== null`)
}

// rested waits until the search stands still; a plan of six jobs can be bettered for long, so it is stopped.
func rested(p *tab) {
	p.t.Helper()
	p.tap("#day-stop")
	p.waitIn("#day-search", "The best plan of")
}

// planShown is what the page says of the plan, without how long it has looked.
func planShown(p *tab) string {
	p.t.Helper()
	return evaluate[string](p, `["done_at", "promises", "call", "cups_mixed"].map((key) => document.querySelector('[data-out="' + key + '"]').textContent).join("\n").replace(/Now \d+:\d+/g, "")`)
}

func tried(p *tab) string {
	p.t.Helper()
	return evaluate[string](p, `new URLSearchParams(location.hash.slice(1)).get("tried") ?? ""`)
}

// A first plan at once, a better one while it is looked at, and the same plan by reload and by link.
func TestTheDayIsPlannedAndGetsBetter(t *testing.T) {
	p := open(t, serve(t), "day.html", phone)
	p.waitIn(".bar-needed", "Still needed")
	assert.False(t, p.sees("#day-timeline"))
	demoDay(p)
	first := planShown(p)
	p.waitIn("#day-search", "Looking for a better plan")
	// The plan that somebody has a step of open from stays, while better ones are found.
	p.tap(`[data-out="call"] .clock-open`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	held := planShown(p)
	for range 3 {
		says := evaluate[string](p, `document.getElementById("day-search").textContent`)
		p.waitUntil("it looks on", `document.getElementById("day-search").textContent !== `+quoted(says))
	}
	assert.Equal(t, held, planShown(p))
	p.tap(`[data-day="close"]`)
	p.waitUntil("it is better than the first", `document.querySelector('[data-out="done_at"]').innerText.match(/1[23]:\d\d/) !== null`)
	assert.NotEqual(t, first, planShown(p))
	rested(p)
	link, shown := p.link(), planShown(p)
	assert.NotEmpty(t, tried(p), "the form does not say how long it took")
	p.fits()

	p.visit("about.html")
	p.visit("day.html")
	p.waitIn("#day-search", "The plan after")
	assert.Equal(t, shown, planShown(p), "by reload")

	other := open(t, p.server, strings.TrimPrefix(link, p.server.url("")), desk)
	other.waitIn("#day-search", "The plan after")
	assert.Equal(t, shown, planShown(other), "by link")
	assert.Equal(t, tried(p), tried(other))
	other.tap("#day-further")
	other.waitIn("#day-search", "Looking for a better plan")
	other.fits()
}

// calmDay is the demo day with its search stopped.
func calmDay(t *testing.T, l look) *tab {
	t.Helper()
	p := open(t, serve(t), "day.html", l)
	demoDay(p)
	rested(p)
	return p
}

func TestTheDayWithoutANetwork(t *testing.T) {
	s := serve(t)
	p := open(t, s, "day.html", phone)
	p.waitIn("#kept", "without a network")
	p.forgive("ERR_CONNECTION", "Failed to load")
	s.stop()
	p.visit("day.html")
	demoDay(p)
	rested(p)
	p.tap(`[data-out="call"] .clock-done`)
	p.waitIn("#notices", "Done from")
}

func TestTheDayInSpanish(t *testing.T) {
	p := open(t, serve(t), "es/day.html", phone)
	p.tap("#try a")
	p.waitUntil("it is planned", `document.querySelector('[data-picture="by_place"] rect[data-of]') !== null`)
	p.tap("#day-stop")
	says := p.inOneLine("#card")
	for _, english := range []string{"Spray", "Painter", "Done", "Look", "Timer", "Plan again"} {
		assert.NotContains(t, says, english)
	}
	p.tap(`[data-out="call"] .clock-open`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	p.fits()
}

// What stands on the day's page only for a while is accessible, too.
func TestTheDaysPassingStatesAreAccessible(t *testing.T) {
	program := checker(t)
	p := open(t, serve(t), "about.html", phone)
	p.before(atNine)
	p.visit("day.html")
	demoDay(p)
	rested(p)
	p.axe(program, "a day")
	p.tap("#day-again")
	p.waitIn("#day-again-sheet", "Plan again from 9:10")
	p.axe(program, "planning again from now")
	p.tap(`[data-again="close"]`)
	p.tap(`[data-out="call"] .clock-line:has(.clock-who) .clock-open`)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	p.axe(program, "the sheet of a step")
	assert.Equal(t, "day-sheet-title", evaluate[string](p, `document.activeElement.id`), "a key still held down would press a button")
	p.tap(`[data-day="close"]`)
	p.tap(`[name="day-view"][value="by_job"]`)
	p.tap(`[data-half="by_job"] .day-equal summary`)
	p.axe(program, "by job, with its list")
	p.tap(`[data-row="job.1"] summary`)
	p.tap(`[data-out="call"] .clock-done`)
	p.waitIn("#notices", "Done from")
	rested(p)
	p.axe(program, "a row open, a step done")
}

func TestTheDayOnPaper(t *testing.T) {
	p := calmDay(t, deskDark)
	p.prints()
	for _, s := range []sheet{a4, letter} {
		assert.LessOrEqual(t, p.onPaper("day", s), 2, s.name)
	}
	p.media("print")
	p.has("#paper", "Every promise is kept", "This day is invented.", "Call sheet", "Painter 1", "Mix cup 1", "No later than", "1 Lids", "The day by painter and place")
	assert.NotContains(t, p.inOneLine("#paper"), "Steps tried")
	assert.False(t, p.sees(".present"))
	p.shotWhole("day-print")
}

// The day is handed on by link and code, and the code says when it is too fine for a camera.
func TestADayOfSixJobsIsHandedOn(t *testing.T) {
	p := calmDay(t, phone)
	p.tap("#share")
	p.waitUntil("there is a code", `document.querySelector("#share-code .code") !== null`)
	says := p.inOneLine("#share-verdict")
	t.Logf("%s px; %s", evaluate[string](p, `document.querySelector("#share-code .code").getAttribute("viewBox")`), says)
	p.shot("day-share")
	short := evaluate[string](p, `(async () => {
		let short = "";
		navigator.clipboard.writeText = async (text) => { short = text; };
		document.querySelector('[data-share="copy"]').click();
		await new Promise((done) => setTimeout(done, 100));
		return short;
	})()`)
	shown := planShown(p)
	if assert.NotEmpty(t, short) {
		t.Logf("the short link has %d characters", len(short))
		other := open(t, p.server, strings.TrimPrefix(short, p.server.url("")), desk)
		other.waitIn("#day-search", "The plan after")
		assert.Equal(t, shown, planShown(other))
	}
}
