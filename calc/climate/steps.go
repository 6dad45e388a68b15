package climate

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// The functions below write the working down. Temperatures come and go in °C, humidity in percent, pressure in Pa.

// Pressure is the standard atmosphere's pressure at an altitude in metres.
func Pressure(w *calc.Working, z calc.Num) calc.Num {
	return w.Step("Air pressure", "p = 101325*pow(1 - 0.0000225577*z, 5.2559)", unit.Pascal, altitude,
		AtmosphericPressure(z.V), z)
}

// Saturation is the saturation pressure at t, over ice below 0.01 °C.
func Saturation(w *calc.Working, t calc.Num) calc.Num {
	T := absolute(w, t)
	label, formula := calc.Phrase("Saturation pressure over water"), overWater
	if t.V < triple {
		label, formula = "Saturation pressure over ice", overIce
	}
	return w.Step(label, "p_ws = "+formula, unit.Pascal, saturation, SaturationPressure(t.V), T)
}

// SaturationLiquid is the saturation pressure over water at t, however cold.
func SaturationLiquid(w *calc.Working, t calc.Num) calc.Num {
	T := absolute(w, t)
	return w.Step("Saturation pressure over water", "p_ws = "+overWater, unit.Pascal, saturation, SaturationPressureLiquid(t.V), T)
}

// VapourPressure is the pressure of the water vapour in air of temperature t and humidity rh.
func VapourPressure(w *calc.Working, t, rh calc.Num) calc.Num {
	return vapour(w, Saturation(w, t), rh)
}

func vapour(w *calc.Working, saturated, rh calc.Num) calc.Num {
	return w.Step("Vapour pressure", "p_w = RH/100*p_ws", unit.Pascal, humidity, rh.V/100*saturated.V, rh, saturated)
}

// DewPointOf is the dew point of air of temperature t and humidity rh, the frost point below 0 °C.
func DewPointOf(w *calc.Working, t, rh calc.Num) calc.Num {
	return dewPointAtVapour(w, VapourPressure(w, t, rh))
}

func dewPointAtVapour(w *calc.Working, pw calc.Num) calc.Num {
	t, equation := SaturationTemperature(pw.V), "p_w = "+strings.ReplaceAll(overWater, "T", "T_d")
	if frosts(pw.V) {
		equation = "p_w = " + strings.ReplaceAll(overIce, "T", "T_d")
	}
	T := w.Solve("Dew point, absolute", "T_d", equation, unit.Kelvin, dewPointAt, t+kelvin, pw)
	return w.Step("Dew point", "t_d = T_d - 273.15", unit.DegC, source.Definition, T.V-kelvin, T)
}

// MoistureOf is the moisture content of air with vapour of pressure pw at pressure p.
func MoistureOf(w *calc.Working, pw, p calc.Num) calc.Num {
	return w.Step("Moisture content", "W = 0.621945*p_w/(p - p_w)", unit.KilogramPerKilogram, moisture,
		MoistureContent(pw.V, p.V), pw, p)
}

// wetBulb is the wet bulb of air of temperature t and moisture content W at pressure p, the ice bulb where it freezes.
func wetBulb(w *calc.Working, t, W, p calc.Num) calc.Num {
	if freezes(t.V, W.V, p.V) {
		bulb := rise(func(b float64) float64 { return overFrozenBulb(t.V, b, p.V) }, W.V, -100, min(t.V, 0))
		return bulbStep(w, "Wet bulb, over ice", iceBulbBalance, overIce, bulb, t, W, p)
	}
	return wetBulbLiquidStep(w, t, W, p)
}

// WetBulbLiquidOf is the wet bulb over water, however cold: what a wet film or a drop of water comes to. pw is the
// pressure of the vapour in air of temperature t and pressure p.
func WetBulbLiquidOf(w *calc.Working, t, pw, p calc.Num) calc.Num {
	return wetBulbLiquidStep(w, t, MoistureOf(w, pw, p), p)
}

func wetBulbLiquidStep(w *calc.Working, t, W, p calc.Num) calc.Num {
	return bulbStep(w, "Wet bulb", wetBulbBalance, overWater, wetBulbLiquid(t.V, W.V, p.V), t, W, p)
}

func bulbStep(w *calc.Working, label calc.Phrase, balance, saturated string, bulb float64, t, W, p calc.Num) calc.Num {
	equation := strings.ReplaceAll(balance, "SAT", strings.ReplaceAll(saturated, "T", "(t_w + 273.15)"))
	return w.Solve(label, "t_w", equation, unit.DegC, wetBulbAt, bulb, W, p, t)
}

func absolute(w *calc.Working, t calc.Num) calc.Num {
	label := t.Label
	if label == "" {
		label = "Temperature"
	}
	return w.Step(w.Named("{temperature}, absolute", calc.Term(label, "temperature")), "T = t + 273.15", unit.Kelvin, source.Definition, t.V+kelvin, t)
}
