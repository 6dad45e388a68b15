package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// A paint is one row of the products.
type paint struct {
	*calc.Entry
	name string
}

// A job is one row of the jobs, with the rounds of coats that are its own.
type job struct {
	*calc.Entry
	name   string
	rounds []*round
}

// A round is one row of the coats: like coats of one product, one after the other.
type round struct {
	*calc.Entry
	job, paint int
	first, n   int // its coats, as the job counts them from 0
}

func (d *day) readShop() {
	d.start, _ = field.ReadClock(words(d.Entry, &field.Clock))
	m := &d.model
	for _, f := range []struct {
		to *int
		in *calc.Input
	}{
		{&m.Painters, &field.Painters}, {&m.Booths, &field.Booths}, {&m.PrepBays, &field.PrepBays}, {&m.Ovens, &field.Ovens}, {&m.Room, &field.BoothRoom},
		{&m.Clean, &field.CleanTime}, {&m.Walk, &field.WalkTime}, {&m.Door, &field.DoorTime}, {&m.CupLoses, &field.Losses},
	} {
		*f.to = up(d.Entry, f.in)
	}
	m.RinseInBooth, m.ShareCups = picked(d.Entry, &field.RinseInside, "yes"), picked(d.Entry, &field.ShareCups, "yes")
	m.Aim, m.Now = plan.PromisesFirst(), d.start
	if picked(d.Entry, &field.Aim, "home") {
		m.Aim = plan.HomeEarly()
	} else if picked(d.Entry, &field.Aim, "waste") {
		m.Aim = plan.LittleWaste()
	}
	if cup := down(d.Entry, &field.CupSize); cup > 0 {
		m.CupHolds = cup - m.CupLoses // what can be sprayed out of it
		if m.CupHolds <= 0 {
			reject(d.Entry, &field.Losses, "is as much as the cup holds", "Check both")
		}
	}
}

// shades lists the choices of a product's shade, in the order in which package plan counts them.
var shades = [...]string{"none", "lightest", "light", "middle", "dark", "darkest"}

func (d *day) readPaints() {
	var each []int
	for _, row := range d.Rows(paints) {
		p := &paint{row, words(row, &field.Product)}
		d.paints = append(d.paints, p)
		x := plan.Product{Mix: up(row, &field.MixTime), PotLife: down(row, &field.PotLife)}
		d.model.Products = append(d.model.Products, x)
		shade := 0
		for i, key := range shades {
			if picked(row, &field.Shade, key) {
				shade = i
			}
		}
		each = append(each, shade)
		if !row.Clean() {
			continue
		}
		if d.twice(p.name, len(d.paints)-1, func(i int) string { return d.paints[i].name }) {
			reject(row, &field.Product, "stands twice", "Give each product a name of its own, or take one out")
		}
		p.describe()
	}
	d.model.Rinse = plan.RinseTimes{
		Same: up(d.Entry, &field.RinseSame), LightToDark: up(d.Entry, &field.RinseDarker), DarkToLight: up(d.Entry, &field.RinseLighter), BaseToClear: up(d.Entry, &field.RinseClear),
	}.Matrix(each)
}

func (p *paint) describe() {
	if life := down(p.Entry, &field.PotLife); life > 0 {
		p.Describe(with(say("{name}, pot life {life}", "name", p.name), life, "life"))
		return
	}
	p.Describe(say("{name}, no pot life", "name", p.name))
}

// twice tells whether a name stood in one of the rows before.
func (d *day) twice(name string, before int, of func(i int) string) bool {
	for i := range before {
		if fold(of(i)) == fold(name) {
			return true
		}
	}
	return false
}

func (d *day) readJobs() {
	for _, row := range d.Rows(jobs) {
		j := &job{Entry: row, name: words(row, &field.JobName)}
		d.jobs = append(d.jobs, j)
		d.model.Jobs = append(d.model.Jobs, plan.Job{})
		if !row.Clean() {
			continue
		}
		if d.twice(j.name, len(d.jobs)-1, func(i int) string { return d.jobs[i].name }) {
			reject(row, &field.JobName, "stands twice", "Give each job a name of its own")
		}
		d.readJob(j, &d.model.Jobs[len(d.jobs)-1])
	}
}

