package climate

import "math"

// AtmosphericPressure is the standard atmosphere's pressure in Pa at z metres above the sea, from -5000 to 11000 m.
// Weather moves the real one by some 3 %. ASHRAE Fundamentals, chapter 1, equation 3.
func AtmosphericPressure(z float64) float64 { return 101325 * math.Pow(1-0.0000225577*z, 5.2559) }

// MoistureContent is the mass of water in kg with each kg of dry air, for vapour of pw Pa in air of p Pa, pw < p.
func MoistureContent(pw, p float64) float64 { return 0.621945 * pw / (p - pw) }

// MoistVolume is the volume in m³ of the air of t °C and p Pa that holds 1 kg of dry air and w kg of water.
// ASHRAE Fundamentals, chapter 1, equation 26.
func MoistVolume(t, w, p float64) float64 { return 287.042 * (t + kelvin) * (1 + 1.607858*w) / p }

// AbsoluteHumidity is the mass of water in g in each m³ of air of t °C, moisture content w kg/kg and p Pa.
func AbsoluteHumidity(t, w, p float64) float64 { return 1000 * w / MoistVolume(t, w, p) }

// VapourPressureDeficit is how far in Pa the vapour of pw Pa is from saturating air of t °C.
func VapourPressureDeficit(t, pw float64) float64 { return SaturationPressure(t) - pw }

// AirDensity is the mass in kg of a m³ of air of t °C, moisture content w kg/kg and p Pa.
func AirDensity(t, w, p float64) float64 { return (1 + w) / MoistVolume(t, w, p) }

// WetBulb is the thermodynamic wet bulb in °C of air of t °C, rh % and p Pa; the ice bulb where the wick freezes. Just
// around 0 °C water and ice can both satisfy their equations. A wick that comes to rest above 0 °C never freezes, so
// water is taken then. It is made for -10 to 60 °C. ASHRAE Fundamentals, chapter 1, equations 33 and 35.
func WetBulb(t, rh, p float64) float64 {
	w := MoistureContent(PartialPressure(t, rh), p)
	if freezes(t, w, p) {
		return rise(func(bulb float64) float64 { return overFrozenBulb(t, bulb, p) }, w, -100, min(t, 0))
	}
	return wetBulbLiquid(t, w, p)
}

// WetBulbLiquid is the wet bulb in °C over water, however cold: what a wet film or a drop of water comes to.
func WetBulbLiquid(t, rh, p float64) float64 {
	return wetBulbLiquid(t, MoistureContent(PartialPressure(t, rh), p), p)
}

func wetBulbLiquid(t, w, p float64) float64 {
	return rise(func(bulb float64) float64 { return overWetBulb(t, bulb, p) }, w, t-60, t)
}

// freezes reports whether a wet wick in air of t °C and moisture content w would come to rest below 0 °C.
func freezes(t, w, p float64) bool { return t <= 0 || overWetBulb(t, 0, p) > w }

// overWetBulb is the moisture content of air of t °C whose wet bulb over water is bulb °C.
func overWetBulb(t, bulb, p float64) float64 {
	saturated := MoistureContent(SaturationPressureLiquid(bulb), p)
	return ((2501-2.326*bulb)*saturated - 1.006*(t-bulb)) / (2501 + 1.86*t - 4.186*bulb)
}

// overFrozenBulb is the moisture content of air of t °C whose ice bulb is bulb °C.
func overFrozenBulb(t, bulb, p float64) float64 {
	saturated := MoistureContent(SaturationPressureIce(bulb), p)
	return ((2830-0.24*bulb)*saturated - 1.006*(t-bulb)) / (2830 + 1.86*t - 2.1*bulb)
}

// The same, as the working shows it: 0.621945/(p/p_s - 1) is the moisture content of saturated air.
const (
	wetBulbBalance = "W = ((2501 - 2.326*t_w)*0.621945/(p/SAT - 1) - 1.006*(t - t_w))/(2501 + 1.86*t - 4.186*t_w)"
	iceBulbBalance = "W = ((2830 - 0.24*t_w)*0.621945/(p/SAT - 1) - 1.006*(t - t_w))/(2830 + 1.86*t - 2.1*t_w)"
)
