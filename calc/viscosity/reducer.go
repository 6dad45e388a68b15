package viscosity

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Reducer tells how much reducer brings paint to the seconds wanted.
func Reducer() *calc.Calculator {
	return &calc.Calculator{
		ID:       "reducer",
		Title:    "Reducer for the seconds wanted",
		Question: "How much reducer brings this paint to the seconds on the sheet?",
		Range: "One cup, one temperature, up to as much reducer as paint. From the unthinned reading alone two rules of mixing give a range that may be a factor of two wide; " +
			"a second reading with some reducer in gives a figure. Not for waterborne basecoat.",
		Inputs: []calc.Input{
			field.FlowCup, field.CupSeconds, field.TargetSeconds, field.ThinParts, field.ThinSeconds, field.ReducerViscosity, field.Unthinned.Maybe(),
		},
		Outputs:  []calc.Output{partsLow, partsHigh, volumeLow, volumeHigh},
		Mistakes: otherCups,
		Work:     reducer,
		Cautions: []calc.Phrase{
			"Never add more reducer than the data sheet allows: the film gets thinner, runs sooner, and holds more solvent.",
			caution.Skin, caution.Flammable,
		},
	}
}

var (
	partsLow   = calc.Output{Key: "reducer_low", Label: "Reducer for 100 parts of paint, at least", Unit: unit.PartsByVolume, Decimals: 1, Main: true}
	partsHigh  = calc.Output{Key: "reducer_high", Label: "Reducer for 100 parts of paint, at most", Unit: unit.PartsByVolume, Decimals: 1, Main: true}
	volumeLow  = calc.Output{Key: "reducer_volume_low", Label: "Reducer into your mix, at least", Unit: unit.Millilitre, Optional: true}
	volumeHigh = calc.Output{Key: "reducer_volume_high", Label: "Reducer into your mix, at most", Unit: unit.Millilitre, Optional: true}
)

// mostParts is as much reducer as paint: what is foretold beyond it means nothing.
const mostParts = 100

func reducer(w *calc.Working) {
	key := w.Picked(field.FlowCup)
	t, ok := reads(w, field.CupSeconds, key)
	goal, also := reads(w, field.TargetSeconds, key)
	tried, too := reads(w, field.ThinSeconds, key)
	parts, thin := w.Given(field.ThinParts), w.Given(field.ReducerViscosity)
	if !ok || !also || !too || !thins(w, t, goal, tried, parts) {
		return
	}
	from, to := Kinematic(w, key, t), Kinematic(w, key, goal)
	if !tried.Given() && thin.V >= to.V {
		w.Reject(field.ReducerViscosity, calc.Impossible, "must be less than the {nu} wanted", "Check the reducer and the seconds", to.As("nu"))
		return
	}
	var low, high calc.Num
	if tried.Given() {
		low = ByReading(w, from, to, Kinematic(w, key, tried), parts)
		high = low
	} else {
		low, high = ByRule(w, from, to, thin)
	}
	if high.V > mostParts {
		w.Reject(field.TargetSeconds, calc.Beyond, "would take more reducer than paint", "Ask the data sheet; another reducer or warmer paint may be meant")
		return
	}
	w.Result(partsLow, low)
	w.Result(partsHigh, high)
	if v := w.Given(field.Unthinned); v.Given() {
		w.Result(volumeLow, into(w, low, v))
		w.Result(volumeHigh, into(w, high, v))
	}
	judge(w, key, goal, true)
	judgeReducer(w, low, goal, tried)
}

// thins refuses readings that do not go together.
func thins(w *calc.Working, t, goal, tried, parts calc.Num) bool {
	switch {
	case goal.V >= t.V:
		w.Reject(field.TargetSeconds, calc.Impossible, "must be fewer than the cup reads now", "It needs no reducer, or the readings are swapped")
	case tried.Given() != parts.Given():
		w.Reject(field.ThinSeconds, calc.Impossible, "and the reducer in it go together", "Enter both, or leave both blank")
	case tried.Given() && tried.V >= t.V:
		w.Reject(field.ThinSeconds, calc.Impossible, "must be fewer than without reducer", "Stir well and measure again at the same temperature")
	default:
		return true
	}
	return false
}

// ByReading is how many parts of reducer, by volume, 100 parts of paint of viscosity from take to come to the viscosity
// to, where parts of it brought the paint to tried; all in mm²/s.
func ByReading(w *calc.Working, from, to, tried, parts calc.Num) calc.Num {
	x := parts.V / (100 + parts.V) * math.Log(from.V/to.V) / math.Log(from.V/tried.V)
	share := w.Step("Share of reducer", "x = P/(100 + P)*ln(nu_1/nu_2)/ln(nu_1/nu_m)", unit.One, measured, x, parts, from, to, tried)
	return partsOf(w, share)
}

// ByRule is the least and the most that two rules of mixing give for the parts of reducer, by volume, that 100 parts of
// paint of viscosity from take to come to the viscosity to with a reducer of viscosity thin; all in mm²/s,
// 0.2 < thin < to < from.
func ByRule(w *calc.Working, from, to, thin calc.Num) (low, high calc.Num) {
	twice := func(nu calc.Num) float64 { return math.Log(math.Log(nu.V + 0.8)) }
	a := partsOf(w, w.Step("Share of reducer, logarithms mixed", "x = ln(nu_1/nu_2)/ln(nu_1/nu_r)", unit.One, logRule,
		math.Log(from.V/to.V)/math.Log(from.V/thin.V), from, to, thin))
	b := partsOf(w, w.Step("Share of reducer, by blending number", "x = (ln(ln(nu_1 + 0.8)) - ln(ln(nu_2 + 0.8)))/(ln(ln(nu_1 + 0.8)) - ln(ln(nu_r + 0.8)))", unit.One, refutas,
		(twice(from)-twice(to))/(twice(from)-twice(thin)), from, to, thin))
	if a.V < b.V {
		return a, b
	}
	return b, a
}

// partsOf turns a share into parts for 100; a share of one or more takes more than any amount.
func partsOf(w *calc.Working, x calc.Num) calc.Num {
	return w.Step("Reducer for 100 parts of paint", "Y = 100*x/max(1 - x, 0.001)", unit.PartsByVolume, source.Definition, 100*x.V/max(1-x.V, 0.001), x)
}

func into(w *calc.Working, parts, volume calc.Num) calc.Num {
	return w.Step("Reducer into the mix", "V_r = V*Y/100", unit.Millilitre, source.Definition, volume.V*parts.V/100, volume, parts)
}

func judgeReducer(w *calc.Working, low, goal, tried calc.Num) {
	do := calc.Say("Add the last of it in small steps, stir, and measure in the same cup at the same temperature")
	switch {
	case !tried.Given():
		w.Judge(calc.Wait, calc.Say("One reading foretells only a range"), calc.Say("Put in {low} for 100 of paint, stir, measure, and enter that reading too", low.To(1, "low")))
	case goal.V < tried.V:
		w.Judge(calc.Wait, calc.Say("The seconds wanted lie beyond what you tried"), do)
	default:
		w.Judge(calc.Go, calc.Say("The seconds wanted lie between your two readings"), do)
	}
}
