package cure

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/unit"
)

const (
	// Reach is how many °C from the nearest stated temperature a time may be carried.
	Reach = 15

	// Weakest and Strongest are the activation energies, in kJ/mol, taken where the sheet states one time only.
	// Published ones for coatings run from 20 (catalysed urethanes) to 95 (some epoxies).
	Weakest, Strongest = 20, 83

	// highestEnergy, in kJ/mol, is beyond anything published for a mix that is used at room temperature.
	highestEnergy = 150

	gasConstant = 0.008314462618 // kJ/(mol K), exact since 2019
	zeroCelsius = 273.15
)

// Stretch is the factor by which a time stated at ref grows at t, both in °C, for an activation energy in kJ/mol:
// above 1 where t is colder. Arrhenius.
func Stretch(energy, ref, t float64) float64 {
	return math.Exp(energy / gasConstant * (1/(t+zeroCelsius) - 1/(ref+zeroCelsius)))
}

// ActivationEnergy is the energy in kJ/mol that makes a time of t1 at T1 one of t2 at T2 (°C; both times in one
// unit, above 0). It is meaningless where the temperatures are equal, and no more than arithmetic where
// [CheckSecond] finds fault.
func ActivationEnergy(w *calc.Working, t1, T1, t2, T2 calc.Num) calc.Num {
	return w.Step("Activation energy from the two times", "E_a = 0.008314462618 * ln(t_1 / t_2) / (1 / (T_1 + 273.15) - 1 / (T_2 + 273.15))",
		unit.KilojoulePerMole, arrhenius,
		gasConstant*math.Log(t1.V/t2.V)/(1/(T1.V+zeroCelsius)-1/(T2.V+zeroCelsius)),
		t1, t2, T1, T2)
}

// carry brings a stated time to the temperature now, in the stated time's unit.
func carry(w *calc.Working, label calc.Phrase, energy, stated, statedAt, now calc.Num) calc.Num {
	return w.Step(label, "t = t_ref * exp(E_a / 0.008314462618 * (1 / (T + 273.15) - 1 / (T_ref + 273.15)))", stated.Unit, arrhenius,
		stated.V*Stretch(energy.V, statedAt.V, now.V),
		stated, energy, now, statedAt)
}

// band carries a time that is stated once: the shortest and the longest it may become.
func band(w *calc.Working, what calc.Phrase, stated, statedAt, now calc.Num) (low, high calc.Num) {
	low, high = weakBond(w), strongBond(w)
	if now.V >= statedAt.V {
		low, high = high, low
	}
	time := calc.Term(what, "time")
	return carry(w, w.Named("{time} at the shortest", time), low, stated, statedAt, now), carry(w, w.Named("{time} at the longest", time), high, stated, statedAt, now)
}

func weakBond(w *calc.Working) calc.Num {
	return w.Constant("Activation energy of a mix that heat hardly hurries", unit.KilojoulePerMole, weakest, Weakest)
}

func strongBond(w *calc.Working) calc.Num {
	return w.Constant("Activation energy of a mix that heat hurries much", unit.KilojoulePerMole, strongest, Strongest)
}

// CheckSecond says what is wrong with a second stated time, or nil; the message follows that input's label.
// A second time that is not given at all is no fault.
func CheckSecond(stated, statedAt, second, secondAt calc.Num) *calc.Fault {
	if !second.Given() && !secondAt.Given() {
		return nil
	}
	if !second.Given() || !secondAt.Given() {
		return &calc.Fault{Message: "needs both the time and its temperature", Fix: "Enter both, or leave both blank"}
	}
	if math.Abs(statedAt.V-secondAt.V) < 0.5 {
		return &calc.Fault{Message: "is stated at the same temperature as the first", Fix: "Enter a time for another temperature, or leave it blank"}
	}
	switch e := ActivationEnergy(nil, stated, statedAt, second, secondAt).V; {
	case e <= 0:
		return &calc.Fault{Message: "is not shorter at the higher temperature", Fix: "Check which time belongs to which temperature"}
	case e > highestEnergy:
		return &calc.Fault{Message: "differs more from the first than any known mix would", Fix: "Check both times and both temperatures"}
	}
	return nil
}

// CheckReach says whether a temperature is too far from every stated one that is given, or nil; the message
// follows the label of the temperature now.
func CheckReach(now calc.Num, stated ...calc.Num) *calc.Fault {
	for _, s := range stated {
		if s.Given() && math.Abs(now.V-s.V) <= Reach+1e-9 {
			return nil
		}
	}
	return &calc.Fault{
		Message: "is more than 15 °C (27 °F) from any temperature the sheet states this time at",
		Fix:     "Ask your supplier for the time at this temperature",
	}
}
