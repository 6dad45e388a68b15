package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The shop, as a day is planned in it.
var (
	Painters = calc.Input{
		Key: "painters", Label: "Painters", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "Each with a gun",
		Limits: between(1, 8), Example: 1,
	}
	Booths = calc.Input{
		Key: "booths", Label: "Booths", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "That can be sprayed in at the same time",
		Limits: between(1, 8), Example: 1,
	}
	BoothRoom = calc.Input{
		Key: "booth_room", Label: "Jobs wet in one booth", Unit: unit.One, Whole: true, Optional: true,
		Help:   "How many may stand in it at once; blank for any number",
		Limits: between(1, 60), Example: 1,
	}
	PrepBays = calc.Input{
		Key: "prep_bays", Label: "Prep bays", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "Where parts are sanded and masked",
		Limits: between(1, 8), Example: 1,
	}
	Ovens = calc.Input{
		Key: "ovens", Label: "Ovens or bake bays", Unit: unit.One, Whole: true, Prefill: true,
		Help:   "0 where you bake in the booth, which holds it",
		Limits: between(0, 8), Example: 0,
	}
	RinseSame = calc.Input{
		Key: "rinse_same", Label: "Rinse, same product", Unit: unit.Minute, Prefill: true,
		Help:   "From one cup to the next",
		Limits: between(0, 120), Example: 2,
	}
	RinseDarker = calc.Input{
		Key: "rinse_darker", Label: "Rinse, light to dark", Unit: unit.Minute, Prefill: true,
		Help:   "The gun, for a darker colour",
		Limits: between(0, 120), Example: 6,
	}
	RinseLighter = calc.Input{
		Key: "rinse_lighter", Label: "Rinse, dark to light", Unit: unit.Minute, Prefill: true,
		Help:   "The gun, for a lighter colour",
		Limits: between(0, 120), Example: 10,
	}
	RinseClear = calc.Input{
		Key: "rinse_clear", Label: "Rinse, to or from clear", Unit: unit.Minute, Prefill: true,
		Help:   "Also to and from anything else without a shade, such as a primer",
		Limits: between(0, 120), Example: 6,
	}
	CleanTime = calc.Input{
		Key: "clean_time", Label: "Put the gun down clean", Unit: unit.Minute, Prefill: true,
		Help:   "Before the painter turns to prep",
		Limits: between(0, 120), Example: 8,
	}
	WalkTime = calc.Input{
		Key: "walk_time", Label: "Walking in", Unit: unit.Minute, Prefill: true,
		Help:   "Into the booth with a full gun, and dressed for it",
		Limits: between(0, 120), Example: 2,
	}
	DoorTime = calc.Input{
		Key: "door_time", Label: "After the door", Unit: unit.Minute, Prefill: true,
		Help:   "Until the air is steady again and spraying may begin",
		Limits: between(0, 120), Example: 1,
	}
	RinseInside = calc.Input{
		Key: "rinse_inside", Label: "Rinsing", Help: "Rinsing outside takes the painter out of the booth", Prefill: true,
		Choices: []calc.Choice{{Key: "no", Label: "Outside the booth"}, {Key: "yes", Label: "In the booth"}},
	}
	ShareCups = calc.Input{
		Key: "share_cups", Label: "One cup for several jobs", Help: "Jobs in one product are sprayed out of one cup where that helps", Prefill: true,
		Choices: []calc.Choice{{Key: "yes", Label: "Where it helps"}, {Key: "no", Label: "Never"}},
	}
	Aim = calc.Input{
		Key: "aim", Label: "What counts most", Help: "Rinses, walks, cups and left-over paint always count a little", Prefill: true,
		Choices: []calc.Choice{
			{Key: "promises", Label: "Promises, then going home"}, {Key: "home", Label: "Going home early"}, {Key: "waste", Label: "Promises, then little waste"},
		},
	}
	Tried = calc.Input{
		Key: "tried", Label: "Steps to try", Unit: unit.One, Whole: true, Optional: true,
		Help:   "More finds better plans and takes longer; blank for a quick first plan",
		Limits: between(0, 20_000_000), Example: 20000,
	}
)

