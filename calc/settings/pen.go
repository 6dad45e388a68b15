package settings

import "spraywright/calc"

// A pen draws one picture. Its methods are few and small, so that each mark costs little code.
type pen struct {
	calc.Picture
	day *day
}

//go:noinline
func (p *pen) rule(look string, x, y, w, h float64) {
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: look, X: x, Y: y, W: w, H: h})
}

//go:noinline
func (p *pen) path(look string, points []float64) {
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Path, Look: look, Points: points})
}

// text is anchored at its start with 0, at its middle with 1, at its end with 2.
//
//go:noinline
func (p *pen) text(look string, anchor int, x, y float64, words calc.Phrase) {
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: look, X: x, Y: y, Text: p.day.Voiced(calc.Say(words)), AnchorMid: anchor == 1, AnchorEnd: anchor == 2})
}

// number is text for a number in the reader's unit.
//
//go:noinline
func (p *pen) number(look string, anchor int, x, y float64, n calc.Num) {
	p.text(look, anchor, x, y, p.day.Named("{n}", n.As("n")))
}

// given, result and tell take pointers, because inputs and outputs are large.
//
//go:noinline
func (d *day) given(in *calc.Input) calc.Num { return d.Given(*in) }

//go:noinline
func (d *day) result(out *calc.Output, n calc.Num) { d.Result(*out, n) }

//go:noinline
func (d *day) tell(out *calc.Output, template calc.Phrase, args ...calc.Arg) {
	d.Tell(*out, calc.Say(template, args...))
}
