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
