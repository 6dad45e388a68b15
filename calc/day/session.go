package day

import (
	"maps"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// A session remembers the last day that was planned, and its solver. It changes how long an answer takes, never the
// answer: the same day and number of steps give the same plan whether the solver began anew or went on.
type session struct {
	last   *day
	form   calc.Form // of the day below
	solver *plan.Solver
	faults []plan.Fault
	tried  int

	looking bool // what is run now wants no report
}

const (
	seed       = 1
	stride     = 1000  // steps tried at one go; the same for every way to a number, so that the plan is, too
	firstTries = 2000  // where the form says nothing
	moreTries  = 20000 // what a page may ask for next
)

// solve plans the day of a form by trying so many steps, rounded up to whole strides. tried tells how many the form would
// have to say for this plan.
func (s *session) solve(form calc.Form, model *plan.Day, want int) (solver *plan.Solver, faults []plan.Fault, tried int) {
	want = (want + stride - 1) / stride * stride
	if !s.knows(form) || s.tried > want {
		s.form, s.tried = maps.Clone(form), 0
		s.solver, s.faults = plan.New(model, seed)
	}
	for ; s.solver != nil && s.tried < want && !s.solver.Settled(); s.tried += stride {
		s.solver.Improve(stride)
	}
	return s.solver, s.faults, want
}

// knows reports whether a form is the last one but for the steps to try, and for whether the working is written down.
func (s *session) knows(form calc.Form) bool {
	in := func(a, b calc.Form) bool {
		for key, text := range a {
			if key != field.Tried.Key && key != "working" && b[key] != text {
				return false
			}
		}
		return true
	}
	return s.form != nil && in(form, s.form) && in(s.form, form)
}
