package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A cup that is not filled from empty by a plan.
var (
	WhichPart = calc.Input{
		Key: "which_part", Label: "Part of the ratio you have", Unit: unit.One, Whole: true,
		Help:   "1 for the first number of the ratio, 2 for the second, and so on",
		Limits: between(1, 6), Example: 1,
	}
	HaveVolume = calc.Input{
		Key: "have_volume", Label: "How much of it", Symbol: "V", Unit: unit.Millilitre,
		Help:   "All you want to use up",
		Limits: between(1, 200000), Example: 350,
		When: &calc.When{Key: "ratio_by", In: []string{"volume"}},
	}
	HaveMass = calc.Input{
		Key: "have_mass", Label: "Weight of it", Symbol: "m", Unit: unit.Gram,
		Help:   "All you want to use up",
		Limits: between(1, 200000), Example: 450,
		When: &calc.When{Key: "ratio_by", In: []string{"weight"}},
	}

	CupLeft = calc.Input{
		Key: "cup_left", Label: "Still in the cup", Symbol: "V_0", Unit: unit.Millilitre,
		Help:   "Of the same mix; tare the scale with it in",
		Limits: between(0, 200000), Example: 150,
	}
	MixedAgo = calc.Input{
		Key: "mixed_ago", Label: "Mixed this long ago", Symbol: "t_0", Unit: unit.Minute,
		Help:   "The oldest paint in the cup, since hardener and paint met",
		Limits: between(0, 2880), Example: 20,
		When: &calc.When{Key: "pack", In: []string{"two"}},
	}

	CupBottom = cupPart("cup_bottom", "Cup inside, at the bottom", "D_1", "Inside diameter", 80)
	CupTop    = cupPart("cup_top", "Cup inside, at the top", "D_2", "Inside diameter; the same as below for a straight cup", 100)
	CupHeight = cupPart("cup_height", "Cup inside, height", "H", "From the bottom straight up to where the top was measured", 120)
)

func cupPart(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Millimetre, Limits: between(10, 600), Example: example}
}
