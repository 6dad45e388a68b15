package checkplan

import "spraywright/calc/day/plan"

// kind tells which kind of place a step is in.
func (c *checker) kind(s plan.Step) plan.Kind {
	if s.Kind == plan.Heat && !c.d.Jobs[s.Job].Bake.InOven {
		return plan.Spray
	}
	return s.Kind
}

// places checks that each place does one thing at a time; bakes of a booth join.
func (c *checker) places() {
	var all []plan.Step
	for _, s := range c.p.Steps {
		if s.Kind == plan.PrepStep || s.Kind == plan.Spray || s.Kind == plan.Heat {
			all = append(all, s)
		}
	}
	for i, s := range all {
		if s.Place < 1 {
			c.fault("step without a place", s.Job, s.Coat)
		}
		if (s.Painter > 0) != (s.Kind == plan.Spray || s.Kind == plan.PrepStep && c.d.Jobs[s.Job].Prep.ByPainter) {
			c.fault("painter where none is needed, or none", s.Job, s.Coat)
		}
		for _, o := range all[:i] {
			if c.kind(s) != c.kind(o) || s.Place != o.Place || s.Start >= o.End || o.Start >= s.End || s.Done && o.Done {
				continue
			}
			if c.kind(s) == plan.Spray && c.joined(s, o) {
				continue
			}
			c.fault("place does two things at once", s.Job, o.Job, s.Start, o.Start)
		}
	}
}

// joined tells whether two steps are one bake of a booth.
func (c *checker) joined(a, b plan.Step) bool {
	x, y := c.d.Jobs[a.Job].Bake, c.d.Jobs[b.Job].Bake
	return a.Kind == plan.Heat && b.Kind == plan.Heat && a.Start == b.Start && x.Minutes == y.Minutes && x.Heat == y.Heat
}

// stay is a time in which a job stands wet in a booth.
type stay struct {
	job, booth, from, to int
	bake                 plan.Step // the bake in the booth that ends it; no Kind for none
}

// wet checks that nothing stands wet in a booth while something else is baked there, and that booths are not too full.
func (c *checker) wet() {
	var all []stay
	for j := range c.d.Jobs {
		all = append(all, c.stays(j)...)
	}
	for _, s := range c.p.Steps {
		if s.Kind != plan.Heat || c.d.Jobs[s.Job].Bake.InOven || s.Done {
			continue
		}
		for _, w := range all {
			if w.booth != s.Place || w.job == s.Job || w.from >= s.End || w.to <= s.Start {
				continue
			}
			if w.bake.Kind != plan.Heat || !c.joined(w.bake, s) {
				c.fault("wet in the booth during a bake", w.job, s.Job, s.Start)
			}
		}
	}
	if c.d.Room == 0 {
		return
	}
	for _, w := range all {
		n := 0
		for _, o := range all {
			if o.booth == w.booth && o.from <= w.from && w.from < o.to {
				n++
			}
		}
		if n > c.d.Room && w.from >= c.d.Now {
			c.fault("booth too full", w.booth, w.from, n)
		}
	}
}

// stays are a job's times in booths: from a coat on until one whose flash makes the parts movable, or until the bake.
func (c *checker) stays(j int) []stay {
	job := &c.d.Jobs[j]
	var all []stay
	open := false
	for _, s := range c.steps(j, plan.Spray, plan.Heat) {
		last := len(all) - 1
		if s.Kind == plan.Heat {
			if !job.Bake.InOven && open {
				all[last].to, all[last].bake = s.End, s
				if all[last].booth != s.Place {
					c.fault("baked in another booth", j)
				}
			}
			continue
		}
		if !open {
			all = append(all, stay{job: j, booth: s.Place, from: s.Start})
			last++
		}
		if all[last].booth != s.Place {
			c.fault("wet parts moved", j, s.Coat)
		}
		all[last].to = s.End + job.Coats[s.Coat].Flash
		open = !job.Coats[s.Coat].Movable
		if s.Coat == len(job.Coats)-1 && (job.Bake.Minutes == 0 || job.Bake.InOven) {
			open = false
		}
	}
	return all
}
