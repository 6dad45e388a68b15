package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// Compressed air, from the compressor to the gun.
var (
	AirDemand = calc.Input{
		Key: "air_demand", Label: "Air the gun takes", Symbol: "Q", Unit: unit.LitrePerMinute,
		Help:   "From its sheet, at the pressure you spray with",
		Limits: between(20, 20000), Example: 350,
	}
	Flow = calc.Input{
		Key: "air_flow", Label: "Air flow", Symbol: "Q", Unit: unit.LitrePerMinute,
		Help:   "As a sheet or a meter states it",
		Limits: between(0.1, 1e6), Example: 400,
	}
	FlowStated = calc.Input{
		Key: "flow_stated", Label: "Flow is stated as", Help: "What stands behind the number: scfm, ANR, Nm³/h; most US sheets mean 68 °F", Prefill: true,
		Choices: []calc.Choice{
			{Key: "standard", Label: "scfm: 20 °C (68 °F), 101.325 kPa"}, {Key: "anr", Label: "ANR: 20 °C, 100 kPa"},
			{Key: "normal", Label: "Normal: 0 °C, 101.325 kPa"}, {Key: "sixty", Label: "60 °F (15.6 °C), 101.325 kPa"},
			{Key: "here", Label: "Air as it is here"},
		},
	}

	PressureKnown = calc.Input{
		Key: "pressure_known", Label: "You know the pressure", Help: "With the trigger pulled",
		Choices: []calc.Choice{{Key: "gun", Label: "Wanted at the gun"}, {Key: "wall", Label: "Set at the regulator"}},
	}
	InletPressure = calc.Input{
		Key: "inlet_pressure", Label: "Wanted at the gun's inlet", Symbol: "P_2", Unit: unit.PSI,
		Help:   "With the trigger pulled",
		Limits: between(5, 300), Example: 29,
		When: &calc.When{Key: "pressure_known", In: []string{"gun"}},
	}
	WallPressure = calc.Input{
		Key: "wall_pressure", Label: "Set at the regulator", Symbol: "P_1", Unit: unit.PSI,
		Help:   "Read with the trigger pulled",
		Limits: between(5, 300), Example: 40,
		When: &calc.When{Key: "pressure_known", In: []string{"wall"}},
	}
	LineKind = calc.Input{
		Key: "line_kind", Label: "Line", Help: "What the air runs through", Prefill: true,
		Choices: []calc.Choice{{Key: "hose", Label: "Hose, smooth inside"}, {Key: "steel", Label: "Steel pipe"}},
	}
	Bore = calc.Input{
		Key: "bore", Label: "Bore", Symbol: "D", Unit: unit.Millimetre, Offered: []unit.Unit{unit.Millimetre, unit.Inch},
		Help:   "Inside diameter; it is printed on most hoses",
		Limits: between(4, 50), Example: 8,
	}
	LineLength = calc.Input{
		Key: "line_length", Label: "Length", Symbol: "L", Unit: unit.Metre, Offered: []unit.Unit{unit.Metre, unit.Foot},
		Help:   "From the regulator to the gun",
		Limits: between(1, 500), Example: 10,
	}

	FreeAir = calc.Input{
		Key: "free_air", Label: "Free air delivery", Symbol: "F", Unit: unit.LitrePerMinute,
		Help:   "What the compressor delivers at the pressure you need, not what its piston sweeps",
		Limits: between(10, 50000), Example: 400,
	}
	Receiver = calc.Input{
		Key: "receiver", Label: "Receiver", Symbol: "V", Unit: unit.Litre, Offered: []unit.Unit{unit.Litre, unit.Gallon},
		Help:   "Volume of the air tank, on its plate",
		Limits: between(1, 20000), Example: 200,
	}
	CutOut = calc.Input{
		Key: "cut_out", Label: "Compressor stops at", Symbol: "P_1", Unit: unit.PSI,
		Help:   "The receiver's highest pressure",
		Limits: between(10, 300), Example: 145,
	}
	LowestReceiver = calc.Input{
		Key: "lowest_receiver", Label: "Lowest pressure you can use", Symbol: "P_2", Unit: unit.PSI,
		Help:   "Enough for regulator, hose and gun",
		Limits: between(5, 300), Example: 75,
	}
	LinePressure = calc.Input{
		Key: "line_pressure", Label: "Pressure in the line", Symbol: "P", Unit: unit.PSI,
		Help:   "Where the air is coldest",
		Limits: between(5, 300), Example: 101.5,
	}
	ClassWanted = calc.Input{
		Key: "class_wanted", Label: "Humidity class wanted", Unit: unit.One, Whole: true, Optional: true,
		Help:   "Of ISO 8573-1, 1 to 6, as the gun’s or the paint’s sheet asks for it",
		Limits: between(1, 6), Example: 4,
	}
	ColdestPoint = calc.Input{
		Key: "coldest_point", Label: "Coldest point of the line", Symbol: "t_c", Unit: unit.DegC,
		Help:   "With a dryer, its pressure dew point",
		Limits: between(-70, 60), Example: 20,
	}
)
