package mixing_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"spraywright/calc"
	"spraywright/calc/mixing"
	"spraywright/calc/unit"

	"github.com/stretchr/testify/assert"
)

// A cup filled to the height of a mark holds the volume of the mark, whichever way it tapers.
func TestLevelFillsTheCup(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 1))
	for range 1000 {
		bottom, top, height := 10+300*r.Float64(), 10+300*r.Float64(), 20+300*r.Float64()
		if r.IntN(4) == 0 {
			top = bottom
		}
		h := height * r.Float64()
		there := bottom + (top-bottom)*h/height
		volume := math.Pi * h * (bottom*bottom + bottom*there + there*there) / 12000
		k := (top - bottom) / (2 * height)
		got := mixing.Level(nil, calc.N(bottom, unit.Millimetre), calc.N(k, unit.One), calc.N(volume, unit.Millilitre)).V
		assert.InDelta(t, h, got, 1e-6*height, "%v to %v, %v high", bottom, top, height)
	}
}

func value(report calc.Report, key string) float64 {
	for _, f := range report.Figures {
		if f.Key == key {
			return f.Value
		}
	}
	return math.NaN()
}

// What a mix takes of one part makes that mix.
func TestFromOnePartUndoesMix(t *testing.T) {
	for part, have := range map[string]string{"1": "400", "2": "100", "3": "100"} {
		report := mixing.FromOnePart().Run(calc.ParseForm("ratio=4:1:1&ratio_by=volume&which_part=" + part + "&have_volume=" + have))
		assert.Empty(t, report.Problems)
		assert.InEpsilon(t, 600, value(report, "total_volume"), 1e-12)
		assert.True(t, math.IsNaN(value(report, "total_mass")), "no weights without densities")
	}
}

func TestCupsRefuse(t *testing.T) {
	for _, c := range []struct {
		calculator *calc.Calculator
		link, want string
	}{
		{mixing.FromOnePart(), "ratio=4:1&ratio_by=volume&which_part=3&have_volume=100", "which_part"},
		{mixing.FromOnePart(), "ratio=4:0:1&ratio_by=volume&which_part=2&have_volume=100", "which_part"},
		{mixing.PartUsedCup(), "ratio=4:1&ratio_by=volume&cup_left=600&amount=600&pack=one&pour_by=cup", "amount"},
		{mixing.PartUsedCup(), "ratio=4:1&ratio_by=weight&cup_left=100&amount=600&pack=one&pour_by=cup", "pour_by"},
		{mixing.PartUsedCup(), "ratio=4:1&ratio_by=volume&cup_left=100&amount=600&pack=two&pot_life=60&mixed_ago=60&pour_by=cup", "mixed_ago"},
		{mixing.CupGraduations(), "ratio=4:1&amount=800&cup_bottom=80&cup_top=100&cup_height=120", "amount"},
		{mixing.CupGraduations(), "ratio=4&amount=500&cup_bottom=80&cup_top=100&cup_height=120", "ratio"},
	} {
		report := c.calculator.Run(calc.ParseForm(c.link))
		if assert.Len(t, report.Problems, 1, c.link) {
			assert.Equal(t, c.want, report.Problems[0].Field, c.link)
		}
		assert.Empty(t, report.Lists, "no amounts where it refuses")
	}
}

func TestPartUsedCupCountsFromTheOldest(t *testing.T) {
	report := mixing.PartUsedCup().Run(calc.ParseForm("ratio=4:1&ratio_by=volume&cup_left=100&amount=600&pack=two&pot_life=60&mixed_ago=45&pour_by=cup"))
	assert.Equal(t, 15., value(report, "time_left"))
	if assert.Len(t, report.Verdict, 1) {
		assert.Equal(t, calc.Wait, report.Verdict[0].Level)
		assert.Contains(t, report.Verdict[0].Why, "counts from the oldest paint")
	}
}
