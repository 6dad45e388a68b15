package calc

import (
	"strings"

	"spraywright/calc/unit"
)

// An Entry is a form, or one row of a table in it, as a calculator reads it.
type Entry struct {
	w       *Working
	prefix  string // "" or "part.2."
	name    string // "part 2"; blank for the form itself
	place   string // the part of the form it stands in; blank for the form itself
	inputs  []Input
	answers map[string]answer
	tables  map[string][]*Entry
}

// table is what the keys of a row's inputs follow where they are named in full: "part."
func (e *Entry) table() string {
	table, _, _ := strings.Cut(e.prefix, ".")
	if table != "" {
		table += "."
	}
	return table
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
	label := e.w.voice.label(e.table()+in.Key, in.Label)
	if e.name != "" {
		label += " (" + e.name + ")"
	}
	a.entered = e.w.add(Step{Label: Phrase(label), Kind: Entered, Value: unit.Convert(a.num, a.unit, in.Unit), Unit: in.Unit})
	e.answers[in.Key] = a
	return a.entered
}

// UnitOf is the unit that an input was typed in; its own where nothing was.
//
//go:noinline
func (e *Entry) UnitOf(in Input) unit.Unit {
	if u := e.answers[in.Key].unit; u != 0 {
		return u
	}
	return in.Unit
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
//
//go:noinline
func (e *Entry) Sound(ins ...Input) bool {
	for _, in := range ins {
		if e.answers[in.Key].bad {
			return false
		}
	}
	return true
}

// Clean reports whether every input of the form, or of this row, was read without a problem.
//
//go:noinline
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
