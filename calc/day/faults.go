package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// faults turns what the planner finds into problems with the fields concerned; what a plan can be made with all the same
// becomes a ruling.
func (d *day) faults(all []plan.Fault, planned bool) {
	hard, together := 0, true
	for i := range all {
		f := &all[i]
		if f.Soft {
			d.soonest[f.Job] = f.Needs
			continue
		}
		hard++
		together = together && f.AllOf
		d.fault(f)
	}
	if planned {
		return
	}
	do := calc.Say("Put right what the form marks")
	switch {
	case hard > 1 && together:
		do = calc.Say("All of what the form marks has to change: no one thing alone is enough")
	case hard > 1:
		do = calc.Say("The form marks what is in the way; each says the least change that would do")
	}
	d.Judge(calc.Stop, calc.Say("This day cannot be done as it stands"), do)
}

func (d *day) fault(f *plan.Fault) {
	rule := f.Rule
	if rule == plan.Together && f.Of != 0 {
		rule = f.Of
	}
	switch rule {
	case plan.LatestRecoat:
		d.lateRecoat(f)
	case plan.PotLife:
		d.shortPot(f)
	case plan.PinTime, plan.PinPast:
		d.badPin(f)
	case plan.DoneOrder:
		d.wrongDone(f, field.DayStep, "comes before what it follows is done", "Enter the earlier steps of this job too, in order")
	case plan.DoneOverlap:
		d.wrongDone(f, field.StartedAt, "falls into another step by the same painter or in the same place, which ended at {t}", "Check the times, or say which painter and which place", show(f.Needs, "t"))
	case plan.CupSize:
		d.roundOf(f.Ref).Reject(field.CoatAmount, calc.Impossible, "is more than the {cup} that can be sprayed out of one cup", "Mix in something larger, or split the parts into two jobs", calc.N(float64(d.model.CupHolds), unit.Millilitre).To(0, "cup"))
	default:
		d.none(f)
	}
}

// lateRecoat says by how much a latest recoat is too soon.
func (d *day) lateRecoat(f *plan.Fault) {
	r := d.roundOf(f.Ref)
	if r == nil {
		d.none(f)
		return
	}
	i, job := whole(f.Coat+1, "i"), calc.Words(d.jobs[f.Job].name, "job")
	switch {
	case f.Needs < 0:
		r.Reject(field.RecoatWithin, calc.Impossible, "cannot be kept after coat {i} of {job}", "Check what else the plan must do meanwhile", i, job)
	case f.Rule == plan.Together:
		r.Reject(field.RecoatWithin, calc.Impossible, "cannot be kept after coat {i} of {job} beside the other jobs", "It would fit if it were {needs}; or give this job less to wait for", i, job, mins(f.Needs, "needs"))
	default:
		r.Reject(field.RecoatWithin, calc.Impossible, "cannot be kept after coat {i} of {job}", "It would fit if it were {needs}", i, job, mins(f.Needs, "needs"))
	}
}

// shortPot says by how much a pot life is too short.
func (d *day) shortPot(f *plan.Fault) {
	if f.Product < 0 || f.Product >= len(d.paints) {
		d.none(f)
		return
	}
	p := d.paints[f.Product]
	if f.Needs < 0 {
		p.Reject(field.PotLife, calc.Impossible, "is over before the cup can be sprayed", "Spray fewer parts at a time, or use a slower hardener")
		return
	}
	p.Reject(field.PotLife, calc.Impossible, "is over before the cup can be sprayed", "It would fit if it were {needs}; or spray fewer parts at a time", mins(f.Needs, "needs"))
}

// badPin says why a held step cannot be where it is held.
func (d *day) badPin(f *plan.Fault) {
	step := d.step(f.Ref).As("step")
	switch {
	case f.Needs < 0 && f.Rule == plan.PinPast:
		d.wrongPin(f, field.DayStep, "is done already: {step}", "Let it go", step)
	case f.Needs < 0:
		d.wrongPin(f, field.HeldAt, "leaves no plan: {step}", "Let it go, or hold it much later", step)
	default:
		d.wrongPin(f, field.HeldAt, "is too soon for {step}", "{t} is the nearest time that would do; or let it go", step, show(f.Needs, "t"))
	}
}

// wrongDone rejects a field of the row that says a step is done.
func (d *day) wrongDone(f *plan.Fault, in calc.Input, message, fix calc.Phrase, args ...calc.Arg) {
	for i, row := range d.done {
		if d.model.Done[i].Ref == f.Ref {
			row.Reject(in, calc.Impossible, message, fix, args...)
			return
		}
	}
	d.none(f)
}

// wrongPin rejects a field of the row that holds a step.
func (d *day) wrongPin(f *plan.Fault, in calc.Input, message, fix calc.Phrase, args ...calc.Arg) {
	for i, row := range d.pins {
		if d.model.Pins[i].Ref == f.Ref {
			row.Reject(in, calc.Impossible, message, fix, args...)
			return
		}
	}
	d.none(f)
}

// roundOf finds the row that a coat comes from.
func (d *day) roundOf(r plan.Ref) *round {
	if r.Job < 0 || r.Job >= len(d.jobs) {
		return nil
	}
	for _, x := range d.jobs[r.Job].rounds {
		if r.Coat >= x.first && r.Coat < x.first+x.n {
			return x
		}
	}
	return nil
}

// none is for what no field alone explains.
func (d *day) none(f *plan.Fault) {
	if f.Job >= 0 && f.Job < len(d.jobs) {
		d.jobs[f.Job].Reject(field.JobName, calc.Impossible, "cannot be done as it stands", "Give it more time: looser recoat times, a later hold, or fewer coats")
		return
	}
	d.Reject(field.DayStarts, calc.Impossible, "leaves no plan for these jobs together", "Take a job out, or loosen what holds them")
}
