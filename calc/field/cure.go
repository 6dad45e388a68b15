package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A bake, and the oven it happens in.
var (
	DryTimeSecond = calc.Input{
		Key: "dry_time_second", Label: "Second drying time", Symbol: "t_2", Unit: unit.Minute, Optional: true,
		Help:   "If the sheet gives it at another temperature too",
		Limits: between(1, 20160), Example: 60,
	}
	DryAtSecond = calc.Input{
		Key: "dry_at_second", Label: "Second drying time is stated at", Symbol: "T_2", Unit: unit.DegC, Optional: true,
		Help:   "The other temperature",
		Limits: between(5, 200), Example: 50,
	}
	BakeTimed = calc.Input{
		Key: "bake_timed", Label: "Bake time is counted", Help: "A sheet nearly always means the metal at temperature",
		Choices: []calc.Choice{{Key: "metal", Label: "From the metal at temperature"}, {Key: "door", Label: "From closing the door"}},
	}
	BakeTime = calc.Input{
		Key: "bake_time", Label: "You bake for", Symbol: "t_b", Unit: unit.Minute, Optional: true,
		Help:   "To see whether it is enough; blank to be told only how long it takes",
		Limits: between(1, 2880), Example: 40,
	}
	Metal = calc.Input{
		Key: "metal", Label: "Metal temperature", Symbol: "T", Unit: unit.DegC,
		Help:   "Surface thermometer on the thickest part",
		Limits: between(10, 250), Example: 55,
		When: &calc.When{Key: "bake_timed", In: []string{"metal"}},
	}
	OvenAir = calc.Input{
		Key: "oven_air", Label: "Oven air", Symbol: "T_a", Unit: unit.DegC,
		Help:   "What the oven holds, measured near the part",
		Limits: between(25, 250), Example: 65,
		When: &calc.When{Key: "bake_timed", In: []string{"door"}},
	}
	MetalStart = calc.Input{
		Key: "metal_start", Label: "Metal when the door closes", Symbol: "T_0", Unit: unit.DegC,
		Help:   "Usually the air in the shop",
		Limits: between(-10, 100), Example: 20,
		When: &calc.When{Key: "bake_timed", In: []string{"door"}},
	}
	MetalReading = calc.Input{
		Key: "metal_reading", Label: "Metal reads", Symbol: "T_m", Unit: unit.DegC,
		Help:   "One reading while it heats up, on the thickest part",
		Limits: between(-10, 250), Example: 48,
		When: &calc.When{Key: "bake_timed", In: []string{"door"}},
	}
	ReadingAfter = calc.Input{
		Key: "reading_after", Label: "Metal was read after", Symbol: "t_m", Unit: unit.Minute,
		Help:   "Minutes from closing the door to that reading",
		Limits: between(0.5, 240), Example: 10,
		When: &calc.When{Key: "bake_timed", In: []string{"door"}},
	}
	MetalLowest = calc.Input{
		Key: "metal_lowest", Label: "Lowest metal temperature for a bake", Unit: unit.DegC, Optional: true,
		Help:   "If the sheet names one; otherwise nothing more than 15 °C (27 °F) below its bake counts",
		Limits: between(10, 200), Example: 45,
	}
	MetalHighest = calc.Input{
		Key: "metal_highest", Label: "Highest metal temperature", Unit: unit.DegC, Optional: true,
		Help:   "If the sheet names one; otherwise 15 °C (27 °F) above its bake",
		Limits: between(20, 250), Example: 80,
	}
)
