package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Spreading tells how much area a litre covers, in theory and sprayed.
func Spreading() *calc.Calculator {
	return &calc.Calculator{
		ID:       "spreading-rate",
		Title:    "Spreading rate",
		Question: "How much area does a litre of this paint cover?",
		Range:    "Smooth surfaces. Per litre or gallon of the mix ready to spray, thinner included. Overspray counts only where the transfer efficiency is filled in.",
		Inputs:   []calc.Input{field.DryFilm, field.VolumeSolids, field.SolidsFor, mixRatio, field.TransferEfficiency.Maybe()},
		Outputs:  []calc.Output{spreadingRate, sprayedRate, sprayedSolids},
		Work: func(w *calc.Working) {
			vs, ok := solids(w)
			if !ok {
				return
			}
			rate := SpreadingRate(w, vs, w.Given(field.DryFilm))
			w.Result(spreadingRate, rate)
			if te := w.Given(field.TransferEfficiency); te.Given() {
				w.Result(sprayedRate, SprayedRate(w, rate, te))
			}
		},
		Arithmetic: true,
	}
}

var (
	spreadingRate = calc.Output{Key: "spreading_rate", Label: "Theoretical spreading rate", Unit: unit.SquareMetrePerLitre, Decimals: 1, Main: true}
	sprayedRate   = calc.Output{Key: "sprayed_rate", Label: "Sprayed, with overspray lost", Unit: unit.SquareMetrePerLitre, Decimals: 1, Optional: true}
)

// SpreadingRate is the area in m²/L that paint of volume solids vs percent covers at a dry film dft in µm with
// nothing lost: a litre spread 1 µm thick covers 1000 m². Valid for 0 < vs <= 100, dft > 0.
func SpreadingRate(w *calc.Working, vs, dft calc.Num) calc.Num {
	return w.Step("Theoretical spreading rate", "SR = 1000 * (VS / 100) / DFT", unit.SquareMetrePerLitre, source.Definition,
		1000*(vs.V/100)/dft.V, vs, dft)
}

// SprayedRate is the spreading rate in m²/L when te percent of the sprayed solids stays on the part.
func SprayedRate(w *calc.Working, rate, te calc.Num) calc.Num {
	return w.Step("Spreading rate when sprayed", "SR_s = SR * TE / 100", unit.SquareMetrePerLitre, source.Definition,
		rate.V*te.V/100, rate, te)
}
