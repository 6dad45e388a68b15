package calc

import (
	"maps"
	"slices"
)

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

// Describe puts a row of a table into a sentence, shown when the row is closed. It speaks in the units that the row
// itself was typed in, the first of each quantity.
func (e *Entry) Describe(t Text) {
	v := voice{maps.Clone(e.w.voice.units)}
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
