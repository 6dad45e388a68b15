// Package exercise sets tasks for learners from any calculator, and judges their answers. A task is the calculator's
// form filled with numbers drawn from a seed; the right answer is the calculator's own. It is for learning and not for
// examination: whoever can read a link to a task can work it out with the same program.
//
// Settings are a form of their own:
//
//	ask=wet_film            the answer wanted, or "component.2.mass" for the mass in row 2 of a list; the first main one
//	ask.unit=mil            the unit it is asked in
//	seed=7  draw=2          what the numbers are drawn from; another draw has other numbers
//	level=1                 1: the calculator's own units; 2: one number in another unit, and choices that people mix up;
//	                        3: any number in another unit
//	units=us                the units that a US shop expects instead of SI
//	right=1  close=5        percent of the right answer within which one is right, and close
//	dry_film=40..95 by 5    the numbers to draw from, "60" for just that, "40; 60" for one of these
//	dry_film.unit=um        and their unit
//	solids_for=any          the choices to draw from: one key, several as "mix; unthinned", or any
//	ratio=4:1:1; 2:1        words to draw from
//	part=2                  how many rows a table has; part.length then is for every row and part.2.length for one
//	answer=3/4 qt           what the learner answered, its unit there or in answer.unit
//	show=answer             gives the answer away
//
// An input that is not set is given numbers around its example; one that starts filled in keeps what it starts with, and
// one that may stay blank stays so unless the calculator wants it for this answer.
//
// The package is compiled into several cores. It passes pointers and keeps to few, plain functions for their size's sake.
package exercise

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A Task is one exercise.
type Task struct {
	Problems calc.Problems // with the settings, or with the answer given
	Given    []*Given      // the numbers, words and choices of the task
	Asked    string        // the answer wanted, as a setting names it
	Label    string        // what it is called
	Unit     unit.Unit     // in which it is asked for
	Form     calc.Form     // the calculator's form as drawn
	Report   *calc.Report  // of that form
	Figure   *calc.Figure  // the right answer, worded

	_ [0]func() // not comparable, as below: spares the code that would compare it
	calc.Language
	c               *calc.Calculator
	set             calc.Form
	level           string
	rightIn, nearIn float64      // shares of the right answer within which one is right, and close
	out             *calc.Output // that is asked for
	right           float64      // the right answer in out.Unit
}

// A Given is one thing that a task gives.
type Given struct {
	_           [0]func()
	Field       string
	Label, Text string
	Typed       string    // as the form holds it
	Unit        unit.Unit // of a number
	in          *calc.Input
}

// own are the settings that are no input's.
const own = " ask seed draw level units right close answer show "

// New draws a task, worded in a language. Where Problems is not empty there is none.
func New(l calc.Language, c *calc.Calculator, set calc.Form) *Task {
	t := &Task{Language: l, c: c, set: set, level: set["level"]}
	if t.level == "" {
		t.level = "1"
	}
	t.rightIn, t.nearIn = t.share("right", 1), t.share("close", 5)
	if t.rightIn > t.nearIn {
		t.problem("close", calc.Impossible, "An answer counts as close nearer than it counts as right", "Enter a larger share for close", "")
	}
	if unknown := t.unknown(); unknown != "" {
		t.problem(unknown, calc.NotOffered, "“{text}” is no setting of this calculator", "Take it out, or ask for the link again", unknown)
	}
	if len(t.level) != 1 || strings.Trim(t.level, "123") != "" {
		t.problem("level", calc.NotOffered, "There is no difficulty “{text}”", "Choose 1, 2 or 3", t.level)
	}
	t.ask()
	if t.Problems == nil {
		t.draw()
	}
	return t
}

// problem notes what is wrong with a setting. The message may name {text}.
//
//go:noinline
func (t *Task) problem(field string, code calc.Code, message, fix calc.Phrase, text string) {
	t.Problems = append(t.Problems, calc.Problem{Field: field, Code: code, Message: t.Say(message, "text", text), Fix: t.Say(fix)})
}

