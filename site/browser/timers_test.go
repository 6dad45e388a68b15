package browser

import (
	"fmt"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/menu"
)

const potToday = "pot-life.html#pot_life=60&pot_life_at=20&pot_life_second=30&pot_life_second_at=30&air=20"

// startPot starts the timer of a pot life of 60 min at 20 °C and 30 min at 30 °C.
func startPot(t *testing.T, s *server) *tab {
	t.Helper()
	p := withClock(t, s, potToday, phone)
	p.waitIn(`[data-out="pot_life_low"]`, "60")
	p.tap(`[data-out="pot_life_low"] .time`)
	p.waitIn(".strip", "Use up by")
	return p
}

const firstLeft, lastLeft = ".timer .timer-mark:first-child .mark-left", ".timer .timer-mark:last-child .mark-left"

// A time of the answer runs from one tap, is named, and stands through reload and closing.
func TestATimerStartsFromAnAnswerAndStands(t *testing.T) {
	s := serve(t)
	p := withClock(t, s, "", phone)
	p.demo()
	p.tap(`[data-out="timeline"] .time`)
	p.waitIn(".strip", "Use up by")
	p.waitIn("#notices", "It can ring only while a page of this site is open and the screen is on.")
	p.tap(`[data-out="times"] [data-timer$=".4"]`)
	p.waitIn(".strip", "1 more, next ")
	before := leftSeconds(p, ".strip-count")
	p.pass(2 * time.Minute)
	p.do(chromedp.Reload())
	p.waitIn(".strip", "1 more, next ")
	assert.InDelta(t, before-120, leftSeconds(p, ".strip-count"), 30, "a reload has stopped the clock")
	p.visit("timers.html")
	p.waitIn("#timers", "Flash-off")
	p.has("#timers", "Not before", "Flashed off by", "Mixed at", "If it thickens sooner")
	assert.Regexp(t, `Cup 1 of \d+: `, evaluate[string](p, `[...document.querySelectorAll(".timer-name")].map((e) => e.innerText).join("; ")`), "the cup is not named first")
	p.tap(`.timer [data-do="name"]`)
	p.enter("now.name", "Lids")
	p.tap(".timer-edit .action")
	p.waitIn("#timers", "Lids")
	p.tap(`.top a[href="menu.html"]`)
	p.waitIn(".strip", "Lids")
	p.fits()
}

// What is near is told once and spoken, and the end rings until somebody touches the page.
func TestATimerTellsFiveMinutesOneAndNow(t *testing.T) {
	p := startPot(t, serve(t))
	said := func(text string) {
		p.t.Helper()
		p.waitUntil("it is said", `document.querySelector("body > .unseen[role=status]").innerText.includes(`+quoted(text)+`)`)
	}
	p.pass(55*time.Minute + 2*time.Second)
	said("five minutes to “Use up by”")
	assert.Zero(t, evaluate[int](p, `tones.length`), "five minutes are only spoken")
	p.pass(4 * time.Minute)
	said("one minute to “Use up by”")
	p.waitUntil("the tone for one minute", `tones.length === 2`)
	assert.Equal(t, 2, p.rang(near))
	p.waitUntil("the last minute counts large", `document.querySelector(".strip").classList.contains("last")`)
	p.pass(time.Minute)
	said("is now. Past its pot life: do not spray it.")
	p.waitUntil("the tone for now", `tones.includes(1175)`)
	p.waitIn(".strip", "ago")
	assert.True(t, evaluate[bool](p, `document.querySelector(".strip").classList.contains("stop")`))
	rang := p.rang(nowTone)
	p.visit("timers.html")
	p.waitIn("#timers", "Stop Past its pot life: do not spray it.")
	assert.Zero(t, p.rang(nowTone), "it rings again on another page")
	assert.Positive(t, rang)
	p.tap(`.timer [data-do="remove"]`)
	p.waitIn("#notices", "removed.")
	p.waitUntil("it is gone", `document.querySelectorAll(".timer").length === 0`)
	p.presses("Undo")
	p.waitIn("#timers", "ago")
}

func TestTwoTabsRingOnce(t *testing.T) {
	p := startPot(t, serve(t))
	q := p.another("menu.html")
	q.waitIn(".strip", "Pot life")
	q.do(chromedp.TapXY(10, 300)) // the sound is ready in both
	p.do(chromedp.TapXY(10, 300))
	q.pass(59*time.Minute + 30*time.Second)
	total := func() int { return p.rang(near) + q.rang(near) }
	require.Eventually(t, func() bool { return total() > 0 }, patience, 50*time.Millisecond)
	time.Sleep(2500 * time.Millisecond) // a tab that cannot be seen waits longer than that
	assert.Equal(t, 2, total(), "one call is two notes")
	p.waitIn(".strip", "Pot life")
}

