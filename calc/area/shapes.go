package area

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// All lengths are in mm and above 0, all areas in m². Sheet is taken as thin: its inside is as large as its
// outside, and its edges count for nothing.

// twice is how many times a surface is painted: one side of a sheet or both.
func twice(both bool) (factor float64, formula string) {
	if both {
		return 2, "2 * "
	}
	return 1, ""
}

func squareMetres(w *calc.Working, label calc.Phrase, formula string, x float64, sizes ...calc.Num) calc.Num {
	return w.Step(label, "A_1 = "+formula+" / 1e6", unit.SquareMetre, source.Mensuration, x/1e6, sizes...)
}

// Flat is a rectangle of sheet, one side of it or both.
func Flat(w *calc.Working, length, width calc.Num, both bool) calc.Num {
	n, times := twice(both)
	return squareMetres(w, "Area of one flat part", times+"L * W", n*length.V*width.V, length, width)
}

// Disc is a round of sheet, one side of it or both.
func Disc(w *calc.Working, diameter calc.Num, both bool) calc.Num {
	n, times := twice(both)
	return squareMetres(w, "Area of one disc", times+"pi * D * D / 4", n*math.Pi*diameter.V*diameter.V/4, diameter)
}

// Box is a rectangular box with these of its faces painted: "five" is the top and four sides, "six" all, "four"
// the sides alone, "inside-too" the top and four sides inside and out. Other keys are a mistake in the program.
func Box(w *calc.Working, length, width, height calc.Num, faces string) calc.Num {
	l, b, h := length.V, width.V, height.V
	const label = "Area of one box"
	switch faces {
	case "five":
		return squareMetres(w, label, "(L * W + 2 * H * (L + W))", l*b+2*h*(l+b), length, width, height)
	case "six":
		return squareMetres(w, label, "2 * (L * W + H * (L + W))", 2*(l*b+h*(l+b)), length, width, height)
	case "four":
		return squareMetres(w, label, "2 * H * (L + W)", 2*h*(l+b), height, length, width)
	case "inside-too":
		return squareMetres(w, label, "2 * (L * W + 2 * H * (L + W))", 2*(l*b+2*h*(l+b)), length, width, height)
	}
	panic("area: no faces " + faces)
}

// Tube is the skin of a tube without its ends, outside or inside, or both.
func Tube(w *calc.Working, length, diameter calc.Num, both bool) calc.Num {
	n, times := twice(both)
	return squareMetres(w, "Area of one tube", times+"pi * D * L", n*math.Pi*diameter.V*length.V, diameter, length)
}

// ConeFrustum is the skin of a cone cut off at its small end, without its ends; small may be 0. The length is
// measured along the axis. Either end may be the wider.
func ConeFrustum(w *calc.Working, length, diameter, small calc.Num, both bool) calc.Num {
	n, times := twice(both)
	slant := w.Step("Length along the slope", "s = sqrt(L * L + pow((D - d) / 2, 2))", unit.Millimetre, source.Mensuration,
		math.Sqrt(length.V*length.V+math.Pow((diameter.V-small.V)/2, 2)), length, diameter, small)
	return squareMetres(w, "Area of one cone", times+"pi * (D + d) / 2 * s", n*math.Pi*(diameter.V+small.V)/2*slant.V,
		diameter, small, slant)
}

// Dome is the skin of a cap cut off a sphere, from the diameter of its rim and how high it rises. Every rim and
// height fit one sphere; above half the rim's diameter the cap is more than half of it and bulges past its rim.
func Dome(w *calc.Working, rim, height calc.Num, both bool) calc.Num {
	n, times := twice(both)
	return squareMetres(w, "Area of one dome", times+"pi * (D * D / 4 + H * H)", n*math.Pi*(rim.V*rim.V/4+height.V*height.V),
		rim, height)
}
