package settings

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Bounds of what a booth is heated or cooled to, in °C, and of air moved past a part, in m/s.
const warmest, coolest, briskest = 40, 10, 1.5

var searched = source.Definition.At("searched in steps that an instrument shows")

// judgeAir rules on the air and says, worked out, what would make it good.
func (d *day) judgeAir() {
	do := calc.Say("Spray a test panel and correct from there")
	switch {
	case !d.clear(&d.now):
		do = d.waysOut()
	case !d.water():
		do = calc.Say("Choose reducer and hardener for this before you mix, then spray a test panel")
	}
	ratio := d.ratio.To(2, "ratio")
	ok := true
	wait := func(template string, args ...calc.Arg) { d.wait(do, template, args...); ok = false }
	if d.now.Humidity.V > d.most.V {
		wait("Humidity {rh} is over the {most} that this paint allows", d.now.Humidity.To(0, "rh"), d.most.To(0, "most"))
	}
	switch {
	case d.water() && d.ratio.V > driesFast:
		wait("This air dries water {ratio} times as fast as ordinary air: spray lands dry and grainy", ratio)
	case d.water() && d.ratio.V < driesSlowly:
		wait("This air dries water {ratio} times as fast as ordinary air: coats stay wet, sag and turn blotchy", ratio)
	}
	d.moveAir()
	takes := drying.FlashRatio(d.sheet, d.now, d.liquid)
	switch {
	case !ok:
	case d.water():
		d.Judge(calc.Go, calc.Say("This air dries water {ratio} times as fast as ordinary air: your usual settings need little", ratio), do)
	case takes < driesSlowly || takes > driesFast:
		wait("This film dries in {x} of the sheet's time", calc.N(100*takes, unit.Percent).To(0, "x"))
	default:
		d.Judge(calc.Go, calc.Say("Humidity does not slow solvent: go by {t} in the booth and on the panel", d.now.Air.To(0, "t")), do)
	}
}

// clear is whether a climate allows spraying: humidity, dew on the panel and, for water, neither too fast nor too slow.
func (d *day) clear(c *drying.Climate) bool {
	if c.Humidity.V > d.most.V || c.Panel.V-climate.DewPoint(c.Air.V, c.Humidity.V) < d.needed.V {
		return false
	}
	r := d.dries(c)
	return !d.water() || r >= driesSlowly && r <= driesFast
}

// dries is how fast a climate dries water, against ordinary air.
func (d *day) dries(c *drying.Climate) float64 {
	return drying.Strength(nil, c.Air, c.Humidity, c.Pressure).V / d.usual.V
}

// waysOut lists climates that would be clear: the air warmed or cooled as it is with the part in it, and the air dried or
// damped as warm as it is.
func (d *day) waysOut() calc.Text {
	up, template := 1.0, "Heat booth and part, adding no water"
	if d.water() && d.ratio.V > driesFast {
		up, template = -1, "Cool booth and part"
	}
	pw := climate.PartialPressure(d.now.Air.V, d.now.Humidity.V)
	warm := d.search(template, func(i float64) drying.Climate {
		c := d.now
		c.Air.V = (math.Floor(2*c.Air.V) + up*i) / 2
		c.Panel.V, c.Humidity.V = c.Air.V, math.Min(100, 100*pw/climate.SaturationPressure(c.Air.V))
		return c
	})
	template = "Dry the air, or wait for drier"
	if up < 0 {
		template = "Damp the air, or wait for damper"
	}
	dry := d.search(template, func(i float64) drying.Climate {
		c := d.now
		c.Humidity.V = math.Floor(c.Humidity.V) - up*i
		return c
	})
	switch {
	case warm != nil:
		return calc.Say("With air and part at {t} this booth would be at {rh} and clear", warm.Air.To(1, "t"), warm.Humidity.To(0, "rh"))
	case dry != nil:
		return calc.Say("At {rh}, as warm as it is, this booth would be clear", dry.Humidity.To(0, "rh"))
	}
	return calc.Say("No heating or drying alone clears this booth: wait for other weather")
}

// search goes on from one climate to the next until one is clear, and lists it; nil where none is.
func (d *day) search(says string, next func(i float64) drying.Climate) *drying.Climate {
	for i := 1.0; ; i++ {
		c := next(i)
		if c.Air.V > warmest && c.Air.V > d.now.Air.V || c.Air.V < coolest && c.Air.V < d.now.Air.V || c.Humidity.V < 5 && c.Humidity.V < d.now.Humidity.V || c.Humidity.V > 95 && c.Humidity.V > d.now.Humidity.V {
			return nil
		}
		if !d.clear(&c) {
			continue
		}
		found := func(n calc.Num, label string, u unit.Unit, x float64) calc.Num {
			return d.Model(label, "the nearest that is clear: "+says, u, searched, x, d.now.Air.As("t"), d.now.Humidity.As("RH"))
		}
		c.Air, c.Humidity = found(c.Air, "Clear air", unit.DegC, c.Air.V), found(c.Humidity, "Humidity of clear air", unit.Percent, c.Humidity.V)
		d.row(calc.Say(says), &c)
		return &c
	}
}

func (d *day) row(says calc.Text, c *drying.Climate) {
	d.List(ways, calc.Told(says), calc.Of(c.Air), calc.Of(c.Humidity),
		calc.Of(calc.N(c.Panel.V-climate.DewPoint(c.Air.V, c.Humidity.V), unit.DiffC)), calc.Of(calc.N(math.Max(0, d.dries(c)), unit.One)))
}

// moveAir lists the air speed at which the film takes no longer than the sheet says, where it now does.
func (d *day) moveAir() {
	if drying.Refuse(d.sheet, d.now, d.liquid) != nil || drying.FlashRatio(d.sheet, d.now, d.liquid) < 1.1 {
		return
	}
	for c := d.now; c.AirSpeed.V < briskest; {
		c.AirSpeed.V = (math.Floor(10*c.AirSpeed.V+1e-9) + 1) / 10
		if drying.FlashRatio(d.sheet, c, d.liquid) > 1 {
			continue
		}
		c.AirSpeed = d.Model("Air speed for the sheet's flash-off", "the first tenth of a m/s at which the model film dries as fast as in the sheet's air", unit.AirMetrePerSecond, searched, c.AirSpeed.V)
		d.row(calc.Say("Move the air past the part at {u}: flash-off as on the sheet", c.AirSpeed.To(1, "u")), &c)
		return
	}
}
