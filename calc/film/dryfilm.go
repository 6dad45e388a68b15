package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// DryFilm tells what a measured wet film dries to.
func DryFilm() *calc.Calculator {
	return &calc.Calculator{
		ID:       "dry-film",
		Title:    "Dry film from a wet film",
		Question: "What will the wet film I measured dry to?",
		Range:    "Any paint whose solids by volume are known. The wet film must be read at once: solvent leaves it from the moment it lands.",
		Inputs:   []calc.Input{field.WetFilm, field.VolumeSolids, field.SolidsFor, mixRatio},
		Outputs:  []calc.Output{dryCoat, sprayedSolids},
		Work: func(w *calc.Working) {
			if vs, ok := solids(w); ok {
				w.Result(dryCoat, Dry(w, w.Given(field.WetFilm), vs))
			}
		},
		Cautions:   []calc.Phrase{wetIsEstimate},
		Arithmetic: true,
	}
}

// wetIsEstimate is MIL-HDBK-1110, 9.6.8.4, in our words.
const wetIsEstimate = "A wet reading only estimates the dry film. Where a film is specified, measure it dry."

var dryCoat = calc.Output{Key: "dry_coat", Label: "Dry film of one coat", Unit: unit.Micrometre, Main: true}

// Dry is the dry film in µm that a wet film in µm leaves, from the volume solids of the sprayed mix in percent.
// Valid for any wet >= 0, 0 < vs <= 100, read before solvent has left.
func Dry(w *calc.Working, wet, vs calc.Num) calc.Num { return dry(w, dryCoat.Label, wet, vs) }

func dry(w *calc.Working, label calc.Phrase, wet, vs calc.Num) calc.Num {
	return w.Step(label, "DFT = WFT * VS / 100", unit.Micrometre, wetToDry,
		wet.V*vs.V/100, wet, vs)
}
