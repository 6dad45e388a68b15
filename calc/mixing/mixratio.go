package mixing

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// MixRatio turns a ratio by volume into one by weight, and back.
func MixRatio() *calc.Calculator {
	return &calc.Calculator{
		ID:         "mix-ratio",
		Title:      "Ratio by volume or by weight",
		Question:   "What is this ratio by weight, or by volume?",
		Range:      "Two to six parts whose densities are known. The first part keeps its number.",
		Inputs:     append([]calc.Input{mixRatio, field.RatioBy}, densities(func(in calc.Input) calc.Input { return in })...),
		Outputs:    []calc.Output{ratioParts, ratioDensity},
		Work:       mixRatioWork,
		Cautions:   []calc.Phrase{caution.HardenerRatio},
		Arithmetic: true,
	}
}

var (
	ratioParts = calc.Output{Key: "component", Label: "The ratio both ways", Columns: []calc.Output{
		{Key: "part", Label: "Part", Words: true},
		{Key: "by_volume", Label: "By volume", Unit: unit.PartsByVolume, Decimals: 2},
		{Key: "by_weight", Label: "By weight", Unit: unit.PartsByMass, Decimals: 2},
		{Key: "share_volume", Label: "Of the volume", Unit: unit.Percent, Decimals: 1},
		{Key: "share_weight", Label: "Of the weight", Unit: unit.Percent, Decimals: 1},
	}}
	ratioDensity = calc.Output{Key: "mix_density", Label: "Density of the mix", Unit: unit.KilogramPerLitre, Decimals: 3, Main: true}
)

func mixRatioWork(w *calc.Working) {
	parts, ok := several(w)
	if !ok {
		return
	}
	rho, ok := densitiesOf(w, len(parts))
	if !ok {
		return
	}
	byWeight := w.Picked(field.RatioBy) == "weight"
	volumes, weights := make([]calc.Num, len(parts)), make([]calc.Num, len(parts))
	if byWeight {
		for i := range parts {
			weights[i] = part(w, parts, i, unit.PartsByMass)
		}
		volumes = VolumeRatio(w, parts, rho)
	} else {
		for i := range parts {
			volumes[i] = part(w, parts, i, unit.PartsByVolume)
		}
		weights = WeightRatio(w, parts, rho)
	}
	ofVolume, ofWeight := shares(w, "by volume", volumes), shares(w, "by weight", weights)
	for i := range parts {
		w.List(ratioParts, name(i), calc.Of(volumes[i]), calc.Of(weights[i]), calc.Of(ofVolume[i]), calc.Of(ofWeight[i]))
	}
	w.Result(ratioDensity, MixDensity(w, parts, byWeight, rho))
}
