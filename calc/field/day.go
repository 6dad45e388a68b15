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
		Key: "priority", Label: "If not all can be in time", Help: "Which jobs are rather late than others", Prefill: true,
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
		Help:   "Bakes of the same time and heat may join",
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

// What the clock brings: breaks, what is done, what is held.
var (
	BreakFrom = calc.Input{
		Key: "break_from", Label: "From", Words: "12:00",
		Help:  "Nothing is mixed or sprayed; flash-off and bakes go on",
		Check: CheckClock,
	}
	BreakTo = calc.Input{
		Key: "break_to", Label: "To", Words: "12:30",
		Help:  "When work goes on",
		Check: CheckClock,
	}
	PainterNumber = calc.Input{
		Key: "painter_number", Label: "Painter", Unit: unit.One, Whole: true, Optional: true,
		Help:   "By number; blank for any",
		Limits: between(1, 8), Example: 1,
	}
	PlaceNumber = calc.Input{
		Key: "place_number", Label: "Booth, bay or oven", Unit: unit.One, Whole: true, Optional: true,
		Help:   "By number; blank for any",
		Limits: between(1, 8), Example: 1,
	}
	DayStep = calc.Input{
		Key: "day_step", Label: "Step", Help: "Of that job",
		Choices: []calc.Choice{{Key: "prep", Label: "Prep"}, {Key: "spray", Label: "A coat"}, {Key: "bake", Label: "Bake"}},
	}
	CoatNumber = calc.Input{
		Key: "coat_number", Label: "Coat", Unit: unit.One, Whole: true,
		Help:   "Counted over all products of the job",
		Limits: between(1, 100), Example: 1,
		When: &calc.When{Key: "day_step", In: []string{"spray"}},
	}
	StartedAt = calc.Input{
		Key: "started_at", Label: "Started", Words: "8:00",
		Help:  "Time of day",
		Check: CheckClock,
	}
	EndedAt = calc.Input{
		Key: "ended_at", Label: "Ended", Words: "8:20",
		Help:  "Time of day; of what still goes on, when it will end",
		Check: CheckClock,
	}
	CupNumber = calc.Input{
		Key: "cup_number", Label: "Cup", Unit: unit.One, Whole: true, Optional: true,
		Help:   "The same number for what came out of one cup",
		Limits: between(1, 999), Example: 1,
		When: &calc.When{Key: "day_step", In: []string{"spray"}},
	}
	MixedAt = calc.Input{
		Key: "mixed_at", Label: "Mixed", Words: "8:32", Optional: true,
		Help:  "When the hardener went in; blank for just before",
		Check: CheckClock,
		When:  &calc.When{Key: "day_step", In: []string{"spray"}},
	}
	HeldAt = calc.Input{
		Key: "held_at", Label: "Starts", Words: "10:30", Optional: true,
		Help:  "Blank to hold the painter or the place alone",
		Check: CheckClock,
	}
	Now = calc.Input{
		Key: "now", Label: "Now", Words: "10:15", Optional: true,
		Help:  "Nothing but what is done starts before; blank plans the day from its start",
		Check: CheckClock,
	}
)

// What changes a day's form from outside it.
var (
	DayForm = calc.Input{
		Key: "day_form", Label: "Form of the day", Words: "paint.1.product=Ivory&job.1.job_name=Lids&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10", Optional: true, Most: 400_000,
		Help: "As a link holds it",
	}
	DayChange = calc.Input{
		Key: "day_change", Label: "Change", Help: "What to do with the form",
		Choices: []calc.Choice{
			{Key: "hold", Label: "Hold a step"}, {Key: "free", Label: "Let a step go"}, {Key: "done", Label: "A step is done"}, {Key: "undo", Label: "A step is not done after all"},
			{Key: "now", Label: "Plan again from now"}, {Key: "add", Label: "Add jobs"},
		},
	}
	StepOf = calc.Input{
		Key: "step_of", Label: "Which step", Words: "1-5-1", Help: "As the plan names it",
		When: &calc.When{Key: "day_change", In: []string{"hold", "free", "done", "undo"}},
	}
	ToTime = calc.Input{
		Key: "to_time", Label: "Starts at", Words: "10:00", Optional: true,
		Help:  "Time of day; blank for as planned",
		Check: CheckClock,
		When:  &calc.When{Key: "day_change", In: []string{"hold", "done", "now"}},
	}
	Along = calc.Input{
		Key: "along", Label: "Down the timeline", Unit: unit.One, Optional: true,
		Help:   "Where a step was dragged to, in the picture's own measure",
		Limits: between(0, 100000), Example: 300,
		When: &calc.When{Key: "day_change", In: []string{"hold"}},
	}
	ByPainter = calc.Input{
		Key: "by_painter", Label: "By painter", Unit: unit.One, Whole: true, Optional: true,
		Help:   "Blank for as it is",
		Limits: between(1, 8), Example: 1,
		When: &calc.When{Key: "day_change", In: []string{"hold", "done"}},
	}
	EndTime = calc.Input{
		Key: "end_time", Label: "Ended at", Words: "10:08", Optional: true,
		Help:  "Blank for as planned",
		Check: CheckClock,
		When:  &calc.When{Key: "day_change", In: []string{"done"}},
	}
	Added = calc.Input{
		Key: "added", Label: "Rows to add", Words: "job.1.job_name=Mudguards&coat.1.of_job=Mudguards&coat.1.product=Ivory&coat.1.coats=1&coat.1.spray_time=6&coat.1.flash=10", Most: 400_000,
		Help: "Products, jobs and coats, as a link holds them",
		When: &calc.When{Key: "day_change", In: []string{"add"}},
	}
)
