package cure

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// BakeEquivalent tells how long to bake at another temperature than the sheet's, or in an oven that heats slowly.
func BakeEquivalent() *calc.Calculator {
	return &calc.Calculator{
		ID:       "bake-equivalent",
		Title:    "A bake at another temperature",
		Question: "How long must I bake when the metal does not get to the sheet's temperature, or gets there slowly?",
		Range: "Metal between the lowest and the highest temperature the sheet allows; where it names none, within 15 °C (27 °F) of its bakes. " +
			"Sheet and thin castings, which are as warm inside as outside. A cure that stops short because the film has set hard is not foreseen.",
		Inputs: []calc.Input{
			stated, statedAt, field.DryTimeSecond, field.DryAtSecond, field.MetalLowest, field.MetalHighest,
			field.BakeTimed, field.Metal, field.OvenAir, field.MetalStart, field.MetalReading, field.ReadingAfter, field.BakeTime,
		},
		Outputs:  []calc.Output{bakeNeeded, bakeNeededLow, equivalentLow, equivalentHigh, timeConstant, energyFitted},
		Work:     bakeEquivalent,
		Cautions: []calc.Phrase{noRelease, caution.Bake},
	}
}

var (
	stated   = reworded(field.DryTime, "Bake on the sheet", "With the metal at temperature")
	statedAt = reworded(field.DryAt, "Sheet's bake is at", "Metal temperature")

	bakeNeeded     = calc.Output{Key: "bake_needed", Label: "Bake for", Unit: unit.Minute, Main: true}
	bakeNeededLow  = calc.Output{Key: "bake_needed_low", Label: "It cannot be through before", Unit: unit.Minute}
	equivalentLow  = calc.Output{Key: "equivalent_low", Label: "Your bake is worth at least", Unit: unit.Minute, Decimals: 1, Optional: true}
	equivalentHigh = calc.Output{Key: "equivalent_high", Label: "Your bake is worth at most", Unit: unit.Minute, Decimals: 1, Optional: true}
	timeConstant   = calc.Output{Key: "time_constant", Label: "Time constant of the part", Unit: unit.Minute, Decimals: 1, Optional: true}
)

func reworded(in calc.Input, label, help calc.Phrase) calc.Input {
	in.Label, in.Help = label, help
	return in
}

// A bake is what the sheet says of one.
type bake struct{ time, at, second, secondAt, lowest, highest calc.Num }

func bakeEquivalent(w *calc.Working) {
	b := bake{w.Given(stated), w.Given(statedAt), w.Given(field.DryTimeSecond), w.Given(field.DryAtSecond), w.Given(field.MetalLowest), w.Given(field.MetalHighest)}
	if f := CheckSecond(b.time, b.at, b.second, b.secondAt); f != nil {
		w.Reject(field.DryTimeSecond, calc.Impossible, f.Message, f.Fix)
		return
	}
	if !b.sound(w) {
		return
	}
	if w.Picked(field.BakeTimed) == "door" {
		b.fromDoor(w)
	} else {
		b.fromMetal(w)
	}
}

// sound rejects limits that shut out the sheet's own bake, and fills in those it does not name.
func (b *bake) sound(w *calc.Working) bool {
	ok := true
	if b.lowest.Given() && b.lowest.V > b.at.V {
		w.Reject(field.MetalLowest, calc.Impossible, "is above the sheet’s own bake", "Check both temperatures")
		ok = false
	}
	if b.highest.Given() && b.highest.V < b.at.V {
		w.Reject(field.MetalHighest, calc.Impossible, "is below the sheet’s own bake", "Check both temperatures")
		ok = false
	}
	other := b.secondAt.Or(b.at.V).V
	b.lowest, b.highest = b.lowest.Or(min(b.at.V, other)-Reach), b.highest.Or(max(b.at.V, other)+Reach)
	return ok
}

// allowed rejects a temperature at which the bake must not, or cannot, be done.
func (b *bake) allowed(w *calc.Working, in calc.Input, t calc.Num) bool {
	switch {
	case t.V < b.lowest.V-1e-9:
		w.Reject(in, calc.Beyond, "is too cold for this bake, however long", "Heat the metal to {lowest} at least", b.lowest.As("lowest"))
		return false
	case t.V > b.highest.V+1e-9:
		w.Reject(in, calc.Beyond, "is hotter than this bake may be", "Stay at {highest} or below, or ask your supplier", b.highest.As("highest"))
		return false
	}
	return true
}

// fromMetal is a bake with the metal at one temperature throughout.
func (b *bake) fromMetal(w *calc.Working) {
	metal := w.Given(field.Metal)
	if !b.allowed(w, field.Metal, metal) {
		return
	}
	low, high, energy := today(w, "Bake", b.time, b.at, b.second, b.secondAt, metal)
	b.answer(w, low, high, energy)
	if t := w.Given(field.BakeTime); t.Given() {
		worth := func(label calc.Phrase, need calc.Num) calc.Num {
			return w.Step(label, "X = t_ref * t_b / t", unit.Minute, arrhenius, b.time.V*t.V/need.V, b.time, t, need)
		}
		b.judge(w, worth("Your bake at its least, in minutes of the sheet’s", high), worth("Your bake at its most", low))
	}
}

// answer enters what either way of timing gives.
func (b *bake) answer(w *calc.Working, low, high, energy calc.Num) {
	w.Result(bakeNeeded, high)
	w.Result(bakeNeededLow, low)
	w.Timed(bakeNeeded, w.Timer(calc.Bake, "", calc.Num{}, low, high))
	if energy.Given() {
		w.Result(energyFitted, energy)
	}
}

// judge compares what a bake is worth with what the sheet wants. A hair is allowed for rounding.
func (b *bake) judge(w *calc.Working, low, high calc.Num) {
	w.Result(equivalentLow, low)
	w.Result(equivalentHigh, high)
	enough := b.time.V * (1 - 1e-9)
	switch {
	case low.V >= enough:
		w.Judge(calc.Go, calc.Say("Your bake is worth {low} or more of the {need} the sheet wants", low.To(0, "low"), b.time.To(0, "need")), calc.Say("Then test the cure as the sheet says"))
	case high.V < enough:
		w.Judge(calc.Stop, calc.Say("Your bake is worth {high} at most of the {need} the sheet wants", high.To(0, "high"), b.time.To(0, "need")), calc.Say("Bake longer, or get the metal hotter"))
	default:
		w.Judge(calc.Wait, calc.Say("Your bake is worth {low} to {high} of the {need} the sheet wants", low.To(0, "low"), high.To(0, "high"), b.time.To(0, "need")),
			calc.Say("Bake longer to be sure, or enter a second bake from the sheet to narrow this down"))
	}
}
