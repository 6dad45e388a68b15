package day

import (
	"math"

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

// A cell is one place in a list: words, or a number.
type cell struct {
	text  string // blank where there is nothing
	num   *calc.Num
	of    string
	timer *calc.Timer
}

// list adds a row to a list.
//
//go:noinline
func (d *day) list(out *calc.Output, cells ...cell) {
	row := make([]calc.Cell, len(cells))
	for i := range cells {
		c := &cells[i]
		switch {
		case c.num != nil:
			row[i] = calc.Of(*c.num)
		case c.text == "":
			row[i] = calc.Of(calc.Num{})
		default:
			row[i] = calc.Told(say("{text}", "text", c.text))
		}
		row[i] = row[i].About(c.of).Timed(c.timer)
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
