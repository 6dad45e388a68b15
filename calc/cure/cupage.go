package cure

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// CupAge tells how much of its pot life a cup has behind it that did not stand in one place.
func CupAge() *calc.Calculator {
	return &calc.Calculator{
		ID:       "cup-age",
		Title:    "How old is this cup",
		Question: "This cup has stood here and there: how much of its pot life is left?",
		Range: "Two-pack mixes in one closed cup, everywhere within 15 °C (27 °F) of a temperature the sheet states. Each minute uses up pot life at the speed of its own temperature. " +
			"With one stated time the answer is a range and its cautious end leads.",
		Inputs: []calc.Input{
			field.PotLife, field.PotLifeAt, field.PotLifeSecond, field.PotLifeSecondAt,
			stays, mixTemperature,
		},
		Outputs:  []calc.Output{leftLow, leftHigh, usedHigh, usedLow},
		Work:     cupAge,
		Cautions: []calc.Phrase{caution.PotLife, caution.Isocyanate, bigBatch},
	}
}

var (
	stays = calc.Input{Key: "stay", Label: "Where it stood", RowName: "place", Most: 12, Rows: []calc.Input{field.StoodFor, field.StoodAt}}

	leftLow  = calc.Output{Key: "left_low", Label: "Use it up within", Unit: unit.Minute, Main: true}
	leftHigh = calc.Output{Key: "left_high", Label: "It may last up to", Unit: unit.Minute}
	usedHigh = calc.Output{Key: "used_high", Label: "Pot life used, at the most", Unit: unit.Percent}
	usedLow  = calc.Output{Key: "used_low", Label: "Pot life used, at the least", Unit: unit.Percent}
)

var usedAdds = source.GoldBook.At("Arrhenius equation, each stretch at its own speed").By(source.Derived)

// nearlyUsed is the share of the pot life, in percent, past which a cup should go into nothing but the coat at hand.
const nearlyUsed = 75

func cupAge(w *calc.Working) {
	stated, statedAt, now := w.Given(field.PotLife), w.Given(field.PotLifeAt), w.Given(mixTemperature)
	second, secondAt := w.Given(field.PotLifeSecond), w.Given(field.PotLifeSecondAt)
	if f := CheckSecond(stated, statedAt, second, secondAt); f != nil {
		w.Reject(field.PotLifeSecond, calc.Impossible, f.Message, f.Fix)
		return
	}
	if f := CheckReach(now, statedAt, secondAt); f != nil {
		w.Reject(mixTemperature, calc.Beyond, f.Message, f.Fix)
		return
	}
	high, low, ok := usedUp(w, stated, statedAt, second, secondAt)
	if !ok {
		return
	}
	shortest, longest, _ := today(w, "Pot life where it is now", stated, statedAt, second, secondAt, now)
	w.Result(usedHigh, high)
	w.Result(usedLow, low)
	left := remains(w, "Left at the least", shortest, high)
	w.Result(leftLow, left)
	w.Result(leftHigh, remains(w, "Left at the most", longest, low))
	w.Timed(leftLow, w.Timer(calc.PotLife, "", age(w), calc.Num{}, left))
	judgeCup(w, left, high, low)
}

// usedUp is the share of the pot life, in percent, that the stays have used at the most Pot life used, at the least. ok is
// false where one of them is rejected.
func usedUp(w *calc.Working, stated, statedAt, second, secondAt calc.Num) (most, least calc.Num, ok bool) {
	var mostBy, leastBy []calc.Num
	formula, sumMost, sumLeast := "", 0.0, 0.0
	for i, row := range w.Rows(stays) {
		dt, at := row.Given(field.StoodFor), row.Given(field.StoodAt)
		if f := CheckReach(at, statedAt, secondAt); f != nil {
			row.Reject(field.StoodAt, calc.Beyond, f.Message, f.Fix)
			return most, least, false
		}
		low, high, _ := today(w, "Pot life there", stated, statedAt, second, secondAt, at)
		n := strconv.Itoa(i + 1)
		formula += " + dt_" + n + " / t_" + n
		mostBy, leastBy = append(mostBy, dt, low), append(leastBy, dt, high)
		sumMost, sumLeast = sumMost+dt.V/low.V, sumLeast+dt.V/high.V
	}
	formula = "u = 100 * (" + formula[len(" + "):] + ")"
	most = w.Step("Pot life used at the most", formula, unit.Percent, usedAdds, 100*sumMost, mostBy...)
	return most, w.Step("Pot life used at the least", formula, unit.Percent, usedAdds, 100*sumLeast, leastBy...), true
}

// age is how long ago the cup was mixed: all its stays together.
func age(w *calc.Working) calc.Num {
	sum := 0.0
	for _, row := range w.Rows(stays) {
		sum += row.Given(field.StoodFor).V
	}
	return calc.N(sum, unit.Minute)
}

// remains is what is left of a pot life in minutes when a share of it in percent is used.
func remains(w *calc.Working, label calc.Phrase, life, used calc.Num) calc.Num {
	return w.Step(label, "t_left = t * max(0, 1 - u / 100)", unit.Minute, usedAdds, life.V*max(0, 1-used.V/100), life, used)
}

func judgeCup(w *calc.Working, left, most, least calc.Num) {
	used := most.To(0, "used")
	switch {
	case least.V >= 100:
		w.Judge(calc.Stop, calc.Say("It is past its pot life, even at the least: {used} used", least.To(0, "used")), calc.Say("Throw it away as your local code says, and clean the gun now"))
	case most.V >= 100:
		w.Judge(calc.Stop, calc.Say("It may be past its pot life: {least} to {used} used", least.To(0, "least"), used), calc.Say("Mix afresh; a second pot life from the sheet would narrow this down"))
	case most.V >= nearlyUsed:
		w.Judge(calc.Wait, calc.Say("{used} of its pot life is used: {left} left", used, left.To(0, "left")), calc.Say("Finish the coat at hand and mix afresh for the next"))
	default:
		w.Judge(calc.Go, calc.Say("{used} of its pot life is used: {left} left", used, left.To(0, "left")), calc.Say("Stop when it thickens, whatever the clock says"))
	}
}
