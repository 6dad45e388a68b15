package vent

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PurgeTime estimates how long a fan takes to clear a room's air.
func PurgeTime() *calc.Calculator {
	return &calc.Calculator{
		ID:       "purge-time",
		Title:    "Clearing the air",
		Question: "How long does the fan take to clear the booth's air?",
		Range: "An estimate for solvent vapour and mist without isocyanate, with nothing more given off. Perfect mixing is the quickest end, a mixing factor of 10 the slowest. " +
			"A clearance time measured with smoke always beats it.",
		Inputs: []calc.Input{
			field.Isocyanate, field.ChangesBy, field.RoomVolume.If("changes_by", "flow"), field.FanFlow.If("changes_by", "flow"), field.AirChanges,
			field.MixingFactor, field.LeftShare,
		},
		Outputs:  []calc.Output{purge, purgeLow, purgeHigh, oneChange},
		Work:     purgeTime,
		Cautions: []calc.Phrase{caution.Estimate, caution.Isocyanate},
	}
}

var (
	purge     = calc.Output{Key: "purge_time", Label: "Estimated time to clear", Unit: unit.Minute, Decimals: 1, Main: true}
	purgeLow  = calc.Output{Key: "purge_low", Label: "With perfect mixing", Unit: unit.Minute, Decimals: 1}
	purgeHigh = calc.Output{Key: "purge_high", Label: "With very poor mixing", Unit: unit.Minute, Decimals: 1}
	oneChange = calc.Output{Key: "one_change", Label: "One air change takes", Unit: unit.Minute, Decimals: 1}
)

func purgeTime(w *calc.Working) {
	if w.Picked(field.Isocyanate) == "yes" {
		w.Reject(field.Isocyanate, calc.Beyond, "cannot be answered for by any sum", "Keep air-fed protection on until the clearance time measured with smoke has passed")
		return
	}
	n, k, left := w.Given(field.AirChanges), w.Given(field.MixingFactor), w.Given(field.LeftShare)
	if !n.Given() {
		v, q := w.Given(field.RoomVolume), w.Given(field.FanFlow)
		n = w.Step("Air changes an hour", "n = Q / V_R", unit.One, source.Definition, q.V/v.V, q, v)
	}
	change := w.Step("One air change", "t_1 = 60 / n", unit.Minute, source.Definition, 60/n.V, n)
	takes := func(out calc.Output, k calc.Num) calc.Num {
		t := w.Step(out.Label, "t = K * t_1 * ln(100 / left)", unit.Minute, clearing, k.V*change.V*math.Log(100/left.V), k, change, left)
		w.Result(out, t)
		return t
	}
	w.Result(oneChange, change)
	mixing := source.CDC1994.At("mixing factor: 1 for perfect mixing, as high as 10 for poor").By(source.SecondHand)
	takes(purgeLow, w.Constant("Perfect mixing", unit.One, mixing, 1))
	takes(purgeHigh, w.Constant("Very poor mixing", unit.One, mixing, 10))
	t := takes(purge, k)
	w.Judge(calc.Wait, calc.Say("By estimate {left} is left after {t}", left.As("left"), t.To(1, "t")),
		calc.Say("Have the clearance time measured with smoke, post it on the booth, and go by that"))
}
