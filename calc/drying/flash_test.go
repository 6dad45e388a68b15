package drying

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

func air(t, rh, speed float64) Climate {
	return Climate{calc.N(t, unit.DegC), calc.N(rh, unit.Percent), calc.N(t, unit.DegC), calc.N(speed, unit.AirMetrePerSecond), calc.N(standardAir, unit.Pascal)}
}

var ten = calc.N(10, unit.Minute)

// Every solvent a form offers has its data, and nothing else does.
func TestEverySolvent(t *testing.T) {
	for _, c := range field.Solvent.Choices {
		assert.Contains(t, liquids, c.Key)
		_, _, refused := FlashTime(nil, ten, air(20, 50, 0.2), air(25, 50, 0.3), c.Key)
		assert.Nil(t, refused, c.Key)
	}
	assert.Len(t, liquids, len(field.Solvent.Choices)+1)
}

// The spread that a second reading of the model found, one figure changed at a time, at 0.2 m/s against 20 °C and 50 %.
// The range given reaches as far, within 2 %.
func TestRangeCoversTheSpread(t *testing.T) {
	for _, c := range []struct{ t, rh, low, high float64 }{{25, 50, 0.74, 0.79}, {15, 85, 4.5, 5.8}, {30, 80, 1.50, 2.31}} {
		_, least, most := scale(nil, air(20, 50, 0.2), air(c.t, c.rh, 0.2), Water)
		assert.LessOrEqual(t, least.V, c.low, c)
		assert.GreaterOrEqual(t, most.V, 0.98*c.high, c)
	}
}

func TestRefusals(t *testing.T) {
	ref := air(20, 50, 0.2)
	cold := air(20, 60, 0.2)
	cold.Panel = calc.N(14, unit.DegC)
	for _, c := range []struct {
		now    Climate
		liquid string
		key    string
	}{
		{air(4, 50, 0.2), Water, "air"}, {air(46, 50, 0.2), "acetone", "air"}, {air(20, 90, 0.2), Water, "humidity"},
		{air(5, 87, 0.2), Water, "humidity"}, {cold, Water, "panel"}, {air(12, 79, 0), Water, "flash"},
	} {
		r := Refuse(ref, c.now, c.liquid)
		if assert.NotNil(t, r, c.key) {
			assert.Equal(t, c.key, r.Input.Key)
		}
		low, _, refused := FlashTime(nil, ten, ref, c.now, c.liquid)
		assert.NotNil(t, refused)
		assert.False(t, low.Given())
	}
	assert.Nil(t, Refuse(ref, cold, "toluene"), "dew is judged elsewhere")
	_, _, refused := FlashTime(nil, ten, ref, air(20, 92, 0.2), Water)
	assert.Equal(t, "cannot be scaled: the humidity must be under 90 % to scale a water film's flash-off: above it a hygrometer's error is a third of the answer", refused.Error())
}

// What must hold in any two climates: the sheet's own air changes nothing, damper or colder air is never quicker,
// faster air never slower, and the range holds the ordinary panel.
func TestInAnyAir(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	keys := []string{Water, "butyl-acetate", "acetone", "butyl-glycol"}
	for n := range 400 {
		liquid := keys[n%len(keys)]
		ref := air(15+15*r.Float64(), 30+40*r.Float64(), r.Float64())
		now := air(8+30*r.Float64(), 15+70*r.Float64(), 2*r.Float64())
		low, high, _ := flash(nil, ten, ref, ref, liquid)
		assert.Equal(t, [2]float64{10, 10}, [2]float64{low.V, high.V})
		if Refuse(ref, now, liquid) != nil {
			continue
		}
		ratio, least, most := scale(nil, ref, now, liquid)
		if !(least.V <= ratio.V && ratio.V <= most.V) {
			t.Fatalf("%s %+v: %g not in %g to %g", liquid, now, ratio.V, least.V, most.V)
		}
		worse := func(what string, change func(*Climate)) {
			other := now
			change(&other)
			if x, _, _ := scale(nil, ref, other, liquid); x.V < ratio.V*(1-1e-6) {
				t.Fatalf("%s %+v: %s makes it quicker, %g < %g", liquid, now, what, x.V, ratio.V)
			}
		}
		worse("damper air", func(c *Climate) { c.Humidity.V += 3 })
		worse("cooler air", func(c *Climate) { c.Air.V, c.Panel.V = c.Air.V-2, c.Panel.V-2 })
		worse("a colder panel", func(c *Climate) { c.Panel.V -= 2 })
		worse("slower air", func(c *Climate) { c.AirSpeed.V *= 0.7 })
	}
}

// 23 °C and 50 % gives 747 µm²/s with a psychrometer's wet bulb and 619 with the drop's own (computed, second reader);
// the thermodynamic wet bulb lies within 3 % of the first. A desert dries water 3.56 times as hard, and damp air less.
func TestStrength(t *testing.T) {
	at := func(c, rh float64) float64 {
		return Strength(nil, calc.N(c, unit.DegC), calc.N(rh, unit.Percent), calc.N(standardAir, unit.Pascal)).V
	}
	ref := at(23, 50)
	assert.InEpsilon(t, 747, ref, 0.03)
	for _, c := range []struct{ t, rh, ratio float64 }{{40.6, 4, 3.56}, {35, 20, 2.44}, {30, 30, 1.81}, {21, 50, 0.93}, {30, 70, 0.73}, {15, 80, 0.29}} {
		assert.InEpsilon(t, c.ratio, at(c.t, c.rh)/ref, 0.04, c)
	}
	assert.InDelta(t, 0, at(20, 100), 1e-6)
}

func BenchmarkFlashTime(b *testing.B) {
	ref, now := air(20, 50, 0.2), air(18, 75, 0.3)
	for b.Loop() {
		if _, _, refused := FlashTime(nil, ten, ref, now, Water); refused != nil {
			b.Fatal(refused)
		}
	}
}
