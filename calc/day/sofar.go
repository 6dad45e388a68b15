package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// A stepRow is one row of what is done, or of what is held.
type stepRow struct {
	*calc.Entry
	ref plan.Ref
}

func (d *day) readBreaks() {
	for _, row := range d.Rows(breaks) {
		if !row.Clean() {
			continue
		}
		b := plan.Break{From: d.at(words(row, &field.BreakFrom)), To: d.at(words(row, &field.BreakTo)), Painter: down(row, &field.PainterNumber)}
		if b.To <= b.From {
			reject(row, &field.BreakTo, "is not after it begins, {from}", "Check both times", args("from", show(b.From))...)
		}
		d.checkPainter(row, b.Painter)
		d.model.Breaks = append(d.model.Breaks, b)
		row.Describe(say("{from} to {to}", "from", show(b.From), "to", show(b.To)))
	}
}

func (d *day) checkPainter(row *calc.Entry, painter int) {
	if painter > d.model.Painters {
		reject(row, &field.PainterNumber, "is {n}, and there are {there}", "Check how many the shop has", args("n", itoa(painter), "there", itoa(d.model.Painters))...)
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
		reject(row, &field.PlaceNumber, "is {n}, and there are {there}", "Check how many the shop has", args("n", itoa(place), "there", itoa(there))...)
	}
}

func (d *day) readSoFar() {
	if now := words(d.Entry, &field.Now); now != "" {
		d.model.Now = max(d.start, d.since(now, early))
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
		Ref: r, Start: d.since(words(row, &field.StartedAt), early), End: d.since(words(row, &field.EndedAt), early), Painter: down(row, &field.PainterNumber),
		Place: down(row, &field.PlaceNumber), Cup: down(row, &field.CupNumber),
	}
	if x.End < x.Start {
		x.End += aDay
	}
	if typed := words(row, &field.MixedAt); typed != "" {
		if x.Mixed = d.since(typed, early); x.Mixed > x.Start {
			reject(row, &field.MixedAt, "is after the coat began, {t}", "Check both times", args("t", show(x.Start))...)
		}
	}
	d.checkPainter(row, x.Painter)
	d.checkPlace(row, r, x.Place)
	d.model.Done, d.done = append(d.model.Done, x), append(d.done, stepRow{row, r})
	row.Describe(say("{step}, {from} to {to}", "step", d.step(r), "from", show(x.Start), "to", show(x.End)))
}

func (d *day) readPin(row *calc.Entry, r plan.Ref) {
	x := plan.Pin{Ref: r, Painter: down(row, &field.PainterNumber), Place: down(row, &field.PlaceNumber)}
	d.checkPainter(row, x.Painter)
	d.checkPlace(row, r, x.Place)
	if typed := words(row, &field.HeldAt); typed != "" {
		x.Start = d.since(typed, early)
		row.Describe(say("{step}, at {t}", "step", d.step(r), "t", show(x.Start)))
	} else {
		row.Describe(say("{step}, at any time", "step", d.step(r)))
	}
	for _, other := range d.model.Pins {
		if other.Ref == r {
			reject(row, &field.OfJob, "has this step held twice", "Take one of the two out")
			return
		}
	}
	d.model.Pins, d.pins = append(d.model.Pins, x), append(d.pins, stepRow{row, r})
}

// stepOf finds the step that a row names.
func (d *day) stepOf(row *calc.Entry) (r plan.Ref, ok bool) {
	if !d.jobOf(row, &r.Job) || !row.Clean() {
		return r, false
	}
	m, job := &d.model.Jobs[r.Job], d.jobs[r.Job].name
	switch {
	case picked(row, &field.DayStep, "prep"):
		r.Kind, ok = plan.PrepStep, m.Prep.Minutes > 0
	case picked(row, &field.DayStep, "bake"):
		r.Kind, ok = plan.Heat, m.Bake.Minutes > 0
	default:
		n := down(row, &field.CoatNumber)
		if r.Kind, r.Coat = plan.Spray, n-1; n > len(m.Coats) {
			reject(row, &field.CoatNumber, "is {n}, and {job} has {coats}", "Count the coats of all its products", args("n", itoa(n), "job", job, "coats", itoa(len(m.Coats)))...)
			return r, false
		}
		return r, true
	}
	if !ok {
		reject(row, &field.DayStep, "is one that {job} does not have", "Choose another, or enter how long it takes with the job", args("job", job)...)
	}
	return r, ok
}

// step names a step of a job.
func (d *day) step(r plan.Ref) string {
	job := d.jobs[r.Job].name
	switch r.Kind {
	case plan.PrepStep:
		return d.voiced("{job}, prep", "job", job)
	case plan.Heat:
		return d.voiced("{job}, bake", "job", job)
	}
	return d.voiced("{job}, coat {i}", "job", job, "i", itoa(r.Coat+1))
}
