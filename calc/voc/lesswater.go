package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// LessWater tells the VOC content from percents by weight, as a safety data sheet gives them.
func LessWater() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-less-water",
		Title:    "VOC less water, from weights",
		Question: "What is the VOC less water, when I know solids and water by weight?",
		Range:    "One mix, ready to spray. All that is not solids, water or exempt solvent is taken as VOC.",
		Inputs: []calc.Input{
			field.SolidsWeight, field.WaterWeight, field.ExemptWeight, field.MixDensity, field.WaterDensity, field.ExemptDensity,
		},
		Outputs:  []calc.Output{vocRegulatory, vocActual},
		Work:     lessWater,
		Cautions: []calc.Phrase{caution.LocalRule},
	}
}

var vocRegulatory = calc.Output{Key: "voc_regulatory", Label: "VOC, less water and exempt solvents", Unit: unit.GramPerLitre, Main: true}

func lessWater(w *calc.Working) {
	b := ByWeight{
		Solids: w.Given(field.SolidsWeight), Water: w.Given(field.WaterWeight), Exempt: w.Given(field.ExemptWeight),
		Density: w.Given(field.MixDensity), WaterDensity: w.Given(field.WaterDensity), ExemptDensity: w.Given(field.ExemptDensity),
	}
	if b.Exempt.Given() && !b.ExemptDensity.Given() {
		w.Reject(field.ExemptDensity, calc.Missing, "is blank", "Enter it, or leave exempt solvents blank")
		return
	}
	if sum := b.Solids.V + b.Water.V + b.Exempt.V; sum > 100+1e-9 {
		w.Reject(field.SolidsWeight, calc.Impossible, "with water and exempt solvents comes to {sum}", "They cannot be more than 100 % together", calc.N(sum, unit.Percent).As("sum"))
		return
	}
	filled := b.Water.V * b.Density.V / b.WaterDensity.V
	if b.Exempt.Given() {
		filled += b.Exempt.V * b.Density.V / b.ExemptDensity.V
	}
	if filled >= 100 {
		w.Reject(field.MixDensity, calc.Impossible, "is too high: water and exempt solvents would fill the whole volume", "Check the densities and the percentages")
		return
	}
	regulatory, actual := b.Contents(w)
	w.Result(vocRegulatory, regulatory)
	w.Result(vocActual, actual)
}
