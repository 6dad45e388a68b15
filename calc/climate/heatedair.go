package climate

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// HeatedAir tells what heating does to the air without taking water out of it.
func HeatedAir() *calc.Calculator {
	return &calc.Calculator{
		ID:       "heated-air",
		Title:    "Heating the air",
		Question: "If I heat this air, how damp is it then, and how much faster does it dry waterborne paint?",
		Range: "Air from −10 to 60 °C that gains and loses no water, at the altitude's standard pressure. Refused below the dew point, where water would settle out. " +
			"The gain is for a wet film or a drop that has cooled to the wet bulb.",
		Inputs:  []calc.Input{field.Air, field.Humidity, field.HeatedTo, field.HumidityWanted, field.Altitude},
		Outputs: []calc.Output{heatedHumidity, heatedFor, dewPoint, dryingGain},
		Work:    workHeatedAir,
		Cautions: []calc.Phrase{
			"Warm air leaves the dew point where it was: a cold part in it gets no drier. Warm the part too.",
			"Warm and dry the air with equipment made for a spray area: an open flame or a glowing element can light solvent vapour, and a flame adds water to the air.",
		},
	}
}

var (
	heatedHumidity = calc.Output{Key: "heated_humidity", Label: "Humidity once heated", Unit: unit.Percent, Decimals: 1, Main: true}
	heatedFor      = calc.Output{Key: "heated_for", Label: "Temperature for the humidity wanted", Unit: unit.DegC, Decimals: 1, Optional: true}
	dryingGain     = calc.Output{Key: "drying_gain", Label: "Dries water this many times as fast", Unit: unit.One, Decimals: 1, Optional: true}
)

// dryingBalance: what a wet bulb loses by evaporation it takes from the air, so that both go with the depression.
var dryingBalance = source.ASHRAEAir.At("equation 33: a wet bulb evaporates as it is colder than the air").By(source.Derived)

// leastDepression, in °C, is what a wet bulb must show before a ratio to it says anything.
const leastDepression = 0.2

func workHeatedAir(w *calc.Working) {
	air, rh, hot, wanted := w.Given(field.Air), w.Given(field.Humidity), w.Given(field.HeatedTo), w.Given(field.HumidityWanted)
	pw := VapourPressure(w, air, rh)
	dew := dewPointAtVapour(w, pw)
	if hot.V < dew.V {
		w.Reject(field.HeatedTo, calc.Beyond, "is below the dew point of {dew}: water would settle out", "Stay above the dew point", dew.To(1, "dew"))
		return
	}
	p := Pressure(w, w.Given(field.Altitude))
	share := heatedShare(w, pw, Saturation(w, hot))
	if wanted.Given() && !heatFor(w, pw, wanted) {
		return
	}
	w.Result(heatedHumidity, share)
	w.Result(dewPoint, dew)
	W := MoistureOf(w, pw, p)
	before, after := depression(w, air, W, p), depression(w, hot, W, p)
	if before.V >= leastDepression {
		w.Result(dryingGain, w.Step("Drying, against the air as it was", "g = d_2 / d_1", unit.One, dryingBalance, after.V/before.V, after, before))
	}
	frost(w, air, dew)
}

// heatedShare is the relative humidity of vapour that would saturate at saturated; both in Pa.
func heatedShare(w *calc.Working, pw, saturated calc.Num) calc.Num {
	return w.Step("Humidity once heated", "RH_2 = 100*p_w/p_s2", unit.Percent, humidity, 100*pw.V/saturated.V, pw, saturated)
}

// heatFor enters the temperature at which vapour of pw Pa is the humidity wanted, or rejects it.
func heatFor(w *calc.Working, pw, wanted calc.Num) bool {
	saturated := w.Step("Saturation pressure for the humidity wanted", "p_s3 = 100*p_w/RH_3", unit.Pascal, humidity, 100*pw.V/wanted.V, pw, wanted)
	if saturated.V > SaturationPressure(field.HeatedTo.Limits.Max) {
		w.Reject(field.HumidityWanted, calc.Beyond, "cannot be had by heating to 60 °C (140 °F) or less", "Dry the air, or want less")
		return false
	}
	t, equation := SaturationTemperature(saturated.V), overWater
	if frosts(saturated.V) {
		equation = overIce
	}
	T := w.Solve("Temperature for the humidity wanted, absolute", "T_3", "p_s3 = "+strings.ReplaceAll(equation, "T", "T_3"), unit.Kelvin, saturation, t+kelvin, saturated)
	w.Result(heatedFor, w.Step("Temperature for the humidity wanted", "t_3 = T_3 - 273.15", unit.DegC, source.Definition, T.V-kelvin, T))
	return true
}

// depression is how far the wet bulb stands below air of t °C and moisture content W at p Pa. Both bulbs are over
// water: paint is wet.
func depression(w *calc.Working, t, W, p calc.Num) calc.Num {
	bulb := wetBulbLiquidStep(w, t, W, p)
	return w.Step("Wet bulb below air", "d = t - t_w", unit.DiffC, source.Definition, t.V-bulb.V, t, bulb)
}
