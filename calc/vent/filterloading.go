package vent

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FilterLoading tells what a job puts on the booth's filters, and when they are full.
func FilterLoading() *calc.Calculator {
	return &calc.Calculator{
		ID:       "filter-loading",
		Title:    "Overspray in the filters",
		Question: "How much paint goes into the filters, and when are they full?",
		Range: "All overspray solids are taken to reach the filters, though some settles on floor and walls: they last a little longer than this. " +
			"What they hold depends on the paint; the sheet's figure is for one that dried as its tester's did.",
		Inputs: []calc.Input{
			field.Sprayed, field.MixDensity, field.SolidsWeight, field.TransferEfficiency, field.FilterCapture, field.FilterHolds, field.FilterHas,
		},
		Outputs:    []calc.Output{overspray, caught, escapes, jobsLeft},
		Work:       filterLoading,
		Cautions:   []calc.Phrase{"The pressure gauge across the filters says when to change them, not this sum. Loaded filters can heat up by themselves: take them out of the building as your fire code says.", caution.Estimate, caution.Isocyanate},
		Arithmetic: true,
	}
}

var (
	overspray = calc.Output{Key: "overspray", Label: "Solids that miss the part", Unit: unit.Gram, Main: true}
	caught    = calc.Output{Key: "caught", Label: "Caught by the filters", Unit: unit.Gram}
	escapes   = calc.Output{Key: "escapes", Label: "Goes through them", Unit: unit.Gram, Decimals: 1}
	jobsLeft  = calc.Output{Key: "jobs_left", Label: "Jobs like this until they are full", Unit: unit.One, Decimals: 1, Optional: true}
)

func filterLoading(w *calc.Working) {
	v, rho, solids := w.Given(field.Sprayed), w.Given(field.MixDensity), w.Given(field.SolidsWeight)
	te, eta, holds, has := w.Given(field.TransferEfficiency), w.Given(field.FilterCapture), w.Given(field.FilterHolds), w.Given(field.FilterHas)
	missed := w.Step("Solids that miss the part", "m = V * rho * W_s / 100 * (1 - TE / 100)", unit.Gram, source.Definition,
		v.V*rho.V*solids.V/100*(1-te.V/100), v, rho, solids, te)
	held := w.Step("Caught by the filters", "c = m * eta / 100", unit.Gram, source.Definition, missed.V*eta.V/100, missed, eta)
	w.Result(overspray, missed)
	w.Result(caught, held)
	w.Result(escapes, w.Step("Goes through the filters", "g = m - c", unit.Gram, source.Definition, missed.V-held.V, missed, held))
	room := holds
	if has.Given() {
		room = w.Step("Room left in the filters", "r = H - B", unit.Gram, source.Definition, holds.V-has.V, holds, has)
	}
	if room.V <= 0 {
		w.Judge(calc.Stop, calc.Say("The filters are full"), calc.Say("Change them before you spray"))
		return
	}
	if held.V <= 0 {
		return
	}
	jobs := w.Step("Jobs like this until full", "n = r / c", unit.One, source.Definition, room.V/held.V, room, held)
	w.Result(jobsLeft, jobs)
	says := []calc.Arg{held.To(0, "held"), room.To(0, "room"), jobs.To(1, "jobs")}
	switch {
	case jobs.V < 1:
		w.Judge(calc.Stop, calc.Say("This job brings {held} and the filters have room for {room}", says...), calc.Say("Change them first"))
	case jobs.V < 2:
		w.Judge(calc.Wait, calc.Say("After this job they are nearly full: room for {room}, {held} to come", says...), calc.Say("Have a new set ready"))
	default:
		w.Judge(calc.Go, calc.Say("They take {jobs} jobs like this", says...), calc.Say("Watch the pressure gauge: it comes first"))
	}
}
