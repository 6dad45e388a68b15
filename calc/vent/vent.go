// Package vent works out what goes on in a booth's air: flow and face velocity, air to keep vapour from burning, how
// long it takes to clear, what the filters hold, and what a spill makes of a room.
//
// Every answer rests on even mixing, which no room has, and says that it is an estimate. None is about isocyanate:
// no sum shows that it is gone or thin enough to breathe.
package vent

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "booth-flow", Make: BoothFlow},
	{ID: "dilution-air", Make: DilutionAir},
	{ID: "purge-time", Make: PurgeTime},
	{ID: "filter-loading", Make: FilterLoading},
	{ID: "room-vapour", Make: RoomVapour},
}

var (
	tableG10 = source.CFR1910_94.At("(c)(6)(i), Table G-10, read in Washington’s copy, WAC 296-62-11019").By(source.SecondHand)
	quarter  = source.CFR1910_94.At("(c)(6)(ii)").By(source.SecondHand)
	tenth    = source.WAC296.At("(2)").By(source.Seen)
	clearing = source.CDC1994.At("Table S3-1").By(source.SecondHand)
)

// notBreathing is for answers about fire.
const notBreathing = "This is about fire. It does not show that the air is fit to breathe, least of all with isocyanate in it: that takes air-fed protection, whatever the flow."

// vapourOf is the vapour in m³ from a litre of the solvent that the form describes, in its air and at sea level.
func vapourOf(w *calc.Working) calc.Num {
	rho, M, t := w.Given(field.LiquidDensity), w.Given(field.MolarMass), w.Given(field.Air)
	return w.Step("Vapour from a litre of solvent", "V_v = rho * 8.314462618 * (t + 273.15) / (M * 101.325)", unit.CubicMetrePerLitre, source.IdealGas,
		rho.V*8.314462618*(t.V+273.15)/(M.V*101.325), rho, t, M)
}
