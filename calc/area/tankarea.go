package area

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// TankArea tells how much there is to paint on a tank.
func TankArea() *calc.Calculator {
	return &calc.Calculator{
		ID:       "tank-area",
		Title:    "Tank",
		Question: "How much area has this tank?",
		Range: "One side of thin plate, without nozzles, legs and ladders. An ellipsoid is worked by an approximation that is at worst 1.1 % out; " +
			"a dished end is half of an ellipsoid twice as wide as high.",
		Inputs: []calc.Input{field.Tank,
			sized(field.PartDiameter, "Outside", 1200).If("tank", "cylinder", "sphere"),
			sized(field.PartLength, "Of a cylinder, the straight shell between its ends", 3000).If("tank", "cylinder", "ellipsoid"),
			sized(field.PartWidth, "Across the whole ellipsoid", 1200).If("tank", "ellipsoid"), sized(field.PartHeight, "From the bottom of the ellipsoid to its top", 1000).If("tank", "ellipsoid"),
			field.TankEnds, field.ConeHeight, field.EndsPainted, field.Count.Filled(1)},
		Outputs: []calc.Output{areaAll, areaOne},
		Mistakes: []calc.Mistake{
			{Says: "This comes out where the diameter is taken for a radius", Form: "diameter=*2"},
			{Says: "This comes out where the radius is taken for a diameter", Form: "diameter=*0.5"},
		},
		Work: func(w *calc.Working) {
			one, n := tank(w), w.Given(field.Count)
			w.Result(areaOne, one)
			w.Result(areaAll, w.Step("Area of all tanks", "A = N * A_1", unit.SquareMetre, source.Definition, n.V*one.V, n, one))
		},
		Cautions: []calc.Phrase{"Spraying inside a tank can kill: vapour gathers, and air runs short. It needs a permit, forced air, a gas meter and a watch outside, as your code for confined spaces says."},
	}
}

var thomsen = source.Thomsen2004.At("p = 1.6075").By(source.SecondHand)

func tank(w *calc.Working) calc.Num {
	d, l := w.Given(field.PartDiameter), w.Given(field.PartLength)
	switch w.Picked(field.Tank) {
	case "sphere":
		return squareMetres(w, "Area of one sphere", "pi * D * D", math.Pi*d.V*d.V, d)
	case "ellipsoid":
		return Ellipsoid(w, l, w.Given(field.PartWidth), w.Given(field.PartHeight))
	}
	shell := w.Step("Area of the shell", "A_s = pi * D * L / 1e6", unit.SquareMetre, source.Mensuration, math.Pi*d.V*l.V/1e6, d, l)
	one, n := end(w, d), w.Given(field.EndsPainted)
	return w.Step("Area of one tank", "A_1 = A_s + n * A_e", unit.SquareMetre, source.Definition, shell.V+n.V*one.V, shell, n, one)
}

// end is the area of one end of a cylinder of diameter d.
func end(w *calc.Working, d calc.Num) calc.Num {
	x := d.V * d.V
	skin := func(formula string, x float64, sizes ...calc.Num) calc.Num {
		return w.Step("Area of one end", "A_e = "+formula+" / 1e6", unit.SquareMetre, source.Mensuration, x/1e6, sizes...)
	}
	switch w.Picked(field.TankEnds) {
	case "dished":
		return skin("1.08399 * D * D", 1.08399*x, d)
	case "hemisphere":
		return skin("pi * D * D / 2", math.Pi*x/2, d)
	case "cone":
		h := w.Given(field.ConeHeight)
		return skin("pi * D / 2 * sqrt(D * D / 4 + h * h)", math.Pi*d.V/2*math.Sqrt(x/4+h.V*h.V), d, h)
	}
	return skin("pi * D * D / 4", math.Pi*x/4, d)
}

// Ellipsoid is the skin of an ellipsoid with these whole lengths along its three axes, in mm, by Thomsen's
// approximation. It is exact for a sphere and at worst 1.061 % out: that much too small for a needle.
func Ellipsoid(w *calc.Working, length, width, height calc.Num) calc.Num {
	const p = 1.6075
	l, b, h := length.V, width.V, height.V
	x := math.Pow((math.Pow(l*b, p)+math.Pow(l*h, p)+math.Pow(b*h, p))/3, 1/p)
	return w.Step("Area of one ellipsoid", "A_1 = pi * pow((pow(L * W, 1.6075) + pow(L * H, 1.6075) + pow(W * H, 1.6075)) / 3, 1 / 1.6075) / 1e6",
		unit.SquareMetre, thomsen, math.Pi*x/1e6, length, width, height)
}
