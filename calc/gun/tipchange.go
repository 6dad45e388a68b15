package gun

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// TipChange tells what another tip or another pressure on the paint does to delivery and film.
func TipChange() *calc.Calculator {
	return &calc.Calculator{
		ID:       "tip-change",
		Title:    "Another tip or pressure",
		Question: "What happens to delivery and film if I fit another tip, or change the pressure on the paint?",
		Range: "The same paint at the same warmth, tips up to 1.7 times and pressures up to 3 times apart. Only a range can be said: delivery goes with the third to the fourth power of the tip " +
			"and with the root of the pressure up to the pressure itself. It is never predicted from viscosity: paint thins under shear, and how much nobody publishes.",
		Inputs: []calc.Input{
			field.Delivery, field.TipNow, field.TipNew, field.PaintPressure, field.PaintPressureTo, field.WetFilm.Maybe(),
		},
		Outputs:  []calc.Output{deliveryLow, deliveryHigh, fasterLow, fasterHigh, filmLow, filmHigh},
		Work:     tipChange,
		Cautions: []calc.Phrase{caution.CompressedAir, caution.Isocyanate, caution.Flammable},
	}
}

var (
	deliveryLow  = calc.Output{Key: "delivery_low", Label: "Delivery, at the least", Unit: unit.MillilitrePerMinute, Main: true}
	deliveryHigh = calc.Output{Key: "delivery_high", Label: "Delivery, at the most", Unit: unit.MillilitrePerMinute, Main: true}
	fasterLow    = calc.Output{Key: "faster_low", Label: "For the same film move the gun this many times as fast", Unit: unit.One, Decimals: 2}
	fasterHigh   = calc.Output{Key: "faster_high", Label: "Faster by at most", Unit: unit.One, Decimals: 2}
	filmLow      = calc.Output{Key: "film_low", Label: "At the old speed the wet film is at least", Unit: unit.Micrometre, Optional: true}
	filmHigh     = calc.Output{Key: "film_high", Label: "At the old speed the wet film is at most", Unit: unit.Micrometre, Optional: true}
)

var (
	tipPowers      = source.Sampson1891.At("slow flow: third power through a thin opening; fourth through a bore, by Hagen and Poiseuille").By(source.Memory)
	pressurePowers = source.Poiseuille.At("slow flow goes with pressure, fast flow with its root").By(source.Memory)
)

// How many times larger one tip, or one pressure, may be than the other.
const tipsApart, pressuresApart = 1.7, 3.0

func tipChange(w *calc.Working) {
	q, d1, d2 := w.Given(field.Delivery), w.Given(field.TipNow), w.Given(field.TipNew)
	p1, p2 := w.Given(field.PaintPressure), w.Given(field.PaintPressureTo)
	switch {
	case far(d1, d2, tipsApart):
		w.Reject(field.TipNew, calc.Beyond, "is too far from the tip you measured with", "Fit it and time a cup")
		return
	case p2.Given() && !p1.Given():
		w.Reject(field.PaintPressure, calc.Impossible, "is needed where it is to change", "Enter both pressures, or leave both blank")
		return
	case p2.Given() && far(p1, p2, pressuresApart):
		w.Reject(field.PaintPressureTo, calc.Beyond, "is too far from the pressure you measured at", "Set it, if everything is rated for it, and time a cup")
		return
	}
	low := w.Step("Tip, at the least", "f = min(pow(d_2 / d_1, 3), pow(d_2 / d_1, 4))", unit.One, tipPowers, math.Min(math.Pow(d2.V/d1.V, 3), math.Pow(d2.V/d1.V, 4)), d2, d1)
	high := w.Step("Tip, at the most", "f = max(pow(d_2 / d_1, 3), pow(d_2 / d_1, 4))", unit.One, tipPowers, math.Max(math.Pow(d2.V/d1.V, 3), math.Pow(d2.V/d1.V, 4)), d2, d1)
	if p2.Given() {
		x := p2.V / p1.V
		low = w.Step("Tip and pressure, at the least", "F = f * min(sqrt(P_2 / P_1), P_2 / P_1)", unit.One, pressurePowers, low.V*math.Min(math.Sqrt(x), x), low, p2, p1)
		high = w.Step("Tip and pressure, at the most", "F = f * max(sqrt(P_2 / P_1), P_2 / P_1)", unit.One, pressurePowers, high.V*math.Max(math.Sqrt(x), x), high, p2, p1)
	}
	least, most := scaled(w, "Delivery at the least", q, low), scaled(w, "Delivery at the most", q, high)
	w.Result(deliveryLow, least)
	w.Result(deliveryHigh, most)
	w.Result(fasterLow, low)
	w.Result(fasterHigh, high)
	if h := w.Given(field.WetFilm); h.Given() {
		w.Result(filmLow, scaled(w, "Wet film at the least", h, low))
		w.Result(filmHigh, scaled(w, "Wet film at the most", h, high))
	}
	w.Judge(calc.Wait, calc.Say("Expect {low} to {high}", least.To(0, "low"), most.To(0, "high")), calc.Say("Time a cup before you spray work, and check the first panel with a comb"))
}

// far reports whether a and b, both above 0, are more than most times apart.
func far(a, b calc.Num, most float64) bool { return a.V > b.V*most || b.V > a.V*most }

// scaled is x times factor, in x's unit.
func scaled(w *calc.Working, label calc.Phrase, x, factor calc.Num) calc.Num {
	return w.Step(label, "y = x * F", x.Unit, source.Definition, x.V*factor.V, x, factor)
}
