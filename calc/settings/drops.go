package settings

import (
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/drying"
	"spraywright/calc/unit"
)

// The picture of drops in flight, in pixels on a phone, up to farthest mm.
const (
	dropsLeft, dropsRight = 44.0, 274.0
	dropsTop, dropsBase   = 28.0, 212.0
	dropsHigh             = 254.0
	farthest              = 300.0
)

// drawDrops shows what drops of several sizes lose on their way, in today's air.
func (d *day) drawDrops() {
	Sc := drying.Schmidt(nil, d.now, d.liquid)
	now, usual := drying.DropRate(nil, d.now, d.liquid), drying.DropRate(nil, d.ordinary, d.liquid)
	lossAt := func(rate calc.Num, size, mm float64) float64 {
		return drying.FlightLoss(nil, rate, calc.N(size, unit.Micrometre), calc.N(mm, unit.Millimetre), Sc).V
	}
	loss := func(size, mm float64) float64 { return lossAt(now, size, mm) }
	top := math.Min(100, math.Max(5, math.Ceil(loss(20, farthest)/5)*5))
	x := func(mm float64) float64 { return dropsLeft + mm/farthest*(dropsRight-dropsLeft) }
	y := func(lost float64) float64 { return dropsBase - lost/top*(dropsBase-dropsTop) }
	p := pen{day: d, Picture: calc.Picture{
		Key: "drops", Title: d.Voiced(calc.Say("What drops lose on their way")), Width: mapWide, Height: dropsHigh,
		Says: d.Voiced(calc.Say("Over {L} in this air a drop of 20 µm loses {a} of its liquid, one of 60 µm {b}: fine and far lands dry. Dashed: a drop of 30 µm at {t} and {rh}",
			d.compared(d.own[distance].To(0, "L"), calc.N(loss(20, d.own[distance].V), unit.Percent).To(1, "a"), calc.N(loss(60, d.own[distance].V), unit.Percent).To(1, "b"))...)),
	}}
	for i := range 6 {
		share := top * float64(i) / 5
		p.rule("grid", dropsLeft, y(share), dropsRight-dropsLeft, 0)
		p.number("axis", 2, dropsLeft-4, y(share)+4, calc.N(share, unit.Percent))
	}
	for mm := 100.0; mm <= farthest; mm += 100 {
		p.number("axis", 1, x(mm), dropsBase+16, calc.N(mm, unit.Millimetre))
	}
	line := func(look string, rate calc.Num, size float64) {
		var points []float64
		for i := range 16 {
			mm := farthest * float64(i) / 15
			points = append(points, x(mm), y(math.Min(top, lossAt(rate, size, mm))))
		}
		p.path(look, points)
	}
	end := func(rate calc.Num, size float64) float64 { return y(math.Min(top, lossAt(rate, size, farthest))) }
	dashed, last := end(usual, dropSize), 0.0
	for _, size := range []float64{20, dropSize, 40, 60} {
		near := math.Abs(end(now, size)-dashed) < 13
		if near && size != dropSize {
			continue // it would hide the dashed line
		}
		look := "film"
		if size == dropSize {
			look = "now"
		}
		line(look, now, size)
		if at := end(now, size); at-last > 12 {
			p.text(look, 0, dropsRight+4, at+4, d.Named("{n} µm", calc.Words(strconv.Itoa(int(size)), "n")))
			last = at
		}
		if size == dropSize && !near {
			p.text("axis", 0, dropsRight+4, dashed+4, d.Named("30 µm, {t}", d.compared()...))
		}
	}
	line("average", usual, dropSize)
	here := x(math.Min(farthest, d.own[distance].V))
	p.rule("limit", here, dropsTop, 0, dropsBase-dropsTop)
	p.text("limit", 0, here+4, dropsTop+10, "you")
	p.text("axis", 0, 0, 14, "Liquid lost")
	p.text("axis", 2, dropsRight, dropsHigh-6, "Distance from the gun")
	d.Draw(p.Picture)
}
