package voc

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A Sample is what a measured volume of mix holds: masses in g, volumes in mL.
type Sample struct {
	Volatiles, Water, Exempt          calc.Num
	Volume, WaterVolume, ExemptVolume calc.Num
}

// Contents are the regulatory and the actual VOC content (g/L) of a sample. Water and exempt solvents must leave
// some volume and no less than no volatiles.
func (s Sample) Contents(w *calc.Working) (regulatory, actual calc.Num) {
	m := w.Step("VOC in the sample", "m = W_v - W_w - W_ec", unit.Gram, content, s.Volatiles.V-s.Water.V-s.Exempt.V,
		s.Volatiles, s.Water, s.Exempt)
	regulatory = w.Step("VOC, less water and exempt solvents", "VOC = 1000 * m / (V - V_w - V_ec)", unit.GramPerLitre, content,
		1000*m.V/(s.Volume.V-s.WaterVolume.V-s.ExemptVolume.V), m, s.Volume, s.WaterVolume, s.ExemptVolume)
	actual = w.Step("VOC in a litre of the mix", "VOC_a = 1000 * m / V", unit.GramPerLitre, content, 1000*m.V/s.Volume.V, m, s.Volume)
	return regulatory, actual
}

// A ByWeight is a mix as its data sheet gives it: percent by weight and densities in kg/L.
type ByWeight struct {
	Solids, Water, Exempt                calc.Num
	Density, WaterDensity, ExemptDensity calc.Num
}

// Contents are the regulatory and the actual VOC content (g/L). Exempt and its density may both be blank.
func (b ByWeight) Contents(w *calc.Working) (regulatory, actual calc.Num) {
	water := w.Step("Water in the mix, by volume", "w_w = W_w * D_c / D_w", unit.Percent, weightForm, b.Water.V*b.Density.V/b.WaterDensity.V,
		b.Water, b.Density, b.WaterDensity)
	counted, args, out := "100 - W_s - W_w", []calc.Num{b.Solids, b.Water}, b.Solids.V+b.Water.V
	left, by, gone := "100 - w_w", []calc.Num{water}, water.V
	if b.Exempt.Given() {
		exempt := w.Step("Exempt solvents in the mix, by volume", "w_ec = W_ec * D_c / D_ec", unit.Percent, weightForm,
			b.Exempt.V*b.Density.V/b.ExemptDensity.V, b.Exempt, b.Density, b.ExemptDensity)
		counted, args, out = counted+" - W_ec", append(args, b.Exempt), out+b.Exempt.V
		left, by, gone = left+" - w_ec", append(by, exempt), gone+exempt.V
	}
	counted, left = "W_o = "+counted, "VOC = 100 * VOC_a / ("+left+")"
	voc := w.Step("VOC by weight", counted, unit.Percent, weightForm, 100-out, args...)
	actual = w.Step("VOC in a litre of the mix", "VOC_a = 10 * W_o * D_c", unit.GramPerLitre, weightForm, 10*voc.V*b.Density.V, voc, b.Density)
	regulatory = w.Step("VOC, less water and exempt solvents", left, unit.GramPerLitre, weightForm,
		100*actual.V/(100-gone), append([]calc.Num{actual}, by...)...)
	return regulatory, actual
}

// total adds nums up under one symbol.
func total(w *calc.Working, label calc.Phrase, symbol string, u unit.Unit, sum float64, ns []calc.Num) calc.Num {
	names := make([]string, len(ns))
	for i := range ns {
		names[i] = symbol + "_" + strconv.Itoa(i+1)
	}
	formula := symbol + " = " + strings.Join(names, " + ")
	return w.Step(label, formula, u, source.Definition, sum, ns...)
}
