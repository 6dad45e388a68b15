package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
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
	do := say("Put right what the form marks")
	switch {
	case hard > 1 && together:
		do = say("All of what the form marks has to change: no one thing alone is enough")
	case hard > 1:
		do = say("The form marks what is in the way; each says the least change that would do")
	}
	d.Judge(calc.Stop, say("This day cannot be done as it stands"), do)
}

func (d *day) fault(f *plan.Fault) {
	rule := f.Rule
	if rule == plan.Together && f.Of != 0 {
		rule = f.Of
	}
	r := d.roundOf(f.Ref)
	switch {
	case rule == plan.LatestRecoat && r != nil:
		d.lateRecoat(f, r)
	case rule == plan.CupSize && r != nil:
		d.smallCup(r)
	case rule == plan.PotLife && f.Product >= 0 && f.Product < len(d.paints):
		fix, needs := fits(f, "Spray fewer parts at a time, or use a slower hardener", "Choose a new cup for every coat, spray fewer parts at a time, or use a hardener whose data sheet gives {needs}")
		reject(d.paints[f.Product].Entry, &field.PotLife, "is over before the cup can be sprayed", fix, needs...)
	case rule == plan.PinPast || rule == plan.PinTime:
		d.badPin(f)
	case rule == plan.DoneOrder:
		d.wrong(f, d.done, &field.DayStep, "comes before what it follows is done", "Enter the earlier steps of this job too, in order")
	case rule == plan.DoneOverlap:
		d.wrong(f, d.done, &field.StartedAt, "falls into another step by the same painter or in the same place, which ended at {t}", "Check the times, or say which painter and which place", args("t", show(f.Needs))...)
	default:
		d.none(f)
	}
}

// fits chooses what to do: the least change that would help, where one does.
func fits(f *plan.Fault, without, change calc.Phrase) (calc.Phrase, []calc.Arg) {
	if f.Needs < 0 {
		return without, nil
	}
	return change, []calc.Arg{mins(f.Needs, "needs")}
}

// lateRecoat says by how much a latest recoat is too soon.
func (d *day) lateRecoat(f *plan.Fault, r *round) {
	says := calc.Phrase("cannot be kept after coat {i} of {job}")
	if f.Rule == plan.Together {
		says = "cannot be kept after coat {i} of {job} beside the other jobs"
	}
	fix, needs := fits(f, "Take something else out of its way", "It would fit if it were {needs}; or take something else out of its way")
	reject(r.Entry, &field.RecoatWithin, says, fix, append(needs, args("i", itoa(f.Coat+1), "job", d.jobs[f.Job].name)...)...)
}

// badPin says why a held step cannot be where it is held.
func (d *day) badPin(f *plan.Fault) {
	step := d.step(f.Ref)
	switch {
	case f.Needs < 0 && f.Rule == plan.PinPast:
		d.wrong(f, d.pins, &field.DayStep, "is done already: {step}", "Let it go", args("step", step)...)
	case f.Needs < 0:
		d.wrong(f, d.pins, &field.HeldAt, "leaves no plan: {step}", "Let it go, or hold it much later", args("step", step)...)
	default:
		d.wrong(f, d.pins, &field.HeldAt, "is too soon for {step}", "{t} is the nearest time that would do; or let it go", args("step", step, "t", show(f.Needs))...)
	}
}

// wrong rejects a field of the row, among those done or held, that is about the fault's step.
func (d *day) wrong(f *plan.Fault, rows []stepRow, in *calc.Input, message, fix calc.Phrase, args ...calc.Arg) {
	for _, row := range rows {
		if row.ref == f.Ref {
			reject(row.Entry, in, message, fix, args...)
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
		reject(d.jobs[f.Job].Entry, &field.JobName, "cannot be done as it stands", "Give it more time: looser recoat times, a later hold, or fewer coats")
		return
	}
	if f.Unknown {
		reject(d.Entry, &field.Clock, "gives no plan that could be found for these jobs together", "Take a job out, or loosen what holds them; there may be a plan all the same")
		return
	}
	reject(d.Entry, &field.Clock, "leaves no plan for these jobs together", "Take a job out, or loosen what holds them")
}
