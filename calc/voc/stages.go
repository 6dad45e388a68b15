package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// Stages averages the coats of a topcoat as the US rule does.
func Stages() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-stages",
		Title:    "VOC of a topcoat in stages",
		Question: "Are base, mid-coats and clear together under the US limit?",
		Range:    "A basecoat, up to two mid-coats and a clearcoat, averaged as 40 CFR 59.104(a)(2) does. The EU limits hold for each coat by itself.",
		Inputs:   []calc.Input{field.VOCBase, field.VOCMid, field.VOCMidTwo, field.VOCClear},
		Outputs:  []calc.Output{vocAverage, stagesLimit},
		Work:     stages,
		Cautions: []calc.Phrase{caution.LocalRule, caution.Flammable},
	}
}

var (
	vocAverage  = calc.Output{Key: "voc_average", Label: "Average VOC of the stages", Unit: unit.GramPerLitre, Main: true}
	stagesLimit = calc.Output{Key: "voc_limit", Label: "Limit, less water and exempt solvents", Unit: unit.GramPerLitre}
)

func stages(w *calc.Working) {
	var mids []calc.Num
	for _, in := range []calc.Input{field.VOCMid, field.VOCMidTwo} {
		if mid := w.Given(in); mid.Given() {
			mids = append(mids, mid)
		}
	}
	average := MultiStage(w, w.Given(field.VOCBase), mids, w.Given(field.VOCClear))
	l, _ := LimitFor("us", "base", 2+len(mids))
	limit := l.Allowed(w)
	w.Result(vocAverage, average)
	w.Result(stagesLimit, limit)
	hold(w, average, limit)
}
