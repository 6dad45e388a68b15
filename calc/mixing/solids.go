package mixing

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// MixSolids tells the density and the solids of a mix from those of its parts.
func MixSolids() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mix-solids",
		Title:    "Solids of a mix",
		Question: "How much of this mix stays on as dry film, and what does a litre of it weigh?",
		Range: "Up to six parts whose solids are known; thinner has none. Volumes are taken to add up. " +
			"Solids by volume give the film, those by weight do not: they are given too where every part has its density and its solids by weight.",
		Inputs:     []calc.Input{solidParts},
		Outputs:    []calc.Output{solidsByVolume, solidsDensity, solidsByWeight},
		Work:       mixSolids,
		Arithmetic: true,
	}
}

var (
	solidParts = calc.Input{
		Key: "component", Label: "Parts of the mix", Help: "Paint, hardener, thinner", RowName: "part", Most: ratio.Most,
		Rows: []calc.Input{field.ComponentVol, field.PartSolids, field.PartDensity, field.PartSolidsWeight},
	}
	solidsByVolume = calc.Output{Key: "sprayed_solids", Label: "Volume solids of the mix", Unit: unit.Percent, Decimals: 1, Main: true}
	solidsDensity  = calc.Output{Key: "mix_density", Label: "Density of the mix", Unit: unit.KilogramPerLitre, Decimals: 3, Optional: true}
	solidsByWeight = calc.Output{Key: "mix_solids_weight", Label: "Solids of the mix by weight", Unit: unit.Percent, Decimals: 1, Optional: true}
)

func mixSolids(w *calc.Working) {
	var volumes, solids, densities, weights []calc.Num
	all, weighed, known := 0.0, true, true
	for _, row := range w.Rows(solidParts) {
		v, rho, nv := row.Given(field.ComponentVol), row.Given(field.PartDensity), row.Given(field.PartSolidsWeight)
		all, weighed, known = all+v.V, weighed && rho.Given(), known && nv.Given()
		volumes, solids, densities, weights = append(volumes, v), append(solids, row.Given(field.PartSolids)), append(densities, rho), append(weights, nv)
	}
	if all == 0 {
		w.Reject(solidParts, calc.Impossible, "have no volume", "Enter how much of each goes in")
		return
	}
	w.Result(solidsByVolume, averaged(w, solidsByVolume, source.AdditiveVolumes, "VS", "V", solids, volumes))
	if !weighed {
		return
	}
	w.Result(solidsDensity, averaged(w, solidsDensity, source.AdditiveVolumes, "rho", "V", densities, volumes))
	if !known {
		return
	}
	masses := make([]calc.Num, len(volumes))
	for i, v := range volumes {
		rho := densities[i]
		masses[i] = w.Step(nth(w, "Weight of the {nth} part", i), each("m_# = V_# * rho_#", i), unit.Gram, source.Definition, v.V*rho.V, v, rho)
	}
	w.Result(solidsByWeight, averaged(w, solidsByWeight, source.Definition, "W_s", "m", weights, masses))
}

// averaged is the mean of xs, each as heavy as its share.
func averaged(w *calc.Working, out calc.Output, src source.Source, symbol, by string, xs, shares []calc.Num) calc.Num {
	var nums []calc.Num
	sum, all := 0.0, 0.0
	for i, x := range xs {
		s := shares[i]
		nums, sum, all = append(nums, s, x), sum+s.V*x.V, all+s.V
	}
	formula := symbol + " = (" + terms(by+"_# * "+symbol+"_#", len(xs), " + ") + ") / (" + terms(by+"_#", len(xs), " + ") + ")"
	return w.Step(out.Label, formula, out.Unit, src, sum/all, nums...)
}
