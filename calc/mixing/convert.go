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
	var args []calc.Arg
	mass, volume := 0.0, 0.0
	for i, r := range parts {
		rho := densities[i]
		args = append(args, part(parts, i, u).As(sub("r", i)), rho.As(sub("rho", i)))
		if byWeight {
			mass, volume = mass+r, volume+r/rho.V
		} else {
			mass, volume = mass+r*rho.V, volume+r
		}
	}
	return w.Step("Density of the mix", formula, unit.KilogramPerLitre, source.AdditiveVolumes, mass/volume, args...)
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

func convert(w *calc.Working, by, formula string, from, to unit.Unit, parts []float64, densities []calc.Num, factor func(rho, first float64) float64) []calc.Num {
	out := make([]calc.Num, len(parts))
	first := densities[0]
	for i, x := range parts {
		label := "The " + ordinals[i] + " part " + by
		r := part(parts, i, from)
		if i == 0 {
			kept := formula[:1] + "_1 = r_1"
			out[i] = w.Step(label+", kept as it is", kept, to, source.Definition, x, r.As("r_1"))
			continue
		}
		rho := densities[i]
		out[i] = w.Step(label, each(formula, i), to, source.Definition, x*factor(rho.V, first.V),
			r.As(sub("r", i)), rho.As(sub("rho", i)), first.As("rho_1"))
	}
	return out
}

// shares are parts as percentages of all of them.
func shares(w *calc.Working, by string, ps []calc.Num) []calc.Num {
	args, all := make([]calc.Arg, len(ps)), 0.0
	for i, p := range ps {
		args[i] = p.As(sub("p", i))
		all += p.V
	}
	out := make([]calc.Num, len(ps))
	sum := w.Step("All parts "+by, adding("S", "p_#", len(ps)), ps[0].Unit, source.Definition, all, args...)
	for i, p := range ps {
		out[i] = w.Step("Share of the "+ordinals[i]+" part "+by, each("s_# = 100 * p_# / S", i), unit.Percent, source.Definition,
			100*p.V/all, args[i], sum.As("S"))
	}
	return out
}
