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
		ID:         "day-change",
		Title:      "Change to a day",
		Question:   "What is the form of the day after this change?",
		Range:      "Forms of the booth day. The new form is not planned yet, and may hold what cannot be.",
		Inputs:     form("", changeGroups),
		Outputs:    []calc.Output{newForm, changed},
		Work:       s.change,
		Arithmetic: true, // the way of writing is this site's own
	}
}

var (
	newForm = calc.Output{Key: "form", Label: "Form", Words: true, Optional: true}
	changed = calc.Output{Key: "changed", Label: "What changed", Words: true, Optional: true}
)

var changeGroups = []group{{"", []*calc.Input{
	&field.DayForm, &field.DayChange, &field.StepOf, &field.ToTime, &field.EndTime, &field.Along, &field.ByPainter, &field.Counted, &field.Added,
}}}

// A changing is one change to a day's form.
type changing struct {
	*calc.Working
	form calc.Form
	day  *day // as it was read and planned before the change
}

func (s *session) change(w *calc.Working) {
	c := &changing{Working: w, form: calc.ParseForm(words(w.Entry, &field.DayForm))}
	adds := picked(w.Entry, &field.DayChange, "add")
	if adds {
		c.form[field.Tried.Key] = "0" // it needs no plan
	}
	c.day = s.planned(c.form)
	ok := false
	if adds {
		ok = c.add()
	} else if picked(w.Entry, &field.DayChange, "now") {
		ok = c.now()
	} else if r, found := c.ref(words(w.Entry, &field.StepOf)); found {
		ok = c.step(r)
	} else {
		reject(w.Entry, &field.StepOf, "names no step of this day", "Choose it in the plan again")
	}
	if ok {
		delete(c.form, field.Tried.Key)
		w.Tell(newForm, say("{form}", "form", c.form.String()))
	}
}

// ref reads a step as the plan names it.
func (c *changing) ref(text string) (r plan.Ref, ok bool) {
	parts := strings.Split(text, "-")
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
	return r, known
}

func (c *changing) step(r plan.Ref) bool {
	switch {
	case picked(c.Entry, &field.DayChange, "hold"):
		return c.hold(r)
	case picked(c.Entry, &field.DayChange, "done"):
		return c.isDone(r)
	case picked(c.Entry, &field.DayChange, "undo"):
		c.remove("done", func(x plan.Ref) bool { return x.Job == r.Job && after(x, r) })
		c.told("Not done after all: {step}, and what follows it.", r)
	default:
		c.remove("pin", func(x plan.Ref) bool { return x == r })
		c.told("Let go: {step}.", r)
	}
	return true
}

// told says what changed about a step.
func (c *changing) told(t calc.Phrase, r plan.Ref, words ...string) {
	c.Tell(changed, say(t, append(words, "step", c.stepName(r))...))
}

// stepName names a step in the reader's language.
func (c *changing) stepName(r plan.Ref) string {
	in := *c.day
	in.Working = c.Working
	return in.step(r)
}

// after reports whether a step of a job is a given one or comes after it.
func after(x, given plan.Ref) bool {
	return x.Kind > given.Kind || x.Kind == given.Kind && x.Coat >= given.Coat
}

// nearest is what a dragged step snaps to, in minutes.
const nearest = 5

// hold makes a step keep its time, its painter or both. One that is dragged before it could begin is held where it can.
func (c *changing) hold(r plan.Ref) bool {
	t, painter, typed := -1, down(c.Entry, &field.ByPainter), words(c.Entry, &field.ToTime)
	planned := c.planned(r)
	switch along := given(c.Entry, &field.Along); {
	case typed != "":
		t = c.day.since(typed, early)
	case along.Given():
		t = c.day.top() + int(math.Round((along.V-headHeight)/pixelsAMinute/nearest))*nearest
		t = max(t, c.day.model.Now, c.day.model.Jobs[r.Job].Ready)
	case painter == 0 && planned != nil:
		t = planned.Start
	case painter == 0:
		reject(c.Entry, &field.ToTime, "is blank, and there is no plan to take it from", "Enter it")
		return false
	}
	row := c.row("pin", r)
	if t >= 0 {
		c.form[row+field.HeldAt.Key] = show(t % aDay)
		c.told("Held at {t}: {step}.", r, "t", show(t))
	} else {
		c.told("Held: {step}.", r)
	}
	c.number(row+field.PainterNumber.Key, painter)
	return true
}
