package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// HeatUp is how long a part takes to reach the bake temperature.
var HeatUp = calc.Input{
	Key: "heat_up", Label: "Heating up takes", Unit: unit.Minute, Prefill: true,
	Help:   "From oven on to metal at temperature; measure it once with a surface thermometer",
	Limits: between(0, 240), Example: 10,
}
