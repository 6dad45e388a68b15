package mixing

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PartUsedCup tells what to add to a cup that is not empty.
func PartUsedCup() *calc.Calculator {
	return &calc.Calculator{
		ID:       "part-used-cup",
		Title:    "Top up a cup",
		Question: "What do I add to the mix still in the cup?",
		Range:    "A cup that holds the same product at the same ratio and is inside its pot life. Past its pot life nothing may be added, and nothing is worked out.",
		Inputs: append([]calc.Input{mixRatio, field.RatioBy, field.CupLeft, wantedInAll, field.Pack, field.PotLife.If("pack", "two"), field.MixedAgo, field.PourBy},
			densities(func(in calc.Input) calc.Input { return in.If("pour_by", "scale") })...),
		Outputs:    []calc.Output{components, freshVolume, timeLeft},
		Work:       partUsedCup,
		Cautions:   []calc.Phrase{caution.HardenerRatio, caution.Isocyanate, caution.Skin, caution.PotLife},
		Arithmetic: true,
	}
}

var (
	wantedInAll = reworded(field.Amount, "Wanted in the cup", "What is in it and what you add, together")
	freshVolume = calc.Output{Key: "fresh_volume", Label: "Fresh mix to add", Unit: unit.Millilitre, Main: true}
	timeLeft    = calc.Output{Key: "time_left", Label: "Left to spray the whole cup", Unit: unit.Minute, Optional: true}
)

func reworded(in calc.Input, label, help calc.Phrase) calc.Input {
	in.Label, in.Help = label, help
	return in
}

func partUsedCup(w *calc.Working) {
	parts, ok := several(w)
	if !ok || !inTime(w) {
		return
	}
	left, want := w.Given(field.CupLeft), w.Given(field.Amount)
	if left.V >= want.V {
		w.Reject(field.Amount, calc.Impossible, "must be more than is in the cup, {left}", "Use up what is in it first", left.As("left"))
		return
	}
	fresh := w.Step(freshVolume.Label, "V_f = V - V_0", unit.Millilitre, source.AdditiveVolumes, want.V-left.V, want, left)
	byWeight := w.Picked(field.RatioBy) == "weight"
	switch {
	case w.Picked(field.PourBy) == "scale":
		rho, ok := densitiesOf(w, len(parts))
		if !ok {
			return
		}
		cs, _ := split(w, parts, byWeight, rho, fresh)
		for i, c := range cs {
			w.List(components, name(i), calc.Of(c.Volume), calc.Of(c.Mass), calc.Of(c.Reading))
		}
	case byWeight:
		w.Reject(field.PourBy, calc.Impossible, "must be on a scale for a ratio by weight", "Choose the scale, or find the ratio by volume in the data sheet")
		return
	default:
		for i, v := range Volumes(w, parts, fresh) {
			w.List(components, name(i), calc.Of(v), calc.Of(calc.Num{}), calc.Of(calc.Num{}))
		}
	}
	w.Result(freshVolume, fresh)
}

// inTime holds the age of what is in the cup against its pot life.
func inTime(w *calc.Working) bool {
	if w.Picked(field.Pack) != "two" {
		return true
	}
	return lifeLeft(w, w.Given(field.PotLife), w.Given(field.MixedAgo))
}

// lifeLeft rejects a cup of an age past its pot life, both in min, and warns of what is left.
func lifeLeft(w *calc.Working, life, age calc.Num) bool {
	if age.V >= life.V {
		w.Reject(field.MixedAgo, calc.Beyond, "is past the pot life of {life}", "Get rid of what is in the cup as your local code says, and mix in a clean one", life.As("life"))
		return false
	}
	left := w.Step(timeLeft.Label, "t = t_ref - t_0", unit.Minute, source.Definition, life.V-age.V, life, age)
	w.Result(timeLeft, left)
	w.Timed(timeLeft, w.Timer(calc.PotLife, "", age, calc.Num{}, left))
	w.Judge(calc.Wait, calc.Say("The whole cup has {left} of pot life left, which counts from the oldest paint in it", left.To(0, "left")),
		calc.Say("Add only what you can spray by then; a warm cup has less time. For more, mix in a clean cup"))
	return true
}
