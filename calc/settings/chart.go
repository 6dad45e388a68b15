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
	mapWide, mapHigh   = 360.0, 334.0
	mapLeft, mapRight  = 44.0, 352.0
	mapTop, mapBase    = 26.0, 292.0
	mapColdest, mapHot = 5.0, 45.0
	rows               = 12 // pieces of a line
)

func mapX(t float64) float64  { return mapLeft + (t-mapColdest)/(mapHot-mapColdest)*(mapRight-mapLeft) }
func mapY(rh float64) float64 { return mapBase - rh/100*(mapBase-mapTop) }

// drawAir puts today's air on a map of temperature and humidity, among lines of equal drying and the panel's dew line.
func (d *day) drawAir() {
	p := pen{day: d, Picture: calc.Picture{
		Key: "air-map", Title: d.Voiced(calc.Say("Today's air on the map")), Width: mapWide, Height: mapHigh,
		Says: d.Voiced(calc.Say("Today's {now} at {damp} dries this paint's liquid {r} times as fast as {t} and {rh}. Between the solid lines painters change little; above the dashed red one this panel is too near its dew point",
			d.compared(d.now.Air.To(0, "now"), d.now.Humidity.To(0, "damp"), calc.N(d.hastens(&d.now), unit.One).To(1, "r"))...)),
	}}
	d.frame(&p)
	for _, l := range contours {
		if line := d.contour(l.times); line != nil {
			at := rows / 3 * 2
			p.path(l.look, line)
			p.text("axis", 0, line[at]+5, line[at+1]+13, l.says)
		}
	}
	if line := d.dewLine(); len(line) > 4 {
		near := max(0, len(line)-8) // a few degrees before its end, where it falls away to the right
		p.path("limit", line)
		p.text("limit", 0, line[near]+5, line[near+1]-5, "dew")
	}
	x, y := mapX(math.Min(math.Max(d.now.Air.V, mapColdest), mapHot)), mapY(d.now.Humidity.V)
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Dot, Look: "mark", X: x, Y: y, W: 6})
	if x > mapRight-60 {
		p.text("now", 2, x-10, y+4, "today")
	} else {
		p.text("now", 0, x+10, y+4, "today")
	}
	d.Draw(p.Picture)
}

// contours are the lines of equal drying; the solid ones bound ordinary air.
var contours = []struct {
	times float64
	says  calc.Phrase
	look  string
}{{0.25, "¼×", "average"}, {driesSlowly, "½×", "film"}, {1, "1×", "average"}, {driesFast, "2×", "film"}}

// frame is the axes with their labels, and the names of the corners.
func (d *day) frame(p *pen) {
	for rh := 0.0; rh <= 100; rh += 20 {
		p.rule("grid", mapLeft, mapY(rh), mapRight-mapLeft, 0)
		p.number("axis", 2, mapLeft-4, mapY(rh)+4, calc.N(rh, unit.Percent))
	}
	for t := 10.0; t <= 40; t += 10 {
		p.rule("grid", mapX(t), mapTop, 0, mapBase-mapTop)
		p.number("axis", 1, mapX(t), mapBase+16, calc.N(t, unit.DegC))
	}
	slow, fast := calc.Phrase("cool or damp"), calc.Phrase("hot and dry")
	if !d.water() {
		slow, fast = "cool", "hot"
	}
	t, rh := d.now.Air.V, d.now.Humidity.V // today's mark has the right of way
	low, high := mapBase-8, mapY(70)
	if t > 28 && rh < 13 {
		low = mapY(20)
	}
	if t < 22 && rh > 58 && rh < 82 {
		high = mapY(90)
	}
	p.text("lane", 0, mapLeft+14, high, slow)
	p.text("lane", 2, mapRight-6, low, fast)
	p.text("axis", 0, 0, 14, "Humidity")
	p.text("axis", 2, mapRight, mapHigh-6, "Air temperature")
}

// hastens is how fast a climate dries this paint's liquid, against ordinary air.
func (d *day) hastens(c *drying.Climate) float64 {
	if d.water() {
		return math.Max(0, d.dries(c))
	}
	return drying.DropRate(nil, *c, d.liquid).V / drying.DropRate(nil, d.ordinary, d.liquid).V
}

// contour is where the air dries so many times as fast as ordinary air, from edge to edge of the map; nil where that is
// nowhere on it. Drying grows with temperature and falls, or stays, with humidity.
func (d *day) contour(times float64) []float64 {
	c := d.now
	slower := func(t, rh float64) bool { c.Air.V, c.Humidity.V = t, rh; return d.hastens(&c) < times }
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
func (d *day) dewLine() []float64 {
	var points []float64
	full := climate.SaturationPressure(d.now.Panel.V - d.needed.V)
	for t := mapColdest; t <= mapHot; t++ {
		if rh := 100 * full / climate.SaturationPressure(t); rh <= 100 {
			points = append(points, mapX(t), mapY(rh))
		}
	}
	return points
}
