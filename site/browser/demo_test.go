package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The whole card from one tap. The figures are those that calc/job works out for testdata/demo; here it matters that
// they are all on the page.
func TestTheDemoShowsTheWholeCard(t *testing.T) {
	p := open(t, serve(t), "", phone)
	assert.False(t, p.sees("#invented"))
	p.demo()
	assert.True(t, p.sees("#invented"))
	p.has(".intro", "This job is invented.")
	assert.False(t, p.sees("#try"), "the demo is offered once the form is filled in")
	assert.Equal(t, "29", p.value("air"))

	p.has("#verdict", "Go", "above dew point", "Measure again before each coat")
	p.has(`[data-out="to_mix_all"]`, "Mix in all", "L")
	p.has(`[data-out="amounts"]`, "Grey two-pack primer", "Ivory waterborne base", "Moss green waterborne base", "Two-pack clear")
	p.has(`[data-out="pour"]`, "cups 1 to 5 of 5", "Scale reads", "Paint", "Hardener", "Thinner", "g")
	p.has(`[data-out="film"]`, "Wet film a coat", "Comb wets", "µm", "Whole passes")
	p.has(`[data-out="pressures"]`, "Start pressure", "psi", "Never above")
	p.has(`[data-out="timeline"]`, "12:30", "Mix", "coat 1 of 2", "flashes off", "Bake Two-pack clear", "Use by")
	p.has(`[data-out="done_at"]`, "Done", ":")
	p.has(`[data-out="vocs"]`, "VOC as sprayed", "Limit", "g/L")
	p.has(`[data-out="cost_all"]`, "Paint cost")
	p.has(`[data-out="dew_point"]`, "Dew point", "°C")
	p.has("#cautions", "Mist from two-pack paint", "Solvent vapour burns", "compressed air")

	p.waitUntil("the timeline is drawn", `document.querySelectorAll("#card .picture svg rect").length > 10`)
	p.has("#card .picture figcaption", "The job in time", "4 products from 12:30 to")
	p.has("#bar", "Go", "Mix in all", "Done")
	assert.False(t, p.sees(".bar-needed"))
	assert.Equal(t, 5, evaluate[int](p, `document.querySelectorAll(".places .tick").length`), "a place or the card is not complete")

	p.tap(".bar-answer")
	p.waitUntil("the bar leads to the card", `Math.abs(document.getElementById("card").getBoundingClientRect().top) < 60`)
}

func TestAJobOfOnesOwnIsNotCalledInvented(t *testing.T) {
	p := open(t, serve(t), "#air=22&humidity=50&panel=22&air_speed=0.3", phone)
	p.waitIn("#verdict", "Go")
	assert.False(t, p.sees("#invented"))
	assert.False(t, p.sees("#try"))
}
