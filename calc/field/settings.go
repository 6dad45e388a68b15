package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// How the air was read, and how far pressure follows it.
var (
	AirReading = calc.Input{
		Key: "air_reading", Label: "Damp is read off", Help: "A hygrometer, or a thermometer with a wet wick in moving air", Prefill: true,
		Choices: []calc.Choice{{Key: "humidity", Label: "A hygrometer"}, {Key: "wet-bulb", Label: "A wet bulb"}},
	}
	WetBulb = calc.Input{
		Key: "wet_bulb", Label: "Wet bulb reads", Symbol: "t_w", Unit: unit.DegC,
		Help:   "Wick wet with clean water, swung or fanned until it stands still",
		Limits: between(0, 60), Example: 16,
	}
	PressureExponent = calc.Input{
		Key: "pressure_exponent", Label: "How far your pressure follows the air", Symbol: "m", Unit: unit.One, Optional: true,
		Help:   "Blank for 0.15 with HVLP and 0.12 with reduced pressure; 0 keeps the pressure still",
		Limits: between(0, 0.5), Example: 0.15,
	}
	PressureWorked = calc.Input{
		Key: "pressure_worked", Label: "Pressure that worked", Symbol: "P", Unit: unit.PSI,
		Help:   "At the gun's inlet with the trigger pulled, same gun and paint",
		Limits: between(5, 90), Example: 27,
	}
)
