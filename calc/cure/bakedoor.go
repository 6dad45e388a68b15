package cure

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// fromDoor is a bake counted from closing the door, while the metal is still heating up.
func (b *bake) fromDoor(w *calc.Working) {
	air, start, reading, after := w.Given(field.OvenAir), w.Given(field.MetalStart), w.Given(field.MetalReading), w.Given(field.ReadingAfter)
	if !b.heating(w, air, start, reading) {
		return
	}
	tau := w.Step("Time constant of the part", "tau = t_m / ln((T_a - T_0) / (T_a - T_m))", unit.Minute, lumped,
		after.V/math.Log((air.V-start.V)/(air.V-reading.V)), after, air, start, reading)
	oven := Oven{T0: start.V, Air: air.V, Tau: tau.V}

	weak, strong, energy := b.energies(w)
	least, most := Paces(weak.V, strong.V, b.at.V)
	args := []calc.Arg{tau.As("tau"), air.As("T_a"), start.As("T_0"), weak.As("E_weak"), strong.As("E_strong"), b.time.As("t_ref"), b.at.As("T_ref")}
	model := func(label, how calc.Phrase, x float64, args ...calc.Arg) calc.Num {
		return w.Model(label, how, unit.Minute, arrhenius, x, args...)
	}
	const sum = "each 0.1 min counts exp(−E/R (1/T − 1/T_ref)), with the metal at T = T_a + (T_0 − T_a) exp(−t/tau), "
	longest := oven.TimeFor(least, b.lowest.V, b.time.V)
	if math.IsInf(longest, 1) {
		w.Reject(field.OvenAir, calc.Beyond, "is too cold: the bake would take more than a week", "Get the oven hotter")
		return
	}
	high := model("Bake at the longest", sum+"the least that E_weak or E_strong gives, until t_ref is reached", longest, args...)
	low := model("Bake at the shortest", sum+"the most that E_weak or E_strong gives, until t_ref is reached", oven.TimeFor(most, b.lowest.V, b.time.V), args...)
	w.Result(timeConstant, tau)
	b.answer(w, low, high, energy)
	if t := w.Given(field.BakeTime); t.Given() {
		args = append(args, t.As("t_b"))
		b.judge(w,
			model("Your bake at its least, in minutes of the sheet’s", sum+"the least that E_weak or E_strong gives, until t_b", oven.Equivalent(least, b.lowest.V, t.V), args...),
			model("Your bake at its most", sum+"the most that E_weak or E_strong gives, until t_b", oven.Equivalent(most, b.lowest.V, t.V), args...))
	}
}

// heating rejects an oven that is too hot or too cold, and a reading that it cannot have given.
func (b *bake) heating(w *calc.Working, air, start, reading calc.Num) bool {
	switch {
	case air.V <= start.V+1:
		w.Reject(field.OvenAir, calc.Impossible, "is no warmer than the metal that goes in", "Check both temperatures")
	case reading.V <= start.V || reading.V >= air.V:
		w.Reject(field.MetalReading, calc.Impossible, "must lie between the metal’s first temperature and the oven’s air", "Take the reading while the metal is still heating up")
	case air.V <= b.lowest.V:
		w.Reject(field.OvenAir, calc.Beyond, "is too cold for this bake, however long", "The metal must pass {lowest}", b.lowest.As("lowest"))
	default:
		return b.allowed(w, field.OvenAir, air)
	}
	return false
}

// energies are the band, or twice the one that the sheet's second bake gives.
func (b *bake) energies(w *calc.Working) (weak, strong, fitted calc.Num) {
	if !b.second.Given() {
		return weakBond(w), strongBond(w), fitted
	}
	fitted = ActivationEnergy(w, b.time, b.at, b.second, b.secondAt)
	return fitted, fitted, fitted
}
