package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A time that runs, entered by hand.
var (
	Timed = calc.Input{
		Key: "timed", Label: "What runs",
		Help: "Pot life is counted from mixing, the others from the end of the coat or the start of the bake",
		Choices: []calc.Choice{{Key: "flash", Label: "Flash-off"}, {Key: "pot", Label: "Pot life"}, {Key: "recoat", Label: "Recoat window"},
			{Key: "bake", Label: "Bake"}},
	}
	TimeLeast = calc.Input{
		Key: "time_least", Label: "Not before", Symbol: "t_low", Unit: unit.Minute,
		Help:   "The time to wait at least, as the sheet or your own trial has it",
		Limits: between(0.5, 40320), Example: 12,
		When: &calc.When{Key: "timed", In: []string{"flash", "recoat", "bake"}},
	}
	TimeMost = calc.Input{
		Key: "time_most", Label: "At the latest", Symbol: "t_high", Unit: unit.Minute, Optional: true,
		Help:   "Where there is one",
		Limits: between(0.5, 40320), Example: 20,
		When: &calc.When{Key: "timed", In: []string{"flash", "recoat", "bake"}},
	}
	BegunAgo = calc.Input{
		Key: "begun_ago", Label: "Began this long ago", Symbol: "t_0", Unit: unit.Minute, Prefill: true,
		Help:   "A pot life begins when the hardener goes in",
		Limits: between(0, 40320), Example: 0,
	}
)
