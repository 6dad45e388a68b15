package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// What people mistype, and what the page then says and has them do. The box keeps what was typed.
func TestBadInputIsAnsweredAtItsField(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.enter("panel", "28")
	for _, c := range []struct{ name, typed, says string }{
		{"air", "warm", "Air temperature must be a number"},
		{"air", "-300", "Air temperature must be −10 °C or more. Check the number and its unit."},
		{"air", "1e99", "Air temperature must be"},
		{"air", "1e999", "Air temperature must be"},
		{"air", "NaN", "Air temperature must be a number"},
		{"air", "Infinity", "Air temperature must be a number"},
		{"air", "0x1F", "Air temperature must be a number"},
		{"air", "🙂", "Air temperature must be a number"},
		{"air", "--5", "“--5” is not. Enter digits, with one point or comma for decimals."},
		{"air", "30 psi", "Air temperature must be a number in °C, like 22"},
		{"humidity", "0", "Relative humidity must be 1 % or more. Check the number and its unit."},
		{"humidity", "120", "Relative humidity must be 100 % or less. Check the number and its unit."},
		{"clock", "quarter past", "is not a time of day. Write it like 8:00 or 14:30."},
	} {
		p.enter(c.name, c.typed)
		p.waitIn("#w-"+c.name, c.says)
		p.waitIn("#gathered", c.says)
		assert.Equal(t, c.typed, p.value(c.name))
		assert.Equal(t, "true", evaluate[string](p, `document.getElementById("f-`+c.name+`").getAttribute("aria-invalid")`))
		assert.Contains(t, evaluate[string](p, `document.getElementById("f-`+c.name+`").getAttribute("aria-describedby")`), "w-"+c.name)
		assert.Greater(t, strings.Count(p.text("#w-"+c.name), "."), 1, "%q is told what is wrong and not what to do", c.typed)
	}
	p.has(".bar-needed", "To put right: 3", "next: Air temperature")
	assert.Equal(t, "28", p.value("panel"))
	p.enter("air", "29")
	p.waitUntil("a problem goes with its cause", `document.getElementById("w-air").hidden`)
}

func TestARatioOfNothingIsAnsweredInItsRow(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.tap(`[data-table="coat"] .add`)
	p.enter("coat.1.ratio", "0:0:0")
	p.waitIn(`[id="w-coat.1.ratio"]`, "Mix ratio starts with 0. The paint comes first and cannot be 0.")
	p.has("#gathered", "Product 1: Mix ratio starts with 0")
	p.tap(`[data-row="coat.1"] [data-do="close"]`)
	p.waitIn(`[data-row="coat.1"] .row-lacks`, "Mix ratio starts with 0")
	p.tap("#gathered a")
	p.waitUntil("the list opens the row again", `document.activeElement.name === "coat.1.ratio"`)
	p.keys("4:1:1")
	assert.Contains(t, p.value("coat.1.ratio"), "4:1:1")
}

func TestAPastedBookIsCutNotChokedOn(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.enter("panel", "28")
	p.do(chromedp.Focus(chromedp.CSS(box("air"))))
	p.paste(strings.Repeat("Spray when dry. ", 65536))
	evaluate[bool](p, `document.activeElement.blur() ?? true`)
	p.waitIn("#w-air", "Air temperature must be a number")
	p.fits()
	assert.LessOrEqual(t, len(p.value("air")), 200)
	assert.Equal(t, "28", p.value("panel"))
	p.enter("air", "29")
	p.waitUntil("the problem is gone", `document.getElementById("w-air").hidden`)
}

// Links are typed and cut by hand too.
func TestABadLinkIsAnsweredAtItsFields(t *testing.T) {
	s := serve(t)
	p := open(t, s, "#air=20&air.unit=psi&humidity=%3F&panel="+strings.Repeat("9", 5000)+"&gun=water-pistol", phone)
	p.waitIn("#gathered", "Air temperature cannot be given in “psi”. Choose one of the units in the list.")
	p.has("#w-air", "cannot be given in “psi”")
	p.has("#w-humidity", "Relative humidity must be a number")
	p.has("#w-panel", "Panel temperature is 5000 characters long. Keep it under 200 characters.")
	p.has("#w-gun", "Kind of gun has no answer “water-pistol”. Choose one of the answers in the list.")
	assert.Equal(t, "20", p.value("air"))
	p.fits()
	assert.Contains(t, p.link(), "air.unit=psi", "the link was changed without being asked")
	p.enter("air", "20C")
	p.choose("gun", "hvlp")
	p.waitUntil("the choice is put right", `document.getElementById("w-gun").hidden`)
}

func TestALinkWithTooManyRowsIsAnswered(t *testing.T) {
	var link strings.Builder
	for i := 1; i <= 301; i++ {
		fmt.Fprintf(&link, "&part.%d.name=Lid&part.%d.shape=flat&part.%d.length=100&part.%d.width=90&part.%d.sides=one&part.%d.count=1", i, i, i, i, i, i)
	}
	p := open(t, serve(t), "#"+link.String()[1:], phone)
	p.waitIn("#w-part", "Parts has 301 rows; it can hold 300. Take some out, or split the work in two.")
	assert.Equal(t, 301, evaluate[int](p, `document.querySelectorAll('[data-table="part"] .row').length`))
	assert.True(t, evaluate[bool](p, `document.querySelector('[data-table="part"] .add').disabled`))
	p.tap(`[data-row="part.301"] summary`)
	p.tap(`[data-row="part.301"] [data-do="remove"]`)
	p.waitUntil("300 rows are taken", `document.getElementById("w-part").hidden`)
	p.waitIn(`[data-row="part.300"]`, "Lid, flat 100 mm × 90 mm, 1 piece")
}
