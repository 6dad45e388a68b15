package film

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// BlendArea tells how much paint a blend or a fade takes.
func BlendArea() *calc.Calculator {
	return &calc.Calculator{
		ID:       "blend-area",
		Title:    "Blend or fade",
		Question: "How much paint does a blend take?",
		Range:    "A film that falls evenly from full to nothing, along a straight edge or around a round spot. Smooth surfaces.",
		Inputs: []calc.Input{field.BlendShape, helped(partArea, "Area at full film", "Without the blend", 0.5).If("blend_shape", "edge"), field.BlendLength, field.SpotDiameter, field.BlendWidth,
			field.DryFilm, field.VolumeSolids, field.SolidsFor, mixRatio, field.TransferEfficiency, stays},
		Outputs: []calc.Output{blendAmount, fullFilmArea, areaTouched, sprayedSolids},
		Work: func(w *calc.Working) {
			vs, ok := solids(w)
			if !ok {
				return
			}
			full, touched := blend(w)
			demand, lost := Demand(w, full, w.Given(field.DryFilm), vs, w.Given(field.TransferEfficiency)), w.Given(field.Losses)
			w.Result(fullFilmArea, full)
			w.Result(areaTouched, touched)
			w.Result(blendAmount, w.Step(blendAmount.Label, "Q = q + H", unit.Millilitre, source.Definition, demand.V+lost.V, demand, lost))
		},
		Cautions:   []calc.Phrase{"Where the film fades to nothing it protects nothing: end a blend on sound paint, and clear over it if the data sheet says so."},
		Arithmetic: true,
	}
}

var (
	blendAmount  = calc.Output{Key: "amount", Label: "Paint, ready to spray", Unit: unit.Millilitre, Main: true}
	fullFilmArea = calc.Output{Key: "full_film_area", Label: "Area it counts for at full film", Unit: unit.SquareMetre, Decimals: 3}
	areaTouched  = calc.Output{Key: "area_touched", Label: "Area the paint touches", Unit: unit.SquareMetre, Decimals: 3}
)

// blend is the area in m² that a full film would cover with the same paint, and the area touched. A straight blend
// counts half; around a spot it counts less, for the ring is longer where the film is thinner: the volume is that
// of a cone cut off at the top.
func blend(w *calc.Working) (full, touched calc.Num) {
	b := w.Given(field.BlendWidth)
	if w.Picked(field.BlendShape) == "edge" {
		a, l := w.Given(partArea), w.Given(field.BlendLength)
		return w.Step(fullFilmArea.Label, "A_e = A + L * b / 2 / 1e6", unit.SquareMetre, source.Mensuration, a.V+l.V*b.V/2/1e6, a, l, b),
			w.Step(areaTouched.Label, "A_t = A + L * b / 1e6", unit.SquareMetre, source.Mensuration, a.V+l.V*b.V/1e6, a, l, b)
	}
	d := w.Given(field.SpotDiameter)
	return w.Step(fullFilmArea.Label, "A_e = pi * (D * D / 4 + D * b / 2 + b * b / 3) / 1e6", unit.SquareMetre, source.Mensuration,
			math.Pi*(d.V*d.V/4+d.V*b.V/2+b.V*b.V/3)/1e6, d, b),
		w.Step(areaTouched.Label, "A_t = pi * pow(D / 2 + b, 2) / 1e6", unit.SquareMetre, source.Mensuration, math.Pi*math.Pow(d.V/2+b.V, 2)/1e6, d, b)
}
