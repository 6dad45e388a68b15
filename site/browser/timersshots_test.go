package browser

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// The states that somebody should look at.
func TestTakePicturesOfTheTimers(t *testing.T) {
	s := serve(t)
	for _, l := range screens() {
		p := withClock(t, s, "timers.html", l)
		p.waitIn("main", "None runs.")
		p.shotWhole("timers-none")
		p.choose("timed", "pot")
		fillEach(p, "pot_life", "60", "pot_life_at", "20", "air", "24", "begun_ago", "12")
		p.shotWhole("timers-by-hand")
		p.tap("#start")
		p.waitIn("#timers", "Use up by")
		p.visit("time-left.html#timed=flash&time_least=12&time_most=20&begun_ago=11")
		p.tap(`[data-out="at_latest"] .time`)
		p.waitIn(".strip", "Flash-off")
		p.shot("timers-started")
		p.visit("time-left.html#timed=recoat&time_least=4h&time_most=36h&begun_ago=0")
		p.tap(`[data-out="at_latest"] .time`)
		p.waitIn(".strip", "+2 running")
		p.visit("timers.html")
		p.waitUntil("all run", `document.querySelectorAll(".timer").length === 3`)
		p.pass(5 * time.Second)
		p.waitUntil("the last minute counts large", `document.querySelector(".timer-mark.last") !== null`)
		p.shotWhole("timers-running")
		p.tap(`.timer [data-do="warmth"]:not([hidden])`)
		p.shotWhole("timers-warmth")
		p.pass(time.Minute)
		p.visit("index.html")
		p.waitIn(".strip", "Flash-off")
		p.demo()
		p.shot("timers-strip")
		evaluate[bool](p, `(document.querySelector('[data-out="timeline"]').scrollIntoView(), true)`)
		p.shot("timers-call-sheet")
		p.fits()
		p.pass(3 * time.Hour)
		p.visit("timers.html")
		p.waitIn("#timers", "Past its pot life")
		p.shotWhole("timers-over")
		p.fits()
		assert.Empty(t, evaluate[[]string](p, faint))
	}
}
