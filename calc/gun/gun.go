// Package gun works out what the gun lays: film per pass and the speed for a film, how strokes add up, and where
// to start the air pressure in today's air.
package gun

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "film-per-pass", Make: FilmFromGun},
	{ID: "gun-delivery", Make: DeliveryTest},
	{ID: "tip-change", Make: TipChange},
	{ID: "start-pressure", Make: PressureToday},
	{ID: "overlap", Make: StrokeOverlap},
	{ID: "gun-distance", Make: DistanceAndArc},
}

var (
	// One desert setting, nobody's measurement: it fits the exponents and cannot also prove them.
	desert  = source.CommonPractice.At("22 to 23 psi at 40.6 °C and 4 %; the exponent is fitted to this one setting, not validated")
	desertR = source.CommonPractice.At("23 to 24 psi at 40.6 °C and 4 %; the exponent is fitted to this one setting, not validated")
	capLow  = source.IsentropicFlow.At("two openings in series, 10 psi at the cap for 29 psi at the inlet: 6 psi at the cap for 20").By(source.Derived)
	lowered = source.CommonPractice.At("painters lower the pressure in air that dries fast; the power between the two is ours")
)
