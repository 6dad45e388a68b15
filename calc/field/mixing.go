package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What is asked at the mixing bench.
var (
	Amount = calc.Input{
		Key: "amount", Label: "Amount wanted", Symbol: "V", Unit: unit.Millilitre,
		Help:   "Ready to spray, all parts together",
		Limits: between(5, 200000), Example: 600,
	}
	PourBy = calc.Input{
		Key: "pour_by", Label: "Poured", Prefill: true,
		Help:    "A scale needs each part's density; a marked cup does not",
		Choices: []calc.Choice{{Key: "scale", Label: "On a scale"}, {Key: "cup", Label: "In a marked cup"}},
	}
	RatioTolerance = calc.Input{
		Key: "ratio_tolerance", Label: "Ratio must hold within", Symbol: "tol", Unit: unit.Percent, Prefill: true,
		Help:   "As the data sheet states it; 5 % is a common figure for two-pack paint where it says nothing",
		Limits: between(0.1, 20), Example: 5,
	}

	DensityE = density("density_e", "Density of the fifth part", "Only where the ratio has five", 0.95)
	DensityF = density("density_f", "Density of the sixth part", "Only where the ratio has six", 0.95)

	PartTarget = calc.Input{
		Key: "target", Label: "Should weigh", Symbol: "m", Unit: unit.Gram,
		Help:   "This part alone, from the first mix",
		Limits: between(0.1, 100000), Example: 400,
	}
	PartPoured = calc.Input{
		Key: "poured", Label: "Poured so far", Symbol: "p", Unit: unit.Gram,
		Help:   "What is in the cup of this part; 0 if none yet",
		Limits: between(0, 100000), Example: 420,
	}

	PartSolids = calc.Input{
		Key: "part_solids", Label: "Volume solids", Symbol: "VS", Unit: unit.Percent,
		Help:   "Of this part as it comes in its can; 0 for thinner",
		Limits: between(0, 100), Example: 50,
	}
	PartSolidsWeight = calc.Input{
		Key: "part_solids_weight", Label: "Solids by weight", Symbol: "W_s", Unit: unit.Percent, Optional: true,
		Help:   "Of this part as it comes in its can; 0 for thinner",
		Limits: between(0, 100), Example: 65,
	}
	PartDensity = density("part_density", "Density", "Of this part as it comes in its can", 1.2).Maybe()

	WeakStrength = calc.Input{
		Key: "weak", Label: "Strength of the weaker one", Symbol: "a", Unit: unit.Percent,
		Help:   "0 for water or plain thinner",
		Limits: between(0, 100), Example: 0,
	}
	StrongStrength = calc.Input{
		Key: "strong", Label: "Strength of the stronger one", Symbol: "b", Unit: unit.Percent,
		Help:   "By volume, as its label says",
		Limits: between(0, 100), Example: 100,
	}
	WantedStrength = calc.Input{
		Key: "wanted", Label: "Strength wanted", Symbol: "w", Unit: unit.Percent,
		Help:   "Between the two",
		Limits: between(0, 100), Example: 70,
	}
)
