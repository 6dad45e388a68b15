// Package viscosity reads flow cups: seconds to viscosity and to another cup's seconds, what warmth does to them,
// and how much reducer brings paint to the seconds wanted.
//
// Cups and their formulas are made for paint that flows alike fast and slow. Waterborne basecoat does not: its
// seconds can be compared in one cup, but they give no viscosity.
package viscosity

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "cup-seconds", Make: FromCup},
	{ID: "viscosity-temperature", Make: WithTemperature},
	{ID: "reducer", Make: Reducer},
}

var (
	iso2431  = source.ISO2431.At("formulas, for 30 to 100 s").By(source.SecondHand)
	din53211 = source.DIN53211.At("formula, for 25 to 150 s").By(source.SecondHand)
	ford     = source.ASTMD1200.At("formulas, and the seconds they hold for").By(source.SecondHand)
	dip      = source.ASTMD4212.At("formulas, for 20 to 80 s, Zahn 1 from 35 s").By(source.SecondHand)
	andrade  = source.Andrade.At("ln ν is a straight line over 1/T").By(source.SecondHand)
	perDeg   = source.CommonPractice.At("1 to 5 % for each °C, waterborne at the low end: from memory, unverified").By(source.Memory)
	logRule  = source.LogMixing.At("the rule as textbooks quote it").By(source.SecondHand)
	refutas  = source.Maples2000.At("equation for petroleum by weight, taken here by volume").By(source.SecondHand)
	measured = source.CommonPractice.At("between two measured mixes the logarithm of viscosity is taken as straight over the share of reducer")
)
