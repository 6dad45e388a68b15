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
	dropsLeft, dropsRight = 40.0, 312.0
	dropsTop, dropsBase   = 12.0, 196.0
	dropsHigh             = 236.0
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
	p := pen{calc.Picture{
		Key: "drops", Title: "What drops lose on their way", Width: mapWide, Height: dropsHigh,
		Says: d.Voiced(calc.Say("Over {L} in this air a drop of 20 µm loses {a} of its liquid, one of 60 µm {b}: fine and far lands dry. Dashed: 30 µm in ordinary air",
			d.own[distance].To(0, "L"), calc.N(loss(20, d.own[distance].V), unit.Percent).To(1, "a"), calc.N(loss(60, d.own[distance].V), unit.Percent).To(1, "b"))),
	}}
	for i := range 6 {
		share := top * float64(i) / 5
		p.rule("grid", dropsLeft, y(share), dropsRight-dropsLeft, 0)
		p.text("axis", 2, dropsLeft-4, y(share)+4, d.tick(calc.N(share, unit.Percent)))
	}
	for mm := 100.0; mm <= farthest; mm += 100 {
		p.text("axis", 1, x(mm), dropsBase+16, d.tick(calc.N(mm, unit.Millimetre)))
	}
	line := func(look string, rate calc.Num, size float64) {
		var points []float64
		for i := range 16 {
			mm := farthest * float64(i) / 15
			points = append(points, x(mm), y(math.Min(top, lossAt(rate, size, mm))))
		}
		p.path(look, points)
	}
	line("average", usual, dropSize)
	for _, size := range []float64{20, dropSize, 40, 60} {
		look := "film"
		if size == dropSize {
			look = "now"
		}
		line(look, now, size)
		p.text(look, 0, dropsRight+4, y(math.Min(top, loss(size, farthest)))+4, strconv.Itoa(int(size))+" µm")
	}
	here := x(math.Min(farthest, d.own[distance].V))
	p.rule("limit", here, dropsTop, 0, dropsBase-dropsTop)
	p.text("limit", 0, here+4, dropsTop+10, "you")
	p.text("axis", 0, dropsLeft, dropsHigh-6, "distance from the gun, and loss upwards")
	d.Draw(p.Picture)
}
