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
		p.waitUntil("it is better than the first", `document.querySelector('[data-out="done_at"]').innerText.includes("13:")`)
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
}
