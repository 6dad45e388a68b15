package calc

import (
	"maps"
	"slices"
	"strings"

	"spraywright/calc/unit"
)

// Reject says what is wrong with an answer that can be read, in the light of the others. The message follows the
// input's label.
func (e *Entry) Reject(in Input, code Code, message, fix Phrase, args ...Arg) {
	if asked := find(e.inputs, in.Key); asked != nil {
		in = *asked // as this form words and places it
	}
	v := e.w.voice
	p := Problem{Field: e.prefix + in.Key, Place: string(in.Place), Row: e.name, Code: code, Message: v.label(e.table()+in.Key, in.Label) + " " + v.say(Say(message, args...)), Fix: v.say(Say(fix, args...))}
	if e.name != "" {
		p.Place = e.place
	}
	e.w.problems = append(e.w.problems, p)
}

// Describe puts a row of a table into a sentence, shown when the row is closed. It speaks in the units that the row
// itself was typed in, the first of each quantity.
func (e *Entry) Describe(t Text) {
	v := e.w.voice
	v.units = maps.Clone(v.units)
	for i := len(e.inputs) - 1; i >= 0; i-- {
		if a := e.answers[e.inputs[i].Key]; a.given && a.unit != 0 {
			v.units[a.unit.Quantity()] = a.unit
		}
	}
	e.w.rows = append(e.w.rows, RowText{e.prefix[:len(e.prefix)-1], v.say(t)})
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
	Num   Num
	Text  *Text
	unit  unit.Unit // that it is always shown in; none for the reader's
	of    string
	timer *Timer
}

// Of is a cell holding a number.
//
//go:noinline
func Of(n Num) Cell { return Cell{Num: n} }

// In has a number shown in one unit, whatever the reader's: what a scale shows is in the scale's own.
//
//go:noinline
func (c Cell) In(u unit.Unit) Cell { c.unit = u; return c }

// Told is a cell holding words.
//
//go:noinline
func Told(t Text) Cell { return Cell{Text: &t} }

// About names the step that a cell tells of, as [Shape.Of] does.
func (c Cell) About(step string) Cell { c.of = step; return c }

// List adds a row to an output that has columns, one cell a column.
func (w *Working) List(out Output, cells ...Cell) {
	row := make([]figure, len(out.Columns))
	for i, c := range cells {
		if c.Text != nil {
			row[i] = figure{text: w.voice.say(*c.Text), steps: stepsOf(c.Text.Args)}
		} else {
			row[i] = w.figure(out.Columns[i], c.Num)
			if c.unit != 0 {
				row[i].unit = c.unit
			}
		}
		row[i].of, row[i].timer = c.of, c.timer
	}
	w.lists[out.Key] = append(w.lists[out.Key], row)
}

// Judge adds a ruling: how the answer should be taken, why, and what to do. The gravest leads.
func (w *Working) Judge(level Level, why, do Text) {
	w.verdict = append(w.verdict, Ruling{level, w.voice.say(why), w.voice.say(do), stepsOf(append(slices.Clone(why.Args), do.Args...))})
}

// Caution adds a warning that depends on the numbers. The same one is shown once.
func (w *Working) Caution(template Phrase, args ...Arg) {
	text, first := strings.CutPrefix(string(template), First)
	s := w.voice.say(Text{Phrase(text), args})
	if slices.Contains(w.cautions, s) {
		return
	}
	at := len(w.cautions)
	if first {
		at = 0
	}
	w.cautions = slices.Insert(w.cautions, at, s)
}

// Draw adds a picture.
//
//go:noinline
func (w *Working) Draw(p Picture) { w.pictures = append(w.pictures, p) }

// UnitFor is the unit in which the person reads a quantity that is worked out in own.
func (w *Working) UnitFor(own unit.Unit) unit.Unit { return w.voice.unitFor(own) }

// Voiced words a sentence in the reader's language and units, for labels in pictures.
func (w *Working) Voiced(t Text) string { return w.voice.say(t) }

// Named words a label that depends on the form, such as one that names a product. Without a working the label does not
// matter.
func (w *Working) Named(template Phrase, args ...Arg) Phrase {
	if w == nil {
		return template
	}
	return Phrase(w.voice.say(Text{template, args}))
}
