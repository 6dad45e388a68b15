package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// ProfilePaint tells how much paint a blasted surface takes.
func ProfilePaint() *calc.Calculator {
	return &calc.Calculator{
		ID:       "profile-paint",
		Title:    "Paint for blasted steel",
		Question: "How much more paint does a blasted surface take?",
		Range: "The first coat on blasted steel with a profile of up to 400 µm. What the profile swallows is an allowance and no measurement, " +
			"so that the answer is a middle figure and a highest one.",
		Inputs:  []calc.Input{partPainted, field.DryFilm, field.ProfileHeight, field.VolumeSolids, field.SolidsFor, mixRatio, field.TransferEfficiency},
		Outputs: []calc.Output{paintDemand, demandMost, deadFilm, sprayedSolids},
		Work: func(w *calc.Working) {
			vs, ok := solids(w)
			if !ok {
				return
			}
			area, dft, te, r := w.Given(partArea), w.Given(field.DryFilm), w.Given(field.TransferEfficiency), w.Given(field.ProfileHeight)
			d := DeadFilm(w, r)
			w.Result(deadFilm, d)
			w.Result(paintDemand, Demand(w, area, withProfile(w, "Film with the allowance", dft, d), vs, te))
			w.Result(demandMost, Demand(w, area, withProfile(w, "Film with the whole profile", dft, r), vs, te))
		},
		Cautions: []calc.Phrase{
			allowance, "Cup and gun losses come on top.",
		},
	}
}

const allowance = "What a profile swallows is the allowance of one note of the trade; another counts the whole profile as lost."

var (
	deadFilm   = calc.Output{Key: "dead_film", Label: "Film lost in the profile, as an allowance", Unit: unit.Micrometre}
	demandMost = calc.Output{Key: "demand_most", Label: "At most, with the whole profile filled", Unit: unit.Millilitre}
)

// DeadFilm is the dry film in µm that is allowed for a blast profile in µm: what lies between the peaks and does
// not count. Valid from 0 up; a profile on a border counts to the lower class.
func DeadFilm(w *calc.Working, profile calc.Num) calc.Num {
	d := 125.0
	switch {
	case profile.V <= 50:
		d = 10
	case profile.V <= 100:
		d = 35
	case profile.V <= 150:
		d = 60
	}
	return w.Model(deadFilm.Label, "by the profile R: 10 µm up to 50, 35 µm up to 100, 60 µm up to 150, 125 µm above", unit.Micrometre,
		source.BlastLosses.By(source.SecondHand), d, profile.As("R"))
}

// withProfile is the dry film in µm to pay for when some of it is lost in the profile.
func withProfile(w *calc.Working, label calc.Phrase, dft, lost calc.Num) calc.Num {
	return w.Step(label, "DFT_all = DFT + d", unit.Micrometre, source.Definition, dft.V+lost.V, dft, lost)
}
