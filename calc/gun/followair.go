package gun

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// ownPairs: what a shop's own settings say about the one number that is practice and not physics.
var ownPairs = source.Definition.At("least squares through the usual pressure, in logarithms")

// Exponent is how strongly a kind of gun's start pressure follows the drying strength of the air; kind is a key of the
// gun's choices. ok is false for kinds that nothing is known of.
func Exponent(w *calc.Working, kind string) (m calc.Num, ok bool) { return exponent(w, kind) }

// FollowAir is the inlet pressure in psi to start from: ref psi works where air dries drops with strength then, m is
// the exponent and now today's strength. It is rounded to step (psi), never above most, nor below 20 psi or ref where
// that is lower. asked is what the law gives before that. then must be above 0.
func FollowAir(w *calc.Working, m, ref, most, now, then, step calc.Num) (asked, start calc.Num) {
	asked = follow(w, m, ref, now, then)
	low := w.Constant("Lowest that still breaks paint up", unit.PSI, capLow, lowestPressure)
	start = w.Step("Start pressure, to what a gauge shows", "P = min(floor(P_max / s + 0.001), round(max(P_air, min(P_low, P_ref)) / s)) * s", unit.PSI, source.Definition,
		math.Min(math.Floor(most.V/step.V+0.001), math.Round(math.Max(asked.V, math.Min(low.V, ref.V))/step.V))*step.V,
		most, step, asked, low, ref)
	return asked, start
}

// A Pair is a pressure in psi that worked where the air dried drops Ratio times as fast as where the usual one works.
type Pair struct{ Ratio, Pressure calc.Num }

const (
	// leastTelling is the least sum of squared logarithms of the ratios that says anything: one pair in air that dries
	// about 1.3 times as fast, or 0.75 times.
	leastTelling = 0.07

	// enoughPairs lets their scatter be told.
	enoughPairs = 3
)

// RefitExponent is the exponent that a shop's own pairs give: the slope of ln(ref/P) on ln(ratio). spread is its
// standard error, from three pairs on; with fewer it is not Given. ok is false where the air of all pairs is too much
// like ordinary air to tell.
func RefitExponent(w *calc.Working, ref calc.Num, pairs []Pair) (m, spread calc.Num, ok bool) {
	var xx, xy float64
	args := []calc.Arg{ref.As("P_ref")}
	for _, p := range pairs {
		x, y := p.logs(ref)
		xx, xy = xx+x*x, xy+x*y
		args = append(args, p.Ratio.As("r"), p.Pressure.As("P"))
	}
	if xx < leastTelling {
		return m, spread, false
	}
	slope := xy / xx
	m = w.Model("How far pressure follows the air, by your own pairs", "the slope of ln(P_ref / P) on ln(r), by least squares", unit.One, ownPairs, slope, args...)
	if len(pairs) < enoughPairs {
		return m, spread, true
	}
	var rest float64
	for _, p := range pairs {
		x, y := p.logs(ref)
		rest += (y - slope*x) * (y - slope*x)
	}
	spread = w.Model("Standard error of that number", "from how far the pairs lie off that line", unit.One, ownPairs,
		math.Sqrt(rest/float64(len(pairs)-1)/xx), append(args, m.As("m"))...)
	return m, spread, true
}

func (p Pair) logs(ref calc.Num) (x, y float64) {
	return math.Log(math.Max(p.Ratio.V, leastDrying)), math.Log(ref.V / p.Pressure.V)
}

// dropGrows is the power of the pressure with which drops get finer.
const dropGrows = 0.55

var finer = source.Atomizing.At("powers of the inlet pressure from 0.30 to 0.91; 0.55 is taken").By(source.Memory)

// DropSize is the size in µm that a drop of size µm at pressure ref has at pressure p, both in psi.
func DropSize(w *calc.Working, size, ref, p calc.Num) calc.Num {
	n := w.Constant("Power with which drops get finer", unit.One, finer, dropGrows)
	return w.Step("Drop at that pressure", "d = d_ref * pow(P_ref / P, n)", unit.Micrometre, finer, size.V*math.Pow(ref.V/p.V, n.V), size, ref, p, n)
}
