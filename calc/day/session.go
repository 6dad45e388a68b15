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
	plans  []found // each better than the one before

	looking bool // what is run now wants no report
	behind  bool // it wants the plan alone, which may be one that has been bettered since
}

// found is a plan, and after how many steps it was the best.
type found struct {
	tried int
	plan  plan.Plan
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
	if !s.knows(form) || s.tried > want && !s.behind {
		s.form, s.tried, s.plans = maps.Clone(form), 0, nil
		if s.solver, s.faults = plan.New(model, seed); s.solver != nil {
			s.keep()
		}
	}
	for s.solver != nil && s.tried < want && !s.solver.Settled() {
		better := s.solver.Improve(stride)
		if s.tried += stride; better {
			s.keep()
		}
	}
	return s.solver, s.faults, want
}

func (s *session) keep() { s.plans = append(s.plans, found{s.tried, s.solver.Best()}) }

// best is the best plan after so many steps, no more than have been tried.
func (s *session) best(tried int) (p plan.Plan) {
	for i := range s.plans {
		if s.plans[i].tried <= tried {
			p = s.plans[i].plan
		}
	}
	return p
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
