package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What belongs to the shop and its ways of working.
var (
	CupSize = calc.Input{
		Key: "cup_size", Label: "Cup size", Unit: unit.Millilitre,
		Help:   "What you mix at one time: the gun's cup, or the pot you fill it from",
		Limits: between(20, 20000), Example: 600,
	}
	ScaleStep = calc.Input{
		Key: "scale_step", Label: "Scale reads to", Symbol: "d", Unit: unit.Gram, Prefill: true,
		Help:   "The smallest step of the scale",
		Limits: between(0.01, 50), Example: 0.1,
	}
	Losses = calc.Input{
		Key: "losses", Label: "Lost with each cup", Symbol: "H", Unit: unit.Millilitre, Prefill: true,
		Help:   "What stays in cup, filter and gun",
		Limits: between(0, 5000), Example: 40,
	}
	Confidence = calc.Input{
		Key: "confidence", Label: "How sure not to run short", Symbol: "p", Unit: unit.Percent, Prefill: true,
		Help:   "95 % runs short one job in twenty; more costs left-over paint",
		Limits: between(50, 99), Example: 95,
	}
	FilmSpread = calc.Input{
		Key: "film_spread", Label: "Your film varies by", Symbol: "u_f", Unit: unit.Percent, Prefill: true,
		Help:   "Standard deviation of the job's mean film; 10 % if you never measured it",
		Limits: between(0, 40), Example: 10,
	}
	TransferSpread = calc.Input{
		Key: "transfer_spread", Label: "Transfer efficiency varies by", Symbol: "u_t", Unit: unit.Percent, Prefill: true,
		Help:   "Standard deviation from job to job, as a share of the figure itself",
		Limits: between(0, 40), Example: 10,
	}
	MixTime = calc.Input{
		Key: "mix_time", Label: "Mixing a cup takes", Unit: unit.Minute, Prefill: true,
		Help:   "From opening the tins to the cup on the gun",
		Limits: between(0, 120), Example: 5,
	}
	RinseTime = calc.Input{
		Key: "rinse_time", Label: "Changing product takes", Unit: unit.Minute, Prefill: true,
		Help:   "Rinsing the gun and changing the cup",
		Limits: between(0, 120), Example: 8,
	}
	CleanerLost = calc.Input{
		Key: "cleaner_lost", Label: "Cleaning solvent lost", Unit: unit.Gram, Optional: true,
		Help:   "Weight that evaporates over the whole job; what you collect does not count",
		Limits: between(0, 1e6), Example: 50,
	}
	Clock = calc.Input{
		Key: "clock", Label: "Start of mixing", Words: "8:00", Optional: true,
		Help:  "Time of day, as 8:00; blank counts from zero",
		Check: CheckClock,
	}
	Limits = calc.Input{
		Key: "limits", Label: "VOC limits", Help: "Which table to hold the job against; check your local rule, it may be stricter",
		Prefill: true,
		Choices: []calc.Choice{
			{Key: "none", Label: "None"}, {Key: "eu", Label: "EU: Directive 2004/42/EC, Annex II B"}, {Key: "us", Label: "US: 40 CFR 59, subpart B"},
		},
	}
	CombStep = calc.Input{
		Key: "comb_step", Label: "Comb teeth step by", Unit: unit.Micrometre, Prefill: true,
		Help:   "Difference between neighbouring teeth of your wet-film comb",
		Limits: between(1, 500), Example: 25,
	}
)