// What ended while nothing was open is told by when it was, without an alarm.
func TestADeadlineThatPassedWhileClosed(t *testing.T) {
	p := startPot(t, serve(t))
	p.forgive("favicon.ico")
	p.do(chromedp.Navigate("about:blank"))
	p.do(chromedp.Navigate(p.server.url("robots.txt"))) // no page of the site
	p.pass(75 * time.Minute)
	p.visit("menu.html")
	p.waitIn("#notices", "“Use up by” was 15:0")
	p.has("#notices", "Past its pot life: do not spray it.")
	assert.Zero(t, evaluate[int](p, `tones.length`), "nobody needs an alarm for what is long past")
	p.do(chromedp.Reload())
	p.waitIn(".strip", "15:")
	assert.Empty(t, p.text("#notices"), "it is told again")
}

// Nobody knows which clock was right: a pot life takes the longer time, a flash-off the shorter.
func TestAClockSetBack(t *testing.T) {
	p := startPot(t, serve(t))
	p.visit("time-left.html#timed=flash&time_least=50&begun_ago=0")
	p.tap(`[data-out="not_before"] .time`)
	p.waitIn(".strip", "1 more, next ")
	p.visit("timers.html")
	p.waitUntil("both run", `document.querySelectorAll(".timer").length === 2`)
	left := func(kind string) string {
		return fmt.Sprintf(`.timer:has([data-do="%s"]:not([hidden])) .mark-left`, map[string]string{"flash": "more", "pot": "warmth"}[kind])
	}
	pot, flash := leftSeconds(p, left("pot")), leftSeconds(p, left("flash"))
	p.setClock(-20 * time.Minute)
	p.waitIn("#notices", "This device’s clock was set back by 20:0")
	p.waitUntil("the deadlines follow", fmt.Sprintf(`document.querySelector(%s).innerText.startsWith("1:")`, quoted(left("flash"))))
	assert.InDelta(t, pot, leftSeconds(p, left("pot")), 15, "a pot life has been made longer by a clock")
	assert.InDelta(t, flash+20*60, leftSeconds(p, left("flash")), 15)
	p.setClock(40 * time.Minute)
	p.waitIn("#notices", "The clock went ahead by 40:0")
	flash = leftSeconds(p, left("flash"))
	p.presses("The clock was set")
	p.waitUntil("the flash-off waits", fmt.Sprintf(`document.querySelector(%s).innerText.startsWith("1:")`, quoted(left("flash"))))
	assert.InDelta(t, flash+40*60, leftSeconds(p, left("flash")), 15)
}

// The new deadline is what the calculator of the cup's age says for the same stretches.
func TestATemperatureChangeMovesTheDeadline(t *testing.T) {
	p := startPot(t, serve(t))
	p.visit("timers.html")
	p.waitIn("#timers", "20 °C now")
	p.pass(20 * time.Minute)
	p.tap(`.timer [data-do="warmth"]`)
	assert.False(t, p.sees(`[data-field="now.pot_life"]`), "it asks for what it knows")
	p.enter("now.air", "86F")
	p.tap(".timer-edit .action")
	p.waitIn("#timers", "86F")
	r := menu.Find("cup-age").Run(calc.ParseForm("pot_life=60&pot_life_at=20&pot_life_second=30&pot_life_second_at=30&stay.1.stood_for=20&stay.1.stood_at=20&air=86F"))
	require.Empty(t, r.Problems)
	require.Equal(t, "left_low", r.Figures[0].Key)
	assert.InDelta(t, r.Figures[0].Value*60, leftSeconds(p, firstLeft), 20) // 20 min: a third is used, the rest goes twice as fast
	p.pass(5 * time.Minute)
	p.tap(`.timer [data-do="working"]`)
	p.waitIn(`[data-out="left_low"]`, "15 min")
	p.waitIn("#notices", "This is the working of your timer Pot life, at the moment you asked for it.")
	assert.NotContains(t, p.text("#notices"), "link")
	p.enter("air", "25")
	p.link()
	p.do(chromedp.Reload())
	p.waitIn("#notices", "This is the working of your timer")
	assert.Equal(t, "25", p.value("air"))
	p.presses("Back to the timers")
	p.waitIn("h1", "Timers")
	p.visit("cup-age.html")
	p.waitIn(".bar-needed", "Still needed")
	assert.Empty(t, p.value("air"), "the timer's numbers are not the person's own")
	assert.Empty(t, p.text("#notices"))

	p.visit("timers.html")
	p.tap(`.timer [data-do="warmth"]`)
	p.enter("now.air", "60")
	p.tap(".timer-edit .action")
	p.waitIn(`.timer-edit [data-slot="wrong"]`, "more than 15 °C")
	p.has(`.timer-edit [data-slot="wrong"]`, "the time shown is for the temperature before")
	assert.InDelta(t, 15*60, leftSeconds(p, firstLeft), 20)
}

