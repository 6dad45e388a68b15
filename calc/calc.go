// Package calc describes a calculator once, and runs it. It knows no trade.
//
// A [Calculator] is a value: what it asks ([Input]), what it answers ([Output]) and one function that does the
// work on a [Working]. The form, its checks, the shared link, the page, the manual and the generic tests are
// all made from that value; nothing else knows any calculator by name.
package calc

import (
	"spraywright/calc/unit"
)

// A Calculator is one page of the site.
type Calculator struct {
	ID       string // page address and test data file; never changed once published
	Title    Phrase // what a menu calls it
	Question Phrase // the question it answers, as a painter would ask it
	Range    Phrase // where it holds and where it refuses, in one or two sentences
	Inputs   []Input
	Outputs  []Output
	Work     func(*Working)
	Cautions []Phrase // always shown

	// InStages lets Work run while some inputs still have problems. Work then asks Ready for each place
	// before it reads anything from it, and leaves out the outputs it cannot give yet.
	InStages bool

	// Arithmetic marks a calculator that rests on proportion alone, so that its check values may be worked
	// by hand instead of copied from print.
	Arithmetic bool

	Mistakes []Mistake // that people make with it, besides those that any calculator invites
}

// An Input is one thing the form asks for: a number when Unit is set, one of Choices, a table when Rows is
// set, and otherwise a few words.
type Input struct {
	Key      string // name in forms, links and test data; means the same in every calculator; never changed once published
	Place    Phrase // the part of the form it stands in; blank where the form has only one
	Heading  Phrase // starts a group of fields under this heading
	Label    Phrase // sentence case, no colon
	Help     Phrase // one short sentence: where to read it off
	Symbol   string // its letter in formulas
	Unit     unit.Unit
	Offered  []unit.Unit               // units a person may type it in, when not all of the quantity's
	Limits   Range                     // in Unit, both ends allowed
	Whole    bool                      // whole numbers only
	Step     float64                   // in Unit: what a painter nudges it by; 1, 2 or 5 times a power of ten
	Example  float64                   // in Unit: a likely value, for help, error texts and tests
	Prefill  bool                      // starts with Example; only where leaving it is safe
	Optional bool                      // may stay blank; Given then returns a blank Num, Rows none
	Choices  []Choice                  // the first is the example
	Words    string                    // the example of an input that takes words
	Check    func(words string) *Fault // what is wrong with the words, or nil
	When     *When                     // asked only then
	Rows     []Input                   // the columns, when the input is a table
	RowName  Phrase                    // what one row is called, in lower case: "part"
	Most     int                       // most rows; of words, most bytes where a link may be that long, otherwise 200
}

// A Choice is one answer to an input that offers a list.
type Choice struct {
	Key   string
	Label Phrase
}

// A When limits an input to forms, or rows, where another input has one of these choices.
type When struct {
	Key string   // an input with Choices, earlier in the same list
	In  []string // choice keys
}

// If makes an input wanted only where the choice made for key is one of these.
//
//go:noinline
func (in Input) If(key string, choices ...string) Input {
	in.When = &When{key, choices}
	return in
}

// In puts an input in a place of the form.
//
//go:noinline
func (in Input) In(place Phrase) Input { in.Place = place; return in }

// Under starts a group of fields under a heading.
//
//go:noinline
func (in Input) Under(heading Phrase) Input { in.Heading = heading; return in }

// Maybe makes an input one that may stay blank.
//
//go:noinline
func (in Input) Maybe() Input { in.Optional = true; return in }

// Filled makes an input start with this number in its box, which must be safe to leave.
//
//go:noinline
func (in Input) Filled(x float64) Input { in.Prefill, in.Example = true, x; return in }

// A Fault is what is wrong with words and what to do. Message follows the input's label: "needs a colon".
type Fault struct {
	Message, Fix Phrase
	Args         []Arg // for the holes of both
}

// Error is the message in English.
func (f *Fault) Error() string { return voice{}.say(Text{f.Message, f.Args}) }

// A Range is the smallest and the largest number allowed.
type Range struct{ Min, Max float64 }

// Between is the range from min to max.
func Between(min, max float64) Range { return Range{min, max} }

// An Output is one thing the calculator answers: a number, a few words, or a list when Columns is set.
type Output struct {
	Key      string
	Place    Phrase // the part of the answer it stands in
	Label    Phrase
	Unit     unit.Unit // the unit Work gives it in; none for words
	Decimals int       // in Unit: what the painter's own tool can show
	Words    bool      // words instead of a number
	Columns  []Output  // of a list
	Main     bool      // shown large, and in the short answer
	Look     string    // how a list is laid out: blank for a table, "pour" for a scale column, "clock" for a call sheet, "labels" for paper alone, "hand-over" for another page
	Optional bool      // Work may leave it out
}

// Units lists the units the input may be typed in, its own first.
func (in Input) Units() []unit.Unit {
	if in.Offered != nil {
		return in.Offered
	}
	us := []unit.Unit{in.Unit}
	for _, u := range unit.Of(in.Unit.Quantity()) {
		if u != in.Unit {
			us = append(us, u)
		}
	}
	return us
}

// Input finds an input by its key, "air", or a column of a table by table and key, "part.length".
// It returns nil when there is none.
func (c *Calculator) Input(key string) *Input { return find(c.Inputs, key) }

func find(ins []Input, key string) *Input {
	for i := range ins {
		in := &ins[i]
		if in.Key == key {
			return in
		}
		if n := len(in.Key); in.Rows != nil && len(key) > n && key[:n] == in.Key && key[n] == '.' {
			return find(in.Rows, key[n+1:])
		}
	}
	return nil
}

// Output finds an output by its key, or a column of a list by list and key. It returns nil when there is none.
func (c *Calculator) Output(key string) *Output {
	for i := range c.Outputs {
		out := &c.Outputs[i]
		if out.Key == key {
			return out
		}
		for j := range out.Columns {
			if out.Key+"."+out.Columns[j].Key == key {
				return &out.Columns[j]
			}
		}
	}
	return nil
}

// A Maker makes a calculator. Calculators are made when they are asked for, so that a program holds only those that
// its menu lists.
type Maker struct {
	ID   string // the calculator's own
	Make func() *Calculator
}
