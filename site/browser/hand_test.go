package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A whole job with one thumb: the bar leads to what is missing, the keypad's Next to the next field.
func TestAJobTypedByHandFromEmpty(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.waitIn(".bar-needed", "Still needed: ")
	byHandParts(p)

	p.tap(".bar-needed") // leads into the empty table of coats and opens a row there
	p.waitUntil("a coat can be filled in", `document.activeElement.name === "coat.1.product"`)
	byHandCoat(p)
	assert.Empty(t, p.inOneLine("#verdict"), "a verdict before anything is known of the air")

	p.waitIn(".bar-needed", "next: Air temperature")
	p.tap(".bar-needed")
	p.waitUntil("the bar leads to the air", `document.activeElement.name === "air"`)
	for _, s := range []string{"72F", "50", "21,5", "0.3"} {
		p.keys(s)
		p.next()
	}
	p.waitIn("#verdict", "Go Panel 18.") // °F: 72 °F and 50 % give a dew point of 52.4 °F, 21.5 °C is 70.7 °F
	assert.Equal(t, "gun", p.focused(), "Next left the air for the first empty field after it")
	byHandGun(p)

	p.waitUntil("nothing is missing", `document.querySelector(".bar-needed").hidden`)
	p.waitIn("#card", "Call sheet")
	p.has("#card", "Mix in all", "Cup by cup", "Topcoat", "Start pressure", "coat 1 of 2", "VOC as sprayed")
	assert.False(t, p.sees("#gathered"))
	assert.False(t, p.sees("#invented"))
}

// byHandParts fills in two parts: a strip and a box.
func byHandParts(p *tab) {
	p.t.Helper()
	p.tap(".bar-needed")
	p.waitUntil("the bar leads to the first part", `document.activeElement.name === "part.1.name"`)
	p.keys("Mudguard")
	p.next()
	assert.Equal(p.t, "part.1.shape", p.focused())
	p.choose("part.1.shape", "flat")
	fillEach(p, "part.1.length", "700", "part.1.width", "90")
	p.choose("part.1.sides", "two")
	fillEach(p, "part.1.count", "24")
	p.waitIn(`[data-row="part.1"]`, "24 pieces, 0.126 m² each") // 2 x 0.7 m x 0.09 m
	p.tap(`[data-table="part"] .add`)
	p.waitUntil("a second part can be filled in", `document.activeElement.name === "part.2.name"`)
	p.keys("Lid")
	p.choose("part.2.shape", "box")
	fillEach(p, "part.2.length", "800", "part.2.width", "600", "part.2.height", "120")
	p.choose("part.2.faces", "five")
	fillEach(p, "part.2.count", "12")
	p.waitIn(`[data-row="part.2"]`, "12 pieces, 0.816 m² each") // 0.8 x 0.6 + 2 x 0.12 x (0.8 + 0.6)
}

// byHandCoat fills in a one-pack product by what its data sheet says.
func byHandCoat(p *tab) {
	p.t.Helper()
	p.keys("Topcoat")
	p.choose("coat.1.role", "topcoat")
	p.choose("coat.1.pack", "one")
	p.choose("coat.1.carrier", "solvent")
	p.choose("coat.1.solvent", "xylene")
	p.choose("coat.1.ratio_by", "volume")
	p.choose("coat.1.drying", "air")
	fillEach(p, "coat.1.ratio", "4:1", "coat.1.density_a", "1,25", "coat.1.density_b", "0.87", "coat.1.volume_solids", "40",
		"coat.1.dry_film", "50", "coat.1.coats", "2", "coat.1.flash", "10", "coat.1.flash_at", "20",
		"coat.1.dry_time", "60", "coat.1.dry_at", "20", "coat.1.voc", "480")
	p.waitIn(`[data-row="coat.1"]`, "Topcoat, 4:1 by volume, 40 % solids, 50 µm in 2 coats")
}

func byHandGun(p *tab) {
	p.t.Helper()
	p.choose("gun", "conventional")
	p.choose("limits", "none")
	fillEach(p, "pressure", "40", "pressure_most", "60", "delivery", "200", "fan_width", "250", "gun_distance", "200", "gun_speed", "0.4",
		"overlap", "50", "transfer_efficiency", "40", "cup_size", "600")
	p.enter("clock", "8:00")
}

// fillEach types into each of some fields.
func fillEach(p *tab, pairs ...string) {
	p.t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		p.enter(pairs[i], pairs[i+1])
	}
}

// What is written after a number, fractions, and the comma, as the help page promises them.
func TestNumbersAreReadAsPeopleWriteThem(t *testing.T) {
	p := open(t, serve(t), "#humidity=50&panel=72F&air_speed=0.3", phone)
	p.enter("air", "72F")
	p.waitIn(`[data-out="dew_point"]`, "52.4 °F") // of 72 °F and 50 %
	p.enter("humidity", "12,5")
	p.waitUntil("the comma is a decimal comma", `document.getElementById("w-humidity").hidden && /\b1\d\.\d/.test(document.querySelector('[data-out="dew_point"]').innerText)`)
	p.enter("fan_width", "9 3/4 in")
	p.enter("altitude", "1,250")
	p.waitIn("#w-altitude", "Altitude “1,250” can be read two ways. Write it without a separator for thousands.")
	p.has("#gathered", "Altitude “1,250” can be read two ways")
	assert.Equal(t, "1,250", p.value("altitude"))
	assert.False(t, p.sees("#w-fan_width"))
	p.tap("#gathered a")
	p.waitUntil("the list leads to the field", `document.activeElement.name === "altitude"`)
	p.enter("altitude", "1250")
	p.waitUntil("the problem is gone", `document.getElementById("gathered").hidden && document.getElementById("w-altitude").hidden`)

	bench := open(t, serve(t), "wet-film.html", phone)
	bench.enter("dry_film", "3/4 in")
	bench.waitIn("#w-dry_film", "must be a number in µm, like 60; “3/4 in” is not") // no film is given in inches: refused, never passed over
}
