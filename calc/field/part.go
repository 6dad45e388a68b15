package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A part to paint.
var (
	PartName = calc.Input{
		Key: "name", Label: "Part", Words: "Cargo-box lid",
		Help: "As you call it in the shop",
	}
	Shape = calc.Input{
		Key: "shape", Label: "Shape", Help: "The nearest one; measure what you paint, not what you see",
		Choices: []calc.Choice{
			{Key: "flat", Label: "Flat rectangle"}, {Key: "disc", Label: "Disc"}, {Key: "box", Label: "Box"}, {Key: "tube", Label: "Tube"},
			{Key: "cone", Label: "Cone or taper"}, {Key: "dome", Label: "Dome"}, {Key: "measured", Label: "Area I measured"},
		},
	}
	PartLength   = size("length", "Length", "Along the part; of a cone, along its axis", 600).If("shape", "flat", "box", "tube", "cone")
	PartWidth    = size("width", "Width", "Across the part", 400).If("shape", "flat", "box")
	PartHeight   = size("height", "Height", "How deep the box is, or how high the dome rises", 120).If("shape", "box", "dome")
	PartDiameter = size("diameter", "Diameter", "Outside, at the wide end or the rim", 200).If("shape", "disc", "tube", "cone", "dome")
	PartSmallEnd = calc.Input{
		Key: "small_end", Label: "Diameter of the small end", Unit: unit.Millimetre,
		Help:   "0 for a pointed cone",
		Limits: between(0, 20000), Example: 100,
		When: &calc.When{Key: "shape", In: []string{"cone"}},
	}
	PartArea = calc.Input{
		Key: "area", Label: "Area of one part", Symbol: "A", Unit: unit.SquareMetre,
		Help:   "All the faces you paint",
		Limits: between(0.0001, 5000), Example: 0.5,
		When: &calc.When{Key: "shape", In: []string{"measured"}},
	}
	Sides = calc.Input{
		Key: "sides", Label: "Sides to paint", Help: "Edges of thin sheet are left out",
		Choices: []calc.Choice{{Key: "one", Label: "One side"}, {Key: "two", Label: "Both sides"}},
		When:    &calc.When{Key: "shape", In: []string{"flat", "disc"}},
	}
	Faces = calc.Input{
		Key: "faces", Label: "Faces to paint", Help: "The top and bottom are length by width",
		Choices: []calc.Choice{
			{Key: "five", Label: "Top and four sides"}, {Key: "six", Label: "All six"}, {Key: "four", Label: "Four sides"},
			{Key: "inside-too", Label: "Top and four sides, inside too"},
		},
		When: &calc.When{Key: "shape", In: []string{"box"}},
	}
	Skin = calc.Input{
		Key: "skin", Label: "Skin to paint", Help: "Ends are left out; add them as discs",
		Choices: []calc.Choice{{Key: "outside", Label: "Outside"}, {Key: "inside", Label: "Inside"}, {Key: "both", Label: "Outside and inside"}},
		When:    &calc.When{Key: "shape", In: []string{"tube", "cone", "dome"}},
	}
	Count = calc.Input{
		Key: "count", Label: "How many", Symbol: "N", Unit: unit.One, Whole: true,
		Help:   "Parts like this one",
		Limits: between(1, 10000), Example: 12,
	}
	Colour = calc.Input{
		Key: "colour", Label: "Colour", Words: "ivory", Optional: true,
		Help: "Only where the job has more than one",
	}
)

func size(key string, label, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Help: help, Unit: unit.Millimetre, Limits: between(1, 20000), Example: example}
}