// unknownHeat and above, in °C, stand for bakes whose heat is not given: each is baked by itself.
const unknownHeat = 10000

func (d *day) readJob(j *job, x *plan.Job) {
	x.Priority = 2
	if picked(j.Entry, &field.Priority, "high") {
		x.Priority = 6
	} else if picked(j.Entry, &field.Priority, "low") {
		x.Priority = 1
	}
	x.Prep = plan.Prep{Minutes: up(j.Entry, &field.PrepTime), ByPainter: picked(j.Entry, &field.PrepBy, "painter")}
	x.Bake = plan.Bake{Minutes: up(j.Entry, &field.BakeTime), InOven: d.model.Ovens > 0, Heat: up(j.Entry, &field.BakeHeat)}
	if x.Bake.Minutes > 0 && x.Bake.Heat == 0 {
		x.Bake.Heat = unknownHeat + len(d.jobs) // it may be another heat than that of others who do not say
	}
	if typed := words(j.Entry, &field.ReadyFrom); typed != "" {
		x.Ready = d.since(typed, waiting)
	}
	typed := words(j.Entry, &field.PromisedBy)
	if typed == "" {
		j.Describe(say("{name}, nothing promised", "name", j.name))
		return
	}
	x.Promised = d.at(typed)
	if x.Promised <= x.Ready {
		reject(j.Entry, &field.PromisedBy, "is {t}, and the parts are there no sooner than {ready}", "Check both times", args("t", show(x.Promised), "ready", show(x.Ready))...)
	}
	j.Describe(say("{name}, promised by {t}", "name", j.name, "t", show(x.Promised)))
}

// readRounds gives each job its coats, in the order of the rows.
func (d *day) readRounds() {
	for _, row := range d.Rows(coats) {
		r := &round{Entry: row}
		known := d.jobOf(row, &r.job)
		if !d.paintOf(row, &r.paint) || !known || !row.Clean() {
			continue
		}
		x := &d.model.Jobs[r.job]
		r.first, r.n = len(x.Coats), up(row, &field.Coats)
		d.jobs[r.job].rounds = append(d.jobs[r.job].rounds, r)
		c := plan.Coat{
			Product: r.paint, Spray: up(row, &field.SprayTime), Amount: up(row, &field.CoatAmount), Flash: up(row, &field.Flash),
			Latest: down(row, &field.RecoatWithin), NewCup: picked(row, &field.NewCup, "yes"), Movable: picked(row, &field.MayLeave, "yes"),
		}
		for range r.n {
			x.Coats = append(x.Coats, c)
		}
		if last := given(row, &field.FlashLast); last.Given() {
			x.Coats[len(x.Coats)-1].Flash = up(row, &field.FlashLast)
		}
		template := calc.Phrase("{job}: {n} coats of {product}, {t} each")
		if r.n == 1 {
			template = "{job}: 1 coat of {product}, {t}"
		}
		row.Describe(with(say(template, "job", d.jobs[r.job].name, "n", itoa(r.n), "product", d.paints[r.paint].name), c.Spray, "t"))
	}
}

// jobOf finds the job that a row names; the only one where it names none.
func (d *day) jobOf(row *calc.Entry, at *int) bool {
	return d.find(row, &field.OfJob, len(d.jobs), func(i int) string { return d.jobs[i].name }, at)
}

// paintOf finds the product that a row names; the only one where it names none.
func (d *day) paintOf(row *calc.Entry, at *int) bool {
	return d.find(row, &field.Product, len(d.paints), func(i int) string { return d.paints[i].name }, at)
}

func (d *day) find(row *calc.Entry, in *calc.Input, n int, name func(i int) string, at *int) bool {
	typed := words(row, in)
	for i := range n {
		if n == 1 && typed == "" || typed != "" && fold(typed) == fold(name(i)) {
			*at = i
			return true
		}
	}
	switch {
	case !row.Sound(*in) || n == 0:
	case typed == "":
		row.Reject(*in, calc.Missing, "is blank", "Enter it: there are several")
	default:
		reject(row, in, "“{name}” is not among them", "Write it as in its own row, or add that row", args("name", typed)...)
	}
	return false
}
