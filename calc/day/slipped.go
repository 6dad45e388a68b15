package day

import (
	"strings"

	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// planned is the line of the plan for a step, or nil.
func (c *changing) planned(r plan.Ref) *plan.Step {
	for i := range c.day.plan.Steps {
		if s := &c.day.plan.Steps[i]; s.Kind == r.Kind && stepRef(s) == r {
			return s
		}
	}
	return nil
}

// unplanned says that a change needs a plan.
func (c *changing) unplanned() bool {
	if c.day.solver == nil {
		reject(c.Entry, &field.DayForm, "has no plan", "Put right first what it marks")
	}
	return c.day.solver == nil
}

// isDone notes that a step is done or under way, with those of the same job before it.
func (c *changing) isDone(r plan.Ref) bool {
	if c.unplanned() {
		return false
	}
	s := c.planned(r)
	long := s.End - s.Start
	began, ended := words(c.Entry, &field.ToTime), words(c.Entry, &field.EndTime)
	if began != "" {
		s.Start = c.day.since(began, early)
		s.End = s.Start + long
	}
	if ended != "" {
		if s.End = c.day.since(ended, early); began == "" && s.End < s.Start {
			s.Start = max(s.End-long, c.freeFrom(s))
		}
	}
	if s.End < s.Start {
		reject(c.Entry, &field.EndTime, "comes before it started, {t}", "Check both times", args("t", show(s.Start))...)
		return false
	}
	if painter := down(c.Entry, &field.ByPainter); painter > 0 && s.Painter > 0 {
		s.Painter = painter
	}
	c.mixedBefore(s)
	if others := c.writeDone(func(x plan.Ref) bool { return x.Job == r.Job && after(r, x) }, r); others != "" {
		c.told("Done from {a} to {b}: {step}. Before it, as planned: {others}.", r, "a", show(s.Start), "b", show(s.End), "others", others)
		return true
	}
	c.told("Done from {a} to {b}: {step}.", r, "a", show(s.Start), "b", show(s.End))
	return true
}

// mixedBefore has the cup of a coat that came sooner than planned mixed sooner too.
func (c *changing) mixedBefore(s *plan.Step) {
	if s.Kind != plan.Spray {
		return
	}
	cup, m := &c.day.plan.Cups[s.Cup-1], &c.day.model
	if cup.Mixed > s.Start {
		cup.Mixed = max(c.day.start, s.Start-m.Products[cup.Product].Mix-m.Walk-m.Door)
	}
}

// freeFrom is when a step that ended sooner than it was planned to begin can have begun: after what its painter, and its
// parts, had before.
func (c *changing) freeFrom(s *plan.Step) int {
	t := c.day.start
	for i := range c.day.plan.Steps {
		x := &c.day.plan.Steps[i]
		if x != s && x.Kind == stepRef(x).Kind && x.End <= s.End && (x.Painter > 0 && x.Painter == s.Painter || x.Job == s.Job) {
			t = max(t, x.End)
		}
	}
	return t
}

// now has what is not done planned again from a time of day. The steps that are named count as done or under way, as
// they were planned, with those of their jobs before them. No other does: that a coat is on is for the painter to say.
func (c *changing) now() bool {
	typed := words(c.Entry, &field.ToTime)
	if typed == "" {
		reject(c.Entry, &field.ToTime, "is blank", "Enter the time of day")
		return false
	}
	if c.unplanned() {
		return false
	}
	var last []plan.Ref
	for _, name := range strings.Fields(words(c.Entry, &field.Counted)) {
		if r, known := c.ref(name); known && c.planned(r) != nil {
			last = append(last, r)
			continue
		}
		reject(c.Entry, &field.Counted, "names no step of this day", "Choose it in the plan again")
		return false
	}
	t := max(c.day.start, c.day.since(typed, early))
	counted := c.writeDone(func(x plan.Ref) bool {
		for _, r := range last {
			if x.Job == r.Job && after(r, x) {
				return true
			}
		}
		return false
	}, plan.Ref{})
	c.form[field.Now.Key] = show(t % aDay)
	if counted == "" {
		c.Tell(changed, say("Planned again from {t}.", "t", show(t)))
		return true
	}
	c.Tell(changed, say("Planned again from {t}. Counted at the plan’s times: {steps}. Correct what ran late, and touch-test before the next coat.", "t", show(t), "steps", counted))
	return true
}

// writeDone writes all rows of what is done anew: what was done before, and of the plan what counts as done besides. Cups
// then have one numbering. Steps that are done are held no more. It names those that count besides, but for one.
func (c *changing) writeDone(counts func(plan.Ref) bool, but plan.Ref) (besides string) {
	d := c.day
	c.remove("done", func(plan.Ref) bool { return true })
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		r := stepRef(s)
		if s.Kind != r.Kind || !s.Done && !counts(r) {
			continue
		}
		if !s.Done && r != but {
			if besides != "" {
				besides += "; "
			}
			besides += c.stepName(r)
		}
		row := c.row("done", r)
		c.form[row+field.StartedAt.Key], c.form[row+field.EndedAt.Key] = show(s.Start%aDay), show(s.End%aDay)
		c.number(row+field.PainterNumber.Key, s.Painter)
		c.number(row+field.PlaceNumber.Key, s.Place)
		if s.Kind == plan.Spray {
			c.number(row+field.CupNumber.Key, s.Cup)
			c.form[row+field.MixedAt.Key] = show(d.plan.Cups[s.Cup-1].Mixed % aDay)
		}
		c.remove("pin", func(x plan.Ref) bool { return x == r })
	}
	return besides
}

func (c *changing) number(key string, n int) {
	if n > 0 {
		c.form[key] = itoa(n)
	}
}