// get is a setting.
//
//go:noinline
func (t *Task) get(key string) string { return t.set[key] }

// share reads a percentage of at most 50 as a share.
//
//go:noinline
func (t *Task) share(key string, usual float64) float64 {
	text := t.get(key)
	if text == "" {
		return usual / 100
	}
	x, ok := calc.ReadNumber(text)
	if !ok || x < 0 || x > 50 {
		t.problem(key, calc.NotNumber, "“{text}” is no share between 0 and 50 percent", "Enter a number, like 5", text)
	}
	return x / 100
}

// unknown is the first setting that the calculator has no use for, or blank.
func (t *Task) unknown() string {
	first := ""
	for key := range t.set {
		bare := strings.TrimSuffix(key, ".unit")
		if !strings.Contains(own, " "+bare+" ") && t.c.Input(withoutRow(bare)) == nil && (first == "" || key < first) {
			first = key
		}
	}
	return first
}

// ask finds the output that is asked for, and the unit to ask it in.
func (t *Task) ask() {
	t.Asked = t.get("ask")
	if t.Asked == "" {
		t.Asked = Usual(t.c)
	}
	t.out = t.c.Output(withoutRow(t.Asked))
	switch {
	case t.Asked == "":
		t.problem("", calc.Impossible, "This calculator answers in words alone", "Choose another one", "")
		return
	case t.out == nil || t.out.Unit == 0:
		t.problem("ask", calc.NotOffered, "This calculator gives no number called “{text}”", "Choose one of its answers", t.Asked)
		return
	}
	units := unit.Of(t.out.Unit.Quantity())
	t.Unit = t.usual(t.out.Unit, units)
	if t.level == "3" && t.pick(2, "ask") == 1 {
		t.Unit = other(t.Unit, units)
	}
	if id := t.get("ask.unit"); id != "" {
		if t.Unit = called(id, units); t.Unit == 0 {
			t.problem("ask.unit", calc.NotOffered, "The answer cannot be given in “{text}”", "Choose one of the units in the list", id)
		}
	}
}

// Usual is the answer that is asked for where the settings name none: the first main number, else the first number of
// all. It is blank where a calculator gives none.
//
//go:noinline
func Usual(c *calc.Calculator) string {
	key := ""
	for i := range c.Outputs {
		out := &c.Outputs[i]
		if out.Unit != 0 && (key == "" || out.Main) {
			key = out.Key
			if out.Main {
				return key
			}
		}
		for k := range out.Columns {
			if key == "" && out.Columns[k].Unit != 0 {
				key = out.Key + ".1." + out.Columns[k].Key
			}
		}
	}
	return key
}

// pick draws a number below n for something.
//
//go:noinline
func (t *Task) pick(n int, what string) int {
	return pick(n, t.get("seed"), t.get("draw"), t.c.ID, what)
}

// withoutRow takes the row's number out of a key: "part.2.length" is "part.length".
//
//go:noinline
func withoutRow(key string) string {
	table, rest, _ := strings.Cut(key, ".")
	if n, column, ok := strings.Cut(rest, "."); ok && strings.Trim(n, "0123456789") == "" {
		return table + "." + column
	}
	return key
}

//go:noinline
func (t *Task) usual(own unit.Unit, units []unit.Unit) unit.Unit {
	return UnitFor(own, units, t.get("units") == "us")
}

// UnitFor is the unit that a number is given in at the lowest level: its own, or what a US shop expects.
func UnitFor(own unit.Unit, units []unit.Unit, us bool) unit.Unit {
	if own.US() != us {
		return other(own, units)
	}
	return own
}

// other is the first unit that belongs with SI where u belongs in a US shop, and the other way round; u where there is
// none.
//
//go:noinline
func other(u unit.Unit, units []unit.Unit) unit.Unit {
	for _, v := range units {
		if v.US() != u.US() {
			return v
		}
	}
	return u
}

//go:noinline
func called(id string, units []unit.Unit) unit.Unit {
	for _, u := range units {
		if u.ID() == id {
			return u
		}
	}
	return 0
}
