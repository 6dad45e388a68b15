package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// CoverageLeft tells how far what is left will go.
func CoverageLeft() *calc.Calculator {
	return &calc.Calculator{
		ID:       "coverage-left",
		Title:    "What is left",
		Question: "How far will the paint I have left go?",
		Range:    "Smooth surfaces, paint ready to spray. The film over an area is the mean: the thinnest place has less.",
		Inputs: []calc.Input{field.PaintLeft, field.VolumeSolids, field.SolidsFor, mixRatio, field.DryFilm, field.TransferEfficiency,
			stays, helped(partArea, "Area still to paint", "To be told the film there; blank if you only want the area", 2).Maybe()},
		Outputs: []calc.Output{areaCovered, filmThere, sprayedSolids},
		Work: func(w *calc.Working) {
			left, lost := w.Given(field.PaintLeft), w.Given(field.Losses)
			if lost.V >= left.V {
				w.Reject(field.Losses, calc.Impossible, "must be less than the paint left, {left}", "Rinse the gun: nothing of it would reach the part", left.As("left"))
				return
			}
			vs, ok := solids(w)
			if !ok {
				return
			}
			sprayed := w.Step("Paint that gets sprayed", "q = V - H", unit.Millilitre, source.Definition, left.V-lost.V, left, lost)
			s := landed(w, sprayed, vs, w.Given(field.TransferEfficiency))
			dft := w.Given(field.DryFilm)
			w.Result(areaCovered, w.Step(areaCovered.Label, "A = S / DFT", unit.SquareMetre, source.Definition, s.V/dft.V, s, dft))
			area := w.Given(partArea)
			if !area.Given() {
				return
			}
			there := w.Step(filmThere.Label, "DFT_A = S / A", unit.Micrometre, source.Definition, s.V/area.V, s, area)
			w.Result(filmThere, there)
			if under(there.V, dft.V) {
				w.Judge(calc.Wait, calc.Say("Spread over {area} it leaves {there}, less than {film}", area.As("area"), there.As("there"), dft.As("film")),
					calc.Say("Mix more before you start, or stop at an edge"))
			} else {
				w.Judge(calc.Go, calc.Say("It covers {area} on average", area.As("area")), calc.Say("Start with the faces that show; the next job may take more than this one"))
			}
		},
		Cautions:   []calc.Phrase{"Two-pack paint counts as left only while its pot life runs."},
		Arithmetic: true,
	}
}

var (
	stays       = helped(field.Losses, "Stays in cup and gun", "What never reaches the part: cup, filter and gun", 40)
	areaCovered = calc.Output{Key: "area_covered", Label: "Area it covers", Unit: unit.SquareMetre, Decimals: 2, Main: true}
	filmThere   = calc.Output{Key: "film_there", Label: "Dry film over the area still to paint", Unit: unit.Micrometre, Optional: true}
)

// landed is the volume of solids in mL that stays on the part of a volume sprayed in mL, from the volume solids of
// the mix and the transfer efficiency in percent. On 1 m², 1 mL of it is 1 µm thick.
func landed(w *calc.Working, sprayed, vs, te calc.Num) calc.Num {
	return w.Step("Solids that stay on the part (1 mL on 1 m² is 1 µm)", "S = q * (VS / 100) * (TE / 100)", unit.Millilitre, source.Definition,
		sprayed.V*(vs.V/100)*(te.V/100), sprayed, vs, te).Called("Solids that stay on the part")
}