// What is sprayed on a day, and what it is sprayed with.
var (
	Shade = calc.Input{
		Key: "shade", Label: "Shade", Help: "Decides how long the rinse to the next colour takes", Prefill: true,
		Choices: []calc.Choice{
			{Key: "none", Label: "Clear, or no colour that shows"}, {Key: "lightest", Label: "Lightest"}, {Key: "light", Label: "Light"},
			{Key: "middle", Label: "Middle"}, {Key: "dark", Label: "Dark"}, {Key: "darkest", Label: "Darkest"},
		},
	}
	JobName = calc.Input{
		Key: "job_name", Label: "Job", Words: "Lids",
		Help: "As you call it; no two the same",
	}
	JobParts = calc.Input{
		Key: "job_parts", Label: "Parts", Words: "12 cargo-box lids", Optional: true,
		Help: "What is sprayed together, coat after coat",
	}
	ReadyFrom = calc.Input{
		Key: "ready_from", Label: "Ready from", Words: "7:30", Optional: true,
		Help:  "When the parts are there; blank from the start",
		Check: CheckClock,
	}
	PromisedBy = calc.Input{
		Key: "promised_by", Label: "Promised by", Words: "16:30", Optional: true,
		Help:  "Blank where nothing is promised",
		Check: CheckClock,
	}
	Priority = calc.Input{
		Key: "priority", Label: "If not all can be in time", Help: "Which jobs come first where time is short", Prefill: true,
		Choices: []calc.Choice{{Key: "usual", Label: "Like the others"}, {Key: "high", Label: "Before others"}, {Key: "low", Label: "After others"}},
	}
	PrepTime = calc.Input{
		Key: "prep_time", Label: "Prep", Unit: unit.Minute, Optional: true,
		Help:   "Sanding and masking before the first coat; blank where it is done",
		Limits: between(1, 600), Example: 20,
	}
	PrepBy = calc.Input{
		Key: "prep_by", Label: "Prep is done by", Help: "A painter cannot spray meanwhile", Prefill: true,
		Choices: []calc.Choice{{Key: "painter", Label: "A painter"}, {Key: "other", Label: "Someone else"}},
	}
	BakeHeat = calc.Input{
		Key: "bake_heat", Label: "Bake at", Unit: unit.DegC, Optional: true,
		Help:   "Bakes of the same time and heat may join; blank, it is baked by itself",
		Limits: between(20, 250), Example: 60,
	}
	OfJob = calc.Input{
		Key: "of_job", Label: "Job", Words: "Lids", Optional: true,
		Help: "Named as in the jobs; blank where there is only one",
	}
	SprayTime = calc.Input{
		Key: "spray_time", Label: "Spraying one coat", Unit: unit.Minute,
		Help:   "From the first stroke to the last, turning the parts included",
		Limits: between(0.5, 600), Example: 8,
	}
	CoatAmount = calc.Input{
		Key: "coat_amount", Label: "Paint for one coat", Symbol: "V", Unit: unit.Millilitre, Optional: true,
		Help:   "Blank where cups need not be counted",
		Limits: between(1, 20000), Example: 250,
	}
	FlashLast = calc.Input{
		Key: "flash_last", Label: "Flash-off after the last", Unit: unit.Minute, Optional: true,
		Help:   "Before another product or the bake; blank for the same",
		Limits: between(0, 1440), Example: 15,
	}
	RecoatWithin = calc.Input{
		Key: "recoat_within", Label: "Next coat or bake within", Unit: unit.Minute, Optional: true,
		Help:   "Minutes from the end of a coat; blank where the sheet sets no latest",
		Limits: between(1, 10000), Example: 60,
	}
	NewCup = calc.Input{
		Key: "new_cup", Label: "Cup", Help: "A cup serves as many coats as it holds and its pot life lasts for", Prefill: true,
		Choices: []calc.Choice{{Key: "no", Label: "On from the coat before"}, {Key: "yes", Label: "A new one for every coat"}},
	}
	MayLeave = calc.Input{
		Key: "may_leave", Label: "After the flash-off", Help: "Whether the parts may be moved before the next coat", Prefill: true,
		Choices: []calc.Choice{{Key: "no", Label: "They stay in the booth"}, {Key: "yes", Label: "They may leave the booth"}},
	}
)
