package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What is asked to tell how far paint goes, and where it went.
var (
	PaintLeft = calc.Input{
		Key: "paint_left", Label: "Paint left", Symbol: "V", Unit: unit.Millilitre,
		Help:   "Ready to spray",
		Limits: between(1, 200000), Example: 500,
	}
	FindOut = calc.Input{
		Key: "find_out", Label: "Find", Help: "The other one is what you know",
		Choices: []calc.Choice{{Key: "film", Label: "The dry film"}, {Key: "transfer", Label: "The transfer efficiency"}},
	}
	UsedBy = calc.Input{
		Key: "used_by", Label: "Paint used is known by", Help: "Weighing gun and cup before and after is the surer way",
		Choices: []calc.Choice{{Key: "volume", Label: "Volume"}, {Key: "weight", Label: "Weight"}},
	}
	PaintUsed = calc.Input{
		Key: "paint_used", Label: "Paint sprayed", Symbol: "V", Unit: unit.Millilitre,
		Help:   "What left the gun, without what stayed in the cup",
		Limits: between(1, 1e6), Example: 800,
		When: &calc.When{Key: "used_by", In: []string{"volume"}},
	}
	PaintWeighed = calc.Input{
		Key: "paint_weighed", Label: "Weight sprayed", Symbol: "m", Unit: unit.Gram,
		Help:   "Gun and cup before, less gun and cup after",
		Limits: between(1, 1e6), Example: 900,
		When: &calc.When{Key: "used_by", In: []string{"weight"}},
	}
	FilmMeasured = calc.Input{
		Key: "film_measured", Label: "Dry film measured", Symbol: "DFT", Unit: unit.Micrometre,
		Help:   "Mean of the gauge readings over the whole area",
		Limits: between(1, 5000), Example: 55,
		When: &calc.When{Key: "find_out", In: []string{"transfer"}},
	}

	ProfileHeight = calc.Input{
		Key: "profile_height", Label: "Blast profile", Symbol: "R", Unit: unit.Micrometre,
		Help:   "Peak to valley, by replica tape, needle gauge or comparator",
		Limits: between(1, 400), Example: 75,
	}

	BlendShape = calc.Input{
		Key: "blend_shape", Label: "Blend", Help: "Where the film runs out to nothing",
		Choices: []calc.Choice{{Key: "edge", Label: "Along an edge"}, {Key: "spot", Label: "Around a spot"}},
	}
	BlendLength  = size("blend_length", "Length of the blend", "Along the edge that fades", 900).If("blend_shape", "edge")
	SpotDiameter = size("spot_diameter", "Spot at full film", "Across the part of it that gets the full film", 150).If("blend_shape", "spot")
	BlendWidth   = size("blend_width", "Width of the blend", "From full film to nothing", 200)
)
