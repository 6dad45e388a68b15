package settings

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/unit"
)

// The map of the air, in pixels on a phone.
const (
	mapWide, mapHigh   = 360.0, 316.0
	mapLeft, mapRight  = 40.0, 352.0
	mapTop, mapBase    = 10.0, 276.0
	mapColdest, mapHot = 5.0, 45.0
	rows               = 12 // pieces of a line
)

func mapX(t float64) float64  { return mapLeft + (t-mapColdest)/(mapHot-mapColdest)*(mapRight-mapLeft) }
func mapY(rh float64) float64 { return mapBase - rh/100*(mapBase-mapTop) }

func text(look string, x, y float64, words string) calc.Shape {
	return calc.Shape{Kind: calc.Label, Look: look, X: x, Y: y, Text: words}
}

func rule(look string, x, y, w, h float64) calc.Shape {
	return calc.Shape{Kind: calc.Rule, Look: look, X: x, Y: y, W: w, H: h}
}

// drawAir puts today's air on a map of temperature and humidity, among lines of equal drying and the panel's dew line.
func (d *day) drawAir() {
	p := calc.Picture{
		Key: "air-map", Title: "Today's air on the map", Width: mapWide, Height: mapHigh,
		Says: d.Voiced(calc.Say("{t} at {rh} dries this paint's liquid {r} times as fast as ordinary air; between the solid lines is ordinary air, and above the dashed red one this panel dews",
			d.now.Air.To(0, "t"), d.now.Humidity.To(0, "rh"), calc.N(d.hastens(d.now), unit.One).To(2, "r"))),
	}
	p.Shapes = append(p.Shapes, d.frame()...)
	for _, l := range []struct {
		times float64
		says  string
	}{{0.25, "¼×"}, {driesSlowly, "½×"}, {1, "1×"}, {driesFast, "2×"}, {4, "4×"}} {
		look := "average"
		if l.times == driesSlowly || l.times == driesFast {
			look = "film"
		}
		if line := d.contour(l.times); line != nil {
			at := rows / 3 * 2
			p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Path, Look: look, Points: line}, text("axis", line[at]+5, line[at+1]+13, l.says))
		}
	}
	p.Shapes = append(p.Shapes, d.dewLine()...)
	x, y := mapX(math.Min(math.Max(d.now.Air.V, mapColdest), mapHot)), mapY(d.now.Humidity.V)
	here := text("now", x+10, y+4, "today")
	if x > mapRight-60 {
		here.X, here.AnchorEnd = x-10, true
	}
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Dot, Look: "mark", X: x, Y: y, W: 6}, here)
	d.Draw(p)
}

// frame is the axes with their labels, and the names of the corners.
func (d *day) frame() []calc.Shape {
	var shapes []calc.Shape
	for rh := 0.0; rh <= 100; rh += 20 {
		label := text("axis", mapLeft-4, mapY(rh)+4, d.Voiced(calc.Say("{rh}", calc.N(rh, unit.Percent).To(0, "rh"))))
		label.AnchorEnd = true
		shapes = append(shapes, rule("grid", mapLeft, mapY(rh), mapRight-mapLeft, 0), label)
	}
	for t := 10.0; t <= 40; t += 10 {
		label := text("axis", mapX(t), mapBase+16, d.Voiced(calc.Say("{t}", calc.N(t, unit.DegC).To(0, "t"))))
		label.AnchorMid = true
		shapes = append(shapes, rule("grid", mapX(t), mapTop, 0, mapBase-mapTop), label)
	}
	slow, fast := "cool or damp", "hot and dry"
	if !d.water() {
		slow, fast = "cool", "hot"
	}
	corner := text("lane", mapRight-6, mapBase-8, fast)
	corner.AnchorEnd = true
	return append(shapes, text("lane", mapLeft+6, mapTop+15, slow), corner, text("axis", mapLeft, mapHigh-6, "air temperature, and humidity upwards"))
}

// hastens is how fast a climate dries this paint's liquid, against ordinary air.
func (d *day) hastens(c drying.Climate) float64 {
	if d.water() {
		return math.Max(0, d.dries(c))
	}
	return drying.DropRate(nil, c, d.liquid).V / drying.DropRate(nil, d.ordinary, d.liquid).V
}

// contour is where the air dries so many times as fast as ordinary air, from edge to edge of the map; nil where that is
// nowhere on it. Drying grows with temperature and falls, or stays, with humidity.
func (d *day) contour(times float64) []float64 {
	c := d.now
	slower := func(t, rh float64) bool { c.Air.V, c.Humidity.V = t, rh; return d.hastens(c) < times }
	edge := func(t float64) float64 { return halve(0, 100, func(rh float64) bool { return !slower(t, rh) }) }
	if slower(mapHot, 0) || !slower(mapColdest, 100) {
		return nil
	}
	from, to := edge(mapColdest), edge(mapHot)
	points := make([]float64, 0, 2*rows+2)
	for i := range rows + 1 {
		rh := from + (to-from)*float64(i)/rows
		points = append(points, mapX(halve(mapColdest, mapHot, func(t float64) bool { return slower(t, rh) })), mapY(rh))
	}
	return points
}

// halve finds where below turns from true to false between lo and hi; one of them where it does not.
func halve(lo, hi float64, below func(float64) bool) float64 {
	for range 11 {
		if mid := (lo + hi) / 2; below(mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

// dewLine is the humidity above which dew comes within the margin on this panel.
func (d *day) dewLine() []calc.Shape {
	var points []float64
	goal := d.now.Panel.V - d.needed.V
	for i := range 41 {
		t := mapColdest + float64(i)
		if rh := 100 * climate.SaturationPressure(goal) / climate.SaturationPressure(t); rh <= 100 {
			points = append(points, mapX(t), mapY(rh))
		}
	}
	if len(points) < 4 {
		return nil
	}
	label := text("limit", points[0]+20, points[1]+12, "dew")
	switch {
	case label.X > mapRight-30:
		label.X, label.AnchorEnd = points[0]-4, true
	case points[0] < mapLeft+1:
		label.X, label.Y = points[0]+8, points[1]-6
	}
	return []calc.Shape{{Kind: calc.Path, Look: "limit", Points: points}, label}
}
