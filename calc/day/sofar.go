package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

func (d *day) readBreaks() {
	for _, row := range d.Rows(breaks) {
		if !row.Clean() {
			continue
		}
		b := plan.Break{From: d.at(row.Words(field.BreakFrom)), To: d.at(row.Words(field.BreakTo)), Painter: down(row.Given(field.PainterNumber))}
		if b.To <= b.From {
			row.Reject(field.BreakTo, calc.Impossible, "is not after it begins, {from}", "Check both times", show(b.From, "from"))
		}
		d.checkPainter(row, b.Painter)
		d.model.Breaks, d.breaks = append(d.model.Breaks, b), append(d.breaks, row)
		row.Describe(calc.Say("{from} to {to}", show(b.From, "from"), show(b.To, "to")))
	}
}

func (d *day) checkPainter(row *calc.Entry, painter int) {
	if painter > d.model.Painters {
		row.Reject(field.PainterNumber, calc.Impossible, "is {n}, and there are {painters}", "Check how many painters the shop has", whole(painter, "n"), whole(d.model.Painters, "painters"))
	}
}

// checkPlace holds a booth, bay or oven to how many there are.
func (d *day) checkPlace(row *calc.Entry, r plan.Ref, place int) {
	there := d.model.Booths
	switch {
	case r.Kind == plan.PrepStep:
		there = d.model.PrepBays
	case r.Kind == plan.Heat && d.model.Jobs[r.Job].Bake.InOven:
		there = d.model.Ovens
	}
	if place > there {
		row.Reject(field.PlaceNumber, calc.Impossible, "is {n}, and there are {there}", "Check how many the shop has", whole(place, "n"), whole(there, "there"))
	}
}

func (d *day) readSoFar() {
	if now := d.Words(field.Now); now != "" {
		d.model.Now = max(d.start, d.before(now))
	}
	for _, row := range d.Rows(done) {
		if r, ok := d.stepOf(row); ok {
			d.readDone(row, r)
		}
	}
	for _, row := range d.Rows(pins) {
		if r, ok := d.stepOf(row); ok {
			d.readPin(row, r)
		}
	}
}

func (d *day) readDone(row *calc.Entry, r plan.Ref) {
	x := plan.Done{
		Ref: r, Start: d.before(row.Words(field.StartedAt)), End: d.before(row.Words(field.EndedAt)), Painter: down(row.Given(field.PainterNumber)),
		Place: down(row.Given(field.PlaceNumber)), Cup: down(row.Given(field.CupNumber)),
	}
	if x.End < x.Start {
		x.End += aDay
	}
	if words := row.Words(field.MixedAt); words != "" {
		if x.Mixed = d.before(words); x.Mixed > x.Start {
			row.Reject(field.MixedAt, calc.Impossible, "is after the coat began, {t}", "Check both times", show(x.Start, "t"))
		}
	}
	d.checkPainter(row, x.Painter)
	d.checkPlace(row, r, x.Place)
	d.model.Done, d.done = append(d.model.Done, x), append(d.done, row)
	row.Describe(calc.Say("{step}, {from} to {to}", d.step(r).As("step"), show(x.Start, "from"), show(x.End, "to")))
}

func (d *day) readPin(row *calc.Entry, r plan.Ref) {
	x := plan.Pin{Ref: r, Painter: down(row.Given(field.PainterNumber)), Place: down(row.Given(field.PlaceNumber))}
	d.checkPainter(row, x.Painter)
	d.checkPlace(row, r, x.Place)
	step := d.step(r).As("step")
	if words := row.Words(field.HeldAt); words != "" {
		x.Start = d.before(words)
		row.Describe(calc.Say("{step}, at {t}", step, show(x.Start, "t")))
	} else {
		row.Describe(calc.Say("{step}, at any time", step))
	}
	for _, other := range d.model.Pins {
		if other.Ref == r {
			row.Reject(field.OfJob, calc.Impossible, "has this step held twice", "Take one of the two out")
			return
		}
	}
	d.model.Pins, d.pins = append(d.model.Pins, x), append(d.pins, row)
}

// stepOf finds the step that a row names.
func (d *day) stepOf(row *calc.Entry) (r plan.Ref, ok bool) {
	if !d.jobOf(row, &r.Job) || !row.Clean() {
		return r, false
	}
	m, name := &d.model.Jobs[r.Job], calc.Words(d.jobs[r.Job].name, "job")
	switch row.Picked(field.DayStep) {
	case "prep":
		if r.Kind = plan.PrepStep; m.Prep.Minutes == 0 {
			row.Reject(field.DayStep, calc.Impossible, "is one that {job} does not have", "Choose another, or enter how long it takes with the job", name)
			return r, false
		}
	case "bake":
		if r.Kind = plan.Heat; m.Bake.Minutes == 0 {
			row.Reject(field.DayStep, calc.Impossible, "is one that {job} does not have", "Choose another, or enter how long it takes with the job", name)
			return r, false
		}
	default:
		n := down(row.Given(field.CoatNumber))
		if r.Kind, r.Coat = plan.Spray, n-1; n > len(m.Coats) {
			row.Reject(field.CoatNumber, calc.Impossible, "is {n}, and {job} has {coats}", "Count the coats of all its products", whole(n, "n"), name, whole(len(m.Coats), "coats"))
			return r, false
		}
	}
	return r, true
}

// step names a step of a job.
func (d *day) step(r plan.Ref) calc.Text {
	job := calc.Words(d.jobs[r.Job].name, "job")
	switch r.Kind {
	case plan.PrepStep:
		return calc.Say("{job}, prep", job)
	case plan.Heat:
		return calc.Say("{job}, bake", job)
	}
	return calc.Say("{job}, coat {i}", job, whole(r.Coat+1, "i"))
}
