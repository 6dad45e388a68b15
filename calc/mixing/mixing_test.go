package mixing_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"spraywright/calc"
	"spraywright/calc/mixing"
	"spraywright/calc/unit"

	"github.com/stretchr/testify/assert"
)

func kgL(xs ...float64) (ns []calc.Num) {
	for _, x := range xs {
		ns = append(ns, calc.N(x, unit.KilogramPerLitre))
	}
	return ns
}

func grams(xs ...float64) (ns []calc.Num) {
	for _, x := range xs {
		ns = append(ns, calc.N(x, unit.Gram))
	}
	return ns
}

// 600 mL of 4:1:1 are 400, 100 and 100 mL; by density 520, 105 and 87 g. Worked by hand.
func ExampleComponents() {
	cs, total := mixing.Components(nil, []float64{4, 1, 1}, false, kgL(1.30, 1.05, 0.87), calc.N(600, unit.Millilitre))
	for _, c := range cs {
		fmt.Printf("%.0f mL  %.1f g  scale %.1f g\n", c.Volume.V, c.Mass.V, c.Reading.V)
	}
	fmt.Printf("%.1f g\n", total.V)
	// Output:
	// 400 mL  520.0 g  scale 520.0 g
	// 100 mL  105.0 g  scale 625.0 g
	// 100 mL  87.0 g  scale 712.0 g
	// 712.0 g
}

func random(r *rand.Rand) (parts []float64, rho []calc.Num, volume calc.Num) {
	for range 1 + r.IntN(6) {
		parts = append(parts, 0.05+20*r.Float64())
		rho = append(rho, kgL(0.6+1.5*r.Float64())...)
	}
	return parts, rho, calc.N(20+5000*r.Float64(), unit.Millilitre)
}

func TestPartsMakeTheWhole(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		parts, rho, volume := random(r)
		for _, byWeight := range []bool{false, true} {
			cs, total := mixing.Components(nil, parts, byWeight, rho, volume)
			mass, filled := 0.0, 0.0
			for i, c := range cs {
				mass, filled = mass+c.Mass.V, filled+c.Volume.V
				assert.InEpsilon(t, mass, c.Reading.V, 1e-12)
				poured := c.Volume.V / cs[0].Volume.V
				if byWeight {
					poured = c.Mass.V / cs[0].Mass.V
				}
				assert.InEpsilon(t, parts[i]/parts[0], poured, 1e-12)
				assert.InEpsilon(t, c.Volume.V*c.Density.V, c.Mass.V, 1e-12)
			}
			assert.InEpsilon(t, total.V, mass, 1e-12)
			assert.InEpsilon(t, volume.V, filled, 1e-12)
			assert.InEpsilon(t, total.V/volume.V, mixing.MixDensity(nil, parts, byWeight, rho).V, 1e-12)
		}
	}
}

func TestRatioThereAndBack(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		parts, rho, _ := random(r)
		var weights, back []float64
		for _, n := range mixing.WeightRatio(nil, parts, rho) {
			weights = append(weights, n.V)
		}
		for _, n := range mixing.VolumeRatio(nil, weights, rho) {
			back = append(back, n.V)
		}
		assert.InDeltaSlice(t, parts, back, 1e-12)
		assert.Equal(t, parts[0], weights[0])
	}
}

// However the scale rounds, no part comes out further from the ratio than the bound, and some pours come near it.
func TestRatioErrorIsABound(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 300 {
		parts, rho, volume := random(r)
		if len(parts) < 2 {
			continue
		}
		cs, _ := mixing.Components(nil, parts, false, rho, volume)
		lightest := cs[0].Mass.V
		for _, c := range cs {
			lightest = min(lightest, c.Mass.V)
		}
		d := lightest * (0.001 + 0.9*r.Float64())
		bound := mixing.RatioError(nil, cs, calc.N(d, unit.Gram)).V / 100
		for range 20 {
			in, first := 0.0, 0.0
			for i, c := range cs {
				shown := c.Reading.V + (r.Float64()-0.5)*d // anything the scale cannot tell from the target
				poured := shown - in
				in = shown
				if i == 0 {
					first = poured / c.Mass.V
				}
				assert.LessOrEqual(t, math.Abs(poured/c.Mass.V/first-1), bound+1e-12)
			}
		}
	}
	cs := []mixing.Component{{Mass: grams(500)[0]}, {Mass: grams(10)[0]}}
	step := calc.N(1, unit.Gram)
	assert.InDelta(t, 100*(11.0/10*500/499.5-1), mixing.RatioError(nil, cs, step).V, 1e-9) // 11 g in 499.5 g
	assert.False(t, mixing.RatioError(nil, cs, calc.N(20, unit.Gram)).Given(), "no bound for a part lighter than the step")
	assert.False(t, mixing.RatioError(nil, cs[:1], step).Given(), "one part has no ratio")
}

func TestRounded(t *testing.T) {
	for _, c := range []struct{ reading, step, want float64 }{
		{712.04, 0.1, 712.0}, {712.05001, 0.1, 712.1}, {712, 5, 710}, {712.5, 5, 715}, {0.4, 1, 0},
	} {
		assert.InDelta(t, c.want, mixing.Rounded(nil, calc.N(c.reading, unit.Gram), calc.N(c.step, unit.Gram)).V, 1e-9)
	}
}

func TestCorrectedKeepsTheRatioAndTakesNothingOut(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 500 {
		var targets, poured []float64
		for range 1 + r.IntN(6) {
			m := 1 + 500*r.Float64()
			targets, poured = append(targets, m), append(poured, m*1.4*r.Float64())
		}
		q, masses, adds := mixing.Corrected(nil, grams(targets...), grams(poured...))
		assert.GreaterOrEqual(t, q.V, 1.0)
		for i := range masses {
			assert.InEpsilon(t, targets[i]/targets[0], masses[i].V/masses[0].V, 1e-12)
			assert.GreaterOrEqual(t, adds[i].V, 0.0)
			assert.InEpsilon(t, masses[i].V, poured[i]+adds[i].V, 1e-12)
		}
	}
}

func TestBlendGivesTheStrength(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	pct := func(x float64) calc.Num { return calc.N(x, unit.Percent) }
	for range 200 {
		a := 50 * r.Float64()
		b := a + 1 + 49*r.Float64()
		want := a + (b-a)*r.Float64()
		weak, strong := mixing.Blend(nil, pct(a), pct(b), pct(want), calc.N(1000, unit.Millilitre))
		assert.InDelta(t, 1000, weak.V+strong.V, 1e-9)
		assert.InDelta(t, want, (a*weak.V+b*strong.V)/1000, 1e-9)
	}
}
