package exercise

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A Judgement is what an answer is found to be.
type Judgement struct {
	Is      Standing // blank where the answer cannot be read
	Yours   string   // the answer as it was understood
	Mistake string   // a sentence on what it comes from, blank where nothing explains it
}

// A Standing is how near an answer is.
type Standing string

// The standings.
const (
	Right Standing = "right"
	Close Standing = "close"
	Off   Standing = "off"
)

// Judge reads an answer, "3/4 qt", or a number and the unit chosen beside it. Where it cannot be read, the problems with
// it become the task's.
func (t *Task) Judge(text, unitID string) (j Judgement) {
	x, u := t.read(text, unitID)
	if t.Problems != nil {
		return j
	}
	j.Is, j.Yours = t.stands(x, u), t.quantity(unit.Convert(x, t.out.Unit, u), u)
	if j.Is == Off {
		j.Mistake = t.explain(x, u)
	}
	return j
}

// read takes an answer as a form would, as a number in the output's own unit, and the unit it was given in.
func (t *Task) read(text, unitID string) (x float64, u unit.Unit) {
	in := calc.Input{Key: "answer", Label: "Your answer", Unit: t.out.Unit, Limits: calc.Between(-1e12, 1e12), Example: 12}
	x, u, named, ps := t.ReadOne(&in, calc.Form{"answer": text, "answer.unit": unitID})
	t.Problems = ps
	if ps != nil {
		return x, u
	}
	if !named && len(unit.Of(u.Quantity())) > 1 {
		t.problem("answer", calc.Missing, "Your answer has no unit", "Choose it, or write it after the number", "")
	}
	return unit.Convert(x, u, t.out.Unit), u
}

// slack is how far from a number x, in the output's own unit, an answer given in a unit may be to count as right, and to
// count as close. It is right within its share of x, or within one step of the last digit that the painter's tool shows in
// the unit; where that step is more than counts as close, within half of it. Shares of a temperature are of at least
// 10 °C, because its zero is not nothing.
func (t *Task) slack(x float64, u unit.Unit) (rightly, closely float64) {
	size, own := math.Abs(x), t.out.Unit
	if own.Quantity() == unit.Temperature {
		size = max(size, 10)
	}
	digit := math.Pow10(-unit.Decimals(t.out.Decimals, own, u))
	digit = unit.Convert(digit, u, own) - unit.Convert(0, u, own)
	closely = t.nearIn * size
	rightly = max(t.rightIn*size, min(digit, closely), digit/2) * (1 + 1e-6)
	return rightly, max(closely, rightly)
}

// stands compares an answer with the right one, both in the output's own unit.
func (t *Task) stands(x float64, u unit.Unit) Standing {
	rightly, closely := t.slack(t.right, u)
	switch off := math.Abs(x - t.right); {
	case off <= rightly:
		return Right
	case off <= closely:
		return Close
	}
	return Off
}

// explain names the mistake that an answer most likely comes from: the nearest of those whose number it hits as it would
// have to hit the right one.
func (t *Task) explain(x float64, u unit.Unit) string {
	f := finder{t: t, u: u, runs: runs}
	f.find()
	says, nearest := "", math.Inf(1)
	for i := range f.traps {
		trap := &f.traps[i]
		rightly, _ := t.slack(trap.x, u)
		// A number that two mistakes lead to is put down to the first.
		if far := math.Abs(x - trap.x); far <= rightly && far < nearest-1e-6*rightly {
			nearest, says = far, f.says(trap)
		}
	}
	return says
}
