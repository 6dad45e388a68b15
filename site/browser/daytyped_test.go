package browser

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A job from its card goes into the day, one after another, and can be taken out again.
func TestJobsArePutIntoTheDay(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.tap(".day-offer button")
	p.waitIn("#notices", "Added: ")
	p.tap(".day-offer button")
	p.waitIn("#notices", " 2.")
	p.tap(`.day-offer a`)
	p.waitUntil("the day is there", `document.querySelector("main")?.dataset.calculator === "day"`)
	p.waitIn("#verdict", "done at")
	assert.Equal(t, 2, evaluate[int](p, `document.querySelectorAll('[data-table="job"] .row').length`))
	p.fits()
}

// A day of several jobs is not typed cell by cell: names are offered, and a job is repeated with its coats.
func TestADayIsTyped(t *testing.T) {
	p := open(t, serve(t), "day.html", phone)
	p.waitIn(".bar-needed", "Still needed")
	assert.False(t, evaluate[bool](p, `document.getElementById("place-the-shop").open`), "what may stay as it is stands in the way")
	fillEach(p, "paint.1.product", "Ivory")
	p.tap(`[data-table="job"] .add`)
	fillEach(p, "job.1.job_name", "Lids")
	p.tap(`[data-row="job.1"] .of-day`) // its coats
	p.waitUntil("the coats can be filled in", `document.activeElement.name === "coat.1.product"`)
	assert.Equal(t, "Lids", p.value("coat.1.of_job"))
	assert.Equal(t, []string{"Ivory"}, evaluate[[]string](p, `[...document.activeElement.list.options].map((o) => o.value)`))
	fillEach(p, "coat.1.product", "Ivory", "coat.1.coats", "2", "coat.1.spray_time", "8", "coat.1.flash", "10")
	p.waitIn("#verdict", "All is done at")
	p.tap(`[data-row="job.1"] .of-day + .of-day`)
	p.waitIn("#notices", "Added: Lids 2")
	p.waitUntil("both are planned", `document.querySelectorAll('[data-out="jobs_done"] tbody tr').length === 2`)
	assert.Equal(t, "Lids 2: 2 coats of Ivory, 8 min each", p.inOneLine(`[data-row="coat.2"] .row-says`))
	p.fits()
}

// What is wrong is said on its row, and the plan waits for it.
func TestBadDaysAreToldOnTheirRows(t *testing.T) {
	p := calmDay(t, phone)
	for _, bad := range []struct{ key, text, right, says string }{
		{"coat.1.recoat_within", "8", "60", "leaves no time: flash-off alone takes"},
		{"paint.6.pot_life", "5", "70", "is over too soon"},
		{"job.3.promised_by", "9:00", "15:00", "no sooner than 9:30"},
		{"coat.2.of_job", "Lid", "Lids", "is not among them"},
		{"job.1.ready_from", "25:70", "", "is not a time of day"},
	} {
		p.tap(`[data-row="` + bad.key[:strings.LastIndex(bad.key, ".")] + `"] summary`)
		p.enter(bad.key, bad.text)
		p.waitIn("#gathered", bad.says)
		p.waitUntil("the row says so", `!document.getElementById("w-`+bad.key+`").hidden`)
		assert.False(t, p.sees("#day-search"), "it looks for a plan that cannot be")
		p.shot("day-bad")
		p.enter(bad.key, bad.right)
		p.waitUntil("it is right again", `document.getElementById("gathered").hidden`)
	}
	p.waitIn("#day-search", "Looking for a better plan")
}

// A data sheet fills a product of the day, and the page says for which temperature its times are.
func TestADaysProductsComeFromTheShelf(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.shelve("data-sheet " + greyPrimer)
	p.visit("day.html")
	paints := `[data-table="paint"]`
	p.pressIn(paints, "Add from the shelf")
	p.tap(paints + ` .found li:nth-child(1) input`)
	p.pressIn(paints, "Add the ticked ones")
	p.waitIn("#notices", "Pot life and flash-off stand as the data sheet has them, for its temperature.")
	p.waitIn(paints, "Grey two-pack primer, pot life 90 min")
	p.fits()
}
