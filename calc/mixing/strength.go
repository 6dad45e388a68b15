package mixing

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// BlendStrength tells how much of a weak and a strong liquid make a strength between them.
func BlendStrength() *calc.Calculator {
	return &calc.Calculator{
		ID:       "blend-strength",
		Title:    "Two strengths to one",
		Question: "How much of the weak and the strong one make the strength I want?",
		Range: "Cleaners, wipes and tints whose strength is by volume and whose volumes add up. " +
			"Alcohol and water shrink by a few percent when mixed: top up to the mark.",
		Inputs:     []calc.Input{field.WeakStrength, field.StrongStrength, field.WantedStrength, field.Amount},
		Outputs:    []calc.Output{weakVolume, strongVolume},
		Work:       blendStrength,
		Cautions:   []calc.Phrase{caution.Skin, caution.Flammable},
		Arithmetic: true,
	}
}

var (
	weakVolume   = calc.Output{Key: "weak_volume", Label: "Of the weaker one", Unit: unit.Millilitre, Main: true}
	strongVolume = calc.Output{Key: "strong_volume", Label: "Of the stronger one", Unit: unit.Millilitre, Main: true}
)

func blendStrength(w *calc.Working) {
	a, b, want, amount := w.Given(field.WeakStrength), w.Given(field.StrongStrength), w.Given(field.WantedStrength), w.Given(field.Amount)
	switch {
	case a.V >= b.V:
		w.Reject(field.StrongStrength, calc.Impossible, "must be more than the weaker one's {a}", "Swap the two, or check them", a.As("a"))
		return
	case want.V < a.V || want.V > b.V:
		w.Reject(field.WantedStrength, calc.Impossible, "must lie between {a} and {b}", "No mix of the two gets there", a.As("a"), b.As("b"))
		return
	}
	weak, strong := Blend(w, a, b, want, amount)
	w.Result(weakVolume, weak)
	w.Result(strongVolume, strong)
}

// Blend splits amount (mL) between two strengths (percent by volume) so that the mix has the strength want, for
// weak < strong and weak <= want <= strong. Volumes are taken to add up.
func Blend(w *calc.Working, weak, strong, want, amount calc.Num) (ofWeak, ofStrong calc.Num) {
	a, b := weak.V, strong.V
	ofWeak = w.Step("Volume of the weaker one", "V_a = V * (b - w) / (b - a)", unit.Millilitre, source.Alligation,
		amount.V*(b-want.V)/(b-a), amount, strong, want, weak)
	ofStrong = w.Step("Volume of the stronger one", "V_b = V - V_a", unit.Millilitre, source.AdditiveVolumes,
		amount.V-ofWeak.V, amount, ofWeak)
	return ofWeak, ofStrong
}
