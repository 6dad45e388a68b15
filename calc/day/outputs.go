package day

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The places of the answer.
const (
	answerPlan    = "The plan"
	answerCall    = "Call sheet"
	answerJobs    = "Jobs"
	answerCups    = "Cups"
	answerWhere   = "Who and where"
	answerNumbers = "In numbers"
)

var (
	doneAt    = calc.Output{Key: "done_at", Place: answerPlan, Label: "Done", Words: true, Main: true, Optional: true}
	kept      = calc.Output{Key: "promises", Place: answerPlan, Label: "Promises kept", Words: true, Main: true, Optional: true}
	howGood   = calc.Output{Key: "how_good", Place: answerPlan, Label: "How good this plan is", Words: true, Optional: true}
	lateAll   = calc.Output{Key: "late_all", Place: answerNumbers, Label: "Late in all", Unit: unit.Minute, Optional: true}
	takes     = calc.Output{Key: "takes", Place: answerNumbers, Label: "From the start to the last job done", Unit: unit.Minute, Optional: true}
	atLeast   = calc.Output{Key: "at_least", Place: answerNumbers, Label: "No plan takes less than", Unit: unit.Minute, Optional: true}
	rinses    = calc.Output{Key: "rinses", Place: answerNumbers, Label: "Rinses", Unit: unit.One, Optional: true}
	rinsing   = calc.Output{Key: "rinsing", Place: answerNumbers, Label: "Minutes of rinsing", Unit: unit.Minute, Optional: true}
	trips     = calc.Output{Key: "trips", Place: answerNumbers, Label: "Walks into a booth", Unit: unit.One, Optional: true}
	cupsAll   = calc.Output{Key: "cups_all", Place: answerNumbers, Label: "Cups to mix", Unit: unit.One, Optional: true}
	mixAll    = calc.Output{Key: "to_mix_all", Place: answerNumbers, Label: "Mix in all", Unit: unit.Litre, Decimals: 2, Optional: true}
	leftAll   = calc.Output{Key: "left_over_all", Place: answerNumbers, Label: "Left in cups and guns", Unit: unit.Litre, Decimals: 2, Optional: true}
	triedNow  = calc.Output{Key: "tried_now", Place: answerPlan, Label: "Steps tried", Unit: unit.One, Optional: true}
	triedNext = calc.Output{Key: "tried_next", Place: answerPlan, Label: "Worth trying next, in steps", Unit: unit.One, Optional: true}

	from    = calc.Output{Key: "from", Label: "From", Words: true}
	until   = calc.Output{Key: "until", Label: "Until", Words: true}
	who     = calc.Output{Key: "who", Label: "Who", Words: true}
	what    = calc.Output{Key: "step", Label: "What", Words: true}
	mind    = calc.Output{Key: "note", Label: "Mind", Words: true}
	noLater = calc.Output{Key: "no_later", Label: "No later than", Words: true}
	call    = calc.Output{Key: "call", Place: answerCall, Label: "Call sheet", Look: "clock", Columns: []calc.Output{from, until, who, what, mind, noLater}, Optional: true}

	jobName  = calc.Output{Key: "job", Label: "Job", Words: true}
	jobParts = calc.Output{Key: "parts", Label: "Parts", Words: true}
	jobDone  = calc.Output{Key: "done", Label: "Done", Words: true}
	jobDue   = calc.Output{Key: "promised", Label: "Promised", Words: true}
	jobLate  = calc.Output{Key: "late", Label: "Late by", Unit: unit.Minute}
	jobsDone = calc.Output{Key: "jobs_done", Place: answerJobs, Label: "When each job is done", Columns: []calc.Output{jobName, jobParts, jobDone, jobDue, jobLate}, Optional: true}

	cupName   = calc.Output{Key: "cup", Label: "Cup", Words: true}
	cupOf     = calc.Output{Key: "product", Label: "Product", Words: true}
	cupVolume = calc.Output{Key: "volume", Label: "Mix", Unit: unit.Millilitre}
	cupMix    = calc.Output{Key: "mix_at", Label: "Mix at", Words: true}
	cupUse    = calc.Output{Key: "use_by", Label: "Use by", Words: true}
	cupFor    = calc.Output{Key: "for", Label: "For", Words: true}
	cupWhy    = calc.Output{Key: "why", Label: "Why", Words: true}
	cupsMixed = calc.Output{Key: "cups_mixed", Place: answerCups, Label: "Cups", Columns: []calc.Output{cupName, cupOf, cupVolume, cupMix, cupUse, cupFor, cupWhy}, Optional: true}

	lane   = calc.Output{Key: "lane", Label: "Who or where", Words: true}
	byLane = calc.Output{Key: "by_place", Place: answerWhere, Label: "By painter and place", Columns: []calc.Output{lane, from, until, what}, Optional: true}
	byJob  = calc.Output{Key: "by_job", Place: answerJobs, Label: "By job", Columns: []calc.Output{jobName, from, until, what}, Optional: true}
)

var dayOutputs = []*calc.Output{
	&doneAt, &kept, &howGood, &triedNow, &triedNext, &call, &jobsDone, &byJob, &cupsMixed,
	&lateAll, &takes, &atLeast, &rinses, &rinsing, &trips, &cupsAll, &mixAll, &leftAll, &byLane,
}

func outputs() []calc.Output {
	all := make([]calc.Output, len(dayOutputs))
	for i, out := range dayOutputs {
		all[i] = *out
	}
	return all
}
