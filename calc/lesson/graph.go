package lesson

import (
	"math"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A graph is an answer against the numbers of a slider. Where there is no answer it has a gap.
type graph struct {
	calc.Language
	p              calc.Picture
	x, y           []float64 // y is NaN where there is no answer
	xText, yText   []string
	why            []string // there is none
	at             int
	xLabel, yLabel string
}

// newGraph reads lists, an entry a line: x, the numbers; xs, the same as a person reads them; y, the answers, blank where
// there is none; ys; why, for the gaps. at is the place that the slider is at, from 0; xlabel and ylabel name the two.
func newGraph(l calc.Language, form calc.Form) *graph {
	g := &graph{Language: l, xText: lines(form["xs"]), yText: lines(form["ys"]), why: lines(form["why"]), xLabel: form["xlabel"], yLabel: form["ylabel"]}
	for _, text := range lines(form["x"]) {
		x, _ := calc.ReadNumber(text)
		g.x = append(g.x, x)
	}
	for _, text := range lines(form["y"]) {
		y, err := strconv.ParseFloat(text, 64)
		if err != nil || math.IsInf(y, 0) {
			y = math.NaN()
		}
		g.y = append(g.y, y)
	}
	n := min(len(g.x), len(g.y), len(g.xText), len(g.yText), len(g.why))
	g.x, g.y = g.x[:n], g.y[:n]
	at, _ := strconv.Atoi(form["at"])
	g.at = max(0, min(at, n-1))
	return g
}

func lines(text string) []string { return strings.Split(text, "\n") }

func (g *graph) write(w calc.JSON) {
	if len(g.x) < 2 {
		return
	}
	g.p = calc.Picture{Key: "graph", Title: g.Say("{y} by {x}", "y", g.yLabel, "x", g.xLabel), Says: g.says(), Width: width, Height: height}
	g.draw()
	w.Picture("picture", g.p)
	gaps := g.gaps()
	w.List("gaps", len(gaps), func(i int) { w.Text("says", gaps[i]) })
}

// The picture, in CSS pixels: the axes stand at left and bottom.
const (
	width, height            = 340., 210.
	left, right, top, bottom = 46., 328., 14., 172.
)

// An axis turns numbers into places.
type axis struct{ low, high, from, to float64 }

//go:noinline
func (a *axis) place(x float64) float64 {
	if a.high == a.low {
		return (a.from + a.to) / 2
	}
	return a.from + (x-a.low)/(a.high-a.low)*(a.to-a.from)
}

// span is the smallest and the largest of some numbers, without those that are none.
func span(xs []float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, x := range xs {
		if !math.IsNaN(x) {
			low, high = min(low, x), max(high, x)
		}
	}
	return low, high
}

// mark adds a shape.
//
//go:noinline
func (g *graph) mark(kind calc.ShapeKind, look string, x, y, w, h float64) *calc.Shape {
	g.p.Shapes = append(g.p.Shapes, calc.Shape{Kind: kind, Look: look, X: x, Y: y, W: w, H: h})
	return &g.p.Shapes[len(g.p.Shapes)-1]
}

func (g *graph) draw() {
	low, high := span(g.x)
	across := &axis{low, high, left, right}
	g.mark(calc.Rule, "axis", left, bottom, right-left, 0)
	g.mark(calc.Rule, "axis", left, top, 0, bottom-top)
	for _, x := range ticks(low, high) {
		s := g.mark(calc.Label, "axis", across.place(x), bottom+15, 0, 0)
		s.Text, s.AnchorMid = g.tick(x, high-low), true
	}
	s := g.mark(calc.Label, "axis", right, bottom+31, 0, 0)
	s.Text, s.AnchorEnd = g.xLabel, true
	least, most := span(g.y)
	if least > most { // no answer at all
		return
	}
	pad := (most - least) / 12
	if most += pad; least >= 0 {
		least = max(0, least-pad)
	} else {
		least -= pad
	}
	up := &axis{least, most, bottom, top}
	for _, y := range ticks(least, most) {
		g.mark(calc.Rule, "grid", left, up.place(y), right-left, 0)
		s := g.mark(calc.Label, "axis", left-5, up.place(y)+4, 0, 0)
		s.Text, s.AnchorEnd = g.tick(y, most-least), true
	}
	g.curves(across, up)
	if y := g.y[g.at]; !math.IsNaN(y) {
		x, y := across.place(g.x[g.at]), up.place(y)
		g.mark(calc.Rule, "best", x, y, 0, bottom-y)
		g.mark(calc.Dot, "mark", x, y, 5, 0)
	}
}

// curves are the lines through the answers, one between each two gaps, or a dot where one answer stands alone.
func (g *graph) curves(across, up *axis) {
	var points []float64
	for i := range len(g.y) + 1 {
		if i < len(g.y) && !math.IsNaN(g.y[i]) {
			points = append(points, across.place(g.x[i]), up.place(g.y[i]))
			continue
		}
		if len(points) == 2 {
			g.mark(calc.Dot, "mark", points[0], points[1], 2, 0)
		} else if points != nil {
			g.mark(calc.Path, "now", 0, 0, 0, 0).Points = points
		}
		points = nil
	}
}

// ticks are a few round numbers from low to high.
func ticks(low, high float64) []float64 {
	if low == high {
		return []float64{low}
	}
	step := round((high - low) / 3)
	var all []float64
	for k := math.Ceil(low/step - 1e-9); k <= math.Floor(high/step+1e-9); k++ {
		all = append(all, k*step)
	}
	return all
}

// tick words a number on an axis of a length.
func (g *graph) tick(x, length float64) string {
	d := 0
	if length > 0 {
		d = max(0, -int(math.Floor(math.Log10(round(length/3))+1e-9)))
	}
	return g.Quantity(x, d, unit.One)
}
