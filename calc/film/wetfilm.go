package film

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// WetFilm tells how thick to spray for the dry film wanted.
func WetFilm() *calc.Calculator {
	return &calc.Calculator{
		ID:       "wet-film",
		Title:    "Wet film for a dry film",
		Question: "How wet must one coat be to dry to the film I want?",
		Range:    "Any paint whose solids by volume are known; solids by weight will not do. The film is that of a smooth surface: a blasted one swallows some.",
		Inputs:   []calc.Input{field.DryFilm, field.Coats, field.VolumeSolids, field.SolidsFor, mixRatio, field.CombStep},
		Outputs:  []calc.Output{wetFilm, toothWet, toothDry, sprayedSolids},
		Work: func(w *calc.Working) {
			vs, ok := solids(w)
			if !ok {
				return
			}
			wet := Wet(w, w.Given(field.DryFilm), vs, w.Given(field.Coats))
			last, next := Comb(w, wet, w.Given(field.CombStep))
			if last.V == 0 {
				w.Caution("Your comb starts at {next}, above this film: take a finer comb.", next.As("next"))
			}
			w.Result(wetFilm, wet)
			w.Result(toothWet, last)
			w.Result(toothDry, next)
		},
		Cautions:   []calc.Phrase{"The data sheet's thickest wet film comes first: more than that in one coat runs, or traps solvent."},
		Arithmetic: true,
	}
}

var (
	wetFilm  = calc.Output{Key: "wet_film", Label: "Wet film of one coat", Unit: unit.Micrometre, Main: true}
	toothWet = calc.Output{Key: "tooth_wet", Label: "Last tooth of the comb to wet", Unit: unit.Micrometre}
	toothDry = calc.Output{Key: "tooth_dry", Label: "First tooth to stay dry", Unit: unit.Micrometre}
)

// Wet is the wet film of one coat in µm, from the dry film of all n coats in µm and the volume solids of the
// sprayed mix in percent. Valid for any dft > 0, 0 < vs <= 100, n >= 1.
func Wet(w *calc.Working, dft, vs, n calc.Num) calc.Num {
	return w.Step("Wet film of one coat", "WFT = DFT / n / (VS / 100)", unit.Micrometre, wetToDry,
		dft.V/n.V/(vs.V/100), dft, n, vs)
}

// Comb is which teeth of a comb, in µm, a wet film in µm wets and leaves dry, where the teeth stand at multiples
// of step µm: the film lies between the last wetted tooth and the next (ASTM D4414). A film below the first tooth
// wets none, and wetTooth is 0. Valid for wet > 0, step > 0.
func Comb(w *calc.Working, wet, step calc.Num) (wetTooth, dryTooth calc.Num) {
	// A film that reaches a tooth but for a rounding error wets it.
	wetTooth = w.Step("Last tooth wetted", "last = floor(WFT / step + 0.000001) * step", unit.Micrometre, notches,
		math.Floor(wet.V/step.V+0.000001)*step.V, wet, step)
	dryTooth = w.Step("First tooth dry", "next = last + step", unit.Micrometre, combTeeth,
		wetTooth.V+step.V, wetTooth, step)
	return wetTooth, dryTooth
}
