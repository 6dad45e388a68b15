// Package area works out the area of parts from the sizes a painter can measure.
package area

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "part-area", Make: PartArea},
	{ID: "parts-area", Make: PartsArea},
	{ID: "steel-area", Make: SteelArea},
	{ID: "tank-area", Make: TankArea},
	{ID: "mesh-area", Make: MeshArea},
}

// PartArea tells how much there is to paint on one part, and on all of them.
func PartArea() *calc.Calculator {
	return &calc.Calculator{
		ID:       "part-area",
		Title:    "Area of a part",
		Question: "How much area is there to paint on this part?",
		Range: "Parts that are near enough one of the shapes, of thin sheet: the inside counts as large as the outside, edges and rims as nothing. " +
			"A cone's length is along its axis. Put a part together from several shapes.",
		Inputs:  slices.Concat(sizes, []calc.Input{field.Count.Filled(1)}),
		Outputs: []calc.Output{areaAll, areaOne},
		Work: func(w *calc.Working) {
			one, ok := OfPart(w, w.Entry)
			if !ok {
				return
			}
			n := w.Given(field.Count)
			w.Result(areaOne, one)
			w.Result(areaAll, w.Step("Area of all parts", "A = N * A_1", unit.SquareMetre, source.Definition, n.V*one.V, n, one))
		},
		Arithmetic: true,
	}
}

var (
	areaAll = calc.Output{Key: "area_all", Label: "Area of all", Unit: unit.SquareMetre, Decimals: 2, Main: true}
	areaOne = calc.Output{Key: "area_one", Label: "Area of one", Unit: unit.SquareMetre, Decimals: 3}
)
