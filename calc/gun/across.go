package gun

import (
	"spraywright/calc"
)

// The picture's measures in pixels, and how much of the panel it shows in half fans either side of the edge.
const (
	acrossWide, acrossHigh = 340, 190
	acrossBase, acrossTop  = 160, 24
	outside, onPanel       = 1.2, 4.8
	acrossPoints           = 120
)

// A section maps half fans and film, 1 being the average, to pixels.
type section struct{ tallest float64 }

func (c section) x(x float64) float64 { return (x + outside) / (outside + onPanel) * acrossWide }
func (c section) y(h float64) float64 {
	return acrossBase - h/c.tallest*(acrossBase-acrossTop)
}

// curve is a line through f from one place to another, in half fans.
func (c section) curve(look string, from, to float64, f func(x float64) float64) calc.Shape {
	points := make([]float64, 0, 2*acrossPoints+2)
	for i := range acrossPoints + 1 {
		x := from + (to-from)*float64(i)/acrossPoints
		points = append(points, c.x(x), c.y(f(x)))
	}
	return calc.Shape{Kind: calc.Path, Look: look, Points: points}
}

// across draws the film across a panel from its edge, with the first stroke where it belongs.
func across(w *calc.Working, p Profile, overlap, now, best, least calc.Num) calc.Picture {
	s := spacing(overlap.V)
	mean := p.area / s
	first := 1 - overlap.V/50 // in half fans from the edge onto the panel
	c := section{tallest: max(1.15, p.Evenness(overlap.V).Thickest/100)}
	pic := calc.Picture{
		Key: "film-across", Title: w.Voiced(calc.Say("Film across the panel")), Width: acrossWide, Height: acrossHigh,
		Says: w.Voiced(calc.Say("Strokes at {overlap} overlap add up to a film with {now} between its thickest and thinnest place; {best} would leave {least}",
			overlap.To(0, "overlap"), now.To(1, "now"), best.To(1, "best"), least.To(1, "least"))),
	}
	for m := first; m-1 < onPanel; m += s {
		stroke := func(x float64) float64 { return p.at(x-m) / mean }
		pic.Shapes = append(pic.Shapes, c.curve("stroke", max(m-1, -outside), min(m+1, onPanel), stroke))
	}
	total := func(x float64) float64 {
		h := 0.0
		for m := first; m-1 < x; m += s {
			h += p.at(x - m)
		}
		return h / mean
	}
	text := func(x, y float64, words calc.Phrase) calc.Shape {
		return calc.Shape{Kind: calc.Label, Look: "axis", X: x, Y: y, Text: w.Voiced(calc.Say(words))}
	}
	pic.Shapes = append(pic.Shapes,
		calc.Shape{Kind: calc.Rule, Look: "grid", X: c.x(0), Y: c.y(1), W: acrossWide - c.x(0)},
		c.curve("film", -outside, onPanel, total),
		calc.Shape{Kind: calc.Bar, Look: "panel", X: c.x(0), Y: acrossBase, W: acrossWide - c.x(0), H: 6},
		text(c.x(0), acrossBase+22, "panel, from its edge"),
		text(2, c.y(1)+4, "average"),
	)
	return pic
}
