package mixing

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Rounded is a scale reading in g as a scale with this step (g, above 0) can show it.
func Rounded(w *calc.Working, reading, step calc.Num) calc.Num {
	return w.Step(w.Named("{reading}, as the scale shows it", calc.Term(reading.Label, "reading")), "R = round(G / d) * d", unit.Gram, source.Definition,
		math.Round(reading.V/step.V)*step.V, reading, step)
}

// Shown are what each part adds to a scale that is never set back to zero, and what it then reads, both as the scale can
// show them (g). A part is the difference of two readings: what is poured between them, so that the parts on the card add up
// to the reading at its end, while rounding each by itself would be out by a step for every second part.
func Shown(w *calc.Working, cs []Component, step calc.Num) (added, readings []calc.Num) {
	before := calc.Num{}
	for _, c := range cs {
		r := Rounded(w, c.Reading, step)
		a := r
		if before.Given() {
			a = w.Step("Added on the scale", "m = R - R_0", unit.Gram, source.Definition, r.V-before.V, r, before)
		}
		added, readings, before = append(added, a), append(readings, r), r
	}
	return added, readings
}

// RatioError is how far, in percent, any part can be out against the first when every reading is right to half a
// step (g) of the scale: the first part can be half a step short, and a later one, which lies between two
// readings, a whole step over. It is not Given when a part weighs less than a step: there is then no bound.
func RatioError(w *calc.Working, cs []Component, step calc.Num) calc.Num {
	first, light := cs[0].Mass, calc.Num{}
	for _, c := range cs[1:] {
		if c.Mass.V > 0 && (!light.Given() || c.Mass.V < light.V) {
			light = c.Mass
		}
	}
	d := step.V
	if !light.Given() || light.V < d || first.V < d {
		return calc.Num{Unit: unit.Percent}
	}
	return w.Step("Worst error of the ratio from the scale's step", "E = ((1 + d / m) / (1 - d / (2 * m_1)) - 1) * 100", unit.Percent, source.Definition,
		((1+d/light.V)/(1-d/(2*first.V))-1)*100, step, light, first)
}
