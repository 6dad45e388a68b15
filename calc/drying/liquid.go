package drying

import (
	"math"

	"spraywright/calc/climate"
	"spraywright/calc/source"
)

const (
	kelvin      = 273.15      // 0 °C in K
	gasConstant = 8.314462618 // J/(mol K), CODATA 2018
	standardAir = 101325      // Pa
)

// A liquid is what leaves the film. Temperatures are in K, pressures in Pa.
type liquid struct {
	molar     float64 // kg/mol
	density   float64 // kg/m³ at 20 °C
	antoine   antoine
	from      source.Source
	volume    float64 // Fuller's diffusion volume
	fromWater bool    // water has its own equations
}

// antoine holds A, B and C of log10(p/Pa) = A - B/(T/K + C).
type antoine struct{ A, B, C float64 }

// liquids by the keys of field.Solvent. Each Antoine set is the one that is right at 20 °C: within 7 % of DIPPR
// equation 101 there, even where it is used below the temperatures it was fitted to. (The WebBook's set for
// 2-heptanone is 63 % low at 20 °C; its set for water starts at 106 °C.) All are second-hand, through the data tables
// of the open library "chemicals" (github:CalebBell/chemicals, Vapor Pressure). "Xylene" is m-xylene, the most of the
// commercial mixture. Diffusion volumes are sums of Fuller's 1969 increments, C 15.9, H 2.31, O 6.11, aromatic ring
// -18.3 (memory; they give the library's acetone and butyl acetate). Densities are DIPPR equation 105's, those of
// water and 2-butoxyethanol the CRC Handbook's, through the same library.
var liquids = map[string]liquid{
	Water:           {molar: 0.01801528, density: 998.2, fromWater: true},
	"butyl-acetate": {molar: 0.116160, density: 880.9, antoine: antoine{9.26803, 1440.231, -61.362}, from: webBook, volume: 135.34},
	"ethyl-acetate": {molar: 0.088106, density: 899.5, antoine: antoine{9.13361, 1195.130, -60.680}, from: poling, volume: 94.30},
	"acetone":       {molar: 0.058080, density: 792.3, antoine: antoine{9.21840, 1197.010, -45.090}, from: poling, volume: 67.67},
	"mek":           {molar: 0.072107, density: 804.9, antoine: antoine{9.13860, 1232.630, -54.460}, from: poling, volume: 88.19},
	"mibk":          {molar: 0.100160, density: 800.7, antoine: antoine{8.82220, 1190.690, -77.700}, from: poling, volume: 129.23},
	"heptanone":     {molar: 0.114188, density: 816.1, antoine: antoine{9.16400, 1472.060, -70.170}, from: landolt, volume: 149.75},
	"toluene":       {molar: 0.092140, density: 868.5, antoine: antoine{9.05043, 1327.620, -55.525}, from: poling, volume: 111.48},
	"xylene":        {molar: 0.106167, density: 864.3, antoine: antoine{9.14051, 1468.703, -57.030}, from: poling, volume: 132.00},
	"isopropanol":   {molar: 0.060096, density: 786.7, antoine: antoine{10.24268, 1580.920, -53.540}, from: poling, volume: 72.29},
	"butanol":       {molar: 0.074123, density: 808.2, antoine: antoine{9.64930, 1395.140, -90.411}, from: poling, volume: 92.81},
	"butyl-glycol":  {molar: 0.118176, density: 901.5, antoine: antoine{9.56993, 1691.688, -72.931}, from: landolt, volume: 139.96},
}

// pressure is the vapour pressure over the liquid.
func (l liquid) pressure(T float64) float64 {
	if l.fromWater {
		return climate.SaturationPressureLiquid(T - kelvin)
	}
	return math.Exp(math.Ln10 * (l.antoine.A - l.antoine.B/(T+l.antoine.C)))
}

// latent is the heat in J that a kg takes up as it evaporates: for water a straight line that holds within 0.2 %
// from 0 to 60 °C, for a solvent what Clausius and Clapeyron's equation makes of its vapour pressure.
func (l liquid) latent(T float64) float64 {
	if l.fromWater {
		return 2501000 - 2361*(T-kelvin)
	}
	share := T / (T + l.antoine.C)
	return gasConstant * math.Ln10 * l.antoine.B * share * share / l.molar
}

// diffusivity in m²/s of the vapour in air of p Pa: Marrero and Mason for water, otherwise Fuller.
func (l liquid) diffusivity(T, p float64) float64 {
	if l.fromWater {
		return 1.87e-10 * math.Pow(T, 2.072) * standardAir / p
	}
	const airMolar, airVolume = 28.97, 19.7
	molar := 2 / (1/(1000*l.molar) + 1/airMolar)
	size := math.Cbrt(l.volume) + math.Cbrt(airVolume)
	return 1.43e-7 * math.Pow(T, 1.75) / (p / 1e5 * math.Sqrt(molar) * size * size)
}
