package calc

import (
	"maps"
	"slices"
	"strings"

	"spraywright/calc/unit"
)

// thin is the space between a number and its unit; no line breaks there.
const thin = "\u202f"

// A Text is a sentence with its quantities left open, "Warm the panel to {goal}", so that it can be worded in
// the reader's own units and, by its template, in another language.
type Text struct {
	Template Phrase
	Args     []Arg
}

// Say makes a Text.
//
//go:noinline
func Say(template Phrase, args ...Arg) Text { return Text{template, args} }

// An Arg is a quantity, words, or another text under the name that a template or a formula has for it.
type Arg struct {
	_        [0]func() // not comparable: spares the code that would compare it
	Name     string
	Num      Num
	Decimals int    // in sentences; -1 for as many as say something
	Words    string // instead of Num: what a person typed
	Text     *Text  // instead of Num
	small    bool   // the text begins with a small letter
	isWords  bool
}

// As names a number for a formula or a sentence.
//
//go:noinline
func (n Num) As(name string) Arg { return Arg{Name: name, Num: n, Decimals: -1} }

// To names a number for a sentence that gives it with d decimals of its own unit.
//
//go:noinline
func (n Num) To(d int, name string) Arg { return Arg{Name: name, Num: n, Decimals: d} }

// Words names what a person typed, or a number of things, for a sentence. It stands as it is in every language.
//
//go:noinline
func Words(words, name string) Arg { return Arg{Name: name, Words: words, isWords: true} }

// As names a text for a sentence that it is a part of.
//
//go:noinline
func (t Text) As(name string) Arg { return Arg{Name: name, Text: &t} }

// Within is As for a text that begins with a capital letter by itself and with a small one in the sentence.
//
//go:noinline
func (t Text) Within(name string) Arg { return Arg{Name: name, Text: &t, small: true} }

// Term names a phrase for a sentence.
//
//go:noinline
func Term(p Phrase, name string) Arg { return Say(p).As(name) }

// A voice is how answers are worded: the language and the units a person reads.
type voice struct {
	Language
	units  map[unit.Quantity]unit.Unit
	totals bool // in gallons and pounds
}

// newVoice takes the units to answer in from the form: the one that "units.temperature" names for a quantity, else
// what "units" asks for, else the unit that the person typed that quantity in.
func newVoice(l Language, form Form, typed map[unit.Quantity]unit.Unit) voice {
	v := voice{Language: l, units: map[unit.Quantity]unit.Unit{}}
	switch form["units"] {
	case "si":
	case "us":
		v.totals = form["units.volume"] == "" && form["units.mass"] == ""
		for _, u := range unit.All() {
			if u.US() {
				v.units[u.Quantity()] = u
			}
		}
	default:
		maps.Copy(v.units, typed)
		if u, ok := typed[unit.Temperature]; ok {
			v.units[unit.TemperatureDifference] = unit.DiffC
			if u == unit.DegF {
				v.units[unit.TemperatureDifference] = unit.DiffF
			}
		}
	}
	for key, id := range form {
		if quantity, ok := strings.CutPrefix(key, "units."); ok {
			if u, ok := unit.ByID(id); ok && string(u.Quantity()) == quantity {
				v.units[u.Quantity()] = u
			}
		}
	}
	return v
}

// unitFor is the unit in which a quantity given in own is shown. What is stated in litres or kilograms is a total: where the
// form asks for US units it is read in gallons and pounds, not in the ounces of a cup.
//
//go:noinline
func (v voice) unitFor(own unit.Unit) unit.Unit {
	if v.totals && own == unit.Litre {
		return unit.Gallon
	}
	if v.totals && own == unit.Kilogram {
		return unit.Pound
	}
	if u, ok := v.units[own.Quantity()]; ok {
		return u
	}
	return own
}

// say words a Text.
func (v voice) say(t Text) string {
	var b strings.Builder
	rest := v.word(t.Template)
	for {
		before, after, hole := strings.Cut(rest, "{")
		b.WriteString(before)
		if !hole {
			return b.String()
		}
		name, after, closed := strings.Cut(after, "}")
		i := slices.IndexFunc(t.Args, func(a Arg) bool { return a.Name == name })
		if !closed || i < 0 {
			b.WriteByte('{')
			rest = rest[len(before)+1:]
			continue
		}
		b.WriteString(v.arg(t.Args[i]))
		rest = after
	}
}

func (v voice) arg(a Arg) string {
	switch {
	case a.isWords:
		return a.Words
	case a.Text != nil && a.small:
		return lowerFirst(v.say(*a.Text))
	case a.Text != nil:
		return v.say(*a.Text)
	}
	u := v.unitFor(a.Num.Unit)
	x := unit.Convert(a.Num.V, a.Num.Unit, u)
	if a.Decimals < 0 {
		return v.quantity(significant(x, 3), u)
	}
	return v.quantity(fixed(x, unit.Decimals(a.Decimals, a.Num.Unit, u)), u)
}

// quantity joins a number to its unit.
func (l Language) quantity(number string, u unit.Unit) string {
	number = l.number(number)
	if strings.HasPrefix(number, "-") {
		number = "−" + number[1:]
	}
	if symbol := l.word(u.Label()); symbol != "" {
		return number + thin + symbol
	}
	return number
}
