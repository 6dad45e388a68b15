package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What a dry-film gauge shows, and what the specification asks of it.
var (
	GaugeReading = calc.Input{
		Key: "gauge_reading", Label: "Reading", Symbol: "x", Unit: unit.Micrometre,
		Help:   "In the order you took them, three to a spot",
		Limits: between(0, 5000), Example: 105,
	}
	FilmLeast = calc.Input{
		Key: "film_least", Label: "Lowest film specified", Symbol: "least", Unit: unit.Micrometre, Optional: true,
		Help:   "Where a range is specified",
		Limits: between(1, 5000), Example: 90,
	}
	FilmMost = calc.Input{
		Key: "film_most", Label: "Highest film specified", Symbol: "most", Unit: unit.Micrometre, Optional: true,
		Help:   "Where a range is specified",
		Limits: between(1, 5000), Example: 140,
	}
	ProfileGrade = calc.Input{
		Key: "profile_grade", Label: "Profile to take off", Prefill: true,
		Help: "Only where the gauge was set on smooth steel and the paint is on blasted steel",
		Choices: []calc.Choice{
			{Key: "none", Label: "None"}, {Key: "fine", Label: "ISO 8503 fine"}, {Key: "medium", Label: "ISO 8503 medium"}, {Key: "coarse", Label: "ISO 8503 coarse"},
		},
	}
)
