package area

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// SteelArea tells how much there is to paint on a steel section or a pipe.
func SteelArea() *calc.Calculator {
	return &calc.Calculator{
		ID:       "steel-area",
		Title:    "Steel and pipe",
		Question: "How much area has this steel section or pipe?",
		Range: "Beams and channels with parallel flanges, angles whose toes have half the corner radius, flat bar, square tube, and pipe of the standard sizes. " +
			"All round, without the cut ends. Channels with sloping flanges have up to 3 % less.",
		Inputs: []calc.Input{field.Section, field.SectionDepth, field.SectionWidth, field.Web, field.SectionRadius, field.NominalSize, field.PipeRule,
			sized(field.PartLength, "Of one piece", 6000), field.Count.Filled(1)},
		Outputs: []calc.Output{perMetre, areaAll, pipeOutside},
		Work: func(w *calc.Working) {
			p, ok := girth(w)
			if !ok {
				return
			}
			m := w.Step(perMetre.Label, "A_m = P / 1000", unit.SquareMetrePerMetre, source.Definition, p.V/1000, p)
			l, n := w.Given(field.PartLength), w.Given(field.Count)
			w.Result(perMetre, m)
			w.Result(areaAll, w.Step("Area of all pieces", "A = N * A_m * L / 1000", unit.SquareMetre, source.Definition, n.V*m.V*l.V/1000, n, m, l))
		},
	}
}

var (
	perMetre    = calc.Output{Key: "area_per_metre", Label: "Area of each metre", Unit: unit.SquareMetrePerMetre, Decimals: 3, Main: true}
	pipeOutside = calc.Output{Key: "outside_diameter", Label: "Outside diameter", Unit: unit.Millimetre, Decimals: 1, Optional: true}
)

// sized asks for a size of a part outright, up to 100 m, since no shape is asked for.
func sized(in calc.Input, help calc.Phrase, example float64) calc.Input {
	in.When, in.Help, in.Example, in.Limits = nil, help, example, calc.Between(1, 100000)
	return in
}

// girth is the distance in mm around the section that the form describes.
func girth(w *calc.Working) (p calc.Num, ok bool) {
	const label = "Distance around the section"
	step := func(formula string, x float64, nums ...calc.Num) (calc.Num, bool) {
		return w.Step(label, "P = "+formula, unit.Millimetre, source.Mensuration, x, nums...), true
	}
	if w.Picked(field.Section) == "pipe" {
		d := pipe(w)
		return step("pi * D", math.Pi*d.V, d)
	}
	h, b, t, r := w.Given(field.SectionDepth), w.Given(field.SectionWidth), w.Given(field.Web), w.Given(field.SectionRadius).Or(0)
	switch {
	case t.V >= b.V:
		w.Reject(field.Web, calc.Impossible, "must be less than the width, {b}", "Check the two", b.As("b"))
		return p, false
	case 2*r.V > min(h.V, b.V):
		w.Reject(field.SectionRadius, calc.Impossible, "is too large for this section", "Check it; leave it blank if you do not know it")
		return p, false
	}
	switch w.Picked(field.Section) {
	case "i":
		return step("4 * B + 2 * H - 2 * t - (8 - 2 * pi) * r", 4*b.V+2*h.V-2*t.V-(8-2*math.Pi)*r.V, b, h, t, r)
	case "channel":
		return step("4 * B + 2 * H - 2 * t - (4 - pi) * r", 4*b.V+2*h.V-2*t.V-(4-math.Pi)*r.V, b, h, t, r)
	case "angle":
		return step("2 * (B + H) - (4 - pi) * r", 2*(b.V+h.V)-(4-math.Pi)*r.V, b, h, r)
	}
	return step("2 * (B + H) - (8 - 2 * pi) * r", 2*(b.V+h.V)-(8-2*math.Pi)*r.V, b, h, r)
}

// pipe is the outside diameter in mm of a nominal size.
func pipe(w *calc.Working) calc.Num {
	i := 0
	for field.NominalSize.Choices[i].Key != w.Picked(field.NominalSize) {
		i++
	}
	x, src := outside[i].inch*25.4, source.ASMEB36.By(source.SecondHand)
	if w.Picked(field.PipeRule) == "en" {
		x, src = outside[i].mm, source.EN10220.At("series 1").By(source.Memory)
	}
	d := w.Constant(pipeOutside.Label, unit.Millimetre, src, x)
	w.Result(pipeOutside, d)
	return d
}

// outside is the outside diameter of pipe in the order of field.NominalSize: in inches by ASME B36.10, in mm by
// EN 10220, series 1.
var outside = [...]struct{ inch, mm float64 }{
	{0.405, 10.2}, {0.540, 13.5}, {0.675, 17.2}, {0.840, 21.3}, {1.050, 26.9}, {1.315, 33.7}, {1.660, 42.4}, {1.900, 48.3},
	{2.375, 60.3}, {2.875, 76.1}, {3.500, 88.9}, {4.500, 114.3}, {5.563, 139.7}, {6.625, 168.3}, {8.625, 219.1}, {10.750, 273},
	{12.750, 323.9}, {14, 355.6}, {16, 406.4}, {18, 457}, {20, 508}, {24, 610},
}
