package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
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
	Counted = calc.Input{
		Key: "counted", Label: "Done or under way", Words: "1-5-1 2-5-1", Optional: true, Most: 20_000,
		Help: "As the plan names them, at its times; blank for none but what is ticked off",
		When: &calc.When{Key: "day_change", In: []string{"now"}},
	}
	Added = calc.Input{
		Key: "added", Label: "Rows to add", Words: "job.1.job_name=Mudguards&coat.1.of_job=Mudguards&coat.1.product=Ivory&coat.1.coats=1&coat.1.spray_time=6&coat.1.flash=10", Most: 400_000,
		Help: "Products, jobs and coats, as a link holds them",
		When: &calc.When{Key: "day_change", In: []string{"add"}},
	}
)
