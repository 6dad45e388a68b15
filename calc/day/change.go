package day

import (
	"math"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// dayChange changes the form of a day for the page: a step held where it was dragged to, a step done, all planned again
// from now, jobs added. The page hands a form over and gets one back.
func (s *session) dayChange() *calc.Calculator {
	return &calc.Calculator{
		ID:       "day-change",
		Title:    "Change to a day",
		Question: "What is the form of the day after this change?",
		Range:    "Forms of the booth day. The new form is not planned yet, and may hold what cannot be.",
		Inputs: []calc.Input{
			field.DayForm, field.DayChange, field.StepOf, field.ToTime, field.EndTime, field.Along, field.ByPainter, field.Added,
		},
		Outputs:    []calc.Output{newForm, changed},
		Work:       s.change,
		Arithmetic: true, // the way of writing is this site's own
	}
}

var (
	newForm = calc.Output{Key: "form", Label: "Form", Words: true, Optional: true}
	changed = calc.Output{Key: "changed", Label: "What changed", Words: true, Optional: true}
)

// A changing is one change to a day's form.
type changing struct {
	*calc.Working
	form calc.Form
	day  *day // as it was read and planned before the change
}

func (s *session) change(w *calc.Working) {
	c := &changing{Working: w, form: calc.ParseForm(w.Words(field.DayForm))}
	s.day().Run(c.form)
	c.day = s.last
	ok := false
	switch w.Picked(field.DayChange) {
	case "now":
		ok = c.now()
	case "add":
		ok = c.add()
	default:
		if r, found := c.ref(); found {
			ok = c.step(r)
		}
	}
	if ok {
		delete(c.form, field.Tried.Key)
		w.Tell(newForm, calc.Say("{form}", calc.Words(c.form.String(), "form")))
	}
}

// ref reads a step as the plan names it.
func (c *changing) ref() (r plan.Ref, ok bool) {
	parts := strings.Split(c.Words(field.StepOf), "-")
	var n [3]int
	for i := range n {
		if len(parts) == len(n) {
			n[i], _ = strconv.Atoi(parts[i])
		}
	}
	r = plan.Ref{Job: n[0] - 1, Kind: plan.Kind(n[1]), Coat: max(0, n[2]-1)}
	known := r.Job >= 0 && r.Job < len(c.day.jobs)
	if known {
		m := &c.day.model.Jobs[r.Job]
		known = r.Kind == plan.PrepStep && m.Prep.Minutes > 0 || r.Kind == plan.Spray && r.Coat < len(m.Coats) || r.Kind == plan.Heat && m.Bake.Minutes > 0
	}
	if !known {
		c.Reject(field.StepOf, calc.Impossible, "names no step of this day", "Choose it in the plan again")
	}
	return r, known
}

func (c *changing) step(r plan.Ref) bool {
	step := c.day.step(r).As("step")
	switch c.Picked(field.DayChange) {
	case "hold":
		return c.hold(r)
	case "done":
		return c.isDone(r)
	case "undo":
		c.remove("done", func(x plan.Ref) bool { return x.Job == r.Job && after(x, r) })
		c.Tell(changed, calc.Say("Not done after all: {step}, and what follows it", step))
	default:
		c.remove("pin", func(x plan.Ref) bool { return x == r })
		c.Tell(changed, calc.Say("Let go: {step}", step))
	}
	return true
}

// after reports whether a step of a job is a given one or comes after it.
func after(x, given plan.Ref) bool {
	return x.Kind > given.Kind || x.Kind == given.Kind && x.Coat >= given.Coat
}

// nearest is what a dragged step snaps to, in minutes.
const nearest = 5

// hold makes a step keep its time, its painter or both. One that is dragged before it could begin is held where it can.
func (c *changing) hold(r plan.Ref) bool {
	t, painter := -1, c.Given(field.ByPainter)
	planned := c.planned(r)
	switch along := c.Given(field.Along); {
	case c.Words(field.ToTime) != "":
		t = c.day.before(c.Words(field.ToTime))
	case along.Given():
		t = c.day.top() + int(math.Round((along.V-headHeight)/pixelsAMinute/nearest))*nearest
		t = max(t, c.day.model.Now, c.day.model.Jobs[r.Job].Ready)
	case !painter.Given() && planned != nil:
		t = planned.Start
	case !painter.Given():
		c.Reject(field.ToTime, calc.Impossible, "is blank, and there is no plan to take it from", "Enter it")
		return false
	}
	row, step := c.row("pin", r), c.day.step(r).As("step")
	if t >= 0 {
		c.form[row+field.HeldAt.Key] = field.ShowClock(t % aDay)
		c.Tell(changed, calc.Say("Held at {t}: {step}", show(t, "t"), step))
	} else {
		c.Tell(changed, calc.Say("Held: {step}", step))
	}
	if painter.Given() {
		c.form[row+field.PainterNumber.Key] = strconv.Itoa(down(painter))
	}
	return true
}

// planned is the line of the plan for a step, or nil.
func (c *changing) planned(r plan.Ref) *plan.Step {
	for i := range c.day.plan.Steps {
		s := &c.day.plan.Steps[i]
		if s.Kind == r.Kind && s.Job == r.Job && s.Coat == r.Coat {
			return s
		}
	}
	return nil
}

// isDone notes that a step is done or under way, with those of the same job before it.
func (c *changing) isDone(r plan.Ref) bool {
	s := c.planned(r)
	if s == nil {
		c.Reject(field.DayForm, calc.Impossible, "has no plan", "Put right first what it marks")
		return false
	}
	long := s.End - s.Start
	if words := c.Words(field.ToTime); words != "" {
		s.Start = c.day.before(words)
		s.End = s.Start + long
	}
	if words := c.Words(field.EndTime); words != "" {
		if s.End = c.day.before(words); s.End < s.Start {
			c.Reject(field.EndTime, calc.Impossible, "comes before it started, {t}", "Check both times", show(s.Start, "t"))
			return false
		}
	}
	if painter := c.Given(field.ByPainter); painter.Given() && s.Painter > 0 {
		s.Painter = down(painter)
	}
	c.writeDone(func(x *plan.Step) bool { return x.Job == r.Job && after(r, stepRef(x)) })
	c.Tell(changed, calc.Say("Done from {a} to {b}: {step}", show(s.Start, "a"), show(s.End, "b"), c.day.step(r).As("step")))
	return true
}

// now has what begins before a time of day count as done as it was planned, and the rest planned again.
func (c *changing) now() bool {
	words := c.Words(field.ToTime)
	switch {
	case words == "":
		c.Reject(field.ToTime, calc.Impossible, "is blank", "Enter the time of day")
		return false
	case c.day.solver == nil:
		c.Reject(field.DayForm, calc.Impossible, "has no plan", "Put right first what it marks")
		return false
	}
	t := max(c.day.start, c.day.before(words))
	n := c.writeDone(func(x *plan.Step) bool { return x.Start < t })
	c.form[field.Now.Key] = field.ShowClock(t % aDay)
	c.Tell(changed, calc.Say("Planned again from {t}; {n} steps before that count as done as planned", show(t, "t"), whole(n, "n")))
	return true
}

// writeDone writes all rows of what is done anew: what was done before, and of the plan what counts as done besides. Cups
// then have one numbering. Steps that are done are held no more. It tells how many there are.
func (c *changing) writeDone(counts func(*plan.Step) bool) int {
	d, n := c.day, 0
	c.remove("done", func(plan.Ref) bool { return true })
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		if s.Kind != plan.PrepStep && s.Kind != plan.Spray && s.Kind != plan.Heat || !s.Done && !counts(s) {
			continue
		}
		n++
		r := stepRef(s)
		row := c.row("done", r)
		c.form[row+field.StartedAt.Key], c.form[row+field.EndedAt.Key] = field.ShowClock(s.Start%aDay), field.ShowClock(s.End%aDay)
		c.number(row+field.PainterNumber.Key, s.Painter)
		c.number(row+field.PlaceNumber.Key, s.Place)
		if s.Kind == plan.Spray {
			c.number(row+field.CupNumber.Key, s.Cup)
			c.form[row+field.MixedAt.Key] = field.ShowClock(d.plan.Cups[s.Cup-1].Mixed % aDay)
		}
		c.remove("pin", func(x plan.Ref) bool { return x == r })
	}
	return n
}

func (c *changing) number(key string, n int) {
	if n > 0 {
		c.form[key] = strconv.Itoa(n)
	}
}
