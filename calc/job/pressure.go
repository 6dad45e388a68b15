package job

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/gun"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// The air in which a painter's usual start pressure is understood to work; the field's help says so.
const (
	ordinaryAir      = 23 // °C
	ordinaryHumidity = 50 // %
)

// startPressures gives each product its start pressure. Only waterborne paint has a model: there the air's
// drying strength decides. For the rest the painter's own pressure stands, and the reducer does the work.
func (j *job) startPressures() {
	air := j.Constant("Ordinary air", unit.DegC, source.CommonPractice, ordinaryAir)
	rh := j.Constant("Ordinary humidity", unit.Percent, source.CommonPractice, ordinaryHumidity)
	ordinary := []calc.Arg{air.To(0, "t"), rh.To(0, "rh")}
	var least, most calc.Num
	for _, c := range j.coats {
		p, why := j.gun.pressure, calc.Say("Your own start pressure: humidity does not change it for solvent, so choose the reducer for {t}", j.air.Air.To(0, "t"))
		if c.waterborne {
			adjusted, ok := gun.StartPressure(j.Working, j.Picked(field.Gun), p, j.gun.most, air, rh, j.air.Air, j.air.Humidity, j.air.Pressure)
			switch {
			case !ok:
				why = calc.Say("Your own start pressure: there is no figure for how this kind of gun follows the weather")
			case adjusted.V < p.V:
				p, why = adjusted, calc.Say("Lower than at {t} and {rh}: this air dries the drops faster. A first setting, fitted to little: spray a test panel", ordinary...)
			case adjusted.V > p.V:
				p, why = adjusted, calc.Say("Higher than at {t} and {rh}: this air dries the drops more slowly. A first setting, fitted to little: spray a test panel", ordinary...)
			default:
				p, why = adjusted, calc.Say("As at {t} and {rh}", ordinary...)
			}
		}
		j.List(pressures, c.told(), calc.Of(p), calc.Of(j.gun.most), calc.Told(why))
		if !least.Given() || p.V < least.V {
			least = p
		}
		if !most.Given() || p.V > most.V {
			most = p
		}
	}
	if least.V == most.V {
		j.Tell(startPressure, calc.Say("{p}", most.To(1, "p")))
	} else {
		j.Tell(startPressure, calc.Say("{low} and {high}", least.To(1, "low"), most.To(1, "high")))
	}
}
