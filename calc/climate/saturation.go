package climate

import "math"

// triple is where ice, water and vapour meet, in °C (ITS-90). The equations change over here, not at 0 °C.
const triple = 0.01

// kelvin is 0 °C in K.
const kelvin = 273.15

// SaturationPressure is the pressure in Pa of water vapour that is saturated at t °C: over ice below the triple
// point, over water above it. Valid from -100 to 200 °C, stated to be within 0.03 %. Hyland and Wexler 1983.
func SaturationPressure(t float64) float64 {
	if t < triple {
		return SaturationPressureIce(t)
	}
	return SaturationPressureLiquid(t)
}

// SaturationPressureLiquid is [SaturationPressure] over water. It is made for 0 to 200 °C and holds within 0.1 %
// for undercooled water down to -20 °C, where wet films and drops may get.
func SaturationPressureLiquid(t float64) float64 {
	T := t + kelvin
	return math.Exp(-5800.2206/T + 1.3914993 + T*(-0.048640239+T*(0.000041764768-T*0.000000014452093)) + 6.5459673*math.Log(T))
}

// SaturationPressureIce is [SaturationPressure] over ice, from -100 °C to the triple point.
func SaturationPressureIce(t float64) float64 {
	T := t + kelvin
	return math.Exp(-5674.5359/T + 6.3925247 + T*(-0.009677843+T*(0.00000062215701+T*(0.0000000020747825-T*0.00000000000094840240))) + 4.1635019*math.Log(T))
}

// The same, as the working shows it.
const (
	overWater = "exp(-5800.2206/T + 1.3914993 - 0.048640239*T + 0.000041764768*T*T - 0.000000014452093*T*T*T + 6.5459673*ln(T))"
	overIce   = "exp(-5674.5359/T + 6.3925247 - 0.009677843*T + 0.00000062215701*T*T + 0.0000000020747825*T*T*T - 0.0000000000009484024*T*T*T*T + 4.1635019*ln(T))"
)

// PartialPressure is the pressure in Pa of the water vapour in air of t °C and rh %.
func PartialPressure(t, rh float64) float64 { return rh / 100 * SaturationPressure(t) }

// frosts reports whether vapour of pw Pa settles as ice.
func frosts(pw float64) bool { return pw < SaturationPressureIce(triple) }

// SaturationTemperature is the temperature in °C at which vapour of pw Pa saturates: the dew point, or below the
// triple point the frost point. Valid from 0.002 Pa (-100 °C) to 470 kPa (150 °C).
func SaturationTemperature(pw float64) float64 {
	if frosts(pw) {
		return rise(SaturationPressureIce, pw, -100, 1)
	}
	return rise(SaturationPressureLiquid, pw, -1, 150)
}

// DewPoint is the dew point, below 0 °C the frost point, in °C, of air of t °C and rh %. It is never above t.
func DewPoint(t, rh float64) float64 { return min(t, SaturationTemperature(PartialPressure(t, rh))) }

// rise finds where f, which rises from lo to hi, reaches y, by Ridders' method: it takes an exponential out of f before it
// draws its straight line, so that a few steps do where halving takes fifty.
func rise(f func(float64) float64, y, lo, hi float64) float64 {
	below, above := f(lo)-y, f(hi)-y
	if below >= 0 {
		return lo
	}
	if above <= 0 {
		return hi
	}
	last := math.Inf(1)
	for range 60 {
		mid := lo + (hi-lo)/2
		there := f(mid) - y
		next := mid - (mid-lo)*there/math.Sqrt(there*there-below*above)
		if math.Abs(next-last) < 1e-12 || mid <= lo || mid >= hi {
			return next
		}
		last = next
		for _, x := range [2]struct{ at, off float64 }{{mid, there}, {next, f(next) - y}} {
			switch {
			case x.off == 0:
				return x.at
			case x.off < 0 && x.at > lo:
				lo, below = x.at, x.off
			case x.off > 0 && x.at < hi:
				hi, above = x.at, x.off
			}
		}
	}
	return last
}
