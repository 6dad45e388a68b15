package browser

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The states of the booth day that somebody should look at.
func TestTakePicturesOfTheDay(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "day.html", l)
		p.waitIn(".bar-needed", "Still needed")
		p.shot("day-top")
		p.shotWhole("day-empty")
		demoDay(p)
		p.waitUntil("it is better than the first", `document.querySelector('[data-out="done_at"]').innerText.match(/1[23]:\d\d/) !== null`)
		p.shot("day-looking")
		rested(p)
		evaluate[bool](p, `(document.getElementById("card").scrollIntoView(), true)`)
		p.shot("day-card")
		if l.touch {
			p.shotWhole("day-whole")
		}
		evaluate[bool](p, `(document.getElementById("day-timeline").scrollIntoView(), true)`)
		p.shot("day-by-place")
		p.tap(`[name="day-view"][value="by_job"]`)
		evaluate[bool](p, `(document.getElementById("day-timeline").scrollIntoView(), true)`)
		p.shot("day-by-job")
		evaluate[bool](p, `(document.querySelector('[data-out="call"]').scrollIntoView(), true)`)
		p.shot("day-call")
		p.tap(`[data-out="call"] [data-open="1-5-1"]`)
		p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
		p.shot("day-sheet")
		p.fits()
		p.tap(`[data-day="close"]`)
		assert.Empty(t, evaluate[[]string](p, faint))
		evaluate[bool](p, `document.querySelector('#themes input[value="booth"]').click() ?? true`)
		p.tap(`[name="day-view"][value="by_place"]`)
		evaluate[bool](p, `(document.getElementById("day-timeline").scrollIntoView(), true)`)
		p.shot("day-booth")
		assert.Empty(t, evaluate[[]string](p, faint))
	}
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		shotsOfATroubledDay(open(t, s, "about.html", l))
	}
}

// shotsOfATroubledDay takes pictures of a day that is planned again, and of one that cannot be.
func shotsOfATroubledDay(p *tab) {
	p.t.Helper()
	p.before(atNine)
	p.visit("day.html")
	demoDay(p)
	rested(p)
	p.tap("#day-again")
	p.tap(`[data-again="all"]`)
	p.shot("day-again")
	p.tap(`[data-again="plan"]`)
	p.waitIn("#notices", "Planned again from 9:10")
	p.waitUntil("the plan has it", `location.hash.includes("now=9:10")`)
	rested(p)
	p.shot("day-replanned-top")
	evaluate[bool](p, `(document.getElementById("day-timeline").scrollIntoView(), true)`)
	p.shot("day-replanned")
	evaluate[bool](p, `(document.querySelector('[data-out="call"]').scrollIntoView(), true)`)
	p.shot("day-replanned-call")
	p.tap(`[data-row="coat.3"] summary`)
	p.enter("coat.3.recoat_within", "9")
	p.waitUntil("it cannot be", `!document.getElementById("gathered").hidden`)
	evaluate[bool](p, `(document.getElementById("card").scrollIntoView(), true)`)
	p.shot("day-impossible")
	evaluate[bool](p, `(document.getElementById("gathered").scrollIntoView(), true)`)
	p.shot("day-impossible-rows")
}
