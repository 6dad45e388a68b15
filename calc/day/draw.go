package day

import (
	"unicode/utf8"

	"spraywright/calc"
	"spraywright/calc/day/plan"
)

// The measures of the picture by painter and place, in CSS pixels on a phone. Time runs downward: a phone has height, and
// a coat of five minutes is tall enough there to be touched and to have a name on it.
const (
	pixelsAMinute = 2.4
	axisWidth     = 40.0
	headHeight    = 22.0
	pictureWidth  = 340.0
	leastColumn   = 58.0
	charWidth     = 6.2 // of a label, on average
)

// looks name the kinds of step for the page's inks.
var looks = [...]string{plan.PrepStep: "prep", plan.Rinse: "rinse", plan.Mix: "mix", plan.Walk: "walk", plan.Spray: "spray", plan.Flash: "flash", plan.Heat: "bake", plan.Work: "prep"}

// A pen draws in a picture.
type pen struct{ calc.Picture }

//go:noinline
func (p *pen) mark(kind calc.ShapeKind, look, of string, x, y, w, h float64) {
	p.Shapes = append(p.Shapes, calc.Shape{Kind: kind, Look: look, X: x, Y: y, W: w, H: h, Of: of})
}

// label writes from x on, up to it or around it.
//
//go:noinline
func (p *pen) label(look, text string, x, y float64, how anchor) {
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: look, X: x, Y: y, Text: text, AnchorEnd: how == toEnd, AnchorMid: how == toMiddle})
}

type anchor int

const (
	toStart anchor = iota
	toMiddle
	toEnd
)

// top is where the pictures' time begins: a round time no later than all that has a place in them. It hangs on the form
// alone, so that a place in the picture means the same time while the plan gets better.
//
//go:noinline
func (d *day) top() int {
	top := d.start
	for i := range d.model.Done {
		top = min(top, d.model.Done[i].Start)
	}
	return top / 30 * 30
}

// bottom is when the pictures' time ends.
//
//go:noinline
func (d *day) bottom() int {
	end := d.plan.Finish
	for i := range d.plan.Steps {
		end = max(end, d.plan.Steps[i].End)
	}
	return end
}

// down is how far down the picture a time is.
//
//go:noinline
func (d *day) down(t int) float64 { return headHeight + pixelsAMinute*float64(t-d.top()) }

// drawPlaces draws the day by painter and place.
func (d *day) drawPlaces() calc.Picture {
	columns, top, end := d.columns(), d.top(), d.bottom()
	width := max(leastColumn, (pictureWidth-axisWidth)/float64(len(columns)))
	p := &pen{calc.Picture{
		Key: "by_place", Title: d.voiced("The day by painter and place"), Width: axisWidth + width*float64(len(columns)), Height: d.down(end) + 8,
		Says: d.voiced("What {n} painters and places do from {a} to {b}, time running down. The list says the same in words.",
			"n", itoa(len(columns)), "a", show(top), "b", show(end)),
	}}
	for t := top; t <= end; t += 30 {
		p.mark(calc.Rule, "grid", "", axisWidth-4, d.down(t), p.Width-axisWidth+4, 0)
		p.label("axis", show(t%aDay), axisWidth-6, d.down(t)+4, toEnd)
	}
	for i, c := range columns {
		d.drawColumn(p, c, axisWidth+width*float64(i), width)
	}
	if d.model.Now > d.start {
		p.mark(calc.Rule, "now", "", axisWidth-4, d.down(d.model.Now), p.Width-axisWidth+4, 0)
	}
	return p.Picture
}

func (d *day) drawColumn(p *pen, c column, x, width float64) {
	p.label("lane", d.called(c), x+width/2, 14, toMiddle)
	for i := range d.model.Breaks {
		if b := &d.model.Breaks[i]; c.takes(b) && d.down(b.To) <= p.Height {
			p.mark(calc.Bar, "break", "", x+2, d.down(b.From), width-4, pixelsAMinute*float64(b.To-b.From))
		}
	}
	for i := range d.plan.Steps {
		if s := &d.plan.Steps[i]; d.in(c, s) && s.End > s.Start {
			k, n := d.joined(s)
			w := (width - 4) / float64(n)
			d.drawStep(p, s, x+2+w*float64(k), w)
		}
	}
}

// joined counts the bakes that share place and time with this one, and tells which of them it is, from 0. Each then has a
// part of the column's width.
func (d *day) joined(s *plan.Step) (k, n int) {
	for i := range d.plan.Steps {
		o := &d.plan.Steps[i]
		if o == s {
			k = n
		}
		if o == s || s.Kind == plan.Heat && o.Kind == plan.Heat && o.Place == s.Place && o.Start == s.Start {
			n++
		}
	}
	return k, n
}

// drawStep draws one step, with its job on it where there is room, and a dot where it is held.
func (d *day) drawStep(p *pen, s *plan.Step, x, w float64) {
	r, y, h := of(stepRef(s)), d.down(s.Start), pixelsAMinute*float64(s.End-s.Start)
	p.mark(calc.Bar, look(s), r, x, y, w, h)
	if !own(s.Kind) {
		return
	}
	for i := range d.model.Pins {
		if d.model.Pins[i].Ref == stepRef(s) {
			p.mark(calc.Dot, "pin", r, x+w-5, y+5, 3, 3)
		}
	}
	if text := d.label(s, w-6); h >= 9.5 && charWidth*float64(utf8.RuneCountInString(text)) <= w-2 {
		p.label("step", text, x+min(3, w/4), y+h/2+4, toStart)
	}
}

func look(s *plan.Step) string {
	if s.Done {
		return looks[s.Kind] + " done"
	}
	return looks[s.Kind]
}

// label is the job's name; where one is too long for the width, all jobs go by their number, with the coat's after it.
func (d *day) label(s *plan.Step, width float64) string {
	for _, j := range d.jobs {
		if charWidth*float64(utf8.RuneCountInString(j.name)) <= width {
			continue
		}
		if s.Kind == plan.Spray {
			return itoa(s.Job+1) + "·" + itoa(s.Coat+1)
		}
		return itoa(s.Job + 1)
	}
	return d.jobs[s.Job].name
}
