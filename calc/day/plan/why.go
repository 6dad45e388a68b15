package plan

import "spraywright/calc/day/plan/sequence"

// Limits of looking for what is in the way, in evaluations.
const (
	enoughAlone    = 200000
	enoughTogether = 400000
)

// possible tells whether a day has a plan at all. Where the search ends before it knows, it counts as possible.
func possible(d *Day, enough int) bool {
	v := sequence.New(problem(d), 1)
	v.Improve(0)
	for !v.Found() && !v.Proven() && v.Evaluations() < enough {
		v.Improve(10000)
	}
	return v.Found() || !v.Proven()
}

// alone is the day with one job only.
func alone(d *Day, j int) *Day {
	one := *d
	one.Jobs = d.Jobs[j : j+1 : j+1]
	one.Done, one.Pins = nil, nil
	for _, x := range d.Done {
		if x.Job == j {
			x.Job = 0
			one.Done = append(one.Done, x)
		}
	}
	for _, x := range d.Pins {
		if x.Job == j {
			x.Job = 0
			one.Pins = append(one.Pins, x)
		}
	}
	return &one
}

// diagnose finds why there is no plan: a job that is impossible by itself, or jobs that are together. It names every
// single change that would help, with the least amount of it.
func diagnose(d *Day) []Fault {
	var all []Fault
	for j := range d.Jobs {
		one := alone(d, j)
		if possible(one, enoughAlone) {
			continue
		}
		found := remedies(one, enoughAlone)
		for i := range found {
			found[i].Job = j
		}
		if len(found) == 0 {
			found = append(found, Fault{Rule: Together, Ref: Ref{Job: j}, Product: -1, Needs: -1})
		}
		all = append(all, found...)
	}
	if len(all) > 0 {
		return all
	}
	all = remedies(d, enoughTogether)
	for i := range all {
		all[i].Rule, all[i].Of = Together, all[i].Rule
	}
	if len(all) == 0 {
		all = append(all, Fault{Rule: Together, Ref: Ref{Job: -1}, Product: -1, Needs: -1})
	}
	return all
}

// remedies tries each limit by itself: the least by which it has to give for a plan to exist. Where none helps alone, it
// gives them one after the other as little as will do with those to come out of the way.
func remedies(d *Day, enough int) []Fault {
	var all []Fault
	list := limits(d)
	for i := range list {
		if needs, ok := leastChange(d, list[i:i+1], enough); ok {
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
		needs, ok := leastChange(x, list[i:], enough)
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

// tooSoon finds the promises that a job could not keep even with the shop to itself. A plan can still be made.
func tooSoon(d *Day) []Fault {
	var all []Fault
	for j := range d.Jobs {
		job := &d.Jobs[j]
		if job.Promised == 0 {
			continue
		}
		one := *alone(d, j)
		one.Aim = FinishOnly()
		p := problem(&one)
		v := sequence.New(p, 1)
		if cost, ok := v.Cost(); !ok || int(cost) > job.Promised {
			v.Improve(2000)
		}
		if b := int(v.Bound()); v.Found() && b > job.Promised {
			all = append(all, Fault{Rule: PromisedTooSoon, Ref: Ref{Job: j}, Product: -1, Has: job.Promised, Needs: b, Soft: true})
		}
	}
	return all
}
