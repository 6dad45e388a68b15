package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The gun and how it is held.
var (
	Gun = calc.Input{
		Key: "gun", Label: "Kind of gun", Help: "Stamped on the gun or in its sheet",
		Choices: []calc.Choice{
			{Key: "hvlp", Label: "HVLP"}, {Key: "reduced", Label: "Reduced pressure"}, {Key: "conventional", Label: "Conventional"},
		},
	}
	Pressure = calc.Input{
		Key: "pressure", Label: "Start pressure in ordinary air", Symbol: "P_ref", Unit: unit.PSI,
		Help:   "At the gun's inlet with the trigger pulled, as it works for you at 23 °C and 50 %",
		Limits: between(5, 90), Example: 27.5, Step: 1,
	}
	PressureMost = calc.Input{
		Key: "pressure_most", Label: "Rated highest pressure", Symbol: "P_max", Unit: unit.PSI,
		Help:   "Inlet pressure the gun's sheet allows",
		Limits: between(5, 120), Example: 29,
	}
	Delivery = calc.Input{
		Key: "delivery", Label: "Measured delivery", Symbol: "Q", Unit: unit.MillilitrePerMinute,
		Help:   "Spray into a cup for half a minute, weigh, double, and divide by the density; do not guess it from the tip",
		Limits: between(5, 5000), Example: 180, Step: 10,
	}
	FanWidth = calc.Input{
		Key: "fan_width", Label: "Fan width", Symbol: "w", Unit: unit.Millimetre,
		Help:   "Across the pattern at your spraying distance",
		Limits: between(10, 800), Example: 250,
	}
	GunDistance = calc.Input{
		Key: "gun_distance", Label: "Spraying distance", Symbol: "L", Unit: unit.Millimetre,
		Help:   "From cap to panel",
		Limits: between(50, 500), Example: 180, Step: 10,
	}
	GunSpeed = calc.Input{
		Key: "gun_speed", Label: "Gun speed", Symbol: "v", Unit: unit.MetrePerSecond,
		Help:   "Time a stroke over a known length; about 0.3 to 0.6 m/s is usual",
		Limits: between(0.02, 3), Example: 0.4, Step: 0.05,
	}
	Overlap = calc.Input{
		Key: "overlap", Label: "Overlap", Symbol: "o", Unit: unit.Percent,
		Help:   "How much of the last stroke the next one covers",
		Limits: between(0, 90), Example: 50, Step: 5,
	}
	TransferEfficiency = calc.Input{
		Key: "transfer_efficiency", Label: "Transfer efficiency", Symbol: "TE", Unit: unit.Percent,
		Help:   "Share of the sprayed solids that stays on the part; small parts are far lower than panels",
		Limits: between(5, 100), Example: 55,
	}
	TriggerShare = calc.Input{
		Key: "trigger_share", Label: "Trigger time", Symbol: "k", Unit: unit.Percent,
		Help:   "Share of the spraying time with the trigger pulled; the rest is turning and walking",
		Limits: between(5, 100), Example: 60, Prefill: true,
	}
)
