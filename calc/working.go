package calc

import (
	"slices"
	"strings"

	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A Working is the page on which a calculator works: numbers are taken from the form, each step is written down
// as it is made, and results are entered. A nil *Working records nothing, so that the same functions serve
// where only the number matters.
type Working struct {
	*Entry
	problems Problems // with the form; further ones are added by Reject
	voice    voice
	steps    []Step
	results  map[string][]figure
	lists    map[string][][]figure
	verdict  []Ruling
	cautions []string
	pictures []Picture
	rows     []RowText
}

// A Num is a number, its unit, and how it came about.
type Num struct {
	_     [0]func() // not comparable, by mistake or for the sake of code that nobody needs
	V     float64
	Unit  unit.Unit
	Label string // what it is, for the legend under a formula
	step  int32  // the step that made it, counted from 1; 0 for none
	given bool
}

// N is a number that comes from nowhere on the page.
//
//go:noinline
func N(x float64, u unit.Unit) Num { return Num{V: x, Unit: u, given: true} }

// Called gives a number a label for the legend under a formula.
//
//go:noinline
func (n Num) Called(label string) Num { n.Label = label; return n }

// Given reports whether the number was given: false for an optional input left blank.
func (n Num) Given() bool { return n.given }

// A Step is one line of the working.
type Step struct {
	Label   string // what it works out
	Formula string // "WFT = DFT / VS", or in words where no formula can be evaluated
	Kind    StepKind
	Args    []Arg
	Value   float64
	Unit    unit.Unit
	Source  source.Source
}

// A StepKind says how a step's value follows.
type StepKind string

// The kinds of step. Tests evaluate formulas and equations against the value that the Go code got.
const (
	Entered  StepKind = "entered"  // typed by the person
	Constant StepKind = "constant" // printed in the source
	Worked   StepKind = "worked"   // formula "name = expression"
	Solved   StepKind = "solved"   // equation "expression = expression" that the value satisfies
	Modelled StepKind = "modelled" // integrated or searched; the formula is a description
)

// add writes a step down and returns its number.
//
//go:noinline
func (w *Working) add(s Step) Num {
	n := Num{V: s.Value, Unit: s.Unit, Label: s.Label, given: true}
	if w != nil {
		w.steps = append(w.steps, s)
		n.step = int32(len(w.steps))
	}
	return n
}

// Step writes down one line of working and the value that the Go code got for it. The formula is
// "symbol = expression" in Go's syntax with + - * / and the functions of [isFunction]; the numbers that its other
// names stand for follow in the order in which it first names them, each in its Num's unit.
//
//go:noinline
func (w *Working) Step(label, formula string, u unit.Unit, src source.Source, x float64, nums ...Num) Num {
	if w == nil {
		return N(x, u)
	}
	_, right, _ := strings.Cut(formula, "=")
	return w.add(Step{label, formula, Worked, named(right, "", nums), x, u, src})
}

// Solve writes down an equation "expression = expression" of which x, called symbol, is the root; the rest is as for Step.
//
//go:noinline
func (w *Working) Solve(label, symbol, equation string, u unit.Unit, src source.Source, x float64, nums ...Num) Num {
	if w == nil {
		return N(x, u)
	}
	args := append(named(equation, symbol, nums), N(x, u).As(symbol))
	return w.add(Step{label, equation, Solved, args, x, u, src})
}

// Model writes down a value that was integrated or searched for, with how in words.
//
//go:noinline
func (w *Working) Model(label, how string, u unit.Unit, src source.Source, x float64, args ...Arg) Num {
	return w.add(Step{label, how, Modelled, own(w, args), x, u, src})
}

// Constant writes down a number that a source prints.
//
//go:noinline
func (w *Working) Constant(label string, u unit.Unit, src source.Source, x float64) Num {
	return w.add(Step{label, "", Constant, nil, x, u, src})
}

// own copies arguments, which callers may build in a shared slice.
func own(w *Working, args []Arg) []Arg {
	if w == nil {
		return nil
	}
	return slices.Clone(args)
}

// Given takes a number from the form, in the input's own unit, and writes it down the first time. An optional
// input left blank gives a Num that is not Given.
func (e *Entry) Given(in Input) Num {
	a := e.answers[in.Key]
	switch {
	case !a.given:
		return Num{Unit: in.Unit, Label: in.Label}
	case a.entered.step > 0:
		return a.entered
	}
	if asked := find(e.inputs, in.Key); asked != nil {
		in = *asked // as this form words it
	}
	a.entered = e.w.add(Step{Label: in.Label, Kind: Entered, Value: unit.Convert(a.num, a.unit, in.Unit), Unit: in.Unit})
	e.answers[in.Key] = a
	return a.entered
}

// Or is the number given, or x where the input was left blank.
//
//go:noinline
func (n Num) Or(x float64) Num {
	if !n.given {
		n.V, n.given = x, true
	}
	return n
}

// Picked is the key of the choice made, or blank where the input is not asked.
//
//go:noinline
func (e *Entry) Picked(in Input) string { return e.answers[in.Key].text }

// Words is the text typed for an input that takes words.
//
//go:noinline
func (e *Entry) Words(in Input) string { return e.answers[in.Key].text }

// Sound reports whether every one of these inputs was read without a problem.
func (e *Entry) Sound(ins ...Input) bool {
	for _, in := range ins {
		if e.answers[in.Key].bad {
			return false
		}
	}
	return true
}

// Clean reports whether every input of the form, or of this row, was read without a problem.
func (e *Entry) Clean() bool {
	for _, a := range e.answers {
		if a.bad {
			return false
		}
	}
	return true
}

// Rows are the rows of a table.
//
//go:noinline
func (e *Entry) Rows(table Input) []*Entry { return e.tables[table.Key] }

// Ready reports whether nothing is wrong with any of these places of the form.
//
//go:noinline
func (w *Working) Ready(places ...string) bool {
	for _, p := range places {
		if w.problems.at(p) {
			return false
		}
	}
	return true
}

// Reject says what is wrong with an answer that can be read, in the light of the others.
func (e *Entry) Reject(in Input, code Code, message, fix string, args ...Arg) {
	if asked := find(e.inputs, in.Key); asked != nil {
		in = *asked // as this form words and places it
	}
	args = append(args, Words(in.Label, "label"))
	say := e.w.voice.say
	p := Problem{Field: e.prefix + in.Key, Place: in.Place, Row: e.name, Code: code, Message: say(Say("{label} "+message, args...)), Fix: say(Say(fix, args...))}
	if e.name != "" {
		p.Place = e.place
	}
	e.w.problems = append(e.w.problems, p)
}

// Describe puts a row of a table into a sentence, shown when the row is closed.
func (e *Entry) Describe(t Text) {
	e.w.rows = append(e.w.rows, RowText{e.prefix[:len(e.prefix)-1], e.w.voice.say(t)})
}

// Result enters a number for an output.
//
//go:noinline
func (w *Working) Result(out Output, n Num) {
	w.results[out.Key] = []figure{w.figure(out, n)}
}

// Tell enters words for an output.
func (w *Working) Tell(out Output, t Text) {
	w.results[out.Key] = []figure{{text: w.voice.say(t), steps: stepsOf(t.Args)}}
}

// A Cell is one place in a list: a number or a sentence.
type Cell struct {
	Num  Num
	Text *Text
}

// Of is a cell holding a number.
//
//go:noinline
func Of(n Num) Cell { return Cell{Num: n} }

// Told is a cell holding words.
//
//go:noinline
func Told(t Text) Cell { return Cell{Text: &t} }

// List adds a row to an output that has columns, one cell a column.
func (w *Working) List(out Output, cells ...Cell) {
	row := make([]figure, len(out.Columns))
	for i, c := range cells {
		if c.Text != nil {
			row[i] = figure{text: w.voice.say(*c.Text), steps: stepsOf(c.Text.Args)}
		} else {
			row[i] = w.figure(out.Columns[i], c.Num)
		}
	}
	w.lists[out.Key] = append(w.lists[out.Key], row)
}

// Judge adds a ruling: how the answer should be taken, why, and what to do. The gravest leads.
func (w *Working) Judge(level Level, why, do Text) {
	w.verdict = append(w.verdict, Ruling{level, w.voice.say(why), w.voice.say(do), stepsOf(append(slices.Clone(why.Args), do.Args...))})
}

// Caution adds a warning that depends on the numbers. The same one is shown once.
func (w *Working) Caution(template string, args ...Arg) {
	if s := w.voice.say(Say(template, args...)); !slices.Contains(w.cautions, s) {
		w.cautions = append(w.cautions, s)
	}
}

// Draw adds a picture.
//
//go:noinline
func (w *Working) Draw(p Picture) { w.pictures = append(w.pictures, p) }

// Voiced words a sentence in the reader's units, for labels in pictures.
func (w *Working) Voiced(t Text) string { return w.voice.say(t) }

func stepsOf(args []Arg) []int {
	var ns []int
	for _, a := range args {
		if a.Num.step > 0 {
			ns = append(ns, int(a.Num.step))
		}
	}
	return ns
}
