package mixing

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// CupGraduations tells where to mark a stick or a cup for a ratio by volume.
func CupGraduations() *calc.Calculator {
	return &calc.Calculator{
		ID:       "cup-graduations",
		Title:    "Marks for a cup or stick",
		Question: "Where do the marks go on my cup or stick?",
		Range: "A round cup, straight or evenly tapered, with a flat bottom, and a ratio by volume. A stick must stand upright on the bottom; " +
			"a thick one lifts the level, so that every mark comes out a little short.",
		Inputs:     []calc.Input{reworded(mixRatio, "Mix ratio by volume", "In the order you pour; a ratio by weight will not do"), narrow(field.Amount, 5, 20000), field.CupBottom, field.CupTop, field.CupHeight},
		Outputs:    []calc.Output{marks, cupHolds},
		Work:       cupGraduations,
		Cautions:   []calc.Phrase{caution.HardenerRatio, caution.Skin},
		Arithmetic: true,
	}
}

var (
	marks = calc.Output{Key: "mark", Label: "Marks", Columns: []calc.Output{
		{Key: "part", Label: "Fill with", Words: true},
		{Key: "volume", Label: "Volume", Unit: unit.Millilitre},
		{Key: "height", Label: "Up to, above the bottom", Unit: unit.Millimetre},
	}}
	cupHolds = calc.Output{Key: "cup_holds", Label: "The cup holds", Unit: unit.Millilitre, Main: true}
)

func cupGraduations(w *calc.Working) {
	parts, ok := several(w)
	if !ok {
		return
	}
	bottom, top, height, amount := w.Given(field.CupBottom), w.Given(field.CupTop), w.Given(field.CupHeight), w.Given(field.Amount)
	holds := w.Step(cupHolds.Label, "V_cup = pi * H * (D_1 * D_1 + D_1 * D_2 + D_2 * D_2) / 12000", unit.Millilitre, source.Mensuration,
		math.Pi*height.V*(bottom.V*bottom.V+bottom.V*top.V+top.V*top.V)/12000, height, bottom, top)
	if amount.V > holds.V {
		w.Reject(field.Amount, calc.Beyond, "is more than the cup holds, {holds}", "Take a larger cup, or mix less", holds.To(0, "holds"))
		return
	}
	k := w.Step("Radius gained with each mm of height", "k = (D_2 - D_1) / (2 * H)", unit.One, source.Mensuration,
		(top.V-bottom.V)/(2*height.V), top, bottom, height)
	var poured []calc.Num
	for i, v := range Volumes(w, parts, amount) {
		poured = append(poured, v)
		sum := 0.0
		for _, p := range poured {
			sum += p.V
		}
		in := w.Step(nth(w, "In the cup after the {nth} part", i), adding("V_in", "V_#", i+1), unit.Millilitre, source.AdditiveVolumes, sum, poured...)
		w.List(marks, name(i), calc.Of(v), calc.Of(Level(w, bottom, k, in)))
	}
	w.Result(cupHolds, holds)
}

// Level is how high in mm a volume in mL stands in a round cup whose inside diameter at the bottom is in mm and whose
// radius grows by k for each mm of height: 0 for a straight cup. The volume must not be more than the cup holds.
func Level(w *calc.Working, bottom, k, volume calc.Num) calc.Num {
	d, v := bottom.V, volume.V
	r := w.Step("Radius of the cup there", "r = pow(D_1 * D_1 * D_1 / 8 + 3000 * k * V_in / pi, 1 / 3)", unit.Millimetre, source.Mensuration,
		math.Pow(d*d*d/8+3000*k.V*v/math.Pi, 1./3), bottom, k, volume)
	return w.Step("Height of the mark", "h = 3000 * V_in / (pi * (r * r + r * D_1 / 2 + D_1 * D_1 / 4))", unit.Millimetre, source.Mensuration,
		3000*v/(math.Pi*(r.V*r.V+r.V*d/2+d*d/4)), volume, r, bottom)
}
