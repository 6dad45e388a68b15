package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FilmFromPaint tells the film from the paint sprayed, or the transfer efficiency from the two.
func FilmFromPaint() *calc.Calculator {
	return &calc.Calculator{
		ID:       "film-from-paint",
		Title:    "Film from paint used",
		Question: "What film did the paint I used make, and how much of it stayed on?",
		Range: "Smooth surfaces of a known area. The film is the mean over all of it. A transfer efficiency above 100 % is refused: " +
			"something was measured wrong.",
		Inputs: []calc.Input{field.FindOut, field.UsedBy, field.PaintUsed, field.PaintWeighed, mixDensity, partPainted,
			field.VolumeSolids, field.SolidsFor, mixRatio, field.TransferEfficiency.If("find_out", "film"), field.FilmMeasured},
		Outputs:  []calc.Output{filmMade, transferFound, sprayedSolids},
		Mistakes: []calc.Mistake{{Says: "This comes out where 1 g is taken for 1 mL, as of water", Form: "mix_density=1&mix_density.unit=kg/L"}},
		Work:     filmFromPaint,
		Cautions: []calc.Phrase{
			"A transfer efficiency is true for this part, this gun and this hand only. Measure it again for parts of another shape.",
		},
		Arithmetic: true,
	}
}

var (
	mixDensity    = field.MixDensity.If("used_by", "weight")
	partPainted   = helped(partArea, "Area painted", "All the faces the paint went on", 3.6)
	filmMade      = calc.Output{Key: "film_made", Label: "Dry film", Unit: unit.Micrometre, Main: true, Optional: true}
	transferFound = calc.Output{Key: "transfer_found", Label: "Transfer efficiency", Unit: unit.Percent, Main: true, Optional: true}
)

func filmFromPaint(w *calc.Working) {
	vs, ok := solids(w)
	if !ok {
		return
	}
	sprayed, area := w.Given(field.PaintUsed), w.Given(partArea)
	if w.Picked(field.UsedBy) == "weight" {
		m, rho := w.Given(field.PaintWeighed), w.Given(field.MixDensity)
		sprayed = w.Step("Paint sprayed", "V = m / rho", unit.Millilitre, source.Definition, m.V/rho.V, m, rho)
	}
	if w.Picked(field.FindOut) == "film" {
		s := landed(w, sprayed, vs, w.Given(field.TransferEfficiency))
		w.Result(filmMade, w.Step(filmMade.Label, "DFT = S / A", unit.Micrometre, source.Definition, s.V/area.V, s, area))
		return
	}
	film := w.Given(field.FilmMeasured)
	te := w.Step(transferFound.Label, "TE = 100 * A * DFT / (V * VS / 100)", unit.Percent, source.Definition,
		100*area.V*film.V/(sprayed.V*vs.V/100), area, film, sprayed, vs)
	if te.V > 100*(1+1e-9) {
		w.Reject(field.FilmMeasured, calc.Impossible, "takes more solids than were sprayed: {te}", "Check area, solids and paint; a gauge set on smooth steel reads the profile too", te.To(0, "te"))
		return
	}
	w.Result(transferFound, te)
}
