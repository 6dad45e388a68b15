package mixing

import (
	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// MixDensity is the density of a mix in kg/L, from the parts of a ratio by volume or by weight and the density
// (kg/L) of each. Volumes are taken to add up.
func MixDensity(w *calc.Working, parts []float64, byWeight bool, densities []calc.Num) calc.Num {
	u, formula := unit.PartsByVolume, "rho = ("+terms("r_# * rho_#", len(parts), " + ")+") / ("+terms("r_#", len(parts), " + ")+")"
	if byWeight {
		u, formula = unit.PartsByMass, "rho = ("+terms("r_#", len(parts), " + ")+") / ("+terms("r_# / rho_#", len(parts), " + ")+")"
	}
	var nums []calc.Num
	mass, volume := 0.0, 0.0
	for i, r := range parts {
		rho := densities[i]
		nums = append(nums, part(w, parts, i, u))
		if byWeight {
			mass, volume = mass+r, volume+r/rho.V
		} else {
			nums = append(nums, rho)
			mass, volume = mass+r*rho.V, volume+r
		}
	}
	if byWeight {
		nums = append(nums, densities...)
	}
	return w.Step("Density of the mix", formula, unit.KilogramPerLitre, source.AdditiveVolumes, mass/volume, nums...)
}

// WeightRatio turns the parts of a ratio by volume into parts by weight, from the density (kg/L) of each. The
// first part keeps its number.
func WeightRatio(w *calc.Working, parts []float64, densities []calc.Num) []calc.Num {
	return convert(w, "by weight", "w_# = r_# * rho_# / rho_1", unit.PartsByVolume, unit.PartsByMass, parts, densities,
		func(rho, first float64) float64 { return rho / first })
}

// VolumeRatio turns the parts of a ratio by weight into parts by volume, from the density (kg/L) of each. The
// first part keeps its number.
func VolumeRatio(w *calc.Working, parts []float64, densities []calc.Num) []calc.Num {
	return convert(w, "by volume", "v_# = r_# / rho_# * rho_1", unit.PartsByMass, unit.PartsByVolume, parts, densities,
		func(rho, first float64) float64 { return first / rho })
}

func convert(w *calc.Working, by calc.Phrase, formula string, from, to unit.Unit, parts []float64, densities []calc.Num, factor func(rho, first float64) float64) []calc.Num {
	out := make([]calc.Num, len(parts))
	first := densities[0]
	for i, x := range parts {
		nth := []calc.Arg{calc.Term(ordinals[i], "nth"), calc.Term(by, "by")}
		r := part(w, parts, i, from)
		if i == 0 {
			kept := formula[:1] + "_1 = r_1"
			out[i] = w.Step(w.Named("The {nth} part {by}, kept as it is", nth...), kept, to, source.Definition, x, r)
			continue
		}
		rho := densities[i]
		out[i] = w.Step(w.Named("The {nth} part {by}", nth...), each(formula, i), to, source.Definition, x*factor(rho.V, first.V),
			r, rho, first)
	}
	return out
}

// shares are parts as percentages of all of them.
func shares(w *calc.Working, by calc.Phrase, ps []calc.Num) []calc.Num {
	all := 0.0
	for _, p := range ps {
		all += p.V
	}
	out := make([]calc.Num, len(ps))
	sum := w.Step(w.Named("All parts {by}", calc.Term(by, "by")), adding("S", "p_#", len(ps)), ps[0].Unit, source.Definition, all, ps...)
	for i, p := range ps {
		out[i] = w.Step(w.Named("Share of the {nth} part {by}", calc.Term(ordinals[i], "nth"), calc.Term(by, "by")), each("s_# = 100 * p_# / S", i), unit.Percent, source.Definition,
			100*p.V/all, p, sum)
	}
	return out
}
