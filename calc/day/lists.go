package day

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// jobList tells when each job is done.
func (d *day) jobList() {
	for j, x := range d.jobs {
		end := d.plan.Jobs[j]
		due, late := cell{}, cell{}
		if t := d.model.Jobs[j].Promised; t > 0 {
			n := calc.N(float64(end.Late), unit.Minute)
			due.text, late.num = show(t), &n
		}
		d.list(&jobsDone, cell{text: x.name}, cell{text: words(x.Entry, &field.JobParts)}, cell{text: show(end.Done)}, due, late)
	}
}

// cupList tells what to mix when, for which jobs.
func (d *day) cupList() {
	lost := given(d.Entry, &field.Losses)
	for i := range d.plan.Cups {
		c := &d.plan.Cups[i]
		if c.Done {
			continue
		}
		use, volume, why := cell{}, cell{}, d.voiced("Its own cup")
		if c.UseBy >= 0 {
			use.text = show(c.UseBy)
		}
		if c.Jobs > 1 {
			why = d.Voiced(with(say("Shared by {n} jobs, which saves {t} of mixing and walking", "n", strconv.Itoa(c.Jobs)), c.Saves, "t"))
		}
		if c.Amount > 0 {
			v := calc.N(float64(c.Amount), unit.Millilitre).Called("Sprayed from this cup")
			v = d.Step("Mix in this cup", "V = V_s + H", unit.Millilitre, source.Definition, v.V+lost.V, v, lost)
			volume.num = &v
		}
		d.list(&cupsMixed, cell{text: d.cupName(i + 1)}, cell{text: d.paints[c.Product].name}, volume, cell{text: show(c.Mixed)}, use, cell{text: d.jobsOf(c)}, cell{text: why})
	}
}

func (d *day) cupName(n int) string { return d.voiced("Cup {n}", "n", strconv.Itoa(n)) }

// jobsOf lists the jobs that a cup is for.
func (d *day) jobsOf(c *plan.Cup) string {
	names := ""
	for i, r := range c.Coats {
		seen := false
		for _, before := range c.Coats[:i] {
			seen = seen || before.Job == r.Job
		}
		if seen {
			continue
		}
		if names != "" {
			names += ", "
		}
		names += d.jobs[r.Job].name
	}
	return names
}

// lanes lists what the two pictures show.
func (d *day) lanes() {
	for _, c := range d.columns() {
		name := d.called(c)
		for i := range d.plan.Steps {
			if s := &d.plan.Steps[i]; d.in(c, s) {
				d.lane(&byLane, name, s)
			}
		}
		for i := range d.model.Breaks {
			if b := &d.model.Breaks[i]; c.takes(b) {
				d.list(&byLane, cell{text: name}, cell{text: show(b.From)}, cell{text: show(b.To)}, cell{text: d.voiced("Break")})
			}
		}
	}
	for j, x := range d.jobs {
		for i := range d.plan.Steps {
			if s := &d.plan.Steps[i]; s.Job == j && own(s.Kind) {
				d.lane(&byJob, x.name, s)
			}
		}
	}
}

func (d *day) lane(out *calc.Output, name string, s *plan.Step) {
	d.list(out, cell{text: name}, cell{text: show(s.Start)}, cell{text: show(s.End)}, cell{text: d.doing(s), of: of(stepRef(s))})
}

// own reports whether a step happens to the parts.
func own(k plan.Kind) bool {
	return k == plan.PrepStep || k == plan.Spray || k == plan.Flash || k == plan.Heat
}
