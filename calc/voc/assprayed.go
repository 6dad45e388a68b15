package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// AsSprayed tells what a mix gives off and holds it against a limit.
func AsSprayed() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-as-sprayed",
		Title:    "VOC as sprayed",
		Question: "How much VOC does this give off, and is it under the limit?",
		Range: "One product, ready to spray. All its VOC is taken to end up in the air, whatever part of the paint lands on the work. " +
			"Of cleaning solvent only what evaporates counts, not what you collect.",
		Inputs:   []calc.Input{field.Role, field.Limits, field.Stages.If("role", "base", "clear"), field.VOC, field.WaterShare, field.Sprayed, field.CleanerLost},
		Outputs:  []calc.Output{vocMass, vocActual, vocLimit, category},
		Work:     asSprayed,
		Cautions: []calc.Phrase{caution.LocalRule, caution.Flammable},
	}
}

var (
	vocMass   = calc.Output{Key: "voc_mass", Label: "VOC given off", Unit: unit.Gram, Main: true}
	vocActual = calc.Output{Key: "voc_actual", Label: "VOC in a litre of the mix", Unit: unit.GramPerLitre}
	vocLimit  = calc.Output{Key: "voc_limit", Label: "Limit, less water and exempt solvents", Unit: unit.GramPerLitre, Optional: true}
	category  = calc.Output{Key: "category", Label: "Category in the table", Words: true, Optional: true}
)

func asSprayed(w *calc.Working) {
	voc := w.Given(field.VOC)
	actual := Actual(w, voc, w.Given(field.WaterShare))
	w.Result(vocActual, actual)
	mass := Emitted(w, w.Given(field.Sprayed), actual)
	if lost := w.Given(field.CleanerLost); lost.Given() {
		mass = w.Step("VOC given off, with cleaning", "m_c = m + l", unit.Gram, contentBy, mass.V+lost.V, mass, lost)
	}
	w.Result(vocMass, mass)

	stages := 1
	if n := w.Given(field.Stages); n.Given() {
		stages = int(n.V)
	}
	l, ok := LimitFor(w.Picked(field.Limits), w.Picked(field.Role), stages)
	if !ok {
		return
	}
	limit := l.Allowed(w)
	w.Result(vocLimit, limit)
	w.Tell(category, calc.Say(l.Category))
	if l.Average {
		w.Judge(calc.Wait, calc.Say("This table averages all the stages: they may hold {limit} together, and this one holds {voc}", limit.To(0, "limit"), voc.To(1, "voc")),
			calc.Say("Work out the average of base, mid-coats and clear, and check your local rule"))
		return
	}
	hold(w, voc, limit)
}

// hold rules on a VOC content against a limit. A content right at the limit is allowed.
func hold(w *calc.Working, voc, limit calc.Num) {
	if voc.V > limit.V {
		w.Judge(calc.Stop, calc.Say("It holds {voc} of VOC and the limit is {limit}", voc.To(1, "voc"), limit.To(0, "limit")),
			calc.Say("Do not spray it where this limit applies: look for a product or a thinner under it, and check your local rule"))
		return
	}
	w.Judge(calc.Go, calc.Say("It holds {voc} of VOC and the limit is {limit}", voc.To(1, "voc"), limit.To(0, "limit")),
		calc.Say("Check your local rule: it may be stricter"))
}
