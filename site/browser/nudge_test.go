package browser

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

func nudge(name, way string) string {
	return `.nudge[data-of="` + name + `"][data-nudge="` + way + `"]`
}

// What a painter turns by a mark at a time has a button either side, worked by the core.
func TestNumbersAreNudgedByTheMark(t *testing.T) {
	p := open(t, serve(t), "#air=29&humidity=72&panel=28&air_speed=0.3", phone)
	p.waitIn("#verdict", "above dew point")
	p.tap(nudge("air", "more"))
	p.waitIn(`[data-out="dew_point"]`, "24.4") // of 30 °C and 72 %
	assert.Equal(t, "30", p.value("air"))
	p.enter("air", "84.5F")
	p.waitUntil("the unit is taken over", `document.querySelector('[name="air.unit"]').value === "degF"`)
	p.tap(nudge("air", "less"))
	p.waitUntil("it stands on a mark", `document.querySelector('[name="air"]').value === "84"`)
	assert.Equal(t, "degF", evaluate[string](p, `document.querySelector('[name="air.unit"]').value`))

	// Quick presses are all counted, whatever the core needs for one.
	evaluate[bool](p, `(() => { const b = document.querySelector(`+quoted(nudge("humidity", "less"))+`); for (let i = 0; i < 5; i++) b.click(); return true; })()`)
	p.waitUntil("five presses are five marks", `document.querySelector('[name="humidity"]').value === "67"`)

	assert.Equal(t, "true", evaluate[string](p, `document.querySelector(`+quoted(nudge("pressure", "more"))+`).getAttribute("aria-disabled")`), "a blank field has no next mark")
	p.enter("humidity", "100")
	p.waitUntil("the end of the scale is reached", `document.querySelector(`+quoted(nudge("humidity", "more"))+`).getAttribute("aria-disabled") === "true"`)
	p.tap(nudge("humidity", "more"))
	assert.Equal(t, "100", p.value("humidity"))
	p.enter("humidity", "wet")
	p.waitIn("#w-humidity", "must be a number")
	p.tap(nudge("humidity", "less"))
	assert.Equal(t, "wet", p.value("humidity"))
	p.fits()
}

func TestNudgingByKeyboardSaysTheNumber(t *testing.T) {
	p := open(t, serve(t), "gun-delivery.html", desk)
	p.waitUntil("it is loaded", isLoaded)
	p.visit("#air=29&humidity=72")
	p.waitUntil("the marks are there", `document.querySelector(`+quoted(nudge("air", "more"))+`)?.getAttribute("aria-disabled") === "false"`)
	p.tabTo(nudge("air", "more"))
	assert.Equal(t, "Air temperature: more", evaluate[string](p, `document.activeElement.ariaLabel`))
	p.keys(kb.Enter)
	p.waitUntil("it is said", `document.getElementById("spoken").textContent === "Air temperature: 30"`)
	assert.True(t, evaluate[bool](p, `document.activeElement.matches(".nudge")`), "the focus has gone")
}

// Quarts and pints, as cups and tins are marked where they are used, with the fractions that people say.
func TestFractionsOfAQuart(t *testing.T) {
	p := open(t, serve(t), "mix.html", phone)
	p.waitUntil("it is loaded", isLoaded)
	p.tap("#try a")
	p.waitIn("#card", "g")
	for _, c := range [][3]string{{"3/4 qt", "3/4", "qt"}, {"1 1/2 pt", "1 1/2", "pt"}, {"1½ pints", "1 1/2", "pt"}, {"0,5L", "0,5", "L"}} {
		p.enter("amount", c[0])
		p.waitUntil(c[0]+" is taken apart", `document.querySelector('[name="amount"]').value === `+quoted(c[1])+` && document.querySelector('[name="amount.unit"]').value === `+quoted(c[2]))
		assert.False(t, p.sees("#w-amount"), c[0])
	}
}
