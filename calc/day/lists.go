package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// jobList tells when each job is done.
func (d *day) jobList() {
	for j, x := range d.jobs {
		end, due := d.plan.Jobs[j], ""
		var late extra
		if t := d.model.Jobs[j].Promised; t > 0 {
			due, late.num = show(t), calc.N(float64(end.Late), unit.Minute)
		}
		d.list(&jobsDone, late, x.name, words(x.Entry, &field.JobParts), show(end.Done), due)
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
		use, why := "", d.voiced("Its own cup")
		var volume extra
		if c.UseBy >= 0 {
			use = show(c.UseBy)
		}
		if c.Jobs > 1 {
			why = d.Voiced(with(say("Shared by {n} jobs, which saves {t} of mixing and walking", "n", itoa(c.Jobs)), c.Saves, "t"))
		}
		if c.Amount > 0 {
			v := calc.N(float64(c.Amount), unit.Millilitre).Called("Sprayed from this cup")
			volume.num = d.Step("Mix in this cup", "V = V_s + H", unit.Millilitre, source.Definition, v.V+lost.V, v, lost)
		}
		d.list(&cupsMixed, volume, d.cupName(i+1), d.paints[c.Product].name, show(c.Mixed), use, d.jobsOf(c), why)
	}
}

func (d *day) cupName(n int) string { return d.voiced("Cup {n}", "n", itoa(n)) }

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
				d.list(&byLane, extra{}, name, show(b.From), show(b.To), d.voiced("Break"))
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
	d.list(out, extra{of: of(stepRef(s))}, name, show(s.Start), show(s.End), d.doing(s))
}

// own reports whether a step happens to the parts.
func own(k plan.Kind) bool {
	return k == plan.PrepStep || k == plan.Spray || k == plan.Flash || k == plan.Heat
}
