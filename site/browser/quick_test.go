package browser

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// lateCore has every question reach the core late.
const lateCore = `{
	globalThis.late = 0, globalThis.asked = 0;
	const Real = Worker;
	globalThis.Worker = class extends Real {
		postMessage(m) {
			if (m.id) asked++;
			setTimeout(() => super.postMessage(m), m.id ? late : 0);
		}
	};
}`

// Typing never waits for the core, and the answer at rest is to the last number, not to one passed through.
func TestTypingDoesNotWaitForASlowCore(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(lateCore)
	p.visit("#humidity=50&panel=30&air_speed=0.3&air=20")
	p.waitIn(`[data-out="dew_point"]`, "9.3") // of 20 °C and 50 %, as any psychrometric table has it
	evaluate[int](p, `late = 900, asked = 0`)
	p.do(chromedp.Focus(chromedp.CSS(box("air"))))
	evaluate[bool](p, `document.activeElement.select() ?? true`)
	for i, key := range []string{"2", "5", ".", "0", "0", "0"} {
		p.keys(key)
		assert.Equal(t, "25.000"[:i+1], p.value("air"), "a key does not show at once")
	}
	assert.Contains(t, p.text(`[data-out="dew_point"]`), "9.3", "the core was meant to be slow")
	p.waitIn(`[data-out="dew_point"]`, "13.9") // of 25 °C and 50 %
	assert.LessOrEqual(t, evaluate[int](p, `asked`), 3, "every key asks the core anew")
	assert.NotContains(t, p.text("#notices"), "did not answer")
	assert.Equal(t, "13.9", evaluate[string](p, `new Promise((done) => setTimeout(() => done(document.querySelector('[data-out="dew_point"] .num').innerText), 1000))`), "an older answer came after the last")
}

// On a phone a sixth as quick as this machine, the whole demo on the page, a key shows within a blink.
func TestAKeyShowsQuicklyOnASlowPhone(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	_, err := chromedp.Call(p.ctx, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: 6})
	require.NoError(t, err)
	evaluate[bool](p, `globalThis.took = [], new PerformanceObserver((l) => took.push(...l.getEntries().filter((e) => e.name === "keydown").map((e) => e.duration)))
		.observe({type: "event", durationThreshold: 16, buffered: false}), true`)
	p.do(chromedp.Focus(chromedp.CSS(box("delivery"))))
	p.keys("0123456789")
	slowest := evaluate[float64](p, `new Promise((done) => setTimeout(() => done(Math.max(0, ...took)), 1500))`)
	t.Logf("the slowest key took %.0f ms to show", slowest)
	assert.Less(t, slowest, 600.0)
}
