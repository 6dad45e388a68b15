package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// cups lists the flow cups; which formula each has is in package viscosity.
var cups = []calc.Choice{
	{Key: "din-4", Label: "DIN 53211, 4 mm"},
	{Key: "iso-3", Label: "ISO 2431, 3 mm"}, {Key: "iso-4", Label: "ISO 2431, 4 mm"}, {Key: "iso-5", Label: "ISO 2431, 5 mm"}, {Key: "iso-6", Label: "ISO 2431, 6 mm"},
	{Key: "ford-1", Label: "Ford 1"}, {Key: "ford-2", Label: "Ford 2"}, {Key: "ford-3", Label: "Ford 3"}, {Key: "ford-4", Label: "Ford 4"}, {Key: "ford-5", Label: "Ford 5"},
	{Key: "zahn-1", Label: "Zahn 1"}, {Key: "zahn-2", Label: "Zahn 2"}, {Key: "zahn-3", Label: "Zahn 3"}, {Key: "zahn-4", Label: "Zahn 4"}, {Key: "zahn-5", Label: "Zahn 5"},
	{Key: "shell-1", Label: "Shell 1"}, {Key: "shell-2", Label: "Shell 2"}, {Key: "shell-2-5", Label: "Shell 2½"}, {Key: "shell-3", Label: "Shell 3"},
	{Key: "shell-3-5", Label: "Shell 3½"}, {Key: "shell-4", Label: "Shell 4"}, {Key: "shell-5", Label: "Shell 5"}, {Key: "shell-6", Label: "Shell 6"},
}

// Flow cups, viscosity and thinning.
var (
	FlowCup = calc.Input{
		Key: "flow_cup", Label: "Flow cup", Help: "Stamped on the cup; a 4 mm cup may be one of three kinds",
		Choices: cups,
	}
	SecondCup = calc.Input{
		Key: "second_cup", Label: "Other cup", Optional: true, Choices: cups,
		Help: "The one the data sheet names; blank if it is the same",
	}
	CupSeconds = calc.Input{
		Key: "cup_seconds", Label: "Cup reads", Symbol: "t", Unit: unit.Second, Offered: stopwatch,
		Help:   "From the first drop to the first break in the stream",
		Limits: between(3, 250), Example: 28,
	}
	SecondSeconds = calc.Input{
		Key: "second_seconds", Label: "Second reading", Symbol: "t", Unit: unit.Second, Offered: stopwatch,
		Help:   "The same paint and cup at another temperature; blank for none",
		Limits: between(3, 250), Example: 21, Optional: true,
		When: &calc.When{Key: "measured_as", In: []string{"cup"}},
	}
	TargetSeconds = calc.Input{
		Key: "target_seconds", Label: "Seconds wanted", Symbol: "t", Unit: unit.Second, Offered: stopwatch,
		Help:   "From the data sheet, in the same cup",
		Limits: between(3, 250), Example: 20,
	}
	ThinSeconds = calc.Input{
		Key: "thin_seconds", Label: "Cup reads with some reducer in", Symbol: "t", Unit: unit.Second, Offered: stopwatch,
		Help:   "After stirring; blank if you have not tried yet",
		Limits: between(3, 250), Example: 21, Optional: true,
	}
	ThinParts = calc.Input{
		Key: "thin_parts", Label: "Reducer in it, for 100 parts of paint", Symbol: "P", Unit: unit.PartsByVolume, Optional: true,
		Help:   "By volume; blank with the reading above",
		Limits: between(0.5, 100), Example: 10,
	}
	ReducerViscosity = calc.Input{
		Key: "reducer_viscosity", Label: "Viscosity of the reducer", Symbol: "nu_r", Unit: unit.SquareMMPerSecond, Prefill: true,
		Help:   "0.7 to 1.0 mm²/s for most solvents, 1.0 for water",
		Limits: between(0.4, 5), Example: 0.9,
	}

	MeasuredAs = calc.Input{
		Key: "measured_as", Label: "Measured with", Help: "Both readings the same way", Prefill: true,
		Choices: []calc.Choice{{Key: "cup", Label: "A flow cup"}, {Key: "viscometer", Label: "A viscometer"}},
	}
	Viscosity = calc.Input{
		Key: "viscosity", Label: "Viscosity measured", Symbol: "nu", Unit: unit.SquareMMPerSecond,
		Help:   "Kinematic: the dynamic one divided by the density",
		Limits: between(0.2, 10000), Example: 110,
		When: &calc.When{Key: "measured_as", In: []string{"viscometer"}},
	}
	SecondViscosity = calc.Input{
		Key: "second_viscosity", Label: "Second viscosity", Symbol: "nu", Unit: unit.SquareMMPerSecond,
		Help:   "At another temperature; blank for none",
		Limits: between(0.2, 10000), Example: 75, Optional: true,
		When: &calc.When{Key: "measured_as", In: []string{"viscometer"}},
	}
	MeasuredAt = calc.Input{
		Key: "measured_at", Label: "Paint was at", Symbol: "t", Unit: unit.DegC,
		Help:   "A thermometer in the paint, not in the room",
		Limits: between(0, 100), Example: 20,
	}
	SecondAt = calc.Input{
		Key: "second_at", Label: "Second reading at", Symbol: "t", Unit: unit.DegC,
		Help:   "The other temperature",
		Limits: between(0, 100), Example: 30, Optional: true,
	}
	PaintAt = calc.Input{
		Key: "paint_at", Label: "Paint will be at", Symbol: "t", Unit: unit.DegC,
		Help:   "As it goes into the gun",
		Limits: between(0, 100), Example: 26,
	}
)

// stopwatch is the one unit that a cup's seconds are typed in.
var stopwatch = []unit.Unit{unit.Second}
