package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/unit"
)

// of writes a step as the page hands it back: its job counted from 1, its kind, its coat counted from 1.
//
//go:noinline
func of(r plan.Ref) string {
	coat := 0
	if r.Kind == plan.Spray {
		coat = r.Coat + 1
	}
	return itoa(r.Job+1) + "-" + itoa(int(r.Kind)) + "-" + itoa(coat)
}

// stepRef is the step that a line of the plan is, or is for.
//
//go:noinline
func stepRef(s *plan.Step) plan.Ref {
	r := plan.Ref{Job: s.Job, Kind: s.Kind, Coat: s.Coat}
	switch {
	case s.Kind == plan.Rinse && s.Product < 0:
		r.Kind = plan.PrepStep // for which the gun is put down
	case s.Kind != plan.PrepStep && s.Kind != plan.Heat:
		r.Kind = plan.Spray
	}
	return r
}

// callSheet lists in the order of time what somebody has to do.
func (d *day) callSheet() {
	told := make([]bool, len(d.model.Breaks))
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		if s.Kind == plan.Flash || s.Kind == plan.Walk || s.Done {
			continue
		}
		for {
			b := d.nextBreak(told)
			if b < 0 || d.model.Breaks[b].From > s.Start {
				break
			}
			told[b] = true
			d.callBreak(&d.model.Breaks[b])
		}
		d.callStep(s)
	}
}

// nextBreak is the first of the breaks that are not told yet, or -1.
func (d *day) nextBreak(told []bool) int {
	first := -1
	for i := range told {
		if !told[i] && (first < 0 || d.model.Breaks[i].From < d.model.Breaks[first].From) {
			first = i
		}
	}
	return first
}

func (d *day) callBreak(b *plan.Break) {
	who := d.voiced("All painters")
	if b.Painter > 0 {
		who = d.called(column{painters, b.Painter})
	}
	d.list(&call, extra{}, show(b.From), show(b.To), who, d.voiced("Break"), d.voiced("Flash-off and bakes go on"), "")
}

func (d *day) callStep(s *plan.Step) {
	who, note, latest := "", "", ""
	if s.Painter > 0 {
		who = d.called(column{painters, s.Painter})
	}
	if s.Latest >= 0 {
		latest = show(s.Latest)
	}
	x := extra{of: of(stepRef(s))}
	switch s.Kind {
	case plan.Mix:
		note = d.noteMix(s, &x)
	case plan.Spray:
		note = d.noteSpray(s, &x)
	case plan.Heat:
		x.timer = timer(d.jobs[s.Job].Entry, calc.Bake, d.jobs[s.Job].name, 0, s.End-s.Start)
		note = d.Voiced(with(say("{t}, heating up included"), s.End-s.Start, "t"))
	}
	d.list(&call, x, show(s.Start), show(s.End), who, d.doing(s), note, latest)
}

// timer makes a timer that runs from the moment it is started: when the step is really done. 0 stands for no mark.
//
//go:noinline
func timer(e *calc.Entry, kind calc.Timing, name string, soonest, latest int) *calc.Timer {
	var marks [2]calc.Num
	for i, n := range [...]int{soonest, latest} {
		if n > 0 {
			marks[i] = calc.N(float64(n), unit.Minute)
		}
	}
	return e.Timer(kind, name, calc.Num{}, marks[0], marks[1])
}

// doing says what a step is.
func (d *day) doing(s *plan.Step) string {
	template, product := calc.Phrase(""), ""
	if s.Product >= 0 {
		product = d.paints[s.Product].name
	}
	switch s.Kind {
	case plan.PrepStep:
		template = "Prep {job}"
	case plan.Rinse:
		template = "Rinse the gun for {product}"
		if s.Product < 0 {
			template = "Put the gun down clean"
		}
	case plan.Mix:
		if template = "Mix cup {n}: {product}, {v}"; d.plan.Cups[s.Cup-1].Amount == 0 {
			template = "Mix cup {n}: {product}"
		}
	case plan.Walk:
		template = "Walk in for {job}"
	case plan.Heat:
		template = "Bake {job}"
	case plan.Flash:
		template = "{job}, coat {i}, flashes off"
	default:
		if template = "Spray coat {i} of {all} on {job}: {product}, cup {n}"; d.model.Booths > 1 {
			template = "Spray coat {i} of {all} on {job}: {product}, cup {n}, in booth {booth}"
		}
	}
	t := say(template, "job", d.jobs[s.Job].name, "product", product, "n", itoa(s.Cup), "i", itoa(s.Coat+1),
		"all", itoa(len(d.model.Jobs[s.Job].Coats)), "booth", itoa(s.Place))
	if s.Kind == plan.Mix {
		t.Args = append(t.Args, calc.N(float64(d.plan.Cups[s.Cup-1].Amount+d.model.CupLoses), unit.Millilitre).To(0, "v"))
	}
	return d.Voiced(t)
}

// noteMix says by when a cup has to be used up, and for whom it is.
func (d *day) noteMix(s *plan.Step, x *extra) string {
	c := &d.plan.Cups[s.Cup-1]
	life, jobs := d.model.Products[c.Product].PotLife, d.jobsOf(c)
	if life == 0 {
		return d.voiced("For {jobs}", "jobs", jobs)
	}
	name := d.voiced("Cup {n}: {product}", "n", itoa(s.Cup), "product", d.paints[c.Product].name)
	x.timer = timer(d.paints[c.Product].Entry, calc.PotLife, name, 0, life)
	return d.voiced("Use by {t}; for {jobs}", "t", show(c.UseBy), "jobs", jobs)
}

// noteSpray says until when a coat flashes off and when the next must be on. The flash-off is timed from the step, the
// latest recoat from the note.
func (d *day) noteSpray(s *plan.Step, x *extra) string {
	job, r := &d.model.Jobs[s.Job], stepRef(s)
	c, row, name := &job.Coats[s.Coat], d.roundOf(r), d.step(r)
	x.timer = timer(row.Entry, calc.FlashOff, name, c.Flash, 0)
	if c.Latest == 0 || s.Coat+1 == len(job.Coats) && job.Bake.Minutes == 0 {
		return d.voiced("Flash-off until {t}", "t", show(s.End+c.Flash))
	}
	x.notesTimer = timer(row.Entry, calc.Recoat, name, 0, c.Latest)
	return d.voiced("Flash-off until {t}; go on by {by}", "t", show(s.End+c.Flash), "by", show(s.End+c.Latest))
}
