package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// Where a mixed cup has stood, and when a coat may be gone over again.
var (
	StoodFor = calc.Input{
		Key: "stood_for", Label: "Stood for", Symbol: "dt", Unit: unit.Minute,
		Help:   "From mixing, or from the last move",
		Limits: between(0, 2880), Example: 20,
	}
	StoodAt = calc.Input{
		Key: "stood_at", Label: "Stood at", Symbol: "T", Unit: unit.DegC,
		Help:   "The warmth of the cup there",
		Limits: between(0, 60), Example: 26,
	}
	RecoatTime = calc.Input{
		Key: "recoat_time", Label: "Earliest recoat", Symbol: "t_ref", Unit: unit.Hour,
		Help:   "As the sheet states it, for the coat you mean to go over",
		Limits: between(0.1, 500), Example: 4,
	}
	RecoatAt = calc.Input{
		Key: "recoat_at", Label: "Recoat times are stated at", Symbol: "T_ref", Unit: unit.DegC,
		Help:   "Often 20 or 23 °C; the sheet says",
		Limits: between(0, 50), Example: 20,
	}
	RecoatSecond = calc.Input{
		Key: "recoat_second", Label: "Second earliest recoat", Symbol: "t_2", Unit: unit.Hour, Optional: true,
		Help:   "If the sheet gives it at another temperature too",
		Limits: between(0.1, 500), Example: 2,
	}
	RecoatSecondAt = calc.Input{
		Key: "recoat_second_at", Label: "Second one is stated at", Symbol: "T_2", Unit: unit.DegC, Optional: true,
		Help:   "The other temperature",
		Limits: between(0, 50), Example: 30,
	}
	CoatDone = calc.Input{
		Key: "coat_done", Label: "The coat was finished at", Words: "9:30", Optional: true,
		Help:  "Time of day, as 9:30, to be told times of day; may stay blank",
		Check: CheckClock,
	}
)
