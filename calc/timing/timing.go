// Package timing tells what is left of a time that is entered by hand.
package timing

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/cure"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "time-left", Make: TimeLeft},
}

// TimeLeft tells how much of a flash-off, pot life, recoat window or bake is left.
func TimeLeft() *calc.Calculator {
	mix := ofPot(field.Air)
	mix.Label, mix.Help = "Temperature of the mix", "Blank if the stated pot life holds as it is"
	return &calc.Calculator{
		ID:       "time-left",
		Title:    "Time left",
		Question: "How much of this time is left?",
		Range: "Times as you enter them. Only a pot life follows the temperature, when you give the one it is stated at and the one of the mix, " +
			"which may be 15 °C (27 °F) apart.",
		Inputs: []calc.Input{
			field.Timed, field.TimeLeast, field.TimeMost, field.PotLife.If("timed", "pot"), ofPot(field.PotLifeAt), ofPot(field.PotLifeSecond), ofPot(field.PotLifeSecondAt), mix,
			field.BegunAgo,
		},
		Outputs:    []calc.Output{notBefore, atLatest},
		Work:       timeLeft,
		Cautions:   []calc.Phrase{"The data sheet's own test decides, whatever a clock says."},
		Arithmetic: true,
	}
}

var (
	notBefore = calc.Output{Key: "not_before", Label: "Wait another", Unit: unit.Minute, Main: true, Optional: true}
	atLatest  = calc.Output{Key: "at_latest", Label: "Over in", Unit: unit.Minute, Main: true, Optional: true}
)

// ofPot asks for what only a pot life that follows the temperature needs.
func ofPot(in calc.Input) calc.Input { return in.If("timed", "pot").Maybe() }

func timeLeft(w *calc.Working) {
	kind, ago := calc.Timing(w.Picked(field.Timed)), w.Given(field.BegunAgo)
	soonest, latest := w.Given(field.TimeLeast), w.Given(field.TimeMost)
	if kind == calc.PotLife {
		life, ok := lasts(w)
		if !ok {
			return
		}
		soonest, latest = calc.Num{}, life
		w.Caution(caution.PotLife)
		if life.V <= ago.V {
			w.Judge(calc.Stop, calc.Say("It is past its pot life of {life}", life.To(0, "life")), calc.Say("Do not spray it. Dispose of it as your local code says, and clean the gun now"))
		}
	} else if latest.Given() && latest.V < soonest.V {
		w.Reject(field.TimeMost, calc.Impossible, "comes before the least time", "Check both times and their units")
		return
	}
	soon, late := left(w, notBefore, soonest, ago), left(w, atLatest, latest, ago)
	out := notBefore
	if late {
		out = atLatest
	}
	if soon || late {
		w.Timed(out, w.Timer(kind, "", ago, less(soonest, ago), less(latest, ago)))
	}
}

// lasts is the pot life, at the temperature of the mix where that is given.
func lasts(w *calc.Working) (life calc.Num, ok bool) {
	life, at, now := w.Given(field.PotLife), w.Given(field.PotLifeAt), w.Given(field.Air)
	switch {
	case now.Given() && !at.Given():
		w.Reject(field.PotLifeAt, calc.Impossible, "is blank", "Enter it, or clear the temperature of the mix")
		return life, false
	case !now.Given():
		return life, true
	}
	low, _, refused := cure.PotLife(w, life, at, w.Given(field.PotLifeSecond), w.Given(field.PotLifeSecondAt), now)
	if refused != nil {
		w.Reject(field.Air, calc.Beyond, refused.Message, refused.Fix)
		return life, false
	}
	return low, true
}

// left enters what is left of a time, and reports whether there is such a time.
func left(w *calc.Working, out calc.Output, t, ago calc.Num) bool {
	if t.Given() {
		w.Result(out, w.Step(out.Label, "t = max(0, t_e - t_0)", unit.Minute, source.Definition, max(0, t.V-ago.V), t, ago))
	}
	return t.Given()
}

// less is a time some minutes before another; it may lie in the past.
func less(t, ago calc.Num) calc.Num {
	t.V -= ago.V
	return t
}
