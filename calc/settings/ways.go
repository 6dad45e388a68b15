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

// comfortable is the humidity in percent that air is dried to where it is warmed or cooled as well.
const comfortable = 70

var searched = source.OurChoice.At("searched in steps that an instrument shows, to the first that nothing here speaks against")

// fits is whether nothing speaks against a climate: what the sheet allows, dew and, for water, drying.
func (d *day) fits(c *drying.Climate) bool {
	if !d.allowed(c) {
		return false
	}
	r := d.dries(c)
	return !d.water() || r >= driesSlowly && r <= driesFast
}

// dries is how fast a climate dries water, against ordinary air.
func (d *day) dries(c *drying.Climate) float64 {
	return drying.Strength(nil, c.Air, c.Humidity, c.Pressure).V / d.usual.V
}

// waysOut lists climates that nothing speaks against: the air warmed or cooled as it is with the part in it, and the air
// dried or damped as warm as it is. It returns what to do, and what that brings; neither where the air is not to blame.
func (d *day) waysOut() (way, why calc.Text) {
	if d.fits(&d.now) {
		return way, why
	}
	const warmUp, coolDown, dryToo = "Warm booth and part to {t} with dry heat", "Cool booth and part to {t}", ", and dry the air to {rh}"
	up, template, both := 1.0, calc.Phrase(warmUp), calc.Phrase(warmUp+dryToo)
	if cold := d.tooCold(d.now.Air.V) || d.tooCold(d.now.Panel.V); !cold && (d.tooHot(d.now.Air.V) || d.tooHot(d.now.Panel.V) || d.water() && d.ratio.V > driesFast) {
		up, template, both = -1, coolDown, coolDown+dryToo
	}
	pw := climate.PartialPressure(d.now.Air.V, d.now.Humidity.V)
	heated := func(dampest float64) func(i float64) drying.Climate {
		return func(i float64) drying.Climate {
			c := d.now
			c.Air.V = (math.Floor(2*c.Air.V) + up*i) / 2
			c.Panel.V, c.Humidity.V = c.Air.V, math.Min(dampest, 100*pw/climate.SaturationPressure(c.Air.V))
			return c
		}
	}
	part := d.now
	part.Panel.V = part.Air.V
	warm := calc.Text{}
	if d.fits(&part) {
		warm = d.found("Bring the part to the booth’s {t}", &part)
	} else {
		warm = d.search(template, heated(100))
	}
	drier, words := 1.0, calc.Phrase("Dry the air to {rh}, or wait for drier")
	if d.water() && d.ratio.V > driesFast {
		drier, words = -1, "Damp the air to {rh}, or wait for damper"
	}
	dry := d.search(words, func(i float64) drying.Climate {
		c := d.now
		c.Humidity.V = math.Floor(c.Humidity.V) - drier*i
		return c
	})
	if way = warm; way.Template == "" {
		way = dry
	}
	if way.Template == "" {
		way = d.search(both, heated(comfortable))
	}
	if way.Template == "" {
		return calc.Say("Wait for other weather"), calc.Say("Neither warmer or cooler nor drier or damper air settles it here")
	}
	why = calc.Text{Template: "Air of {t} and {rh} settles all of it", Args: way.Args}
	if !d.water() {
		why.Template = "Air of {t} and {rh} keeps to the sheet and to the dew point"
	}
	return way, why
}

// search goes on from one climate to the next until one fits, and lists it; blank where none does.
func (d *day) search(template calc.Phrase, next func(i float64) drying.Climate) calc.Text {
	for i := 1.0; ; i++ {
		c := next(i)
		if c.Air.V > warmest && c.Air.V > d.now.Air.V || c.Air.V < coolest && c.Air.V < d.now.Air.V || c.Humidity.V < 5 && c.Humidity.V < d.now.Humidity.V || c.Humidity.V > 95 && c.Humidity.V > d.now.Humidity.V {
			return calc.Text{}
		}
		if d.fits(&c) {
			return d.found(template, &c)
		}
	}
}

// found writes a climate down that fits, and how to come by it.
func (d *day) found(template calc.Phrase, c *drying.Climate) calc.Text {
	at := func(label calc.Phrase, u unit.Unit, x float64) calc.Num {
		return d.Model(label, "from now on, step by step", u, searched, x, d.now.Air.As("t"), d.now.Humidity.As("RH"))
	}
	c.Air, c.Humidity = at("Air that will do", unit.DegC, c.Air.V), at("Humidity that will do", unit.Percent, c.Humidity.V)
	says := calc.Say(template, c.Air.To(1, "t"), c.Humidity.To(0, "rh"))
	d.row(says, c)
	return says
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
