package day

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/unit"
)

// of writes a step as the page hands it back: its job counted from 1, its kind, its coat counted from 1.
func of(r plan.Ref) string {
	coat := 0
	if r.Kind == plan.Spray {
		coat = r.Coat + 1
	}
	return strconv.Itoa(r.Job+1) + "-" + strconv.Itoa(int(r.Kind)) + "-" + strconv.Itoa(coat)
}

// stepRef is the step that a line of the plan is, or is for.
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
	b := 0
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		for ; b < len(d.model.Breaks) && d.model.Breaks[d.breakAt(b)].From <= s.Start; b++ {
			d.callBreak(d.breakAt(b))
		}
		if s.Kind != plan.Flash && s.Kind != plan.Walk && !s.Done {
			d.callStep(s)
		}
	}
}

// breakAt is the break that begins as number n of all.
func (d *day) breakAt(n int) int {
	for i := range d.model.Breaks {
		before := 0
		for k := range d.model.Breaks {
			if a, b := d.model.Breaks[k].From, d.model.Breaks[i].From; a < b || a == b && k < i {
				before++
			}
		}
		if before == n {
			return i
		}
	}
	return 0
}

func (d *day) callBreak(i int) {
	b := &d.model.Breaks[i]
	who := calc.Told(calc.Say("All painters"))
	if b.Painter > 0 {
		who = d.painter(b.Painter)
	}
	d.List(call, told(b.From), told(b.To), who, calc.Told(calc.Say("Break")), calc.Told(calc.Say("Flash-off and bakes go on")), blank())
}

func (d *day) callStep(s *plan.Step) {
	who, latest := d.painter(s.Painter), blank()
	if s.Latest >= 0 {
		latest = told(s.Latest)
	}
	doing, note := d.doing(s), blank()
	cell := calc.Told(doing).About(of(stepRef(s)))
	switch s.Kind {
	case plan.Mix:
		note, cell = d.noteMix(s, cell)
	case plan.Spray:
		note, cell = d.noteSpray(s, cell)
	case plan.Heat:
		long := calc.N(float64(s.End-s.Start), unit.Minute)
		cell = cell.Timed(d.jobs[s.Job].Timer(calc.Bake, d.jobs[s.Job].name, calc.Num{}, calc.Num{}, long))
		note = calc.Told(calc.Say("{t}, heating up included", long.To(0, "t")))
	}
	d.List(call, told(s.Start), told(s.End), who, cell, note, latest)
}

// painter names a painter; where nobody is needed the cell is blank.
func (d *day) painter(n int) calc.Cell {
	switch {
	case n == 0:
		return blank()
	case d.model.Painters == 1:
		return calc.Told(calc.Say("Painter"))
	}
	return calc.Told(calc.Say("Painter {n}", whole(n, "n")))
}

// doing says what a step is.
func (d *day) doing(s *plan.Step) calc.Text {
	job, n, product := calc.Words(d.jobs[s.Job].name, "job"), whole(s.Cup, "n"), calc.Arg{}
	if s.Product >= 0 {
		product = calc.Words(d.paints[s.Product].name, "product")
	}
	switch s.Kind {
	case plan.PrepStep:
		return calc.Say("Prep {job}", job)
	case plan.Rinse:
		if s.Product < 0 {
			return calc.Say("Put the gun down clean")
		}
		return calc.Say("Rinse the gun for {product}", product)
	case plan.Mix:
		if v := d.mixed(s.Cup); v > 0 {
			return calc.Say("Mix cup {n}: {product}, {v}", n, product, calc.N(v, unit.Millilitre).To(0, "v"))
		}
		return calc.Say("Mix cup {n}: {product}", n, product)
	case plan.Walk:
		return calc.Say("Walk in for {job}", job)
	case plan.Heat:
		return calc.Say("Bake {job}", job)
	case plan.Flash:
		return calc.Say("{job}, coat {i}, flashes off", job, whole(s.Coat+1, "i"))
	}
	i, all := whole(s.Coat+1, "i"), whole(len(d.model.Jobs[s.Job].Coats), "all")
	if d.model.Booths > 1 {
		return calc.Say("Spray coat {i} of {all} on {job}: {product}, cup {n}, in booth {booth}", i, all, job, product, n, whole(s.Place, "booth"))
	}
	return calc.Say("Spray coat {i} of {all} on {job}: {product}, cup {n}", i, all, job, product, n)
}

// mixed is the amount to mix in a cup, in mL, with what is lost in it; 0 where it is not known.
func (d *day) mixed(cup int) float64 {
	if cup == 0 || d.plan.Cups[cup-1].Amount == 0 {
		return 0
	}
	return float64(d.plan.Cups[cup-1].Amount + d.model.CupLoses)
}

// noteMix says by when a cup has to be used up. Its timer runs from when mixing really begins.
func (d *day) noteMix(s *plan.Step, cell calc.Cell) (note, timed calc.Cell) {
	c := &d.plan.Cups[s.Cup-1]
	life := d.model.Products[c.Product].PotLife
	if life == 0 {
		return calc.Told(calc.Say("For {jobs}", calc.Words(d.jobsOf(c), "jobs"))), cell
	}
	name := d.Voiced(calc.Say("Cup {n}: {product}", whole(s.Cup, "n"), calc.Words(d.paints[c.Product].name, "product")))
	note = calc.Told(calc.Say("Use by {t}; for {jobs}", show(c.UseBy, "t"), calc.Words(d.jobsOf(c), "jobs")))
	return note, cell.Timed(d.paints[c.Product].Timer(calc.PotLife, name, calc.Num{}, calc.Num{}, calc.N(float64(life), unit.Minute)))
}

// noteSpray says until when a coat flashes off and when the next must be on. Its timers run from when the coat is
// really on: the flash-off from the step, the latest recoat from the note.
func (d *day) noteSpray(s *plan.Step, cell calc.Cell) (note, timed calc.Cell) {
	c, r := &d.model.Jobs[s.Job].Coats[s.Coat], d.roundOf(stepRef(s))
	name := d.Voiced(d.step(stepRef(s)))
	flash := calc.N(float64(c.Flash), unit.Minute)
	cell = cell.Timed(r.Timer(calc.FlashOff, name, calc.Num{}, flash, calc.Num{}))
	note = calc.Told(calc.Say("Flash-off until {t}", show(s.End+c.Flash, "t")))
	last := s.Coat+1 == len(d.model.Jobs[s.Job].Coats) && d.model.Jobs[s.Job].Bake.Minutes == 0
	if c.Latest == 0 || last {
		return note, cell
	}
	note = calc.Told(calc.Say("Flash-off until {t}; go on by {by}", show(s.End+c.Flash, "t"), show(s.End+c.Latest, "by")))
	return note.Timed(r.Timer(calc.Recoat, name, calc.Num{}, calc.Num{}, calc.N(float64(c.Latest), unit.Minute))), cell
}
