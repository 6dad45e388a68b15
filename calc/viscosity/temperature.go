package viscosity

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// WithTemperature tells how viscosity and seconds change with the paint's temperature.
func WithTemperature() *calc.Calculator {
	return &calc.Calculator{
		ID:       "viscosity-temperature",
		Title:    "Viscosity in the heat and the cold",
		Question: "How thick will this paint be at another temperature?",
		Range: "One paint, up to 15 °C (27 °F) beyond what was measured. Two readings at least 5 °C (9 °F) apart give a figure; one gives a range only, 1 to 5 % for each °C, " +
			"which nobody has published for paint.",
		Inputs: []calc.Input{
			field.MeasuredAs, field.FlowCup.If("measured_as", "cup"), field.CupSeconds.If("measured_as", "cup"), field.Viscosity.If("measured_as", "viscometer"), field.MeasuredAt,
			field.SecondSeconds.If("measured_as", "cup"), field.SecondViscosity.If("measured_as", "viscometer"), field.SecondAt, field.PaintAt,
		},
		Outputs:  []calc.Output{secondsLow, secondsHigh, viscosityLow, viscosityHigh, perDegree, energy},
		Mistakes: otherCups,
		Work:     withTemperature,
	}
}

var (
	secondsLow    = calc.Output{Key: "seconds_low", Label: "Cup will read at least", Unit: unit.Second, Decimals: 1, Main: true, Optional: true}
	secondsHigh   = calc.Output{Key: "seconds_high", Label: "Cup will read at most", Unit: unit.Second, Decimals: 1, Main: true, Optional: true}
	viscosityLow  = calc.Output{Key: "viscosity_low", Label: "Viscosity at least", Unit: unit.SquareMMPerSecond, Decimals: 1}
	viscosityHigh = calc.Output{Key: "viscosity_high", Label: "Viscosity at most", Unit: unit.SquareMMPerSecond, Decimals: 1}
	perDegree     = calc.Output{Key: "change_per_degree", Label: "Thinner by, for each °C", Unit: unit.Percent, Decimals: 1, Optional: true}
	energy        = calc.Output{Key: "activation_energy", Label: "Activation energy from the two readings", Unit: unit.KilojoulePerMole, Decimals: 1, Optional: true}
)

// reach is how far in °C an answer may lie beyond the readings, and apart how far they must be from each other.
// Both are ours.
const reach, apart = 15, 5

func withTemperature(w *calc.Working) {
	first, second, ok := readings(w)
	at, secondAt, now := w.Given(field.MeasuredAt), w.Given(field.SecondAt), w.Given(field.PaintAt)
	if !ok || !fits(w, first, second, at, secondAt, now) {
		return
	}
	low, high := band(w, first, second, at, secondAt, now)
	if key := w.Picked(field.FlowCup); key != "" {
		c := CupOf(key)
		if c.Fit(c.Seconds(low.V)) == Far || c.Fit(c.Seconds(high.V)) == Far {
			w.Reject(field.PaintAt, calc.Beyond, "takes the paint out of what this cup can tell", "Use a cup with a larger or a smaller hole")
			return
		}
		w.Result(secondsLow, SecondsIn(w, key, low))
		w.Result(secondsHigh, SecondsIn(w, key, high))
		judge(w, key, w.Given(field.CupSeconds), true)
	}
	w.Result(viscosityLow, low)
	w.Result(viscosityHigh, high)
	judgeReach(w, at, secondAt, now)
}

// readings are the two viscosities in mm²/s; the second may be blank.
func readings(w *calc.Working) (first, second calc.Num, ok bool) {
	key := w.Picked(field.FlowCup)
	if key == "" {
		return w.Given(field.Viscosity), w.Given(field.SecondViscosity), true
	}
	t, ok := reads(w, field.CupSeconds, key)
	u, also := reads(w, field.SecondSeconds, key)
	if !ok || !also {
		return t, u, false
	}
	first, second = Kinematic(w, key, t), u
	if u.Given() {
		second = Kinematic(w, key, u)
	}
	return first, second, true
}

