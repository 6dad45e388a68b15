// Package drying works out how fast a film or a drop dries in the booth's air, and from that how long a coat takes
// to flash off.
//
// The flash-off model weighs one climate against another: it scales a data sheet's time and never gives one of its
// own. It is physics of a pure liquid on a panel; no measured flash-off times have been found to hold it against.
package drying

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "flash-time", Make: FlashOff},
}

// A Climate is the air a film dries in, the panel under it, and how fast the air goes by.
type Climate struct {
	Air      calc.Num // °C
	Humidity calc.Num // %
	Panel    calc.Num // °C, when the coat goes on
	AirSpeed calc.Num // m/s
	Pressure calc.Num // Pa
}

// Water is the liquid of a waterborne coat; any other liquid is a key of field.Solvent.
const Water = "water"

// Places in the works this package rests on.
var (
	balance     = source.Incropera.At("lumped capacity, example 5.3; flat plate, equation 7.30; heat and mass transfer analogy, equation 6.60; 12 g/m² on 0.8 mm steel is our choice").By(source.SecondHand)
	spread      = source.VesselEvaporation.At("abstract: in turbulent air the rate goes with the 0.86 ± 0.03 power of the speed; the other ranges are our choice").By(source.SecondHand)
	halfAtLeast = source.OurChoice.At("never below half of the stated time")
	poling      = source.Poling.At("Antoine constants, log10 p = A - B/(T + C)").By(source.SecondHand)
	landolt     = source.LandoltBornstein.At("Antoine constants, log10 p = A - B/(T + C)").By(source.SecondHand)
	webBook     = source.NISTWebBook.At("Antoine constants, log10 p = A - B/(T + C)").By(source.SecondHand)
	dropLaw     = source.DropEvaporation.At("a resting drop at its wet bulb: d² falls at a steady rate").By(source.SecondHand)
	diffusion   = source.WaterVapourD.At("diffusivity of water vapour in air").By(source.Memory)
)
