package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// OfSolids tells the VOC content for each litre of solids.
func OfSolids() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-solids",
		Title:    "VOC for each litre of solids",
		Question: "How much VOC comes with each litre of solids?",
		Range:    "Mixes whose volume, less water and exempt solvents, is solids and VOC alone.",
		Inputs:   []calc.Input{field.VOC, field.SolventDensity},
		Outputs:  []calc.Output{vocOfSolids},
		Work: func(w *calc.Working) {
			voc, density := w.Given(field.VOC), w.Given(field.SolventDensity)
			if voc.V >= 1000*density.V {
				w.Reject(field.VOC, calc.Impossible, "must be less than the density of the solvents: there is no room for solids", "Check both numbers")
				return
			}
			w.Result(vocOfSolids, PerSolids(w, voc, density))
		},
		Cautions: []calc.Phrase{caution.LocalRule},
	}
}

var vocOfSolids = calc.Output{Key: "voc_solids", Label: "VOC for each litre of solids", Unit: unit.GramPerLitre, Main: true}
