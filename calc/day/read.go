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
	d.start, _ = field.ReadClock(d.Words(field.DayStarts))
	m, g := &d.model, func(in calc.Input) int { return up(d.Given(in)) }
	m.Painters, m.Booths, m.PrepBays, m.Ovens = g(field.Painters), g(field.Booths), g(field.PrepBays), g(field.Ovens)
	m.Room, m.Clean, m.Walk, m.Door = g(field.BoothRoom), g(field.CleanTime), g(field.WalkTime), g(field.DoorTime)
	m.RinseInBooth, m.ShareCups = d.Picked(field.RinseInside) == "yes", d.Picked(field.ShareCups) == "yes"
	m.CupLoses = g(field.Losses)
	if cup := d.Given(field.CupSize); cup.Given() {
		m.CupHolds = down(cup) - m.CupLoses // what can be sprayed out of it
		if m.CupHolds <= 0 {
			d.Reject(field.Losses, calc.Impossible, "is as much as the cup holds, {cup}", "Check both", cup.As("cup"))
		}
	}
	switch d.Picked(field.Aim) {
	case "home":
		m.Aim = plan.HomeEarly()
	case "waste":
		m.Aim = plan.LittleWaste()
	default:
		m.Aim = plan.PromisesFirst()
	}
	m.Now = d.start
}

// shades lists the choices of a product's shade, in the order in which package plan counts them.
var shades = [...]string{"none", "lightest", "light", "middle", "dark", "darkest"}

func (d *day) readPaints() {
	var each []int
	for _, row := range d.Rows(paints) {
		p := &paint{row, row.Words(field.Product)}
		d.paints = append(d.paints, p)
		x := plan.Product{Mix: up(row.Given(field.MixTime)), PotLife: down(row.Given(field.PotLife))}
		d.model.Products = append(d.model.Products, x)
		shade := 0
		for i, key := range shades {
			if row.Picked(field.Shade) == key {
				shade = i
			}
		}
		each = append(each, shade)
		if !row.Clean() {
			continue
		}
		if d.twice(p.name, len(d.paints)-1, func(i int) string { return d.paints[i].name }) {
			row.Reject(field.Product, calc.Impossible, "stands twice", "Give each product a name of its own, or take one out")
		}
		p.describe()
	}
	g := func(in calc.Input) int { return up(d.Given(in)) }
	d.model.Rinse = plan.RinseTimes{Same: g(field.RinseSame), LightToDark: g(field.RinseDarker), DarkToLight: g(field.RinseLighter), BaseToClear: g(field.RinseClear)}.Matrix(each)
}

func (p *paint) describe() {
	name := calc.Words(p.name, "name")
	if life := p.Given(field.PotLife); life.Given() {
		p.Describe(calc.Say("{name}, pot life {life}", name, life.As("life")))
		return
	}
	p.Describe(calc.Say("{name}, no pot life", name))
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
		j := &job{Entry: row, name: row.Words(field.JobName)}
		d.jobs = append(d.jobs, j)
		d.model.Jobs = append(d.model.Jobs, plan.Job{})
		if !row.Clean() {
			continue
		}
		if d.twice(j.name, len(d.jobs)-1, func(i int) string { return d.jobs[i].name }) {
			row.Reject(field.JobName, calc.Impossible, "stands twice", "Give each job a name of its own")
		}
		d.readJob(j, &d.model.Jobs[len(d.jobs)-1])
	}
}

func (d *day) readJob(j *job, x *plan.Job) {
	x.Priority = 2
	switch j.Picked(field.Priority) {
	case "high":
		x.Priority = 6
	case "low":
		x.Priority = 1
	}
	x.Prep = plan.Prep{Minutes: up(j.Given(field.PrepTime)), ByPainter: j.Picked(field.PrepBy) == "painter"}
	x.Bake = plan.Bake{Minutes: up(j.Given(field.BakeTime)), InOven: d.model.Ovens > 0, Heat: up(j.Given(field.BakeHeat))}
	if words := j.Words(field.ReadyFrom); words != "" {
		x.Ready = d.before(words)
	}
	words := j.Words(field.PromisedBy)
	if words == "" {
		j.Describe(calc.Say("{name}, nothing promised", calc.Words(j.name, "name")))
		return
	}
	x.Promised = d.at(words)
	if x.Promised <= x.Ready {
		j.Reject(field.PromisedBy, calc.Impossible, "is {t}, and the parts are there no sooner than {ready}", "Check both times", show(x.Promised, "t"), show(x.Ready, "ready"))
	}
	j.Describe(calc.Say("{name}, promised by {t}", calc.Words(j.name, "name"), show(x.Promised, "t")))
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
		r.first, r.n = len(x.Coats), up(row.Given(field.Coats))
		d.jobs[r.job].rounds = append(d.jobs[r.job].rounds, r)
		c := plan.Coat{
			Product: r.paint, Spray: up(row.Given(field.SprayTime)), Amount: up(row.Given(field.CoatAmount)), Flash: up(row.Given(field.Flash)),
			Latest: down(row.Given(field.RecoatWithin)), NewCup: row.Picked(field.NewCup) == "yes", Movable: row.Picked(field.MayLeave) == "yes",
		}
		for range r.n {
			x.Coats = append(x.Coats, c)
		}
		if last := row.Given(field.FlashLast); last.Given() {
			x.Coats[len(x.Coats)-1].Flash = up(last)
		}
		template := calc.Phrase("{job}: {n} coats of {product}, {t} each")
		if r.n == 1 {
			template = "{job}: 1 coat of {product}, {t}"
		}
		row.Describe(calc.Say(template, calc.Words(d.jobs[r.job].name, "job"), whole(r.n, "n"), calc.Words(d.paints[r.paint].name, "product"), row.Given(field.SprayTime).As("t")))
	}
}

// jobOf finds the job that a row names; the only one where it names none.
func (d *day) jobOf(row *calc.Entry, at *int) bool {
	return d.find(row, field.OfJob, len(d.jobs), func(i int) string { return d.jobs[i].name }, at)
}

// paintOf finds the product that a row names; the only one where it names none.
func (d *day) paintOf(row *calc.Entry, at *int) bool {
	return d.find(row, field.Product, len(d.paints), func(i int) string { return d.paints[i].name }, at)
}

func (d *day) find(row *calc.Entry, in calc.Input, n int, name func(i int) string, at *int) bool {
	typed := row.Words(in)
	for i := range n {
		if n == 1 && typed == "" || typed != "" && fold(typed) == fold(name(i)) {
			*at = i
			return true
		}
	}
	switch {
	case !row.Sound(in) || n == 0:
	case typed == "":
		row.Reject(in, calc.Missing, "is blank", "Enter it: there are several")
	default:
		row.Reject(in, calc.Impossible, "“{name}” is not among them", "Write it as in its own row, or add that row", calc.Words(typed, "name"))
	}
	return false
}
