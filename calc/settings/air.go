package settings

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

var psychrometer = source.ASHRAEAir.At("equation 33: a wet bulb in moving air").By(source.SecondHand)

// readAir takes the booth as it is, minds dew on the panel, and weighs the air against ordinary air.
func (d *day) readAir() bool {
	air, p := d.given(&field.Air), climate.Pressure(d.Working, d.given(&field.Altitude))
	rh, ok := d.readHumidity(air, p)
	if !ok {
		return false
	}
	d.now = drying.Climate{Air: air, Humidity: rh, Panel: d.given(&field.Panel), AirSpeed: d.given(&field.AirSpeed), Pressure: p}
	d.needed = d.given(&field.MarginNeeded)
	t, h := d.Constant("Air to compare with", unit.DegC, ordinaryDay, 23), d.Constant("and its humidity", unit.Percent, ordinaryDay, 50)
	d.ordinary = drying.Climate{Air: t, Humidity: h, Panel: t, AirSpeed: d.now.AirSpeed, Pressure: p}
	d.strength, d.usual = drying.Strength(d.Working, air, rh, p), drying.Strength(d.Working, t, h, p)
	d.ratio = d.Step("Dries water, times as fast as the air to compare with", "r = max(0, E / E_ref)", unit.One, source.Definition, max(0, d.strength.V/d.usual.V), d.strength, d.usual)
	d.result(&humidityNow, rh)
	d.result(&dryingRatio, d.ratio)
	d.tell(&dryingWhy, "A wet film cools {gap} below this air; in air of {t} and {rh} it cools {usual}", d.compared(gap(&d.now).To(0, "gap"), gap(&d.ordinary).To(0, "usual"))...)
	return true
}

// compared adds the air that this one is compared with, {t} and {rh}, to a sentence's numbers.
func (d *day) compared(args ...calc.Arg) []calc.Arg {
	return append(args, d.ordinary.Air.To(0, "t"), d.ordinary.Humidity.To(0, "rh"))
}

// gap is how far the wet bulb over water stands below the air.
func gap(c *drying.Climate) calc.Num {
	return calc.N(c.Air.V-climate.WetBulbLiquid(c.Air.V, c.Humidity.V, c.Pressure.V), unit.DiffC)
}

// readHumidity takes the hygrometer's reading, or works it out from the wet bulb's.
func (d *day) readHumidity(air, p calc.Num) (rh calc.Num, ok bool) {
	if d.Picked(field.AirReading) != "wet-bulb" {
		return d.given(&field.Humidity), true
	}
	w, bulb := d.Working, d.given(&field.WetBulb)
	if bulb.V > air.V+1e-9 {
		d.Reject(field.WetBulb, calc.Impossible, "is above the air temperature: a wet wick is never warmer than the air", "Check both thermometers")
		return rh, false
	}
	full := climate.MoistureOf(w, climate.SaturationLiquid(w, bulb), p)
	W := d.Step("Moisture content by the wet bulb", "W = ((2501 - 2.326*t_w)*W_s - 1.006*(t - t_w))/(2501 + 1.86*t - 4.186*t_w)", unit.KilogramPerKilogram, psychrometer,
		((2501-2.326*bulb.V)*full.V-1.006*(air.V-bulb.V))/(2501+1.86*air.V-4.186*bulb.V), bulb, full, air)
	pw := d.Step("Vapour pressure", "p_w = p*W/(0.621945 + W)", unit.Pascal, psychrometer, p.V*W.V/(0.621945+W.V), p, W)
	rh = d.share(pw, air)
	if rh.V < field.Humidity.Limits.Min {
		d.Reject(field.WetBulb, calc.Impossible, "is too far below the air temperature: no air is that dry", "Check that the wick is wet, and both thermometers")
		return rh, false
	}
	return rh, true
}

// share is the relative humidity of vapour at air temperature t.
func (d *day) share(pw, t calc.Num) calc.Num {
	full := climate.Saturation(d.Working, t)
	return d.Step("Relative humidity", "RH = min(100, 100*p_w/p_ws)", unit.Percent, psychrometer, min(100, 100*pw.V/full.V), pw, full)
}
