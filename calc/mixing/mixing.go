// Package mixing splits a mix into what is poured, turns a ratio by volume into one by weight and back, and says
// what to do when too much was poured.
//
// Volumes are taken to add up: a litre of paint and half a litre of thinner make a litre and a half. Real mixes
// come out a little smaller or larger; the weights poured are not touched by that.
package mixing

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "mix", Make: Mix},
	{ID: "mix-ratio", Make: MixRatio},
	{ID: "mix-solids", Make: MixSolids},
	{ID: "over-pour", Make: OverPour},
	{ID: "from-one-part", Make: FromOnePart},
	{ID: "part-used-cup", Make: PartUsedCup},
	{ID: "cup-graduations", Make: CupGraduations},
	{ID: "blend-strength", Make: BlendStrength},
}

// A Component is one part of a mix.
type Component struct {
	Part    calc.Num // its number in the ratio
	Density calc.Num // kg/L
	Volume  calc.Num // mL
	Mass    calc.Num // g
	Reading calc.Num // g on the scale once it is in, tared before the first
}

// Components splits volume (mL) of mix, ready to spray, by the parts of a ratio by volume or by weight. There is
// one density (kg/L) for each part. It also returns the mass of the mix in g. Volumes are taken to add up.
func Components(w *calc.Working, parts []float64, byWeight bool, densities []calc.Num, volume calc.Num) ([]Component, calc.Num) {
	cs, _ := split(w, parts, byWeight, densities, volume)
	return cs, cs[len(cs)-1].Reading
}

// split is Components with the density of the mix, where it was needed.
func split(w *calc.Working, parts []float64, byWeight bool, densities []calc.Num, volume calc.Num) (cs []Component, rho calc.Num) {
	cs = make([]Component, len(parts))
	if byWeight {
		rho = MixDensity(w, parts, true, densities)
		shareMass(w, cs, parts, densities, w.Step("Weight of the mix", "M = V * rho", unit.Gram, source.Definition,
			volume.V*rho.V, volume, rho))
	} else {
		for i, v := range Volumes(w, parts, volume) {
			rho := densities[i]
			cs[i].Part, cs[i].Density, cs[i].Volume = part(w, parts, i, unit.PartsByVolume), rho, v
			cs[i].Mass = w.Step(nth(w, "Weight of the {nth} part", i), each("m_# = V_# * rho_#", i), unit.Gram, source.Definition,
				v.V*rho.V, v, rho)
		}
	}
	cs[0].Reading = cs[0].Mass
	for i := 1; i < len(cs); i++ {
		last, m := cs[i-1].Reading, cs[i].Mass
		cs[i].Reading = w.Step(nth(w, "Scale reading after the {nth} part", i), "G = G_before + m", unit.Gram, source.Definition,
			last.V+m.V, last, m)
	}
	return cs, rho
}

func shareMass(w *calc.Working, cs []Component, parts []float64, densities []calc.Num, whole calc.Num) {
	all := together(w, parts, unit.PartsByMass)
	for i := range cs {
		r, rho := part(w, parts, i, unit.PartsByMass), densities[i]
		m := w.Step(nth(w, "Weight of the {nth} part", i), each("m_# = M * r_# / S", i), unit.Gram, source.Definition,
			whole.V*r.V/all.V, whole, r, all)
		v := w.Step(nth(w, "Volume of the {nth} part", i), each("V_# = m_# / rho_#", i), unit.Millilitre, source.Definition,
			m.V/rho.V, m, rho)
		cs[i] = Component{Part: r, Density: rho, Volume: v, Mass: m}
	}
}

// Volumes splits volume (mL) of mix by the parts of a ratio by volume. Volumes are taken to add up.
func Volumes(w *calc.Working, parts []float64, volume calc.Num) []calc.Num {
	all := together(w, parts, unit.PartsByVolume)
	vs := make([]calc.Num, len(parts))
	for i := range parts {
		r := part(w, parts, i, unit.PartsByVolume)
		vs[i] = w.Step(nth(w, "Volume of the {nth} part", i), each("V_# = V * r_# / S", i), unit.Millilitre, source.AdditiveVolumes,
			volume.V*r.V/all.V, volume, r, all)
	}
	return vs
}

// together is the sum of the parts.
func together(w *calc.Working, parts []float64, u unit.Unit) calc.Num {
	nums, total := make([]calc.Num, len(parts)), 0.0
	for i, x := range parts {
		nums[i] = part(w, parts, i, u)
		total += x
	}
	return w.Step("All parts together", adding("S", "r_#", len(parts)), u, source.Definition, total, nums...)
}

// part is one number of the ratio, which the person typed among others.
func part(w *calc.Working, parts []float64, i int, u unit.Unit) calc.Num {
	n := calc.N(parts[i], u)
	n.Label = nth(w, "The {nth} part of the ratio", i)
	return n
}

var ordinals = [ratio.Most]calc.Phrase{"first", "second", "third", "fourth", "fifth", "sixth"}

// nth words a label that names a part by its place in the ratio.
func nth(w *calc.Working, label calc.Phrase, i int) calc.Phrase {
	return w.Named(label, calc.Term(ordinals[i], "nth"))
}

// sub is a symbol with the part's number: rho_2.
func sub(symbol string, i int) string { return symbol + "_" + strconv.Itoa(i+1) }

// each puts the part's number in a formula that has # for it.
func each(formula string, i int) string { return strings.ReplaceAll(formula, "#", strconv.Itoa(i+1)) }

// adding is the formula of a sum: "S = r_1 + r_2".
func adding(symbol, term string, n int) string { return symbol + " = " + terms(term, n, " + ") }

// terms repeats a term for n parts: "r_1 + r_2".
func terms(term string, n int, between string) string {
	all := make([]string, n)
	for i := range all {
		all[i] = each(term, i)
	}
	return strings.Join(all, between)
}
