package area

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// MeshArea tells how much there is to paint on wire mesh and perforated sheet.
func MeshArea() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mesh-area",
		Title:    "Mesh and perforated sheet",
		Question: "How much area has mesh or perforated sheet?",
		Range: "Square mesh of round wire, painted all round: crimp, which adds a few percent, and the crossings are left out. Sheet with round holes: " +
			"the walls of the holes count, rims without holes do not. Much of what you spray goes through: expect a low transfer efficiency.",
		Inputs: []calc.Input{field.SheetKind, field.Wire, field.MeshOpening, field.Hole, field.HolePitch, field.SheetThickness,
			field.Sides.If("sheet_kind", "staggered", "square"), field.SheetArea},
		Outputs: []calc.Output{areaRatio, openArea, areaAll},
		Work:    meshArea,
	}
}

var (
	areaRatio = calc.Output{Key: "area_ratio", Label: "Painted area, times the area of the sheet", Unit: unit.One, Decimals: 2, Main: true}
	openArea  = calc.Output{Key: "open_area", Label: "Open area", Unit: unit.Percent, Decimals: 1}
)

func meshArea(w *calc.Working) {
	ratio, all := calc.Num{}, w.Given(field.SheetArea)
	if w.Picked(field.SheetKind) == "mesh" {
		d, o := w.Given(field.Wire), w.Given(field.MeshOpening)
		p := o.V + d.V
		w.Result(openArea, w.Step(openArea.Label, "f = 100 * pow(w / (w + d), 2)", unit.Percent, source.Mensuration, 100*math.Pow(o.V/p, 2), o, d))
		ratio = w.Step(areaRatio.Label, "k = 2 * pi * d / (w + d)", unit.One, source.Mensuration, 2*math.Pi*d.V/p, d, o)
	} else {
		d, p := w.Given(field.Hole), w.Given(field.HolePitch)
		if d.V >= p.V {
			w.Reject(field.HolePitch, calc.Impossible, "must be more than the hole, {d}", "Measure from the middle of one hole to the middle of the next", d.As("d"))
			return
		}
		ratio = perforated(w, d, p)
	}
	w.Result(areaRatio, ratio)
	w.Result(areaAll, w.Step("Painted area", "A = k * A_0", unit.SquareMetre, source.Definition, ratio.V*all.V, ratio, all))
}

// perforated is the painted area of sheet with holes of diameter d at pitch p, as a multiple of the sheet's own.
func perforated(w *calc.Working, d, p calc.Num) calc.Num {
	formula, x := "100 * pi / 4 * pow(d / p, 2)", 25*math.Pi*math.Pow(d.V/p.V, 2)
	if w.Picked(field.SheetKind) == "staggered" {
		formula, x = "100 * pi / (2 * sqrt(3)) * pow(d / p, 2)", x*2/math.Sqrt(3)
	}
	f := w.Step(openArea.Label, "f = "+formula, unit.Percent, source.Mensuration, x, d, p)
	w.Result(openArea, f)
	n, t := calc.N(1, unit.One).Called("Sides painted"), w.Given(field.SheetThickness)
	if w.Picked(field.Sides) == "two" {
		n.V = 2
	}
	return w.Step(areaRatio.Label, "k = n * (1 - f / 100) + 4 * f / 100 * t / d", unit.One, source.Mensuration,
		n.V*(1-f.V/100)+4*f.V/100*t.V/d.V, n, f, t, d)
}
