package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What the arithmetic of volatile organic compounds asks, besides VOC and the share of water.
var (
	Sprayed = calc.Input{
		Key: "sprayed", Label: "Amount sprayed", Symbol: "V", Unit: unit.Millilitre,
		Help:   "Ready to spray, with what went past the part",
		Limits: between(1, 1e7), Example: 1000,
	}
	Unthinned = calc.Input{
		Key: "unthinned", Label: "Mix before this thinner", Symbol: "V", Unit: unit.Millilitre,
		Help:   "Paint and hardener together",
		Limits: between(1, 1e7), Example: 500,
	}
	Stages = calc.Input{
		Key: "stages", Label: "Stages of the topcoat", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "Base and clear are 2; a mid-coat between makes 3",
		Limits: between(2, 6), Example: 2,
	}
	VOCLimit = calc.Input{
		Key: "voc_limit", Label: "VOC limit", Symbol: "L", Unit: unit.GramPerLitre,
		Help:   "Of your local rule, less water and exempt solvents",
		Limits: between(1, 1500), Example: 420,
	}
	VOCThinner = vocOf("voc_thinner", "VOC of the thinner", "c", "Its density in g/L where all of it counts as VOC", 870)
	VOCBase    = vocOf("voc_base", "VOC of the basecoat", "bc", "Ready to spray, less water and exempt solvents", 720)
	VOCMid     = vocOf("voc_mid", "VOC of the mid-coat", "mc", "Blank where there is none", 650).Maybe()
	VOCMidTwo  = vocOf("voc_mid_two", "VOC of a second mid-coat", "mc", "Blank where there is none", 650).Maybe()
	VOCClear   = vocOf("voc_clear", "VOC of the clearcoat", "cc", "Ready to spray, less water and exempt solvents", 420)

	SolventDensity = calc.Input{
		Key: "solvent_density", Label: "Density of the solvents", Symbol: "D", Unit: unit.KilogramPerLitre, Prefill: true,
		Help:   "US rules take 0.882 kg/L (7.36 lb/gal) where it is not known",
		Limits: between(0.5, 2), Example: 0.8819,
	}
	MixDensity = density("mix_density", "Density of the mix", "Ready to spray, from the data sheet or a weighed cup", 1.02)

	SolidsWeight   = weightShare("solids_weight", "Solids by weight", "W_s", "Of the mix, ready to spray", 21)
	WaterWeight    = weightShare("water_weight", "Water by weight", "W_w", "Of the mix, ready to spray; 0 if none", 53)
	ExemptWeight   = weightShare("exempt_weight", "Exempt solvents by weight", "W_ec", "Solvents your rule does not count; blank if none", 5).Maybe()
	WaterDensity   = density("water_density", "Density of water", "0.998 kg/L at 20 °C; some rules print 0.995 to 1.0", 0.998).Filled(0.998)
	ExemptDensity  = density("exempt_density", "Density of the exempt solvents", "Only where there are any", 0.79).Maybe()
	VolatileMass   = sampleMass("volatile_mass", "Volatiles in the sample", "W_v", "All that evaporates, water included", 600)
	WaterMass      = sampleMass("water_mass", "Water in the sample", "W_w", "0 if none", 0)
	ExemptMass     = sampleMass("exempt_mass", "Exempt solvents in the sample", "W_ec", "Solvents your rule does not count; 0 if none", 0)
	SampleVolume   = sampleVolume("sample_volume", "Volume of the sample", "V", "Ready to spray", 1000)
	WaterVolume    = sampleVolume("water_volume", "Volume of that water", "V_w", "0 if none", 0)
	ExemptVolume   = sampleVolume("exempt_volume", "Volume of those exempt solvents", "V_ec", "0 if none", 0)
	ComponentVol   = sampleVolume("part_volume", "Volume", "V", "Of this part in the mix", 1000)
	ComponentVOC   = vocOf("part_voc", "VOC", "c", "Of this part as it comes in its can, less water and exempt solvents", 420)
	ComponentWater = calc.Input{
		Key: "part_water", Label: "Water and exempt solvents", Symbol: "w", Unit: unit.Percent,
		Help:   "By volume; blank if none",
		Limits: between(0, 95), Example: 0,
		Optional: true,
	}
)

// vocOf asks for the VOC content of one thing. Pure solvents reach 1600 g/L.
func vocOf(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.GramPerLitre, Limits: between(0, 1700), Example: example}
}

func weightShare(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Percent, Limits: between(0, 100), Example: example}
}

func sampleMass(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Gram, Limits: between(0, 1e6), Example: example}
}

func sampleVolume(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Millilitre, Limits: between(0, 1e7), Example: example}
}
