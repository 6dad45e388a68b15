package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// Steel sections, tanks and sheet with holes.
var (
	Section = calc.Input{
		Key: "section", Label: "Section", Help: "The nearest one",
		Choices: []calc.Choice{
			{Key: "i", Label: "I or H beam"}, {Key: "channel", Label: "Channel"}, {Key: "angle", Label: "Angle"},
			{Key: "bar", Label: "Flat bar or square tube"}, {Key: "pipe", Label: "Pipe by nominal size"},
		},
	}
	SectionDepth  = sectionSize("section_depth", "Depth", "H", "Of the whole section; of an angle, the longer leg", 200).If("section", "i", "channel", "angle", "bar")
	SectionWidth  = sectionSize("section_width", "Width", "B", "Of a flange; of an angle, the other leg; of a flat bar, its thickness", 100).If("section", "i", "channel", "angle", "bar")
	Web           = sectionSize("web", "Web", "t", "Thickness between the flanges", 6).If("section", "i", "channel")
	SectionRadius = calc.Input{
		Key: "section_radius", Label: "Corner radius", Symbol: "r", Unit: unit.Millimetre, Optional: true,
		Help:   "Between web and flange, from the section table; blank counts corners as sharp",
		Limits: between(0, 60), Example: 12,
		When: &calc.When{Key: "section", In: []string{"i", "channel", "angle", "bar"}},
	}
	NominalSize = calc.Input{
		Key: "nominal_size", Label: "Nominal size", Help: "DN is metric, NPS is in inches; neither is the diameter",
		Choices: []calc.Choice{
			{Key: "dn6", Label: "DN 6, NPS 1/8"}, {Key: "dn8", Label: "DN 8, NPS 1/4"}, {Key: "dn10", Label: "DN 10, NPS 3/8"},
			{Key: "dn15", Label: "DN 15, NPS 1/2"}, {Key: "dn20", Label: "DN 20, NPS 3/4"}, {Key: "dn25", Label: "DN 25, NPS 1"},
			{Key: "dn32", Label: "DN 32, NPS 1 1/4"}, {Key: "dn40", Label: "DN 40, NPS 1 1/2"}, {Key: "dn50", Label: "DN 50, NPS 2"},
			{Key: "dn65", Label: "DN 65, NPS 2 1/2"}, {Key: "dn80", Label: "DN 80, NPS 3"}, {Key: "dn100", Label: "DN 100, NPS 4"},
			{Key: "dn125", Label: "DN 125, NPS 5"}, {Key: "dn150", Label: "DN 150, NPS 6"}, {Key: "dn200", Label: "DN 200, NPS 8"},
			{Key: "dn250", Label: "DN 250, NPS 10"}, {Key: "dn300", Label: "DN 300, NPS 12"}, {Key: "dn350", Label: "DN 350, NPS 14"},
			{Key: "dn400", Label: "DN 400, NPS 16"}, {Key: "dn450", Label: "DN 450, NPS 18"}, {Key: "dn500", Label: "DN 500, NPS 20"},
			{Key: "dn600", Label: "DN 600, NPS 24"},
		},
		When: &calc.When{Key: "section", In: []string{"pipe"}},
	}
	PipeRule = calc.Input{
		Key: "pipe_rule", Label: "Pipe made to", Help: "The two differ by up to 3 mm",
		Choices: []calc.Choice{{Key: "asme", Label: "ASME B36.10"}, {Key: "en", Label: "EN 10220, series 1"}},
		When:    &calc.When{Key: "section", In: []string{"pipe"}},
	}

	Tank = calc.Input{
		Key: "tank", Label: "Tank", Help: "The nearest one",
		Choices: []calc.Choice{{Key: "cylinder", Label: "Cylinder"}, {Key: "sphere", Label: "Sphere"}, {Key: "ellipsoid", Label: "Ellipsoid"}},
	}
	TankEnds = calc.Input{
		Key: "tank_ends", Label: "Ends", Help: "As seen from the side",
		Choices: []calc.Choice{
			{Key: "flat", Label: "Flat"}, {Key: "dished", Label: "Dished, 2:1 elliptical"}, {Key: "hemisphere", Label: "Half round"}, {Key: "cone", Label: "Cone"},
		},
		When: &calc.When{Key: "tank", In: []string{"cylinder"}},
	}
	EndsPainted = calc.Input{
		Key: "ends_painted", Label: "Ends to paint", Symbol: "n", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "1 where the tank stands on the other",
		Limits: between(0, 2), Example: 2,
		When: &calc.When{Key: "tank", In: []string{"cylinder"}},
	}
	ConeHeight = calc.Input{
		Key: "cone_height", Label: "Height of the cone", Symbol: "h", Unit: unit.Millimetre,
		Help:   "Of one end, along its axis",
		Limits: between(1, 100000), Example: 800,
		When: &calc.When{Key: "tank_ends", In: []string{"cone"}},
	}

	SheetKind = calc.Input{
		Key: "sheet_kind", Label: "Sheet", Help: "How the holes are made and stand",
		Choices: []calc.Choice{
			{Key: "mesh", Label: "Wire mesh, woven or welded"}, {Key: "staggered", Label: "Round holes, staggered at 60°"}, {Key: "square", Label: "Round holes in straight rows"},
		},
	}
	Wire           = holeSize("wire", "Wire", "d", "Thickness of one wire", 2).If("sheet_kind", "mesh")
	MeshOpening    = holeSize("mesh_opening", "Opening", "w", "Clear width between two wires", 10).If("sheet_kind", "mesh")
	Hole           = holeSize("hole", "Hole", "d", "Diameter of one hole", 5).If("sheet_kind", "staggered", "square")
	HolePitch      = holeSize("hole_pitch", "Pitch", "p", "Middle of one hole to the middle of the next", 8).If("sheet_kind", "staggered", "square")
	SheetThickness = holeSize("sheet_thickness", "Thickness", "t", "Of the sheet", 1.5).If("sheet_kind", "staggered", "square")
	SheetArea      = calc.Input{
		Key: "sheet_area", Label: "Area of the sheet", Symbol: "A_0", Unit: unit.SquareMetre,
		Help:   "Length by width of the panel, holes and all",
		Limits: between(0.001, 5000), Example: 1,
	}
)

func sectionSize(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Millimetre, Limits: between(1, 1500), Example: example}
}

func holeSize(key string, label calc.Phrase, symbol string, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Symbol: symbol, Help: help, Unit: unit.Millimetre, Limits: between(0.05, 200), Example: example}
}
