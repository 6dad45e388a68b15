package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What things cost, in the shop's own money.
var (
	Labour = calc.Input{
		Key: "labour", Label: "Labour", Symbol: "t", Unit: unit.Minute, Optional: true,
		Help:   "Minutes of work on the whole job; blank to leave labour out",
		Limits: between(0, 100000), Example: 90,
	}
	Wage = calc.Input{
		Key: "wage", Label: "Cost of an hour's work", Symbol: "w", Unit: unit.PricePerHour, Optional: true,
		Help:   "What an hour costs the shop, in your own money",
		Limits: between(0, 100000), Example: 36,
	}
	TinParts = calc.Input{
		Key: "tin_parts", Label: "Parts in the mix", Symbol: "r", Unit: unit.PartsByVolume,
		Help:   "Its number in the ratio by volume",
		Limits: between(0.01, 1000), Example: 4,
	}
	TinSize = calc.Input{
		Key: "tin_size", Label: "Tin holds", Symbol: "S", Unit: unit.Millilitre,
		Help:   "As bought",
		Limits: between(10, 1e6), Example: 1000,
	}
	TinPrice = calc.Input{
		Key: "tin_price", Label: "Tin costs", Symbol: "P", Unit: unit.PlainMoney,
		Help:   "In your own money",
		Limits: between(0, 1e6), Example: 45,
	}
	LeftOver = calc.Input{
		Key: "cup_left_over", Label: "Left over at the end", Symbol: "V_0", Unit: unit.Millilitre, Optional: true,
		Help:   "What you throw away of this cup",
		Limits: between(0, 200000), Example: 50,
	}
)
