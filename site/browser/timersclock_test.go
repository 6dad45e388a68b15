package browser

import (
	"fmt"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// Time that a test moves, and the tones it then hears.

// handClock lets a test move time: pass(ms) for time that goes by, setClock(ms) for a person who sets the clock. It holds
// for every tab of the profile, and through reloads. tones is what the page has sounded, by pitch.
const handClock = `{
	const now = Date.now.bind(Date), steady = performance.now.bind(performance);
	const kept = (name) => { try { return Number(localStorage.getItem("test:" + name) ?? 0); } catch { return 0; } };
	const add = (name, ms) => localStorage.setItem("test:" + name, String(kept(name) + ms));
	const before = kept("passed");
	Date.now = () => now() + kept("passed") + kept("set");
	performance.now = () => steady() + kept("passed") - before;
	const look = () => dispatchEvent(new Event("focus"));
	globalThis.pass = (ms) => (add("passed", ms), look(), true);
	globalThis.setClock = (ms) => (add("set", ms), look(), true);
	globalThis.tones = [];
	const start = OscillatorNode.prototype.start;
	OscillatorNode.prototype.start = function (...at) { tones.push(this.frequency.value); return start.apply(this, at); };
}`

// withClock opens a page whose time the test moves.
func withClock(t *testing.T, s *server, path string, l look) *tab {
	t.Helper()
	p := open(t, s, "about.html", l)
	p.before(handClock)
	p.visit(path)
	return p
}

// another opens a second tab of the same profile.
func (p *tab) another(path string) *tab {
	p.t.Helper()
	ctx, cancel := chromedp.NewContext(p.ctx)
	p.t.Cleanup(cancel)
	q := &tab{t: p.t, ctx: ctx, server: p.server, look: p.look}
	q.listen()
	q.before(handClock)
	q.visit(path)
	p.t.Cleanup(q.blame)
	return q
}

func (p *tab) pass(d time.Duration) {
	p.t.Helper()
	evaluate[bool](p, fmt.Sprintf(`pass(%d)`, d.Milliseconds()))
}

func (p *tab) setClock(d time.Duration) {
	p.t.Helper()
	evaluate[bool](p, fmt.Sprintf(`setClock(%d)`, d.Milliseconds()))
}

// rang counts the tones that the page has sounded at a pitch, and forgets them.
func (p *tab) rang(pitch int) int {
	p.t.Helper()
	return evaluate[int](p, fmt.Sprintf(`tones.filter((hz) => hz === %d).length`, pitch))
}

const near, nowTone = 620, 1175

// leftSeconds reads a countdown, as a person would.
func leftSeconds(p *tab, selector string) int {
	p.t.Helper()
	return evaluate[int](p, `(document.querySelector(`+quoted(selector)+`)?.innerText ?? "").trim().split(":").reduce((s, n) => s * 60 + Number(n), 0)`)
}
