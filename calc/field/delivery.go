package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A timed cup, another tip, and how the gun is held.
var (
	CaughtBy = calc.Input{
		Key: "caught_by", Label: "What you caught is", Help: "A scale is surer than the marks of a cup",
		Choices: []calc.Choice{{Key: "weighed", Label: "Weighed"}, {Key: "measured", Label: "Measured in a marked cup"}},
	}
	CaughtMass = calc.Input{
		Key: "caught_mass", Label: "It weighs", Symbol: "m", Unit: unit.Gram,
		Help:   "Without the cup",
		Limits: between(1, 50000), Example: 92,
		When: &calc.When{Key: "caught_by", In: []string{"weighed"}},
	}
	CaughtVolume = calc.Input{
		Key: "caught_volume", Label: "It fills", Symbol: "V", Unit: unit.Millilitre,
		Help:   "Read level with the eye once the froth is gone",
		Limits: between(1, 50000), Example: 90,
		When: &calc.When{Key: "caught_by", In: []string{"measured"}},
	}
	CaughtFor = calc.Input{
		Key: "caught_for", Label: "Trigger pulled for", Symbol: "t", Unit: unit.Second,
		Help:   "As you spray: same air, same needle, same level in the cup",
		Limits: between(3, 1200), Example: 30,
	}

	TipNow          = tip("tip_now", "Tip now", "d_1", 1.3)
	TipNew          = tip("tip_new", "Tip to fit", "d_2", 1.4)
	PaintPressure   = paintPressure("paint_pressure", "Paint pressure now", "P_1", "In the pot or at the pump, not the air at the cap; blank for a gravity cup", 0.7)
	PaintPressureTo = paintPressure("paint_pressure_to", "Paint pressure to set", "P_2", "Blank where it stays as it is", 1)

	DistanceHeld = calc.Input{
		Key: "distance_held", Label: "Distance you hold", Symbol: "L_2", Unit: unit.Millimetre,
		Help:   "From cap to panel, in the middle of the stroke",
		Limits: between(50, 500), Example: 220,
	}
	GunTurned = calc.Input{
		Key: "gun_turned", Label: "Gun turned at the end of the stroke", Symbol: "theta", Unit: unit.Degree,
		Help:   "From square to the panel; 0 where you keep it square throughout",
		Limits: between(0, 60), Example: 25,
	}
)

func tip(key string, label calc.Phrase, symbol string, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: "Diameter of the opening, as stamped on it", Unit: unit.Millimetre, Limits: between(0.2, 4), Example: example}
}

func paintPressure(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Bar, Limits: between(0.05, 300), Example: example, Optional: true}
}
