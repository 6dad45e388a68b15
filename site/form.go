package main

import (
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A field is one input as the page shows it.
type field struct {
	calc.Input
	Name    string // its key in the form: "air", "part.1.length"
	Column  string // in a table, what a link that gives the unit of the whole column calls it: "part.length"
	Kind    string // number, choice, words or table
	Default string // what stands in its box at first
	US      string // the unit a US shop expects first
	Minus   bool   // a minus is possible, so the keypad must have one
	Chips   bool   // few choices, shown side by side
	One     string // one row of a table, as it is asked for: where a language needs an article, with that
	First   []field
	Blank   []field // the columns of the row that the page copies
}

// A formPlace is one part of the form.
type formPlace struct {
	Name   calc.Phrase
	Key    string // the name in no language: the report knows the place by it
	ID     string
	Fields []field
	Closed bool // at first, in the page's own HTML, so that nothing moves once scripts run
}

// closedAtFirst are the places of the booth day's form that may all stay as they are; they stand before what has to be typed.
var closedAtFirst = []string{"The shop", "Breaks", "So far"}

// manyChoices is how many choices no longer stand side by side.
const manyChoices = 5

func kindOf(in calc.Input) string {
	switch {
	case in.Rows != nil:
		return "table"
	case in.Choices != nil:
		return "choice"
	case in.Unit != 0:
		return "number"
	}
	return "words"
}

func formPlaces(c *calc.Calculator) []formPlace {
	var places []formPlace
	for _, in := range c.Inputs {
		if n := len(places); n == 0 || places[n-1].Name != in.Place {
			places = append(places, formPlace{Name: in.Place, Key: string(in.Place), ID: placeID(string(in.Place)), Closed: c.ID == "day" && slices.Contains(closedAtFirst, string(in.Place))})
		}
		last := &places[len(places)-1]
		last.Fields = append(last.Fields, newField(in, "", ""))
	}
	return places
}

func placeID(name string) string {
	return "place-" + strings.ReplaceAll(strings.ToLower(name), " ", "-")
}

// newField makes the field for an input; in a table, table is "part." and row "part.1.".
func newField(in calc.Input, table, row string) field {
	f := field{Input: in, Name: row + in.Key, Kind: kindOf(in)}
	if table != "" {
		f.Column = table + in.Key
	}
	switch f.Kind {
	case "number":
		f.Minus = in.Limits.Min < 0
		f.US = in.Unit.ID()
		for _, u := range in.Units() {
			if u.US() {
				f.US = u.ID()
				break
			}
		}
		// Litres and kilograms are of totals and tanks, which no ounce belongs to; see the core's unitFor.
		if in.Unit == unit.Litre {
			f.US = unit.Gallon.ID()
		} else if in.Unit == unit.Kilogram {
			f.US = unit.Pound.ID()
		}
		if in.Prefill {
			f.Default = plain(in.Example)
		}
	case "words":
		if in.Prefill {
			f.Default = in.Words
		}
	case "choice":
		f.Chips = len(in.Choices) < manyChoices
		if in.Prefill {
			f.Default = in.Choices[0].Key
		}
	case "table":
		f.One = string(in.RowName)
		for _, col := range in.Rows {
			f.First = append(f.First, newField(col, in.Key+".", in.Key+".1."))
			f.Blank = append(f.Blank, newField(col, in.Key+".", in.Key+".0."))
		}
	}
	return f
}

// limits is the smallest and the largest number allowed, in the input's own unit.
func (t tongue) limits(f field) string {
	if f.Kind != "number" {
		return ""
	}
	s := t.say("{least} to {most}", "least", t.typed(plain(f.Limits.Min)), "most", t.typed(plain(f.Limits.Max)))
	if symbol := t.say(f.Unit.Label()); symbol != "" {
		s += "\u202f" + symbol
	}
	return strings.ReplaceAll(s, "-", "−")
}

// typedIn is what stands in a field's box at first.
func (t tongue) typedIn(f field) string {
	if f.Kind == "number" {
		return t.typed(f.Default)
	}
	return f.Default
}

// Several reports whether there is more than one unit to choose from.
func (f field) Several() bool { return len(f.Units()) > 1 }

// WhenIn is the list of choices that the field is asked for.
func (f field) WhenIn() string { return strings.Join(f.When.In, " ") }

func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
