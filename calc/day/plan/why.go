package plan

import "spraywright/calc/day/plan/sequence"

// purse is what looking for a plan, and for what is in its way, may still take, in evaluations times the jobs that each
// has to look at.
type purse int

const (
	forPlan   purse = 4000000 // to find a plan where the day's jobs one after the other are none
	forReason purse = 4000000 // to find why there is none
)

// answer is what is known of a plan.
type answer uint8

const (
	unknown answer = iota // the purse was empty before it was known
	no
	yes
)

// possible tells whether a day has a plan at all.
func (left *purse) possible(d *Day) (answer, *sequence.Solver) {
	v := sequence.New(problem(d), 1)
	each, spent := 3+len(d.Jobs), 0
	for spent = v.Evaluations(); !v.Found() && !v.Proven() && int(*left) > each*spent; spent = v.Evaluations() {
		v.Improve(min(2000, 1+int(*left)/each-spent))
	}
	*left -= purse(each * (spent + 20))
	switch {
	case v.Found():
		return yes, v
	case v.Proven():
		return no, v
	}
	return unknown, v
}

// rescue looks for a plan where there is none of one job after the other: the jobs that are bound first, then the
// others. Without one it tells why.
func (s *Solver) rescue() []Fault {
	reason := forReason
	if all := reason.byThemselves(s.d); len(all) > 0 {
		return all
	}
	jobs := bound(s.d)
	core := part(s.d, jobs)
	left := forPlan
	can, v := left.possible(core)
	if can == yes {
		var turns []sequence.Turn
		for _, x := range v.Plan() {
			turns = append(turns, sequence.Turn{Chain: jobs[x.Chain], Op: x.Op})
		}
		s.v.Follow(turns)
	}
	for each := purse(3 + len(s.d.Jobs)); can != no && !s.v.Found() && !s.v.Proven() && left > 0; left -= 2000 * each {
		s.v.Improve(2000)
	}
	if s.v.Found() {
		return nil
	}
	var all []Fault
	if can == no {
		all = reason.remedies(core)
	}
	for i := range all {
		all[i].Job = jobs[all[i].Job]
		all[i].Rule, all[i].Of = Together, all[i].Rule
	}
	if len(all) == 0 {
		all = append(all, Fault{Rule: Together, Ref: Ref{Job: -1}, Product: -1, Needs: -1, Unknown: can != no && !s.v.Proven()})
	}
	return all
}

// byThemselves finds the jobs that are impossible even with the shop to themselves, with every single change that would
// help, and the least amount of it.
func (left *purse) byThemselves(d *Day) []Fault {
	var all []Fault
	for j := range d.Jobs {
		one := alone(d, j)
		if can, _ := left.possible(one); can != no {
			continue
		}
		found := left.remedies(one)
		for i := range found {
			found[i].Job = j
		}
		if len(found) == 0 {
			found = append(found, Fault{Rule: Together, Ref: Ref{Job: j}, Product: -1, Needs: -1})
		}
		all = append(all, found...)
	}
	return all
}

// remedies tries each limit by itself: the least by which it has to give for a plan to exist. Where none helps alone, it
// gives them one after the other as little as will do with those to come out of the way.
func (left *purse) remedies(d *Day) []Fault {
	var all []Fault
	list := limits(d)
	for i := range list {
		if needs, ok := left.leastChange(d, list[i:i+1]); ok {
			f := list[i].fault
			f.Needs = needs
			all = append(all, f)
		}
	}
	if len(all) > 0 {
		return all
	}
	x := loosened(d)
	for i := range list {
		needs, ok := left.leastChange(x, list[i:])
		if !ok {
			return nil
		}
		list[i].set(x, needs)
		if f := list[i].fault; needs > f.Has {
			f.Needs, f.AllOf = needs, true
			all = append(all, f)
		}
	}
	return all
}
