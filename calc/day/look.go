package day

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/field"
)

// dayLook goes on looking for a better plan without the report, which takes longer to write than the steps to try.
func (s *session) dayLook() *calc.Calculator {
	return &calc.Calculator{
		ID:       "day-look",
		Title:    "Looking for a better plan",
		Question: "Has the plan of this day become another one?",
		Range:    "Forms of the booth day.",
		Inputs:   form("", lookGroups),
		Outputs:  []calc.Output{triedNow, triedNext, planIs},
		Work: func(w *calc.Working) {
			d := s.look(calc.ParseForm(words(w.Entry, &field.DayForm)))
			if d.solver == nil {
				reject(w.Entry, &field.DayForm, "has no plan", "Put right first what it marks")
				return
			}
			d.steps(w)
			w.Tell(planIs, say("{n}", "n", d.fingerprint()))
		},
		Arithmetic: true,
	}
}

var (
	lookGroups = []group{{"", []*calc.Input{&field.DayForm}}}

	planIs = calc.Output{Key: "plan_is", Label: "Mark of the plan", Words: true}
)

// look plans a form as the day does, without its report.
func (s *session) look(form calc.Form) *day {
	s.looking = true
	s.day().Run(form)
	s.looking = false
	return s.last
}

// planned is the day of a form with its plan and nothing more, so that the solver stays where it is.
func (s *session) planned(form calc.Form) *day {
	s.behind = true
	d := s.look(form)
	s.behind = false
	return d
}

// fingerprint is another number when anything in the plan or in what is proven about it is another (FNV-1a, 64 bits; from
// memory).
func (d *day) fingerprint() string {
	h := uint64(14695981039346656037)
	add := func(ns ...int) {
		for _, n := range ns {
			h = (h ^ uint64(n)) * 1099511628211
		}
	}
	add(d.plan.Cost, d.plan.Finish, d.bound.Finish)
	if d.solver.Proven() {
		add(1)
	}
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		add(int(s.Kind), s.Job, s.Coat, s.Cup, s.Painter, s.Place, s.Start, s.End, s.Latest)
	}
	return strconv.FormatUint(h, 10)
}
