package cure

import (
	"math"

	"spraywright/calc"
)

// PotLife is the shortest and the longest pot life to expect at the temperature now, in the unit of the stated
// one; temperatures in °C. Work by the shortest. A second time, where given, fixes the activation energy and so
// low and high are the same; otherwise they are those of [Weakest] and [Strongest]. It is refused where
// [CheckSecond] or [CheckReach] finds fault. It holds for one closed cup of one batch: solvent lost from an open
// cup and the warmth of a big batch both shorten it.
func PotLife(w *calc.Working, stated, statedAt, second, secondAt, now calc.Num) (low, high calc.Num, refused *calc.Fault) {
	if refused = CheckSecond(stated, statedAt, second, secondAt); refused == nil {
		refused = CheckReach(now, statedAt, secondAt)
	}
	if refused != nil {
		return low, high, refused
	}
	low, high, _ = today(w, "Pot life", stated, statedAt, second, secondAt, now)
	return low, high, nil
}

// today carries a time by the second one where there is one, and tells the energy; otherwise it is a band.
func today(w *calc.Working, what calc.Phrase, stated, statedAt, second, secondAt, now calc.Num) (low, high, energy calc.Num) {
	if !second.Given() {
		low, high = band(w, what, stated, statedAt, now)
		return low, high, energy
	}
	energy = ActivationEnergy(w, stated, statedAt, second, secondAt)
	t := carry(w, what, energy, stated, statedAt, now)
	return t, t, energy
}

// AirDry is the shortest and the longest drying time to expect at the temperature now, in the unit of the stated
// one; temperatures in °C. Wait for the longest. Refused where [CheckReach] finds fault. It serves any least time
// that curing sets: through-dry, handling, earliest recoat.
func AirDry(w *calc.Working, stated, statedAt, now calc.Num) (low, high calc.Num, refused *calc.Fault) {
	if refused = CheckReach(now, statedAt); refused != nil {
		return low, high, refused
	}
	low, high = band(w, "Drying time", stated, statedAt, now)
	return low, high, nil
}

// LatestRecoat is the latest recoat at the temperature now, in the unit of the stated one; temperatures in °C.
// Heat closes the window sooner, by [Strongest]; cold is not trusted to keep it open, so it never grows.
// Further than [Reach] above the stated temperature it is no more than a guess: ask [CheckReach] first.
func LatestRecoat(w *calc.Working, stated, statedAt, now calc.Num) calc.Num {
	strong := strongBond(w)
	return w.Step("Latest recoat", "t = t_ref * min(1, exp(E_a / 0.008314462618 * (1 / (T + 273.15) - 1 / (T_ref + 273.15))))",
		stated.Unit, arrhenius, stated.V*math.Min(1, Stretch(strong.V, statedAt.V, now.V)),
		stated, strong, now, statedAt)
}
