package browser

import (
	"os"
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
		p.waitIn(".strip", "2 more, next ")
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

// Two cups of one job, and the bench, in each look that a person can choose.
func TestTakePicturesInEveryLook(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, narrow, desk} {
		p := open(t, s, "", l)
		p.demo()
		evaluate[bool](p, `(document.querySelectorAll('[data-out="timeline"] [aria-label*="Mix Grey"].time, [data-out="timeline"] .time')[0].click(), true)`)
		p.waitIn(".strip", "Cup 1 of")
		evaluate[bool](p, `([...document.querySelectorAll('[data-out="timeline"] .time')].find((b) => b.closest("li, tr, div").innerText.includes("cup 2 of")).click(), true)`)
		p.waitIn(".strip", "1 more, next ")
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shot("cups-notice")
		for _, theme := range []string{"light", "dark", "booth"} {
			evaluate[bool](p, `(localStorage.setItem("spraywright:theme", `+quoted(theme)+`), true)`)
			p.visit("timers.html")
			p.waitIn("#timers", "Cup 2 of")
			p.shot("cups-" + theme)
			p.visit("gauge.html?" + theme + "#dry_film=100&gauge_rule=pa2&reading.1.gauge_reading=105&reading.2.gauge_reading=1050&reading.3.gauge_reading=98")
			p.waitIn("#gauge-doubt", "Reading 2")
			p.shot("bench-doubt-" + theme)
			p.tap(`#gauge-doubt [data-do="keep"]`)
			evaluate[bool](p, `(scrollTo(0, 250), true)`)
			p.shot("bench-" + theme)
			p.fits()
		}
	}
}
