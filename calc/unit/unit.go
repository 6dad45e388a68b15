// Package unit lists the units a form may offer and converts between them.
//
// Inside a calculation every number is a plain float64 in the unit of its source. A number crosses the
// edge of a calculation only through an input or an output, and both name their unit.
//
// The functions that every calculator calls are kept out of line: it spares each compiled core 2 kB.
package unit

import (
	"math"

	"spraywright/calc/phrase"
)

// A Quantity is what a unit measures. Units of one quantity convert into each other and share one menu.
// Parts by weight and parts by volume, or a temperature and a difference of two, are different quantities.
type Quantity string

// A Unit is one way of writing a quantity. The zero Unit is none. Units are constants, so that what is described
// with them is laid out by the compiler and costs no code to set up.
type Unit uint8

// A measure is what is known of a unit.
type measure struct {
	id       string        // in links and test data: ASCII, never changed once published
	symbol   phrase.Phrase // as a person reads it; blank for a bare number
	quantity Quantity      // what it measures
	us       bool          // the one a US shop expects to see first
	alias    []string      // other ways people type it, in lower case

	// The value in the quantity's base unit is x*scale + offset.
	scale, offset float64
}

// ID names the unit in links and test data.
func (u Unit) ID() string { return table[u].id }

// Symbol is the unit as a person reads it, in English where it is words; blank for a bare number.
func (u Unit) Symbol() string { return string(table[u].symbol) }

// Label is the symbol, to be put into the reader's language where it is words.
func (u Unit) Label() phrase.Phrase { return table[u].symbol }

// Quantity is what the unit measures.
func (u Unit) Quantity() Quantity { return table[u].quantity }

// US reports whether a US shop expects to see this unit first.
func (u Unit) US() bool { return table[u].us }

// Aliases are other ways people type the unit, in lower case.
func (u Unit) Aliases() []string { return table[u].alias }

// All lists every unit, in the order menus show them.
//
//go:noinline
func All() []Unit {
	us := make([]Unit, 0, count-1)
	for u := none + 1; u < count; u++ {
		us = append(us, u)
	}
	return us
}

// Of lists the units of a quantity in menu order.
//
//go:noinline
func Of(q Quantity) []Unit {
	var us []Unit
	for _, u := range All() {
		if u.Quantity() == q {
			us = append(us, u)
		}
	}
	return us
}

// ByID finds a unit by its ID.
//
//go:noinline
func ByID(id string) (Unit, bool) {
	for _, u := range All() {
		if u.ID() == id {
			return u, true
		}
	}
	return none, false
}

// Convert rewrites x from one unit in another of the same quantity. Converting to the same unit returns
// x unchanged, to the last bit. It panics when the quantities differ: that is a mistake in the program.
//
//go:noinline
func Convert(x float64, from, to Unit) float64 {
	if from == to {
		return x
	}
	if from.Quantity() != to.Quantity() {
		panic("unit: " + from.ID() + " is a " + string(from.Quantity()) + ", " + to.ID() + " is a " + string(to.Quantity()))
	}
	return (x*table[from].scale + table[from].offset - table[to].offset) / table[to].scale
}

// Decimals says how many decimals show in unit to what d decimals show in unit from, to the nearest power of ten.
//
//go:noinline
func Decimals(d int, from, to Unit) int {
	if from == to {
		return d
	}
	return max(0, d+int(math.Round(math.Log10(table[to].scale/table[from].scale))))
}
