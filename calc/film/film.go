// Package film works out wet and dry film, coverage, and how much paint a film takes.
package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "wet-film", Make: WetFilm},
	{ID: "comb-reading", Make: CombReading},
	{ID: "dry-film", Make: DryFilm},
	{ID: "spreading-rate", Make: Spreading},
	{ID: "paint-needed", Make: PaintNeeded},
	{ID: "coverage-left", Make: CoverageLeft},
	{ID: "blend-area", Make: BlendArea},
	{ID: "profile-paint", Make: ProfilePaint},
	{ID: "film-from-paint", Make: FilmFromPaint},
	{ID: "gauge-readings", Make: GaugeReadings},
}

// Where the formulas were read.
var (
	wetToDry  = source.MILHDBK1110.At("2.1.5").By(source.Seen)
	thinned   = source.FinishingGuidebook.At("wet-film measurement, equation with thinner").By(source.Seen)
	combTeeth = source.ASTMD4414.By(source.SecondHand)
	notches   = source.FinishingGuidebook.At("wet-film measurement, notch gauges").By(source.Seen)
)

// mixRatio asks for the parts only where the sheet's solids leave out the last of them.
var mixRatio = byVolume(field.Ratio)

func byVolume(in calc.Input) calc.Input {
	in.Label, in.Help = "Mix ratio by volume", "Thinner last, as 4:1:1 or 4:1+10%; a ratio by weight will not do"
	return in.If("solids_for", "unthinned")
}

var sprayedSolids = calc.Output{Key: "sprayed_solids", Label: "Volume solids, ready to spray", Unit: unit.Percent, Decimals: 1, Optional: true}

// leastSolids is the thinnest mix, in percent, that is taken for a paint.
const leastSolids = 1

// solids takes the volume solids of the mix ready to spray from a form with VolumeSolids, SolidsFor and mixRatio.
// ok is false when the ratio cannot be used.
func solids(w *calc.Working) (vs calc.Num, ok bool) {
	vs = w.Given(field.VolumeSolids)
	if w.Picked(field.SolidsFor) != "unthinned" {
		return vs, true
	}
	parts, _ := ratio.Parse(w.Words(mixRatio))
	if len(parts) < 2 {
		w.Reject(mixRatio, calc.Impossible, "must have at least two parts", "Write the thinner last, like 4:1:1")
		return vs, false
	}
	vs = SprayedSolids(w, vs, parts, true)
	if vs.V < leastSolids {
		w.Reject(mixRatio, calc.Beyond, "leaves {left} volume solids, too little to work with", "Check the parts; the thinner comes last", vs.As("left"))
		return vs, false
	}
	w.Result(sprayedSolids, vs)
	return vs, true
}

// SprayedSolids is the volume solids in percent of a mix ready to spray, from the solids vs of the mix without
// its last part, which is thinner. The parts are by volume, at least two, the first above 0. Where thinnerLast
// is false the solids are those of the mix already and come back as they are.
func SprayedSolids(w *calc.Working, vs calc.Num, parts []float64, thinnerLast bool) calc.Num {
	if !thinnerLast {
		return vs
	}
	sum := 0.0
	for _, p := range parts {
		sum += p
	}
	all, last := calc.N(sum, unit.PartsByVolume), calc.N(parts[len(parts)-1], unit.PartsByVolume)
	all.Label, last.Label = "All parts of the mix", "Its last part"
	return w.Step(sprayedSolids.Label, "VS_mix = VS * (sum - last) / sum", unit.Percent, thinned,
		vs.V*(sum-last.V)/sum, vs, all, last)
}
