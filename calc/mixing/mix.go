package mixing

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/unit"
)

// Mix tells what to pour for an amount of mix.
func Mix() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mix",
		Title:    "Mix by scale or cup",
		Question: "How much of each part do I pour?",
		Range:    "Two to six parts. The volumes of the parts are taken to add up; on a scale that changes nothing in the ratio.",
		Inputs: append([]calc.Input{mixRatio, field.RatioBy, field.Amount, field.PourBy}, append(densities(func(in calc.Input) calc.Input {
			return in.If("pour_by", "scale")
		}), scaleStep, field.RatioTolerance.If("pour_by", "scale"))...),
		Outputs:    []calc.Output{components, totalMass, mixDensity, ratioError},
		Mistakes:   asWater,
		Work:       mix,
		Cautions:   []calc.Phrase{caution.HardenerRatio, caution.Isocyanate, caution.Skin, caution.PotLife},
		Arithmetic: true,
	}
}

var (
	mixRatio  = exampleOf(field.Ratio, "4:1")
	scaleStep = narrow(field.ScaleStep, 0.1, 50).If("pour_by", "scale")

	components = calc.Output{Key: "component", Label: "Pour", Columns: []calc.Output{
		{Key: "part", Label: "Part", Words: true},
		{Key: "volume", Label: "Volume", Unit: unit.Millilitre},
		{Key: "mass", Label: "Weight", Unit: unit.Gram, Decimals: 1},
		{Key: "reading", Label: "Scale shows", Unit: unit.Gram, Decimals: 1},
	}}
	totalMass  = calc.Output{Key: "total_mass", Label: "Weight of the mix", Unit: unit.Gram, Decimals: 1, Main: true, Optional: true}
	mixDensity = calc.Output{Key: "mix_density", Label: "Density of the mix", Unit: unit.KilogramPerLitre, Decimals: 3, Optional: true}
	ratioError = calc.Output{Key: "ratio_error", Label: "Worst error of the ratio from the scale's step", Unit: unit.Percent, Decimals: 2, Optional: true}
)

func mix(w *calc.Working) {
	parts, ok := several(w)
	if !ok {
		return
	}
	byWeight := w.Picked(field.RatioBy) == "weight"
	if w.Picked(field.PourBy) == "cup" {
		mixInCup(w, parts, byWeight)
		return
	}
	rho, ok := densitiesOf(w, len(parts))
	if !ok {
		return
	}
	amount, step := w.Given(field.Amount), w.Given(scaleStep)
	cs, mixed := split(w, parts, byWeight, rho, amount)
	for _, c := range cs {
		if c.Mass.V > 0 && c.Mass.V < step.V {
			w.Reject(scaleStep, calc.Impossible, "is more than the lightest part weighs, {m}", "Use a finer scale or mix more", c.Mass.To(2, "m"))
			return
		}
	}
	scale := w.UnitOf(scaleStep)
	added, readings := Shown(w, cs, step)
	for i, c := range cs {
		w.List(components, name(i), calc.Of(c.Volume), calc.Of(added[i]).In(scale), calc.Of(readings[i]).In(scale))
	}
	if !mixed.Given() {
		mixed = MixDensity(w, parts, byWeight, rho)
	}
	w.Result(totalMass, cs[len(cs)-1].Reading)
	w.Result(mixDensity, mixed)
	judge(w, RatioError(w, cs, step))
}

// judge holds the ratio error against the tolerance that the person states.
func judge(w *calc.Working, e calc.Num) {
	if !e.Given() { // the other parts are all 0
		return
	}
	w.Result(ratioError, e)
	tol := w.Given(field.RatioTolerance)
	says := []calc.Arg{e.To(2, "e"), tol.As("tol")}
	if e.V > tol.V {
		w.Judge(calc.Wait, calc.Say("This scale can put the ratio out by {e}, more than the {tol} it must hold", says...), calc.Say("Use a finer scale, or mix more at once"))
		return
	}
	w.Judge(calc.Go, calc.Say("This scale holds the ratio within {e}, inside the {tol} it must hold", says...), calc.Say("Tare the empty cup, then pour each part until the scale shows its figure"))
}

func mixInCup(w *calc.Working, parts []float64, byWeight bool) {
	if byWeight {
		w.Reject(field.PourBy, calc.Impossible, "must be on a scale for a ratio by weight", "Choose the scale, or find the ratio by volume in the data sheet")
		return
	}
	for i, v := range Volumes(w, parts, w.Given(field.Amount)) {
		w.List(components, name(i), calc.Of(v), calc.Of(calc.Num{}), calc.Of(calc.Num{}))
	}
}

// several reads a ratio of two parts or more.
func several(w *calc.Working) ([]float64, bool) {
	parts, _ := ratio.Parse(w.Words(field.Ratio))
	if len(parts) < 2 {
		w.Reject(field.Ratio, calc.Impossible, "has only one part", "Write all the parts, like 4:1:1")
		return nil, false
	}
	return parts, true
}

// densities are the inputs for the densities of up to six parts. A mix has two at least, so that two are wanted.
func densities(each func(calc.Input) calc.Input) []calc.Input {
	ins := []calc.Input{field.DensityA, field.DensityB, field.DensityC, field.DensityD, field.DensityE, field.DensityF}
	for i := range ins {
		ins[i] = each(ins[i])
		ins[i].Symbol = sub("rho", i)
		ins[i].Optional = i > 1
	}
	return ins
}

// densitiesOf takes the density of each of n parts, and asks for those that are blank.
func densitiesOf(w *calc.Working, n int) (rho []calc.Num, ok bool) {
	ok = true
	for _, in := range densities(func(in calc.Input) calc.Input { return in })[:n] {
		x := w.Given(in)
		if !x.Given() {
			ok = false
			w.Reject(in, calc.Missing, "is blank", "Enter it: the ratio has {n} parts", calc.Words(strconv.Itoa(n), "n"))
		}
		rho = append(rho, x)
	}
	return rho, ok
}

// name is the cell that says which part a row is.
func name(i int) calc.Cell {
	return calc.Told(calc.Say([]calc.Phrase{"First part", "Second part", "Third part", "Fourth part", "Fifth part", "Sixth part"}[i]))
}

func exampleOf(in calc.Input, words string) calc.Input { in.Words = words; return in }

func narrow(in calc.Input, min, max float64) calc.Input {
	in.Limits = calc.Between(min, max)
	return in
}
