package calc

import (
	"math"

	"spraywright/calc/unit"
)

// A Nudge is what stands next below and next above a number on the scale that its input steps along, written as a person
// would type it, in the unit that the number is in. Beyond the input's limits it is blank.
type Nudge struct{ Field, Less, More string }

// nudge notes the marks beside a number, x in u.
func (r *reader) nudge(field string, in *Input, x float64, u unit.Unit) {
	if in.Step == 0 {
		return
	}
	m, e := niceStep(unit.Convert(in.Step, in.Unit, u) - unit.Convert(0, in.Unit, u))
	step := m * math.Pow10(e)
	at := func(k float64) string {
		own := unit.Convert(k*step, u, in.Unit)
		if slack := 1e-9 * (math.Abs(in.Limits.Min) + math.Abs(in.Limits.Max)); own < in.Limits.Min-slack || own > in.Limits.Max+slack {
			return ""
		}
		return r.number(fixed(k*step, max(0, -e)))
	}
	// A number that stands on a mark goes to the one beside it, whatever its last bit.
	const hair = 1e-6
	r.nudges = append(r.nudges, Nudge{field, at(math.Ceil(x/step-hair) - 1), at(math.Floor(x/step+hair) + 1)})
}

// niceStep is the nearest of 1, 2 and 5 times a power of ten, which is how dials and gauges are marked: m·10^e.
func niceStep(x float64) (m float64, e int) {
	e = int(math.Floor(math.Log10(x) + 1e-9))
	switch f := x / math.Pow10(e); {
	case f < math.Sqrt2: // halfway between 1 and 2 in proportion
		return 1, e
	case f < 3.1623: // √10
		return 2, e
	case f < 7.0711: // √50
		return 5, e
	}
	return 1, e + 1
}
