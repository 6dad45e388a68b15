package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The booth's air, its filters, and solvent vapour.
var (
	BoothCase = calc.Input{
		Key: "booth_case", Label: "Spraying and booth", Help: "Cross-draughts are those of the shop, with the fan off; over 0.5 m/s (100 ft/min) none may be",
		Choices: []calc.Choice{
			{Key: "draught-large", Label: "Air gun, cross-draughts to 0.5 m/s (100 ft/min), large booth"},
			{Key: "draught-small", Label: "Air gun, cross-draughts to 0.5 m/s (100 ft/min), small booth"},
			{Key: "still-large", Label: "Air gun, cross-draughts to 0.25 m/s (50 ft/min), large booth"},
			{Key: "still-small", Label: "Air gun, cross-draughts to 0.25 m/s (50 ft/min), small booth"},
			{Key: "auto-large", Label: "Electrostatic or automatic airless, nobody inside, no cross-draughts, large booth"},
			{Key: "auto-small", Label: "Electrostatic or automatic airless, nobody inside, no cross-draughts, small booth"},
		},
	}
	FaceWidth  = boothSide("face_width", "Width of the booth’s face", "b", "The cross-section the air passes, or the open front", 4)
	FaceHeight = boothSide("face_height", "Height of the booth’s face", "h", "Of the same cross-section", 2.5)
	AirKnown   = calc.Input{
		Key: "air_known", Label: "You know", Help: "A reading beats a name plate",
		Choices: []calc.Choice{{Key: "speed", Label: "The air speed at the face"}, {Key: "flow", Label: "The fan’s air flow"}, {Key: "neither", Label: "Neither: I am planning"}},
	}
	FaceSpeed = calc.Input{
		Key: "face_speed", Label: "Air speed at the face", Symbol: "v", Unit: unit.AirMetrePerSecond,
		Help:   "Average of many readings across the face, with the filters as they are",
		Limits: between(0.02, 3), Example: 0.6,
		When: &calc.When{Key: "air_known", In: []string{"speed"}},
	}
	FanFlow = calc.Input{
		Key: "fan_flow", Label: "Fan’s air flow", Symbol: "Q", Unit: unit.CubicMetrePerHour,
		Help:   "Measured, with the filters as they are; the name plate is for clean ones at best",
		Limits: between(1, 300000), Example: 20000,
	}

	VapourBy = calc.Input{
		Key: "vapour_by", Label: "Vapour of the solvent", Help: "From the safety data sheet, or from a table of vapour volumes",
		Choices: []calc.Choice{{Key: "sheet", Label: "From its density and molar mass"}, {Key: "table", Label: "From a table"}},
	}
	LiquidDensity = density("liquid_density", "Density of the solvent", "Section 9 of the safety data sheet", 0.867)
	MolarMass     = calc.Input{
		Key: "molar_mass", Label: "Molar mass of the solvent", Symbol: "M", Unit: unit.GramPerMole,
		Help:   "Molecular weight, section 3 or 9 of the safety data sheet; of a blend, the lightest one’s",
		Limits: between(30, 400), Example: 92.14,
	}
	VapourYield = calc.Input{
		Key: "vapour_yield", Label: "Vapour from the liquid", Symbol: "V_v", Unit: unit.CubicMetrePerLitre,
		Help:   "Volume of vapour that a volume of liquid makes",
		Limits: between(0.05, 0.8), Example: 0.2275,
		When: &calc.When{Key: "vapour_by", In: []string{"table"}},
	}
	LEL = calc.Input{
		Key: "lel", Label: "Lower explosive limit", Symbol: "LEL", Unit: unit.Percent,
		Help:   "Section 9 of the safety data sheet, % by volume; tables differ, so take the lowest",
		Limits: between(0.3, 20), Example: 1.1,
	}
	LELShare = calc.Input{
		Key: "lel_share", Label: "Stay below this share of it", Symbol: "s", Unit: unit.Percent, Prefill: true,
		Help:   "25 % by many codes, 10 % by some; never more",
		Limits: between(1, 25), Example: 25,
	}
	SolventRate = calc.Input{
		Key: "solvent_rate", Label: "Solvent going into the air", Symbol: "ER", Unit: unit.MillilitrePerMinute,
		Help:   "All guns together: delivery times the share of solvent in the mix",
		Limits: between(0.1, 20000), Example: 100,
	}

	Isocyanate = calc.Input{
		Key: "isocyanate", Label: "Isocyanate sprayed", Help: "Two-pack urethane: the hardener’s safety data sheet names it in section 3",
		Choices: []calc.Choice{{Key: "no", Label: "No"}, {Key: "yes", Label: "Yes"}},
	}
	ChangesBy = calc.Input{
		Key: "changes_by", Label: "Air change", Help: "How often the fan replaces the room’s air",
		Choices: []calc.Choice{{Key: "flow", Label: "From room and fan"}, {Key: "rate", Label: "I know the air changes an hour"}},
	}
	AirChanges = calc.Input{
		Key: "air_changes", Label: "Air changes an hour", Symbol: "n", Unit: unit.One,
		Help:   "Measured, with the filters as they are",
		Limits: between(0.1, 2000), Example: 60,
		When: &calc.When{Key: "changes_by", In: []string{"rate"}},
	}
	RoomVolume = calc.Input{
		Key: "room_volume", Label: "Volume of the room", Symbol: "V_R", Unit: unit.CubicMetre,
		Help:   "Length times width times height, inside",
		Limits: between(1, 20000), Example: 90,
	}
	MixingFactor = calc.Input{
		Key: "mixing_factor", Label: "Mixing factor", Symbol: "K", Unit: unit.One,
		Help:   "1 is perfect mixing, which no room has; up to 10 where corners stay still",
		Limits: between(1, 10), Example: 3,
	}
	LeftShare = calc.Input{
		Key: "left_share", Label: "May be left", Symbol: "left", Unit: unit.Percent,
		Help:   "Share of what hung in the air at the start",
		Limits: between(0.01, 90), Example: 1,
	}

	FilterCapture = calc.Input{
		Key: "filter_capture", Label: "Filters catch", Symbol: "eta", Unit: unit.Percent,
		Help:   "From the filter’s sheet; US rules for some coatings ask for 98 %",
		Limits: between(50, 100), Example: 98,
	}
	FilterHolds = filterMass("filter_holds", "Filters hold", "H", "All of them together, from the filter’s sheet", 8000)
	FilterHas   = filterMass("filter_has", "Held already", "B", "Their weight now less that of new ones; blank if new", 1500).Maybe()

	Spilled = calc.Input{
		Key: "spilled", Label: "Solvent spilled or washed with", Symbol: "V", Unit: unit.Millilitre,
		Help:   "What evaporates; not what you collect and cover",
		Limits: between(1, 200000), Example: 500,
	}
	ExposureLimit = calc.Input{
		Key: "exposure_limit", Label: "Limit for breathing it", Symbol: "E", Unit: unit.PartsPerMillion, Optional: true,
		Help:   "Section 8 of the safety data sheet; may stay blank",
		Limits: between(0.001, 5000), Example: 50,
	}
)

func boothSide(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Metre, Limits: between(0.2, 30), Example: example}
}

func filterMass(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Gram, Limits: between(0, 1e6), Example: example}
}
