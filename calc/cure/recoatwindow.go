package cure

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// RecoatWindow tells from when until when a coat may be gone over in today's warmth.
func RecoatWindow() *calc.Calculator {
	return &calc.Calculator{
		ID:       "recoat-window",
		Title:    "Recoat window today",
		Question: "From when until when can I put the next coat on?",
		Range: "Within 15 °C (27 °F) of a temperature the sheet states. Cold makes you wait longer; heat lets you recoat sooner and shuts the window sooner. " +
			"Cold is not trusted to keep the window open for longer than the sheet says. Damp air and thick coats are left out.",
		Inputs: []calc.Input{
			field.RecoatTime, field.RecoatAt, field.RecoatSecond, field.RecoatSecondAt, field.LatestRecoat, field.Air, field.CoatDone,
		},
		Outputs:  []calc.Output{earliest, earliestMaybe, latest, fromClock, toClock},
		Work:     recoatWindow,
		Cautions: []calc.Phrase{"The data sheet's window comes first. Past it, sand before you recoat: paint laid too late may peel.", caution.Isocyanate},
	}
}

var (
	earliest      = calc.Output{Key: "earliest", Label: "Recoat after", Unit: unit.Hour, Decimals: 1, Main: true}
	earliestMaybe = calc.Output{Key: "earliest_maybe", Label: "Never before", Unit: unit.Hour, Decimals: 1}
	latest        = calc.Output{Key: "latest", Label: "Sand first after", Unit: unit.Hour, Decimals: 1, Optional: true}
	fromClock     = calc.Output{Key: "from_clock", Label: "That is from", Words: true, Optional: true}
	toClock       = calc.Output{Key: "to_clock", Label: "That is until", Words: true, Optional: true}
)

func recoatWindow(w *calc.Working) {
	stated, statedAt, now := w.Given(field.RecoatTime), w.Given(field.RecoatAt), w.Given(field.Air)
	second, secondAt, last := w.Given(field.RecoatSecond), w.Given(field.RecoatSecondAt), w.Given(field.LatestRecoat)
	switch {
	case last.Given() && last.V <= stated.V:
		w.Reject(field.LatestRecoat, calc.Impossible, "is not after the earliest", "Check both times and their units")
		return
	case last.Given() && now.V > statedAt.V+Reach:
		w.Reject(field.Air, calc.Beyond, "is too warm to say when the window shuts", "Ask your supplier for the latest recoat at this temperature")
		return
	case CheckSecond(stated, statedAt, second, secondAt) != nil:
		f := CheckSecond(stated, statedAt, second, secondAt)
		w.Reject(field.RecoatSecond, calc.Impossible, f.Message, f.Fix)
		return
	}
	if f := CheckReach(now, statedAt, secondAt); f != nil {
		w.Reject(field.Air, calc.Beyond, f.Message, f.Fix)
		return
	}
	low, high, _ := today(w, "Earliest recoat", stated, statedAt, second, secondAt, now)
	w.Result(earliest, high)
	w.Result(earliestMaybe, low)
	at, timed := field.ReadClock(w.Words(field.CoatDone))
	if timed {
		w.Tell(fromClock, clockAfter(at, high.V-rounding, math.Ceil))
	}
	if !last.Given() {
		w.Timed(earliest, w.Timer(calc.Recoat, "", calc.Num{}, high, last))
		w.Judge(calc.Go, calc.Say("Recoat after {from}", high.To(1, "from")), calc.Say("Check that it is as dry as the sheet asks before you go over it"))
		return
	}
	shut := LatestRecoat(w, last, statedAt, now)
	w.Result(latest, shut)
	if timed {
		w.Tell(toClock, clockAfter(at, shut.V+rounding, math.Floor))
	}
	if high.V > shut.V {
		w.Judge(calc.Stop, calc.Say("The window may be shut before it opens: ready after {from}, shut after {to}", high.To(1, "from"), shut.To(1, "to")),
			calc.Say("Let it dry through and sand before you recoat, or ask your supplier"))
		return
	}
	w.Timed(earliest, w.Timer(calc.Recoat, "", calc.Num{}, high, shut))
	w.Judge(calc.Go, calc.Say("Recoat between {from} and {to} after the coat", high.To(1, "from"), shut.To(1, "to")), calc.Say("Past that, sand first"))
}

// rounding, in h, is what 6 min may be too long or too short by in the last bits, and need not wait a minute for.
const rounding = 1e-9

// clockAfter is the time of day some hours after a minute of the day, to the whole minute.
func clockAfter(minute int, hours float64, whole func(float64) float64) calc.Text {
	return calc.Say("{time}", calc.Words(field.ShowClock(minute+int(whole(hours*60))), "time"))
}
