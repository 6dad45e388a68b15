package day

import (
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// What follows is the engine's, by pointer and out of line: the day asks and tells so much that copies of descriptions
// would be a good part of its core.

//go:noinline
func given(e *calc.Entry, in *calc.Input) calc.Num { return e.Given(*in) }

// up and down are a number as whole minutes or millilitres, on the careful side; 0 where it is blank.
//
//go:noinline
func up(e *calc.Entry, in *calc.Input) int { return int(math.Ceil(e.Given(*in).V - 1e-9)) }

//go:noinline
func down(e *calc.Entry, in *calc.Input) int { return int(math.Floor(e.Given(*in).V + 1e-9)) }

//go:noinline
func words(e *calc.Entry, in *calc.Input) string { return e.Words(*in) }

//go:noinline
func picked(e *calc.Entry, in *calc.Input, key string) bool { return e.Picked(*in) == key }

//go:noinline
func reject(e *calc.Entry, in *calc.Input, message, fix calc.Phrase, args ...calc.Arg) {
	e.Reject(*in, calc.Impossible, message, fix, args...)
}

//go:noinline
func itoa(n int) string { return strconv.Itoa(n) }

// say makes a text of words alone: a hole's name and the words for it by turns.
//
//go:noinline
func say(t calc.Phrase, words ...string) calc.Text {
	return calc.Text{Template: t, Args: args(words...)}
}

//go:noinline
func args(words ...string) []calc.Arg {
	all := make([]calc.Arg, 0, len(words)/2)
	for i := 0; i < len(words); i += 2 {
		all = append(all, calc.Words(words[i+1], words[i]))
	}
	return all
}

// with adds a length of time to a text.
//
//go:noinline
func with(t calc.Text, minutes int, name string) calc.Text {
	t.Args = append(t.Args, mins(minutes, name))
	return t
}

//go:noinline
func mins(n int, name string) calc.Arg { return calc.N(float64(n), unit.Minute).To(0, name) }

// extra is what a row of a list has besides words: the number for the column that takes one, the step that the row is
// about, and what may be timed from it and from its note.
type extra struct {
	num               calc.Num
	of                string
	timer, notesTimer *calc.Timer
}

// list adds a row to a list, its words in the order of the columns.
//
//go:noinline
func (d *day) list(out *calc.Output, x extra, words ...string) {
	row := make([]calc.Cell, len(out.Columns))
	for i := range row {
		switch col := &out.Columns[i]; {
		case col.Unit != 0:
			row[i] = calc.Of(x.num)
			continue
		case words[0] == "":
			row[i] = calc.Of(calc.Num{})
		default:
			row[i] = calc.Told(say("{text}", "text", words[0]))
		}
		switch words = words[1:]; out.Columns[i].Key {
		case what.Key:
			row[i] = row[i].About(x.of).Timed(x.timer)
		case mind.Key:
			row[i] = row[i].Timed(x.notesTimer)
		}
	}
	d.List(*out, row...)
}

//go:noinline
func (d *day) result(out *calc.Output, n calc.Num) { d.Result(*out, n) }

//go:noinline
func (d *day) tell(out *calc.Output, t calc.Text) { d.Tell(*out, t) }

// voiced is a text of words in the reader's language.
//
//go:noinline
func (d *day) voiced(t calc.Phrase, words ...string) string { return d.Voiced(say(t, words...)) }
