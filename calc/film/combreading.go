package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// CombReading tells what a comb reading means.
func CombReading() *calc.Calculator {
	return &calc.Calculator{
		ID:       "comb-reading",
		Title:    "Comb reading",
		Question: "What does my wet-film comb tell me?",
		Range:    "A comb only brackets the film, so the answer is two numbers. Read it at once, square to a flat place or along a curved one; on fast-flashing paint it reads low.",
		Inputs:   []calc.Input{field.LastWet, field.FirstDry, field.VolumeSolids, field.SolidsFor, mixRatio, dryWanted, field.Coats.Filled(1)},
		Outputs:  []calc.Output{wetLow, wetHigh, dryLow, dryHigh, wetWanted, sprayedSolids},
		Work: func(w *calc.Working) {
			last, next := w.Given(field.LastWet), w.Given(field.FirstDry)
			if last.V >= next.V {
				w.Reject(field.FirstDry, calc.Impossible, "must be above the last tooth wetted, {last}", "Read the comb again: the dry tooth is the next mark up", last.As("last"))
				return
			}
			vs, ok := solids(w)
			if !ok {
				return
			}
			w.Result(wetLow, last)
			w.Result(wetHigh, next)
			w.Result(dryLow, dry(w, "Dry film, at least", last, vs))
			w.Result(dryHigh, dry(w, "Dry film, at most", next, vs))
			if dft := w.Given(field.DryFilm); dft.Given() {
				wet := Wet(w, dft, vs, w.Given(field.Coats))
				w.Result(wetWanted, wet)
				judge(w, wet, last, next)
			}
		},
		Cautions: []calc.Phrase{wetIsEstimate,
			calc.First + "Keep your breathing protection on while you read the comb: the mist outlasts the trigger, and two-pack mist can be isocyanate."},
		Arithmetic: true,
	}
}

var dryWanted = optionalFilm()

func optionalFilm() calc.Input {
	in := field.DryFilm.Maybe()
	in.Help = "All coats of this product together; blank if you only want the reading"
	return in
}

var (
	wetLow    = calc.Output{Key: "wet_low", Label: "Wet film, at least", Unit: unit.Micrometre}
	wetHigh   = calc.Output{Key: "wet_high", Label: "Wet film, at most", Unit: unit.Micrometre}
	dryLow    = calc.Output{Key: "dry_low", Label: "Dry film, at least", Unit: unit.Micrometre, Main: true}
	dryHigh   = calc.Output{Key: "dry_high", Label: "Dry film, at most", Unit: unit.Micrometre, Main: true}
	wetWanted = calc.Output{Key: "wet_wanted", Label: "Wet film wanted", Unit: unit.Micrometre, Optional: true}
)

// judge holds the film wanted against the teeth it should lie between.
func judge(w *calc.Working, wet, last, next calc.Num) {
	goal := wet.To(0, "goal")
	switch {
	case wet.V < last.V:
		w.Judge(calc.Wait, calc.Say("The film is thicker than the {goal} wanted", goal),
			calc.Say("Go faster or overlap less; watch this coat for runs and give it longer to flash"))
	case wet.V > next.V:
		w.Judge(calc.Wait, calc.Say("The film is thinner than the {goal} wanted", goal),
			calc.Say("Lay another pass while it is wet, or go slower on the next coat"))
	default:
		w.Judge(calc.Go, calc.Say("The {goal} wanted lies between the two teeth", goal), calc.Say("Carry on as you are"))
	}
}
