package area

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PartsArea adds up a table of parts.
func PartsArea() *calc.Calculator {
	return &calc.Calculator{
		ID:         "parts-area",
		Title:      "Area of a list of parts",
		Question:   "How much area have all these parts together?",
		Range:      "As for one part: thin sheet, edges and rims left out. Up to 60 kinds of part.",
		Inputs:     []calc.Input{partsTable},
		Outputs:    []calc.Output{areaAll, partAreas},
		Work:       partsArea,
		Arithmetic: true,
	}
}

var (
	partsTable = calc.Input{
		Key: "part", Label: "Parts", Help: "One row for each kind of part", RowName: "part", Most: 60,
		Rows: slices.Concat([]calc.Input{field.PartName}, sizes, []calc.Input{field.Count}),
	}
	partAreas = calc.Output{Key: "part_area", Label: "Each kind of part", Columns: []calc.Output{
		{Key: "name", Label: "Part", Words: true}, areaOne, {Key: "area_kind", Label: "All of this kind", Unit: unit.SquareMetre, Decimals: 2},
	}}
)

func partsArea(w *calc.Working) {
	all := calc.N(0, unit.SquareMetre).Called("Area before")
	for _, row := range w.Rows(partsTable) {
		one, ok := OfPart(w, row)
		if !ok {
			return
		}
		row.Describe(Describe(row, one))
		n := row.Given(field.Count)
		kind := w.Step("Area of this kind", "A_k = N * A_1", unit.SquareMetre, source.Definition, n.V*one.V, n, one)
		all = w.Step("Area so far", "A = A_before + A_k", unit.SquareMetre, source.Definition, all.V+kind.V, all, kind)
		w.List(partAreas, calc.Told(calc.Say("{name}", calc.Words(row.Words(field.PartName), "name"))), calc.Of(one), calc.Of(kind))
	}
	w.Result(areaAll, all)
}
