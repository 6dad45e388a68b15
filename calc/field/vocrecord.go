package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A shop's record of what it used.
var (
	RecordMonth = calc.Input{
		Key: "record_month", Label: "Month number", Unit: unit.One, Whole: true,
		Help:   "1 for the first month of your record, and so on past 12; lines of one month are added up",
		Limits: between(1, 240), Example: 1,
	}
	RecordVolume = calc.Input{
		Key: "record_volume", Label: "Used", Symbol: "V", Unit: unit.Litre,
		Help:   "Ready to spray, left-over that dried up too",
		Limits: between(0, 100000), Example: 12,
	}
	RecordVOC = vocOf("record_voc", "VOC in a litre of it", "VOC_a", "As it is in the cup, water counted in: for emissions, not for limits", 420)
	MassLimit = calc.Input{
		Key: "mass_limit", Label: "Limit for 12 months", Symbol: "L", Unit: unit.Kilogram, Optional: true,
		Help:   "From your permit or local rule; may stay blank",
		Limits: between(0.1, 1e6), Example: 500,
	}
)