// By hand: named, ranged, begun earlier, moved by a minute, put right where it cannot be.
func TestATimerByHand(t *testing.T) {
	p := withClock(t, serve(t), "timers.html", phone)
	p.waitIn("main", "None runs.")
	p.tap("#start")
	p.waitIn("#w-timed", "What runs")
	p.choose("timed", "flash")
	evaluate[bool](p, `(document.getElementById("timer-name").value = "Mudguards", true)`)
	fillEach(p, "time_least", "12", "time_most", "1/4 h", "begun_ago", "120 s")
	p.tap("#start")
	p.waitIn("#timers", "Not before")
	assert.Equal(t, "Mudguards", p.text(".timer-name"))
	assert.InDelta(t, 600, leftSeconds(p, firstLeft), 15)
	assert.InDelta(t, 780, leftSeconds(p, lastLeft), 15)
	p.tap(`.timer [data-do="more"]`)
	p.waitIn("#timers", "+1 min, set by you")
	assert.InDelta(t, 660, leftSeconds(p, firstLeft), 15)
	p.tap(`.timer [data-do="began"]`)
	p.enter("now.begun_ago", "some")
	p.tap(".timer-edit .action")
	p.waitIn(`.timer-edit [data-slot="wrong"]`, "must be a number")
	p.enter("now.begun_ago", "5")
	p.tap(".timer-edit .action")
	p.waitUntil("it began earlier", `document.querySelector(".timer-edit").hidden`)
	p.waitUntil("the mark has moved", `document.querySelector(`+quoted(firstLeft)+`).innerText.startsWith("7:") || document.querySelector(`+quoted(firstLeft)+`).innerText.startsWith("8:")`)
	assert.Empty(t, evaluate[[]string](p, faint))
	p.fits()
}

// A pot life entered without a temperature asks for its data sheet when one is wanted.
func TestAPotLifeByHandLearnsItsDataSheet(t *testing.T) {
	p := withClock(t, serve(t), "timers.html", phone)
	p.waitIn("main", "None runs.")
	p.choose("timed", "pot")
	fillEach(p, "pot_life", "60", "begun_ago", "30")
	p.tap("#start")
	p.waitIn("#timers", "Use up by")
	assert.InDelta(t, 1800, leftSeconds(p, firstLeft), 15)
	assert.False(t, p.sees(`.timer [data-do="working"]`), "there is no working without a data sheet")
	p.tap(`.timer [data-do="warmth"]`)
	fillEach(p, "now.pot_life", "60", "now.pot_life_at", "20", "now.stood_at", "20", "now.air", "20")
	p.tap(".timer-edit .action")
	p.waitIn("#timers", "20 °C now")
	assert.InDelta(t, 1800, leftSeconds(p, firstLeft), 20)
	assert.True(t, p.sees(`.timer [data-do="working"]`))
	p.choose("voice", "silent")
	p.pass(31 * time.Minute)
	p.waitIn("#timers", "Past its pot life")
	assert.Zero(t, evaluate[int](p, `tones.length`), "silence was asked for")
}

func TestTimersWorkWithoutANetwork(t *testing.T) {
	s := serve(t)
	p := withClock(t, s, potToday, phone)
	p.waitFor("Kept on this device: works without a network.")
	s.stop()
	p.do(chromedp.Reload())
	p.waitIn(`[data-out="pot_life_low"]`, "60")
	p.tap(`[data-out="pot_life_low"] .time`)
	p.waitIn(".strip", "Use up by")
	p.presses("Name it, or say when it began")
	p.waitIn("#timers", "Mixed at")
	p.tap(`.timer [data-do="warmth"]`)
	p.enter("now.air", "30")
	p.tap(".timer-edit .action")
	p.waitIn("#timers", "30 °C now")
	assert.InDelta(t, 1800, leftSeconds(p, firstLeft), 30)
}
