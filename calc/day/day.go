// Package day plans several jobs through one shop: it reads the form, has package plan make the plan, and says what to
// do when.
package day

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/core"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// Core is the core of the booth day: the day, and what only its page asks for. The calculators of one core remember the last
// day together, so that a form which differs from it in nothing but the steps to try goes on from where that ended. It is
// put together here so that its program holds nothing of the other topics.
func Core() core.Core {
	s := &session{}
	return core.Core{Name: "day", Topics: []core.Topic{
		{ID: "day", Title: "The booth day", Makers: []calc.Maker{{ID: "day", Make: s.day}}},
		{ID: "day-form", Makers: []calc.Maker{{ID: "day-change", Make: s.dayChange}, {ID: "day-look", Make: s.dayLook}}},
	}}
}

// day is the calculator of the booth day.
func (s *session) day() *calc.Calculator {
	return &calc.Calculator{
		ID:       "day",
		Title:    "The booth day",
		Question: "Which job when, when do I mix and rinse, and when is each done?",
		Range: "Up to 120 jobs, 8 painters and 8 booths, in whole minutes. Never broken: flash-off, latest recoat, pot life, breaks, and one thing at a time. " +
			"What cannot be met is named with the least change that would do.",
		Inputs:     inputs(),
		Outputs:    outputs(),
		Work:       func(w *calc.Working) { s.last = s.work(w) },
		Cautions:   []calc.Phrase{"The plan knows only the times you typed: touch-test the flash-off, and let the data sheet decide."},
		InStages:   true,
		Arithmetic: true,
	}
}

// A day is one run: what has been read and worked out so far.
type day struct {
	*calc.Working
	start  int // of the day, in minutes after midnight
	model  plan.Day
	jobs   []*job
	paints []*paint
	done   []stepRow
	pins   []stepRow
	plan   plan.Plan // where planned
	bound  plan.Bound
	solver *plan.Solver // nil where there is no plan
	// soonest is when each job could be done with the shop to itself, where that is after its promise; else 0
	soonest []int
	tried   int // steps, for this plan
}

// work reads the form stage by stage, so that rows read as sentences while others are still being filled in, and plans
// the day once all of it is in order.
func (s *session) work(w *calc.Working) *day {
	d := &day{Working: w}
	if w.Ready(placeShop) {
		d.readShop()
	}
	d.readPaints()
	d.readJobs()
	d.readRounds()
	ready := w.Ready(placeShop, placeProducts, placeJobs, placeCoats)
	if ready {
		d.check()
		d.readBreaks()
		d.readSoFar()
	}
	if !w.Ready(placeShop, placeProducts, placeJobs, placeCoats, placeBreaks, placeSoFar) {
		return d
	}
	d.cautions()
	tries := firstTries
	if x := given(w.Entry, &field.Tried); x.Given() {
		tries = int(x.V)
	}
	solver, faults, n := s.solve(w.Form(), &d.model, tries)
	d.soonest = make([]int, len(d.jobs))
	d.faults(faults, solver != nil)
	if solver == nil {
		return d
	}
	d.solver, d.plan, d.bound = solver, s.best(n), solver.Bound()
	d.tried = n
	if !s.looking {
		d.report()
	}
	return d
}

// cautions are shown for what the day really has in it.
func (d *day) cautions() {
	for i := range d.model.Products {
		if d.model.Products[i].PotLife > 0 {
			d.Caution(caution.PotLife)
		}
	}
	for i := range d.model.Jobs {
		if d.model.Jobs[i].Bake.Minutes > 0 {
			d.Caution(caution.Bake)
		}
	}
}
