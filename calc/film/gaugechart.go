package film

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// listSpots gives the mean of every three readings in turn.
func (r readings) listSpots(w *calc.Working) {
	for i := 0; i+perSpot <= len(r.x); i += perSpot {
		a, b, c := r.one(i), r.one(i+1), r.one(i+2)
		mean := w.Step("Mean of the spot", "s = (x_1 + x_2 + x_3) / 3", unit.Micrometre, source.Definition, (a.V+b.V+c.V)/3, a, b, c)
		w.List(spots, calc.Of(calc.N(float64(i/perSpot+1), unit.One)), calc.Of(mean))
	}
}

func (r readings) one(i int) calc.Num { return calc.N(r.x[i], unit.Micrometre).Called("Reading") }

// The chart of the readings, in pixels on a phone.
const (
	chartWide, chartHigh = 360.0, 190.0
	chartLeft, chartBase = 8.0, 176.0
	chartRight, chartTop = 228.0, 14.0
	chartLead            = 8.0  // from the end of a line to its label
	chartText            = 15.0 // from one label to the next
)

// A scale turns readings into places on the chart.
type scale struct {
	low, high float64 // µm, at the base and at the top
	step      float64 // pixels from one reading to the next
}

func (s scale) y(x float64) float64 {
	return math.Round(10*(chartBase-(x-s.low)/(s.high-s.low)*(chartBase-chartTop))) / 10
}

// draw sets the readings against what the rule chosen allows a single reading, or a spot. A reading outside is hollow.
func (r readings) draw(w *calc.Working, least, most calc.Num) {
	low, high := 0.8*least.V, 1.2*most.V // of a spot, by SSPC-PA 2
	limits := []limitLine{{low, calc.Say("spot from {x}", calc.N(low, unit.Micrometre).As("x"))}, {high, calc.Say("spot up to {x}", calc.N(high, unit.Micrometre).As("x"))}}
	switch w.Picked(field.GaugeRule) {
	case "iso":
		low, high = 0.8*r.film.V, math.Inf(1)
		limits = []limitLine{{low, calc.Say("80 %: {x}", calc.N(low, unit.Micrometre).As("x"))}}
	case "msc":
		low, high = 0.9*r.film.V, math.Inf(1)
		limits = []limitLine{{low, calc.Say("90 %: {x}", calc.N(low, unit.Micrometre).As("x"))}}
	}
	s := scale{low: 0.9 * low, high: 1.05 * r.film.V, step: min(16, (chartRight-chartLeft-8)/float64(len(r.x)))}
	for _, x := range append([]float64{limits[len(limits)-1].at * 1.02}, r.x...) {
		s.low, s.high = min(s.low, 0.97*x), max(s.high, 1.03*x)
	}
	p := calc.Picture{Key: "gauge-chart", Title: w.Voiced(calc.Say("Readings")), Width: chartWide, Height: chartHigh}
	limits = append(limits, limitLine{r.film.V, calc.Say("{x} specified", r.film.As("x"))})
	beside := labelsApart(limits, s)
	for i, l := range limits {
		look := "limit"
		if l.at == r.film.V {
			look = "axis"
		}
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: look, X: chartLeft, Y: s.y(l.at), W: chartRight - chartLeft},
			calc.Shape{Kind: calc.Rule, Look: look, X: chartRight, Y: s.y(l.at), W: chartLead, H: beside[i] - s.y(l.at)},
			calc.Shape{Kind: calc.Label, Look: look, X: chartRight + chartLead + 3, Y: beside[i] + 4, Text: w.Voiced(l.says)})
	}
	out := 0.0
	for i, x := range r.x {
		look := "mark"
		if under(x, low) || under(high, x) {
			look, out = "outside", out+1
		}
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Dot, Look: look, X: math.Round(10*(chartLeft+8+float64(i)*s.step)) / 10, Y: s.y(x), W: min(4, s.step/2)})
	}
	p.Says = w.Voiced(calc.Say("{n} readings from {low} to {high}, {out} of them outside the dashed lines", calc.N(float64(len(r.x)), unit.One).To(0, "n"),
		r.low.As("low"), calc.N(highest(r.x), unit.Micrometre).As("high"), calc.N(out, unit.One).To(0, "out")))
	w.Draw(p)
}

// A limitLine is drawn across the chart at a film in µm.
type limitLine struct {
	at   float64
	says calc.Text
}

func highest(x []float64) float64 {
	h := x[0]
	for _, v := range x {
		h = max(h, v)
	}
	return h
}

// labelsApart places the labels of lines, which may lie close together, so that each can be read: the same order, and as
// near to their lines as they can stand. A scale that takes in a reading far off has them all at one end.
func labelsApart(lines []limitLine, s scale) []float64 {
	order := make([]int, len(lines)) // from the base up
	y := make([]float64, len(lines))
	for i, l := range lines {
		k := i
		for ; k > 0 && lines[order[k-1]].at > l.at; k-- {
			order[k] = order[k-1]
		}
		order[k], y[i] = i, s.y(l.at)
	}
	for k := 1; k < len(order); k++ {
		y[order[k]] = min(y[order[k]], y[order[k-1]]-chartText)
	}
	lowest := chartTop // how high the label may stand at most
	for k := len(order) - 1; k >= 0; k-- {
		y[order[k]] = max(y[order[k]], lowest)
		lowest = y[order[k]] + chartText
	}
	return y
}
