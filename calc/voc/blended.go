package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/unit"
)

// Blended tells the VOC content of a mix of several parts.
func Blended() *calc.Calculator {
	return &calc.Calculator{
		ID:         "voc-blend",
		Title:      "VOC of a mix",
		Question:   "How much VOC does the mix hold once its parts are together?",
		Range:      "Up to six parts whose VOC is known. Volumes are taken to add up, and no part is taken to react with another's solvent.",
		Inputs:     []calc.Input{blendParts},
		Outputs:    []calc.Output{vocMixed, vocActual, vocHeld},
		Work:       blended,
		Cautions:   []calc.Phrase{caution.LocalRule, caution.Flammable, caution.Isocyanate},
		Arithmetic: true,
	}
}

var (
	blendParts = calc.Input{
		Key: "component", Label: "Parts of the mix", Help: "Paint, hardener, thinner", RowName: "part", Most: ratio.Most,
		Rows: []calc.Input{field.ComponentVol, field.ComponentVOC, field.ComponentWater},
	}
	vocMixed = calc.Output{Key: "voc_mixed", Label: "VOC of the mix, less water and exempt solvents", Unit: unit.GramPerLitre, Main: true}
	vocHeld  = calc.Output{Key: "voc_mass", Label: "VOC in the whole mix", Unit: unit.Gram}
)

func blended(w *calc.Working) {
	var volumes, vocs, waters []calc.Num
	all := 0.0
	for _, row := range w.Rows(blendParts) {
		v := row.Given(field.ComponentVol)
		all += v.V
		volumes, vocs, waters = append(volumes, v), append(vocs, row.Given(field.ComponentVOC)), append(waters, row.Given(field.ComponentWater))
	}
	if all == 0 {
		w.Reject(blendParts, calc.Impossible, "have no volume", "Enter how much of each goes in")
		return
	}
	mixed, actual, mass := Blend(w, volumes, vocs, waters)
	w.Result(vocMixed, mixed)
	w.Result(vocActual, actual)
	w.Result(vocHeld, mass)
}
