package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// MostThinner tells how much thinner a mix takes before it is over a VOC limit.
func MostThinner() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-thinner",
		Title:    "Thinner inside a VOC limit",
		Question: "How much thinner may go in before the mix is over its VOC limit?",
		Range:    "Solvent-borne mixes without water or exempt solvents. The data sheet's own limit on thinner comes first.",
		Inputs: []calc.Input{
			field.Unthinned, labelled(field.VOC, "VOC before this thinner"), field.VOCThinner, field.VOCLimit,
		},
		Outputs:    []calc.Output{mostThinner},
		Work:       mostThinnerWork,
		Cautions:   []calc.Phrase{caution.LocalRule, caution.Flammable, caution.PotLife},
		Arithmetic: true,
	}
}

var mostThinner = calc.Output{Key: "thinner", Label: "Most thinner", Unit: unit.Millilitre, Main: true, Optional: true}

func mostThinnerWork(w *calc.Working) {
	volume, voc, thinner, limit := w.Given(field.Unthinned), w.Given(field.VOC), w.Given(field.VOCThinner), w.Given(field.VOCLimit)
	switch {
	case voc.V > limit.V:
		w.Judge(calc.Stop, calc.Say("It holds {voc} before any thinner, over the limit of {limit}", voc.To(1, "voc"), limit.To(0, "limit")),
			calc.Say("Do not spray it where this limit applies, and check your local rule"))
	case thinner.V <= limit.V:
		w.Judge(calc.Go, calc.Say("This thinner holds {c}, no more than the limit: it cannot take the mix over", thinner.To(0, "c")),
			calc.Say("Add no more than the data sheet allows"))
	default:
		most := Thinner(w, volume, voc, thinner, limit)
		w.Result(mostThinner, most)
		w.Judge(calc.Go, calc.Say("Up to {y} of thinner keeps the mix at or under {limit}", most.To(0, "y"), limit.To(0, "limit")),
			calc.Say("Add no more than the data sheet allows, and check your local rule"))
	}
}

func labelled(in calc.Input, label calc.Phrase) calc.Input { in.Label = label; return in }
