package calc

import (
	"spraywright/calc/unit"
)

// A Num is a number, its unit, and how it came about.
type Num struct {
	_     [0]func() // not comparable, by mistake or for the sake of code that nobody needs
	V     float64
	Unit  unit.Unit
	Label Phrase // what it is, for the legend under a formula
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
func (n Num) Called(label Phrase) Num { n.Label = label; return n }

// Given reports whether the number was given: false for an optional input left blank.
func (n Num) Given() bool { return n.given }

// Or is the number given, or x where the input was left blank.
//
//go:noinline
func (n Num) Or(x float64) Num {
	if !n.given {
		n.V, n.given = x, true
	}
	return n
}
