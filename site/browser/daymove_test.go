package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/field"
)

// bar is the first bar of a step, in its painter's column.
func bar(of string) string { return `[data-picture="by_place"] rect[tabindex][data-of="` + of + `"]` }

// stepAt is the time at which the plan has a step begin, as its bar is read out.
func stepAt(p *tab, of string) string {
	p.t.Helper()
	return evaluate[string](p, `/, (\d+:\d\d) to /.exec(document.querySelector(`+quoted(bar(of))+`)?.getAttribute("aria-label") ?? "")?.[1] ?? ""`)
}

// middle is the middle of what a selector finds, brought into view.
func middle(p *tab, selector string) (x, y float64) {
	p.t.Helper()
	at := evaluate[[]float64](p, `(() => {
		const e = document.querySelector(`+quoted(selector)+`);
		e.scrollIntoView({block: "center", behavior: "instant"});
		const r = e.getBoundingClientRect();
		return [r.x + r.width / 2, r.y + r.height / 2];
	})()`)
	return at[0], at[1]
}

// pinned is the form's row of the first step held.
func pinned(p *tab) string {
	p.t.Helper()
	return evaluate[string](p, `["of_job", "day_step", "coat_number", "held_at", "painter_number"].map((key) => new URLSearchParams(location.hash.slice(1)).get("pin.1." + key) ?? "").join(" ")`)
}

func TestABarIsDrawnWithTheMouse(t *testing.T) {
	p := calmDay(t, desk)
	before := stepAt(p, "2-7-0") // the bake of the mudguards
	x, y := middle(p, bar("2-7-0"))
	scale := evaluate[float64](p, `document.querySelector('[data-picture="by_place"] svg').getScreenCTM().d`)
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	p.mouse(input.DispatchMouseEventTypeMouseMoved, x, y+30)
	p.mouse(input.DispatchMouseEventTypeMouseMoved, x, y+72*scale) // 30 min at 2.4 a minute
	p.waitUntil("the time is said", `document.querySelector(".moving-time")?.textContent.includes(":")`)
	says := evaluate[string](p, `document.querySelector(".moving-time").textContent`)
	p.shot("day-moving")
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y+72*scale)
	p.waitIn("#notices", "Held at "+says)
	p.waitUntil("the form holds it", `location.hash.includes("pin.1.")`)
	assert.Equal(t, "Mudguards bake  "+says, strings.TrimSpace(pinned(p)))
	p.waitUntil("the plan keeps it", `document.querySelector(`+quoted(bar("2-7-0"))+`)?.getAttribute("aria-label").includes(`+quoted(says+" to")+`)`)
	assert.Equal(t, clockAfter(t, before, 30), says)
	assert.False(t, evaluate[bool](p, `document.getElementById("day-sheet").open`), "the end of a drag counts as a tap")
	p.presses("Undo")
	p.waitUntil("it is let go", `!location.hash.includes("pin.1.")`)
}

// clockAfter is the full five minutes nearest to a time of day some minutes after another.
func clockAfter(t *testing.T, clock string, minutes int) string {
	t.Helper()
	from, ok := field.ReadClock(clock)
	require.True(t, ok, clock)
	return field.ShowClock((from + minutes + 2) / 5 * 5)
}

func TestABarIsDrawnWithAFinger(t *testing.T) {
	p := calmDay(t, phone)
	x, y := middle(p, bar("2-7-0"))
	scrolled := evaluate[float64](p, `scrollY`)
	p.touch(input.DispatchTouchEventTypeTouchStart, x, y)
	p.waitUntil("the bar is taken", `document.querySelector(".moving") !== null`)
	for i := 1.0; i <= 8; i++ {
		p.touch(input.DispatchTouchEventTypeTouchMove, x, y+9*i)
	}
	says := evaluate[string](p, `document.querySelector(".moving-time").textContent`)
	p.touch(input.DispatchTouchEventTypeTouchEnd, 0, 0)
	p.waitIn("#notices", "Held at "+says)
	assert.InDelta(t, scrolled, evaluate[float64](p, `scrollY`), 200, "the page has scrolled away under the finger")

	// A finger that moves at once scrolls, and holds nothing.
	p.presses("Undo")
	p.waitUntil("it is let go", `!location.hash.includes("pin.1.")`)
	x, y = middle(p, bar("1-5-1"))
	p.touch(input.DispatchTouchEventTypeTouchStart, x, y)
	for i := 1.0; i <= 8; i++ {
		p.touch(input.DispatchTouchEventTypeTouchMove, x, y-12*i)
	}
	assert.False(t, p.sees(".moving"))
	p.touch(input.DispatchTouchEventTypeTouchEnd, 0, 0)
}

func TestABarIsMovedByKeys(t *testing.T) {
	p := calmDay(t, desk)
	before := stepAt(p, "2-7-0")
	evaluate[bool](p, `document.querySelector(`+quoted(bar("2-7-0"))+`).focus() ?? true`)
	p.keys(kb.ArrowDown)
	p.keys(kb.ArrowDown)
	p.waitUntil("the time is said", `document.querySelector(".moving-time") !== null`)
	p.keys(kb.Escape)
	p.waitUntil("it is back", `document.querySelector(".moving-time") === null`)
	assert.Equal(t, before, stepAt(p, "2-7-0"))
	for range 4 {
		p.keys(kb.ArrowDown)
	}
	says := evaluate[string](p, `document.querySelector(".moving-time").textContent`)
	assert.Equal(t, says, p.text("#spoken"))
	p.keys(kb.Enter)
	p.waitIn("#notices", "Held at "+says)
	p.waitUntil("the plan keeps it", `document.querySelector(`+quoted(bar("2-7-0"))+`)?.getAttribute("aria-label").includes(`+quoted(says+" to")+`)`)
	p.waitUntil("the focus stays with it", `document.activeElement.dataset.of === "2-7-0"`)
	p.keys(kb.Enter)
	p.waitUntil("the sheet is open", `document.getElementById("day-sheet").open`)
	p.waitIn("#day-sheet", "It is held")
	p.tap(`[data-day="free"]`)
	p.waitIn("#notices", "Let go: Mudguards, bake")
}

// mouse is one thing that the mouse does, its left button down but for the end.
func (p *tab) mouse(kind input.DispatchMouseEventType, x, y float64) {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{Type: kind, X: x, Y: y, Button: input.MouseButtonLeft, Buttons: 1, ClickCount: 1})
	require.NoError(p.t, err)
}

// touch is one thing that a finger does.
func (p *tab) touch(kind input.DispatchTouchEventType, x, y float64) {
	p.t.Helper()
	points := []*input.TouchPoint{}
	if kind != input.DispatchTouchEventTypeTouchEnd {
		points = append(points, &input.TouchPoint{X: x, Y: y})
	}
	_, err := chromedp.Call(p.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
	require.NoError(p.t, err)
}
