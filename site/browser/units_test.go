package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func unitOf(p *tab, name string) string {
	p.t.Helper()
	return evaluate[string](p, `document.querySelector('select.unit[data-of="`+name+`"]').value`)
}

// What was typed stays what it was; what is asked for next, and every answer, follows the switch.
func TestTheUnitSwitchLeavesWhatWasTyped(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.enter("air", "29")
	p.enter("humidity", "72")
	p.enter("panel", "28")
	p.enter("air_speed", "0.3")
	p.waitIn(`[data-out="dew_point"]`, "23.4 °C")

	p.tap(`.top label:has([value="us"])`)
	p.waitIn(`[data-out="dew_point"]`, "74.2 °F")
	assert.Equal(t, []string{"29", "degC"}, []string{p.value("air"), unitOf(p, "air")})
	assert.Equal(t, "in", unitOf(p, "fan_width"), "an empty field asks in the units switched to")
	p.enter("fan_width", "10")
	p.choose("part.1.shape", "tube")
	p.enter("part.1.length", "32")
	p.tap(`.top label:has([value="si"])`)
	p.waitIn(`[data-out="dew_point"]`, "23.4 °C")
	assert.Equal(t, []string{"10", "in"}, []string{p.value("fan_width"), unitOf(p, "fan_width")})
	assert.Equal(t, []string{"32", "in"}, []string{p.value("part.1.length"), unitOf(p, "part.1.length")})
	assert.Equal(t, "mm", unitOf(p, "gun_distance"))

	p.choose("air.unit", "degF")
	p.waitIn(`[data-out="dew_point"]`, "−5.6 °C") // of 29 °F, which is −1.7 °C, and 72 %, over ice
	assert.Equal(t, "29", p.value("air"), "another unit has turned the number into another")
}

func TestADemoInUSUnits(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	si := p.inOneLine("#card")
	p.tap(`.top label:has([value="us"])`)
	p.waitIn(`[data-out="dew_point"]`, "°F")
	us := p.inOneLine("#card")
	for _, unit := range []string{" mL", " °C", " µm", " mm", " m/s", " g/L", " m²"} {
		assert.Contains(t, si, unit)
		assert.NotContains(t, us, unit)
	}
	p.has("#card", "fl oz", "mil", "lb/gal", "ft²")
	p.has(`[data-row="part.1"]`, "12 pieces", "ft²")
	assert.Equal(t, "800", evaluate[string](p, `new URLSearchParams(location.hash.slice(1)).get("part.1.length")`))
	p.fits()
	p.visit("")
	p.waitIn(`[data-out="dew_point"]`, "°F") // the switch is kept with the form
}

// A unit is one field's, in tables too: nobody measures each part with the same rule.
func TestEachRowHasItsOwnUnits(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.opens("part.1")
	p.opens("part.2")
	p.choose("part.2.length.unit", "in")
	p.waitIn(`[data-row="part.2"] summary`, "700 in")
	assert.Equal(t, []string{"800", "mm"}, []string{p.value("part.1.length"), unitOf(p, "part.1.length")}, "another row has changed")
	assert.Contains(t, p.link(), "part.2.length.unit=in")

	p.tap(`[data-table="part"] .add`)
	p.choose("part.3.shape", "flat")
	assert.Equal(t, []string{"in", "mm"}, []string{unitOf(p, "part.3.length"), unitOf(p, "part.3.width")}, "a new row starts with the units of the row before")
	p.enter("part.3.length", "20")
	does(p, "part.3", "copy")
	p.opens("part.4")
	assert.Equal(t, "in", unitOf(p, "part.4.length"))
	does(p, "part.3", "remove")
	p.waitUntil("the units have moved with their row", `new URLSearchParams(location.hash.slice(1)).get("part.3.length.unit") === "in"`)
}

// Links from before, and links written by hand, give a whole column its unit.
func TestAColumnsUnitShowsInEveryRow(t *testing.T) {
	p := open(t, serve(t), "#part.length.unit=in&part.1.shape=tube&part.1.length=32&part.2.shape=tube&part.2.length=40&part.3.length=5&part.3.length.unit=mm", phone)
	for _, row := range []string{"part.1", "part.2", "part.3"} {
		p.opens(row)
	}
	assert.Equal(t, []string{"in", "in", "mm"}, []string{unitOf(p, "part.1.length"), unitOf(p, "part.2.length"), unitOf(p, "part.3.length")})
	p.choose("part.2.length.unit", "mm") // the input's own unit, against the column's
	assert.Equal(t, []string{"in", "mm"}, []string{unitOf(p, "part.1.length"), unitOf(p, "part.2.length")})
	assert.Contains(t, p.link(), "part.2.length.unit=mm")
}

// A unit written after the number becomes the field's unit once the field is left.
func TestAUnitWrittenAfterTheNumberIsTaken(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.enter("air", "72F")
	p.waitUntil("the unit is the field's", `document.querySelector('[name="air"]').value === "72"`)
	assert.Equal(t, "degF", unitOf(p, "air"))
	p.choose("part.1.shape", "flat")
	p.enter("part.1.length", "9 3/4 in")
	p.waitUntil("the unit is the row's", `document.querySelector('[name="part.1.length"]').value === "9 3/4"`)
	assert.Equal(t, "in", unitOf(p, "part.1.length"))
	link := p.link()
	assert.Contains(t, link, "air=72&air.unit=degF")
	assert.Contains(t, link, "part.1.length=9+3/4&part.1.length.unit=in")
}
