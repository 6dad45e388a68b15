package job

import (
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/field"
)

// The chart's measures, in CSS pixels on a phone.
const (
	chartWidth = 360.0
	laneHeight = 46.0
	barHeight  = 16.0
	barTop     = 22.0
	axisHeight = 26.0
)

// chart draws the call sheet: a lane for each product, a bar for each event, a mark where a cup must be used up.
func (s *sheet) chart(start int, end float64) calc.Picture {
	p := calc.Picture{
		Key: "timeline", Title: s.Voiced(calc.Say("The job in time")), Width: chartWidth, Height: axisHeight + laneHeight*float64(len(s.coats)) + 4,
		Says: s.Voiced(calc.Say("{n} products from {a} to {b}: mixing, coats, flash-off and drying one after another. The call sheet says the same in words.",
			calc.Words(strconv.Itoa(len(s.coats)), "n"), calc.Words(field.ShowClock(start), "a"), calc.Words(field.ShowClock(start+int(up(end))), "b"))),
	}
	at := func(t float64) float64 { return t / math.Max(end, 1) * (chartWidth - 2) }
	p.Shapes = append(p.Shapes, ticks(start, end, p.Height, at)...)
	for i, c := range s.coats {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: "lane", X: 0, Y: axisHeight + laneHeight*float64(i) + 15, Text: c.name})
	}
	for _, e := range s.events {
		y := axisHeight + laneHeight*float64(e.product) + barTop
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Bar, Look: e.kind, X: at(e.from.V), Y: y, W: at(e.until.V - e.from.V), H: barHeight})
		if e.useBy.Given() && e.useBy.V <= end {
			p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "use-by", X: at(e.useBy.V), Y: y - 4, H: barHeight + 8})
		}
	}
	return p
}

// ticks rules the clock's round times, at most seven of them so that their labels do not touch.
func ticks(start int, end, height float64, at func(float64) float64) []calc.Shape {
	var shapes []calc.Shape
	every := 15
	for _, every = range []int{15, 30, 60, 120, 180, 360, 720, 1440, 2880, 10080} {
		if end/float64(every) <= 7 {
			break
		}
	}
	for m := (start + every - 1) / every * every; float64(m-start) <= end; m += every {
		x := at(float64(m - start))
		shapes = append(shapes, calc.Shape{Kind: calc.Rule, Look: "grid", X: x, Y: axisHeight - 6, H: height - axisHeight + 6})
		if x < chartWidth-34 {
			shapes = append(shapes, calc.Shape{Kind: calc.Label, Look: "axis", X: x, Y: 12, Text: field.ShowClock(m % 1440)})
		}
	}
	return shapes
}
