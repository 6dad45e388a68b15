package viscosity

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FromCup turns a cup's seconds into viscosity and into another cup's seconds.
func FromCup() *calc.Calculator {
	return &calc.Calculator{
		ID:       "cup-seconds",
		Title:    "Flow cup seconds",
		Question: "What viscosity is that many seconds, and how many would it be in another cup?",
		Range: "ISO, DIN, Ford, Zahn and Shell cups, paint and cup at one temperature. Each cup holds for its own seconds; a little outside them you are warned, far outside refused. " +
			"Paint that thins when stirred, as waterborne basecoat does, has no one viscosity.",
		Inputs:   []calc.Input{field.FlowCup, field.CupSeconds, field.MixDensity.Maybe(), field.SecondCup},
		Outputs:  []calc.Output{kinematic, dynamic, otherSeconds, cupFit, otherFit},
		Mistakes: otherCups,
		Work:     fromCup,
	}
}

var (
	kinematic    = calc.Output{Key: "kinematic_viscosity", Label: "Kinematic viscosity", Unit: unit.SquareMMPerSecond, Decimals: 1, Main: true}
	dynamic      = calc.Output{Key: "dynamic_viscosity", Label: "Dynamic viscosity", Unit: unit.MillipascalSecond, Decimals: 1, Optional: true}
	otherSeconds = calc.Output{Key: "other_seconds", Label: "In the other cup", Unit: unit.Second, Decimals: 1, Main: true, Optional: true}
	cupFit       = calc.Output{Key: "cup_fit", Label: "Against the cup's own range", Words: true}
	otherFit     = calc.Output{Key: "other_fit", Label: "Against the other cup's range", Words: true, Optional: true}
)

func fromCup(w *calc.Working) {
	key, other := w.Picked(field.FlowCup), w.Picked(field.SecondCup)
	t, ok := reads(w, field.CupSeconds, key)
	if !ok {
		return
	}
	nu := Kinematic(w, key, t)
	if other != "" && CupOf(other).Fit(CupOf(other).Seconds(nu.V)) == Far {
		w.Reject(field.SecondCup, calc.Beyond, "tells nothing of paint with {nu}", "Choose a cup with a hole nearer to the first one's", nu.As("nu"))
		return
	}
	w.Result(kinematic, nu)
	w.Tell(cupFit, calc.Say(judge(w, key, t, false)))
	if rho := w.Given(field.MixDensity); rho.Given() {
		w.Result(dynamic, w.Step("Dynamic viscosity", "eta = nu*rho", unit.MillipascalSecond, source.Definition, nu.V*rho.V, nu, rho))
	}
	if other != "" {
		s := SecondsIn(w, other, nu)
		w.Result(otherSeconds, s)
		w.Tell(otherFit, calc.Say(judge(w, other, s, false)))
	}
	warn(w, key+" "+other)
}

// warn names what is known to go wrong with these cups.
func warn(w *calc.Working, keys string) {
	if strings.Contains(keys, "zahn") {
		w.Caution("Zahn cups, by ASTM D4212: the same hand may read 11 % apart and two shops 33 %, with nothing wrong.")
	}
	if strings.Contains(keys, "din") || strings.Contains(keys, "iso") {
		w.Caution("DIN 4 mm and ISO 4 mm are different cups: paint of 50 mm²/s takes 17 s in the DIN one and 40 s in the ISO one. Read which one the data sheet means.")
	}
}
