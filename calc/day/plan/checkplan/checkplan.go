// Package checkplan holds a plan against its day, line by line and without any of the code that made the plan. It is for
// tests: nothing that runs on the page imports it.
package checkplan

import (
	"strconv"

	"spraywright/calc/day/plan"
)

// checker gathers what a plan breaks.
type checker struct {
	d     *plan.Day
	p     *plan.Plan
	wrong []string
}

// Check lists every rule that the plan breaks; nothing where it is sound.
func Check(d *plan.Day, p *plan.Plan) []string {
	c := &checker{d: d, p: p}
	c.jobs()
	c.painters()
	c.places()
	c.wet()
	c.cups()
	c.pins()
	c.sums()
	return c.wrong
}

func (c *checker) fault(what string, numbers ...int) {
	for _, n := range numbers {
		what += " " + strconv.Itoa(n)
	}
	c.wrong = append(c.wrong, what)
}

func units(n int) int {
	if n == 0 {
		return 1
	}
	return n
}

// steps are the lines of a kind for a job, in the order of starts.
func (c *checker) steps(job int, kinds ...plan.Kind) []plan.Step {
	var all []plan.Step
	for _, s := range c.p.Steps {
		for _, k := range kinds {
			if s.Job == job && s.Kind == k {
				all = append(all, s)
			}
		}
	}
	return all
}

// jobs checks that each job's steps are there, in order, as long as they must be, with their waits.
func (c *checker) jobs() {
	for j := range c.d.Jobs {
		job := &c.d.Jobs[j]
		own := c.steps(j, plan.PrepStep, plan.Spray, plan.Heat)
		var want []plan.Step
		if job.Prep.Minutes > 0 {
			want = append(want, plan.Step{Kind: plan.PrepStep, End: job.Prep.Minutes})
		}
		for i, coat := range job.Coats {
			want = append(want, plan.Step{Kind: plan.Spray, Coat: i, End: coat.Spray})
		}
		if job.Bake.Minutes > 0 {
			want = append(want, plan.Step{Kind: plan.Heat, End: job.Bake.Minutes})
		}
		if len(own) != len(want) {
			c.fault("job has another number of steps", j, len(own), len(want))
			continue
		}
		for i, s := range own {
			if s.Kind != want[i].Kind || s.Kind == plan.Spray && s.Coat != want[i].Coat {
				c.fault("steps of job out of order", j, i)
			}
			if !s.Done && s.End-s.Start != want[i].End {
				c.fault("step has other minutes", j, i)
			}
			if !s.Done && (s.Start < job.Ready || s.Start < c.d.Now) {
				c.fault("step starts too soon", j, i, s.Start)
			}
			if s.Done != c.isDone(s) {
				c.fault("done or not", j, i)
			}
			if i > 0 && !s.Done {
				c.waits(own[i-1], s)
			}
		}
		c.flashes(j, own)
	}
}

// waits checks least and longest wait between two steps of a job.
func (c *checker) waits(a, b plan.Step) {
	flash, latest := 0, 0
	if a.Kind == plan.Spray {
		coat := c.d.Jobs[a.Job].Coats[a.Coat]
		flash, latest = coat.Flash, coat.Latest
	}
	if b.Start < a.End+flash {
		c.fault("flash too short", a.Job, a.Coat, a.End, b.Start)
	}
	if latest > 0 && b.Start > a.End+latest {
		c.fault("latest recoat missed", a.Job, a.Coat, a.End, b.Start)
	}
}

// flashes checks that every coat has its flash in the plan.
func (c *checker) flashes(j int, own []plan.Step) {
	for _, s := range own {
		if s.Kind != plan.Spray {
			continue
		}
		found := false
		for _, f := range c.steps(j, plan.Flash) {
			if f.Coat == s.Coat && f.Start == s.End && f.End == s.End+c.d.Jobs[j].Coats[s.Coat].Flash {
				found = true
			}
		}
		if !found {
			c.fault("no flash for coat", j, s.Coat)
		}
	}
}

func (c *checker) isDone(s plan.Step) bool {
	for _, x := range c.d.Done {
		if x.Job == s.Job && x.Kind == s.Kind && (s.Kind != plan.Spray || x.Coat == s.Coat) {
			return x.Start == s.Start && x.End == s.End
		}
	}
	return false
}

func (c *checker) pins() {
	for _, x := range c.d.Pins {
		for _, s := range c.steps(x.Job, x.Kind) {
			if x.Kind == plan.Spray && s.Coat != x.Coat {
				continue
			}
			if x.Start > 0 && s.Start != x.Start || x.Painter > 0 && s.Painter != x.Painter && s.Painter > 0 || x.Place > 0 && s.Place != x.Place {
				c.fault("pin not kept", x.Job, x.Coat)
			}
		}
	}
}
