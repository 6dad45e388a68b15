// Package supply follows compressed air from the compressor to the gun: what a flow means, what the hose loses, and
// whether compressor and receiver keep up.
package supply

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "hose-drop", Make: HoseDrop},
	{ID: "compressor", Make: Compressor},
	{ID: "air-flow", Make: FlowStates},
}

// psi is one psi in Pa, exact to the last digit that a float64 holds (NIST SP 811).
const psi = 6894.757293168361

// gas is the gas constant of dry air in J/(kg K).
const gas = 287.05

var (
	scfm     = source.PTC9.At("normal air: 14.696 psia, 68 °F; its 36 % humidity is left out").By(source.SecondHand)
	anr      = source.ISO8778.At("20 °C, 100 kPa; its 65 % humidity is left out").By(source.Memory)
	normal   = source.DIN1343.At("0 °C, 101.325 kPa").By(source.SecondHand)
	sixty    = source.CommonPractice.At("gas suppliers, 60 °F and 14.696 psia")
	pipe     = source.IsothermalPipe.By(source.Memory)
	friction = source.Haaland1983.At("within 2 % of Colebrook’s equation; 64/Re where the flow is slow").By(source.Memory)
	steel    = source.Moody1944.At("commercial steel").By(source.Memory)
	smooth   = source.CommonPractice.At("assumed for rubber and plastic; nobody publishes it")
	warm     = source.CommonPractice.At("the line takes the air of the shop, about 20 °C")
	viscous  = source.CommonPractice.At("air at 20 °C, in any handbook").By(source.Memory)
	tenth    = source.AirSourcebook.At("a good system loses well under 10 % of its pressure").By(source.Memory)
	reserve  = source.CommonPractice.At("half as much again as the guns take")
)
