package gun_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/gun"
	"spraywright/calc/internal/ask"
)

// A change and its way back: the least of one is the most of the other, turned over.
func TestTipsThereAndBack(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	for range 200 {
		d1, p1 := 1+r.Float64(), 1+r.Float64()
		d2, p2 := d1*(0.7+0.8*r.Float64()), p1*(0.5+1.5*r.Float64())
		form := func(a, b, p, q float64) calc.Form {
			return calc.Form{"delivery": "200", "tip_now": ask.Show(a), "tip_new": ask.Show(b), "paint_pressure": ask.Show(p), "paint_pressure_to": ask.Show(q)}
		}
		there, back := gun.TipChange().Run(form(d1, d2, p1, p2)), gun.TipChange().Run(form(d2, d1, p2, p1))
		low, high := ask.Value(t, there, "faster_low"), ask.Value(t, there, "faster_high")
		assert.LessOrEqual(t, low, high+1e-12)
		assert.InEpsilon(t, 1/high, ask.Value(t, back, "faster_low"), 1e-9)
		assert.InEpsilon(t, 1/low, ask.Value(t, back, "faster_high"), 1e-9)
		assert.InEpsilon(t, 200*low, ask.Value(t, there, "delivery_low"), 1e-9)
	}
}

func TestTipChangeRefuses(t *testing.T) {
	for text, field := range map[string]string{
		"delivery=200&tip_now=1&tip_new=1.8":                                        "tip_new",
		"delivery=200&tip_now=1.8&tip_new=1":                                        "tip_new",
		"delivery=200&tip_now=1&tip_new=1.1&paint_pressure_to=2":                    "paint_pressure",
		"delivery=200&tip_now=1&tip_new=1.1&paint_pressure=1&paint_pressure_to=3.1": "paint_pressure_to",
	} {
		r := gun.TipChange().Run(calc.ParseForm(text))
		if assert.Len(t, r.Problems, 1, text) {
			assert.Equal(t, field, r.Problems[0].Field, text)
		}
	}
	for _, in := range gun.TipChange().Inputs {
		assert.NotContains(t, in.Key, "viscosity", "delivery is not predicted from viscosity")
	}
}

func TestFilmFallsWithDistanceAndSlant(t *testing.T) {
	last := 1000.0
	for turned := 0.0; turned <= 60; turned += 5 {
		ends := ask.Value(t, gun.DistanceAndArc().Run(calc.Form{"gun_distance": "180", "distance_held": "180", "gun_turned": ask.Show(turned)}), "film_ends")
		assert.Less(t, ends, last)
		last = ends
	}
	level := func(held, turned string) calc.Level {
		return gun.DistanceAndArc().Run(calc.Form{"gun_distance": "180", "distance_held": held, "gun_turned": turned}).Verdict[0].Level
	}
	assert.Equal(t, calc.Go, level("180", "20"))
	assert.Equal(t, calc.Wait, level("180", "25"))
	assert.Equal(t, calc.Wait, level("120", "0"), "too close runs")
	r := gun.DistanceAndArc().Run(calc.Form{"gun_distance": "180", "distance_held": "370", "gun_turned": "0"})
	assert.Len(t, r.Problems, 1)
}

func TestAShortTestIsDoubted(t *testing.T) {
	form := calc.Form{"caught_by": "measured", "caught_volume": "90", "caught_for": "30"}
	assert.Empty(t, gun.DeliveryTest().Run(form).Verdict)
	form["caught_for"] = "10"
	assert.Equal(t, calc.Wait, gun.DeliveryTest().Run(form).Verdict[0].Level)
}
