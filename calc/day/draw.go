package day

import (
	"unicode/utf8"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// The measures of the picture by painter and place, in CSS pixels on a phone. Time runs downward: a phone has height, and
// a coat of five minutes is tall enough there to be touched and to have a name on it.
const (
	pixelsAMinute = 2.4
	axisWidth     = 40.0
	headHeight    = 22.0
	picturesWidth = 340.0
	leastColumn   = 52.0
	lineHeight    = 12.0
	charWidth     = 6.2 // of a label, on average
)

// looks name the kinds of step for the page's inks.
var looks = [...]string{plan.PrepStep: "prep", plan.Rinse: "rinse", plan.Mix: "mix", plan.Walk: "walk", plan.Spray: "spray", plan.Flash: "flash", plan.Heat: "bake", plan.Work: "prep"}

// top is where the pictures' time begins: a round time no later than all that has a place in them. It hangs on the form
// alone, so that a place in the picture means the same time while the plan gets better.
func (d *day) top() int {
	top := d.start
	for i := range d.model.Done {
		top = min(top, d.model.Done[i].Start)
	}
	return top / 30 * 30
}

// last is when the pictures' time ends.
func (d *day) last() int {
	end := d.plan.Finish
	for i := range d.plan.Steps {
		end = max(end, d.plan.Steps[i].End)
	}
	return end
}

// drawPlaces draws the day by painter and place.
func (d *day) drawPlaces() calc.Picture {
	columns, top, end := d.columns(), d.top(), d.last()
	width := max(leastColumn, (picturesWidth-axisWidth)/float64(len(columns)))
	y := func(t int) float64 { return headHeight + pixelsAMinute*float64(t-top) }
	p := calc.Picture{
		Key: "by_place", Title: d.Voiced(calc.Say("The day by painter and place")), Width: axisWidth + width*float64(len(columns)), Height: y(end) + 8,
		Says: d.Voiced(calc.Say("What {n} painters and places do from {a} to {b}, time running down. The list below says the same in words.",
			whole(len(columns), "n"), show(top, "a"), show(end, "b"))),
	}
	for t := (top + 29) / 30 * 30; t <= end; t += 30 {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "grid", X: axisWidth - 4, Y: y(t), W: p.Width - axisWidth + 4},
			calc.Shape{Kind: calc.Label, Look: "axis", X: axisWidth - 6, Y: y(t) + 4, Text: field.ShowClock(t % aDay), AnchorEnd: true})
	}
	short := d.short(width - 8)
	for i, c := range columns {
		x := axisWidth + width*float64(i)
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: "lane", X: x + width/2, Y: 14, Text: d.Voiced(d.called(c)), AnchorMid: true})
		d.breakBars(&p, c, x+2, width-4, y)
		for k := range d.plan.Steps {
			if s := &d.plan.Steps[k]; d.in(c, s) {
				d.bar(&p, s, x+2, y(s.Start), width-4, y(s.End)-y(s.Start), short)
			}
		}
	}
	if d.model.Now > d.start {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "now", X: axisWidth - 4, Y: y(d.model.Now), W: p.Width - axisWidth + 4})
	}
	return p
}

func (d *day) breakBars(p *calc.Picture, c column, x, w float64, y func(int) float64) {
	for i := range d.model.Breaks {
		b := &d.model.Breaks[i]
		if c.kind == 0 && (b.Painter == 0 || b.Painter == c.number) && y(b.To) <= p.Height {
			p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Bar, Look: "break", X: x, Y: y(b.From), W: w, H: y(b.To) - y(b.From)})
		}
	}
}

// bar draws one step, with its job on it where there is room.
func (d *day) bar(p *calc.Picture, s *plan.Step, x, y, w, h float64, short bool) {
	r := stepRef(s)
	look := looks[s.Kind]
	if s.Done {
		look += " done"
	}
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Bar, Look: look, X: x, Y: y, W: w, H: h, Of: of(r)})
	if d.pinned(r) && (s.Kind == plan.Spray || s.Kind == plan.PrepStep || s.Kind == plan.Heat) {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Dot, Look: "pin", X: x + w - 5, Y: y + 5, W: 3, Of: of(r)})
	}
	if h >= 9.5 && (s.Kind == plan.Spray || s.Kind == plan.PrepStep || s.Kind == plan.Heat) {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: "step", X: x + 3, Y: y + h/2 + 4, Text: d.label(s.Job, short)})
	}
}

func (d *day) pinned(r plan.Ref) bool {
	for i := range d.model.Pins {
		if d.model.Pins[i].Ref == r {
			return true
		}
	}
	return false
}

// short tells that some name is too long for bars of a width: all jobs then go by their number.
func (d *day) short(width float64) bool {
	for _, j := range d.jobs {
		if charWidth*float64(utf8.RuneCountInString(j.name)) > width {
			return true
		}
	}
	return false
}

// label is the job's name, or its number.
func (d *day) label(job int, short bool) string {
	if short {
		return d.Voiced(calc.Say("{n}", whole(job+1, "n")))
	}
	return d.jobs[job].name
}
