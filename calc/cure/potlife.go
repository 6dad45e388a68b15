package cure

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// PotLifeToday tells how long a mix lasts in today's warmth.
func PotLifeToday() *calc.Calculator {
	return &calc.Calculator{
		ID:       "pot-life",
		Title:    "Pot life today",
		Question: "How long can I spray this mix in today's warmth?",
		Range: "Two-pack mixes in one cup, no more than 15 °C (27 °F) from a temperature the sheet states. With one stated time the answer is a range; " +
			"a second one makes it a single figure. Humidity is left out: it matters, but nobody publishes by how much.",
		Inputs:   []calc.Input{field.PotLife, field.PotLifeAt, field.PotLifeSecond, field.PotLifeSecondAt, mixTemperature},
		Outputs:  []calc.Output{potLow, potHigh, energyFitted},
		Work:     potLifeToday,
		Cautions: []calc.Phrase{caution.PotLife, caution.Isocyanate, bigBatch},
	}
}

var (
	mixTemperature = func() calc.Input {
		in := field.Air
		in.Help = "The mix soon takes it; if the tins come from a warmer place, enter that"
		return in
	}()

	potLow       = calc.Output{Key: "pot_life_low", Label: "Use it up within", Unit: unit.Minute, Main: true}
	potHigh      = calc.Output{Key: "pot_life_high", Label: "It may last up to", Unit: unit.Minute}
	energyFitted = calc.Output{Key: "activation_energy", Label: "Activation energy from the two times", Unit: unit.KilojoulePerMole, Optional: true}
)

func potLifeToday(w *calc.Working) {
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
	low, high, energy := today(w, "Pot life", stated, statedAt, second, secondAt, now)
	w.Result(potLow, low)
	w.Result(potHigh, high)
	w.Timed(potLow, w.Timer(calc.PotLife, "", calc.Num{}, calc.Num{}, low))
	if energy.Given() {
		w.Result(energyFitted, energy)
	}
}
