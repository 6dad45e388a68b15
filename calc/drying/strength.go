package drying

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/unit"
)

// Strength is how hard the air dries water, in µm²/s: the rate at which the squared diameter of a resting drop
// shrinks. Times a transfer coefficient it is the flux from a wet film too, so that one number serves both.
// Air from 0 to 60 °C, humidity in percent, pressure in Pa.
func Strength(w *calc.Working, air, humidity, pressure calc.Num) calc.Num {
	pw := climate.VapourPressure(w, air, humidity)
	bulb := climate.WetBulbLiquidOf(w, air, pw, pressure)
	wet := climate.SaturationLiquid(w, bulb)
	D := w.Step("Diffusivity of water vapour", "D = 22600000*pow(((t + t_w)/2 + 273.15)/273.15, 1.81)*101325/p", unit.SquareMicronPerSec, diffusion,
		vapourDiffusivity((air.V+bulb.V)/2, pressure.V), air, bulb, pressure)
	return w.Step("Drying strength of the air", "E = 8*D*(p_sw/(461.52*(t_w + 273.15)) - p_w/(461.52*(t + 273.15)))/998", unit.SquareMicronPerSec, dropLaw,
		8*D.V*(wet.V/(461.52*(bulb.V+kelvin))-pw.V/(461.52*(air.V+kelvin)))/998,
		D, wet, bulb, pw, air)
}

// vapourDiffusivity of water in air of t °C and p Pa, in µm²/s. Good to some 5 % from -40 to 40 °C.
func vapourDiffusivity(t, p float64) float64 {
	return 22600000 * math.Pow((t+kelvin)/273.15, 1.81) * standardAir / p
}
