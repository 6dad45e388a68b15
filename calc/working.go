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
	form     Form
	problems Problems // with the form; further ones are added by Reject
	voice    voice
	steps    []Step
	results  map[string][]figure
	lists    map[string][][]figure
	verdict  []Ruling
	cautions []string // worded
	pictures []Picture
	rows     []RowText
	brief    bool // the steps are not written down
}

// Form is what was filled in, not to be changed: for a calculator that remembers its last answer.
func (w *Working) Form() Form { return w.form }

// A Step is one line of the working.
type Step struct {
	Label   Phrase // what it works out
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
	switch {
	case w == nil:
	case w.brief:
		n.step = 1 // there is one
	default:
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
func (w *Working) Step(label Phrase, formula string, u unit.Unit, src source.Source, x float64, nums ...Num) Num {
	if w == nil {
		return N(x, u)
	}
	s := Step{label, formula, Worked, nil, x, u, src}
	if !w.brief {
		_, right, _ := strings.Cut(formula, "=")
		s.Args = named(right, "", nums)
	}
	return w.add(s)
}

// Solve writes down an equation "expression = expression" of which x, called symbol, is the root; the rest is as for Step.
//
//go:noinline
func (w *Working) Solve(label Phrase, symbol, equation string, u unit.Unit, src source.Source, x float64, nums ...Num) Num {
	if w == nil {
		return N(x, u)
	}
	s := Step{label, equation, Solved, nil, x, u, src}
	if !w.brief {
		s.Args = append(named(equation, symbol, nums), N(x, u).As(symbol))
	}
	return w.add(s)
}

// Model writes down a value that was integrated or searched for, with how in words.
//
//go:noinline
func (w *Working) Model(label, how Phrase, u unit.Unit, src source.Source, x float64, args ...Arg) Num {
	return w.add(Step{label, string(how), Modelled, own(w, args), x, u, src})
}

// Constant writes down a number that a source prints.
//
//go:noinline
func (w *Working) Constant(label Phrase, u unit.Unit, src source.Source, x float64) Num {
	return w.add(Step{label, "", Constant, nil, x, u, src})
}

// own copies arguments, which callers may build in a shared slice.
func own(w *Working, args []Arg) []Arg {
	if w == nil {
		return nil
	}
	return slices.Clone(args)
}

// Ready reports whether nothing is wrong with any of these places of the form.
//
//go:noinline
func (w *Working) Ready(places ...Phrase) bool {
	for _, p := range places {
		if w.problems.at(string(p)) {
			return false
		}
	}
	return true
}

func stepsOf(args []Arg) []int {
	var ns []int
	for _, a := range args {
		if a.Num.step > 0 {
			ns = append(ns, int(a.Num.step))
		}
		if a.Text != nil {
			ns = append(ns, stepsOf(a.Text.Args)...)
		}
	}
	return ns
}