func fits(w *calc.Working, first, second, at, secondAt, now calc.Num) bool {
	low, high := at.V, at.V
	if secondAt.Given() {
		low, high = min(low, secondAt.V), max(high, secondAt.V)
	}
	switch {
	case second.Given() != secondAt.Given():
		w.Reject(field.SecondAt, calc.Impossible, "and the second reading go together", "Enter both, or leave both blank")
	case second.Given() && high-low < apart:
		w.Reject(field.SecondAt, calc.Impossible, "is too near the first", "Take the second reading at least 5 °C (9 °F) warmer or colder")
	case second.Given() && (second.V < first.V) != (secondAt.V > at.V):
		w.Reject(field.SecondAt, calc.Impossible, "does not go with the readings: warmer paint must be thinner", "Check both readings and both temperatures")
	case now.V < low-reach || now.V > high+reach:
		w.Reject(field.PaintAt, calc.Beyond, "is more than 15 °C (27 °F) from what was measured", "Measure nearer to it")
	default:
		return true
	}
	return false
}

// band is the least and the most viscosity in mm²/s at now, in °C; the same figure where there are two readings.
func band(w *calc.Working, first, second, at, secondAt, now calc.Num) (low, high calc.Num) {
	if second.Given() {
		nu, b := AtTemperature(w, first, second, at, secondAt, now)
		w.Result(perDegree, w.Step("Thinner by, for each °C", "s = 100*b/pow(t + 273.15, 2)", unit.Percent, source.Definition, 100*b.V/math.Pow(now.V+273.15, 2), b, now))
		w.Result(energy, w.Step("Activation energy", "E = 0.008314462618*b", unit.KilojoulePerMole, source.Definition, 0.008314462618*b.V, b))
		return nu, nu
	}
	var ends [2]calc.Num
	for i, x := range [2]float64{5, 1} {
		s := w.Constant("Thinner by, for each °C", unit.Percent, perDeg, x)
		ends[i] = w.Step("Viscosity at that temperature", "nu = nu_1*exp(-s/100*(t - t_1))", unit.SquareMMPerSecond, perDeg,
			first.V*math.Exp(-x/100*(now.V-at.V)), first, s, now, at)
	}
	if ends[0].V > ends[1].V {
		return ends[1], ends[0]
	}
	return ends[0], ends[1]
}

// AtTemperature is the viscosity in mm²/s at now °C from two readings in mm²/s at two temperatures in °C, by Andrade's
// equation, and its constant b in K. Between two readings 10 °C apart it is good to about 1 %.
func AtTemperature(w *calc.Working, first, second, at, secondAt, now calc.Num) (nu, b calc.Num) {
	inverse := func(t calc.Num) float64 { return 1 / (t.V + 273.15) }
	b = w.Step("Andrade's constant", "b = ln(nu_1/nu_2)/(1/(t_1 + 273.15) - 1/(t_2 + 273.15))", unit.Kelvin, andrade,
		math.Log(first.V/second.V)/(inverse(at)-inverse(secondAt)), first, second, at, secondAt)
	nu = w.Step("Viscosity at that temperature", "nu = nu_1*exp(b*(1/(t + 273.15) - 1/(t_1 + 273.15)))", unit.SquareMMPerSecond, andrade,
		first.V*math.Exp(b.V*(inverse(now)-inverse(at))), first, b, now, at)
	return nu, b
}

func judgeReach(w *calc.Working, at, secondAt, now calc.Num) {
	switch {
	case !secondAt.Given():
		w.Judge(calc.Wait, calc.Say("One reading gives only a range"), calc.Say("Warm or cool a cupful by 5 °C (9 °F) or more, measure again, and enter both"))
	case now.V < min(at.V, secondAt.V) || now.V > max(at.V, secondAt.V):
		w.Judge(calc.Wait, calc.Say("{t} lies outside your two readings", now.To(0, "t")), calc.Say("Measure again when the paint is there"))
	default:
		w.Judge(calc.Go, calc.Say("{t} lies between your two readings", now.To(0, "t")), calc.Say("Thin to the data sheet’s seconds at the temperature it names"))
	}
}
