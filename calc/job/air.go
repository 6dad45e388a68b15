package job

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// today is the booth as it is now.
type today struct {
	drying.Climate
	dew calc.Num
}

// dampest is the relative humidity, in percent, taken as the limit where a data sheet sets none.
const dampest = 85

// hottest is the air temperature in °C above which no booth is advised to be heated for spraying.
const hottest = 40

func (j *job) readAir() {
	j.air.Climate = drying.Climate{
		Air: j.Given(field.Air), Humidity: j.Given(field.Humidity), Panel: j.Given(field.Panel),
		AirSpeed: j.Given(field.AirSpeed), Pressure: climate.Pressure(j.Working, j.Given(field.Altitude)),
	}
	over, dew := climate.JudgeCondensation(j.Working, j.air.Panel, j.air.Air, j.air.Humidity, j.Given(field.MarginNeeded))
	j.air.dew = dew
	j.Result(dewPoint, dew)
	j.Result(margin, over)
}

// judgeProducts holds today's booth to what each data sheet allows.
func (j *job) judgeProducts() {
	allowed := true
	for _, c := range j.coats {
		// A sheet that names no temperatures allows nothing that could be said here.
		allowed = c.Given(field.AirLowest).Given() && c.Given(field.AirHighest).Given() && allowed
		for _, t := range []calc.Num{j.air.Air, j.air.Panel} {
			allowed = j.judgeTemperature(c, t) && allowed
		}
		allowed = j.judgeHumidity(c) && allowed
	}
	if allowed {
		j.Judge(calc.Go, calc.Say("Air {t} at {rh} is inside what every product allows", j.air.Air.To(0, "t"), j.air.Humidity.To(0, "rh")), calc.Say("Measure again when the weather turns"))
	}
}

// judgeTemperature holds the air or the panel to a data sheet's limits, where it sets any.
func (j *job) judgeTemperature(c *coat, t calc.Num) bool {
	what, name := calc.Term(t.Label, "what"), calc.Words(c.name, "name")
	if low := c.Given(field.AirLowest); low.Given() && t.V < low.V {
		j.Judge(calc.Stop, calc.Say("{what} {t} is under the {low} that {name} needs", what, t.To(1, "t"), low.To(0, "low"), name),
			calc.Say("Warm it to {low} or more before you mix", low.To(0, "low")))
		return false
	}
	if high := c.Given(field.AirHighest); high.Given() && t.V > high.V {
		j.Judge(calc.Stop, calc.Say("{what} {t} is over the {high} that {name} allows", what, t.To(1, "t"), high.To(0, "high"), name),
			calc.Say("Cool it to {high} or less, or wait for a cooler hour", high.To(0, "high")))
		return false
	}
	return true
}

// judgeHumidity says to which temperature the same air must be heated to be dry enough.
func (j *job) judgeHumidity(c *coat) bool {
	most := c.Given(field.HumidityHighest)
	if !most.Given() {
		most = j.Constant("Dampest allowed where the sheet is silent", unit.Percent, source.CommonPractice, dampest)
	}
	if j.air.Humidity.V <= most.V {
		return true
	}
	e := climate.VapourPressure(j.Working, j.air.Air, j.air.Humidity)
	goal := j.Model("Air temperature that brings the same moisture to the allowed humidity", "the temperature whose saturation pressure is e / (RH / 100)",
		unit.DegC, source.Definition, climate.SaturationTemperature(e.V/(most.V/100)), e.As("e"), most.As("RH"))
	do := calc.Say("Heat the air to {t}: it will then be at {most}. Or dry it, or wait", goal.To(0, "t"), most.To(0, "most"))
	if highest := c.Given(field.AirHighest); goal.V > hottest || highest.Given() && goal.V > highest.V {
		do = calc.Say("Dry the air, or wait for a drier hour")
	}
	j.Judge(calc.Wait, calc.Say("Humidity {rh} is over the {most} for {name}", j.air.Humidity.To(0, "rh"), most.To(0, "most"), calc.Words(c.name, "name")), do)
	return false
}
