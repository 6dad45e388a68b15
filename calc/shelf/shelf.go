// Package shelf describes what a person keeps to fill forms from: data sheets, guns, booths, and the shop's own ways.
// Each is a calculator like any other: its form is what is kept, and its answer says what it is good for and what it lacks.
package shelf

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
)

// Calculators lists what can be kept.
var Calculators = []calc.Maker{
	{ID: "data-sheet", Make: DataSheet},
	{ID: "gun", Make: Gun},
	{ID: "booth", Make: Booth},
	{ID: "shop", Make: Shop},
}

// A Kind is one kind of thing that is kept.
type Kind struct {
	ID    string     // of its calculator, and what a record calls it
	Name  calc.Input // what an item is known by
	InUse bool       // one of them may be marked as the one in use
}

// Kinds lists them in the order of the shelf.
func Kinds() []Kind {
	return []Kind{
		{"data-sheet", field.Product, false},
		{"gun", field.GunName, true},
		{"booth", boothName(), true},
		{"shop", field.Shop, true},
	}
}

// What an item is good for, and what it still lacks for other work.
var (
	complete = calc.Output{Key: "complete", Label: "Has all for", Words: true, Optional: true}
	lacking  = calc.Output{Key: "lacking", Label: "Not all for", Columns: []calc.Output{
		{Key: "work", Label: "Work", Words: true},
		{Key: "lacks", Label: "Still missing", Words: true},
	}}
)

// A work is something that an item helps with, and the keys it takes from it, parted by spaces.
type work struct {
	name calc.Phrase
	keys string
}

// blanks enters for which works an item has all, and what is blank for the others. It returns the labels that are blank
// for the first work. A field that the choices made do not ask for is not missed.
func blanks(w *calc.Working, ins []calc.Input, works []work) (first []calc.Phrase) {
	var whole []calc.Phrase
	for i, k := range works {
		var labels []calc.Phrase
		for _, key := range strings.Fields(k.keys) {
			if in := input(ins, key); asked(w, ins, in) && blank(w, in) {
				labels = append(labels, in.Label)
			}
		}
		if i == 0 {
			first = labels
		}
		if labels == nil {
			whole = append(whole, k.name)
		} else {
			w.List(lacking, calc.Told(calc.Say(k.name)), calc.Told(listed(labels)))
		}
	}
	if whole != nil {
		w.Tell(complete, listed(whole))
	}
	return first
}

// listed puts phrases one after another.
func listed(labels []calc.Phrase) calc.Text {
	if len(labels) == 1 {
		return calc.Say(labels[0])
	}
	return calc.Say("{label}, {others}", calc.Term(labels[0], "label"), listed(labels[1:]).As("others"))
}

func input(ins []calc.Input, key string) *calc.Input {
	for i := range ins {
		if ins[i].Key == key {
			return &ins[i]
		}
	}
	panic("shelf: no input " + key)
}

func asked(w *calc.Working, ins []calc.Input, in *calc.Input) bool {
	if in.When == nil {
		return true
	}
	picked := w.Picked(*input(ins, in.When.Key))
	for _, k := range in.When.In {
		if k == picked {
			return true
		}
	}
	return false
}

func blank(w *calc.Working, in *calc.Input) bool {
	if in.Unit != 0 {
		return !w.Given(*in).Given()
	}
	return w.Words(*in) == ""
}

// maybe makes inputs ones that may stay blank, none filled in beforehand: what an item says it must have been told. The
// first stands under a heading.
func maybe(heading calc.Phrase, ins ...calc.Input) []calc.Input {
	for i := range ins {
		ins[i].Optional, ins[i].Prefill, ins[i].Place = true, false, ""
	}
	ins[0].Heading = heading
	return ins
}

// always takes away the choice under which another form asks for an input.
func always(in calc.Input) calc.Input { in.When = nil; return in }
