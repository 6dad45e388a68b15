package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A cold part that warms up in the booth, and air that is heated.
var (
	PartMaterial = calc.Input{
		Key: "part_material", Label: "Made of", Help: "What most of the part is, under its paint",
		Choices: []calc.Choice{{Key: "steel", Label: "Steel"}, {Key: "aluminium", Label: "Aluminium"}, {Key: "plastic", Label: "Plastic"}},
	}
	PartThickness = calc.Input{
		Key: "part_thickness", Label: "Thickness", Symbol: "L", Unit: unit.Millimetre,
		Help:   "At its thickest place, of the wall alone where it is hollow",
		Limits: between(0.3, 100), Example: 3,
	}
	AirReaches = calc.Input{
		Key: "air_reaches", Label: "Booth air reaches", Help: "A closed box or a panel on a bench warms from one side",
		Choices: []calc.Choice{{Key: "both", Label: "Both sides"}, {Key: "one", Label: "One side"}},
	}
	AirMoves = calc.Input{
		Key: "air_moves", Label: "Air around the part", Help: "A fan halves the wait",
		Choices: []calc.Choice{{Key: "still", Label: "Still"}, {Key: "booth", Label: "Moving, booth fan on"}, {Key: "known", Label: "Heat transfer is known"}},
	}
	HeatTransfer = calc.Input{
		Key: "heat_transfer", Label: "Heat transfer coefficient", Symbol: "h", Unit: unit.WattPerSquareMetreK,
		Help:   "Convection and radiation together",
		Limits: between(2, 100), Example: 15,
		When: &calc.When{Key: "air_moves", In: []string{"known"}},
	}
	HeatedTo = calc.Input{
		Key: "heated_to", Label: "Heated to", Symbol: "t_2", Unit: unit.DegC,
		Help:   "By a heater that adds no water: not by a flame in the booth",
		Limits: between(-10, 60), Example: 28,
	}
	HumidityWanted = calc.Input{
		Key: "humidity_wanted", Label: "Humidity wanted", Symbol: "RH_3", Unit: unit.Percent,
		Help:   "To be told the temperature that gives it; may stay blank",
		Limits: between(5, 95), Example: 50, Optional: true,
	}
)
