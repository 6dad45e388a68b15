package plan

import (
	"spraywright/calc/day/plan/sequence"
	"spraywright/calc/day/plan/shop"
)

// Solver holds the best plan so far and improves it for as long as it is asked to. The number of evaluations is its only
// clock: what it finds does not hang on how fast the machine is, or on how the evaluations are dealt out.
type Solver struct {
	d     *Day
	p     *sequence.Problem
	v     *sequence.Solver
	end   *sequence.Solver // looks at the end of the day alone, for its bound
	turns int
	seed  uint64
	m     machines // a job shop's; nil for a day
}

// machines is what looks for the plan of a job shop. It is an interface so that a program which makes no job shop holds
// none of its code.
type machines interface {
	Improve(evaluations int) bool
	Proven() bool
	Evaluations() int
	best() Plan
	bound() int
}

// shopSolver is the one there is.
type shopSolver struct {
	*shop.Solver
	tasks [][]Task
}

func (s *shopSolver) bound() int { return int(s.Bound()) }

// New makes a solver with a first plan. Where the day has none it returns no solver, and what is in the way. Faults that
// are soft come with a solver.
func New(d *Day, seed uint64) (*Solver, []Fault) {
	if faults := Check(d); len(faults) > 0 {
		return nil, faults
	}
	s := &Solver{d: d, p: problem(d), seed: seed}
	s.v = sequence.New(s.p, seed)
	if !s.v.Found() {
		if faults := s.rescue(); len(faults) > 0 {
			return nil, faults
		}
	}
	first := s.Best()
	return s, tooSoon(d, &first)
}

// forEnd is the solver for the end of the day alone.
func (s *Solver) forEnd() *sequence.Solver {
	if s.end == nil {
		only := *s.d
		only.Aim = FinishOnly()
		s.end = sequence.New(problem(&only), s.seed)
	}
	return s.end
}

// endShare is how much of each turn of turn evaluations goes into the bound of the day's end.
const (
	turn     = 20000
	endShare = 2000
)

// Improve looks for a better plan by trying about that many steps, and tells whether it found one.
func (s *Solver) Improve(evaluations int) bool {
	if s.m != nil {
		return s.m.Improve(evaluations)
	}
	better := false
	for evaluations > 0 && !s.settled() {
		left := turn - s.turns%turn
		n := min(evaluations, left)
		endNow := left <= endShare && !s.forEnd().Settled()
		if left > endShare {
			n = min(n, left-endShare)
		}
		if endNow || s.v.Settled() {
			s.forEnd().Improve(n)
		} else if s.v.Improve(n) {
			better = true
		}
		evaluations -= n
		s.turns += n
	}
	return better
}

// settled tells that more evaluations would change nothing.
func (s *Solver) settled() bool { return s.v.Settled() && s.forEnd().Settled() }

// Settled tells that more evaluations change neither the plan nor its bounds.
func (s *Solver) Settled() bool {
	if s.m != nil {
		return s.m.Proven()
	}
	return s.settled()
}

// Best is the best plan so far.
func (s *Solver) Best() Plan {
	if s.m != nil {
		return s.m.best()
	}
	cost, _ := s.v.Cost()
	return build(s.d, s.p, s.v.Plan(), cost)
}

// Bound is what no plan beats, as far as it is known. Against Best's figures it gives the gap.
func (s *Solver) Bound() Bound {
	if s.m != nil {
		return Bound{Cost: s.m.bound(), Finish: s.m.bound()}
	}
	return Bound{Cost: int(s.v.Bound()), Finish: int(s.forEnd().Bound())}
}

// Proven tells that no plan costs less than the best one.
func (s *Solver) Proven() bool {
	if s.m != nil {
		return s.m.Proven()
	}
	return s.v.Proven()
}

// Evaluations is how many steps have been tried so far.
func (s *Solver) Evaluations() int {
	if s.m != nil {
		return s.m.Evaluations()
	}
	if s.end == nil {
		return s.v.Evaluations()
	}
	return s.v.Evaluations() + s.end.Evaluations()
}

// Task is one operation of a job in a job shop: its machine from 0 on, and its minutes.
type Task = shop.Task

// NewShop makes a solver for a plain job shop: machines are places, and there are no painters, cups or waits. The cost of
// a plan is the end of the last job.
func NewShop(jobs [][]Task, seed uint64) *Solver {
	return &Solver{m: &shopSolver{shop.New(jobs, seed), jobs}}
}

// best is the best plan so far.
func (s *shopSolver) best() Plan {
	out := Plan{Jobs: make([]JobEnd, len(s.tasks))}
	for j, starts := range s.Starts() {
		for i, start := range starts {
			t := s.tasks[j][i]
			end := int(start + t.Minutes)
			out.Steps = append(out.Steps, Step{Kind: Work, Job: j, Coat: i, Product: -1, Place: t.Machine + 1, Start: int(start), End: end, Latest: -1})
			out.Jobs[j].Done = end
			out.Finish = max(out.Finish, end)
		}
	}
	out.Cost = out.Finish
	order(out.Steps)
	return out
}
