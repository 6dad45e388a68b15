package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PaintNeeded tells how much to mix for parts of a known area.
func PaintNeeded() *calc.Calculator {
	dead := deadFilm
	dead.Optional = true
	return &calc.Calculator{
		ID:       "paint-needed",
		Title:    "Paint needed",
		Question: "How much paint must I mix for this job?",
		Range: "One product on parts of a known area; blasted steel takes the allowance of its profile. The amount is that of the mix ready to spray, thinner included. " +
			"Where you fill more than one cup, enter what all of them lose together. Above 99 % sure, or with film or transfer " +
			"efficiency varying by more than 40 %, no amount can be trusted and none is given.",
		Inputs: []calc.Input{partArea, field.Count.Filled(1), field.DryFilm, profileMaybe(), field.VolumeSolids, field.SolidsFor, mixRatio,
			field.TransferEfficiency, field.Losses, narrowed(field.FilmSpread, 0, 40), narrowed(field.TransferSpread, 0, 40), narrowed(field.Confidence, 50, 99)},
		Outputs: []calc.Output{amountToMix, paintDemand, leftOver, sprayedSolids, dead},
		Work: func(w *calc.Working) {
			vs, ok := solids(w)
			if !ok {
				return
			}
			one, n := w.Given(partArea), w.Given(field.Count)
			all := w.Step("Area of all parts", "A = N * A_1", unit.SquareMetre, source.Definition, n.V*one.V, n, one)
			dft := w.Given(field.DryFilm)
			if r := w.Given(field.ProfileHeight); r.Given() {
				d := DeadFilm(w, r)
				w.Result(dead, d)
				w.Caution(allowance)
				dft = withProfile(w, "Film with the allowance", dft, d)
			}
			demand := Demand(w, all, dft, vs, w.Given(field.TransferEfficiency))
			amount, leftover := ToMix(w, demand, w.Given(field.Losses), w.Given(field.FilmSpread), w.Given(field.TransferSpread), w.Given(field.Confidence))
			w.Result(paintDemand, demand)
			w.Result(amountToMix, amount)
			w.Result(leftOver, leftover)
		},
		Cautions: []calc.Phrase{
			"Mix no more than you can spray within the pot life: two small mixes can beat one large one.",
			"Transfer efficiency decides the answer and is the figure least known. Weigh a cup before and after one part, and put the true one in.",
		},
	}
}

// partArea is asked outright here, since no shape is.
var partArea = always(field.PartArea)

func always(in calc.Input) calc.Input {
	in.When = nil
	return in
}

func profileMaybe() calc.Input {
	in := field.ProfileHeight.Maybe()
	in.Help = "Of blasted steel under its first coat; blank for a smooth surface"
	return in
}

// narrowed keeps an input to where ToMix is good to 5 %.
func narrowed(in calc.Input, min, max float64) calc.Input {
	in.Limits = calc.Between(min, max)
	return in
}

var (
	amountToMix = calc.Output{Key: "amount", Label: "Amount to mix, ready to spray", Unit: unit.Millilitre, Main: true}
	paintDemand = calc.Output{Key: "demand", Label: "Paint through the gun", Unit: unit.Millilitre}
	leftOver    = calc.Output{Key: "left_over", Label: "Left over on average", Unit: unit.Millilitre}
)
