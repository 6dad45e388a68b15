// Package voc works out volatile organic compounds: what a mix holds, what a job puts into the air, and which
// limit it falls under.
//
// Two contents go by the same name. The regulatory one leaves water and exempt solvents out of the volume, and is
// the one limits are written for. The actual one is per litre of what is in the cup, and is the one that emissions
// follow from.
package voc

import (
	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "voc-as-sprayed", Make: AsSprayed},
	{ID: "voc-blend", Make: Blended},
	{ID: "voc-thinner", Make: MostThinner},
	{ID: "voc-less-water", Make: LessWater},
	{ID: "voc-content", Make: Content},
	{ID: "voc-solids", Make: OfSolids},
	{ID: "voc-stages", Make: Stages},
	{ID: "voc-limits", Make: LimitTables},
	{ID: "voc-record", Make: Record},
}

var (
	content    = source.CFR59.At("59.104(a)(1)").By(source.Memory)
	contentBy  = source.SouthCoastVOC.By(source.SecondHand)
	multiStage = source.CFR59.At("59.104(a)(2)").By(source.Memory)
	perSolids  = source.TAC115.By(source.SecondHand)
	weightForm = source.COMAR26.By(source.SecondHand)
)

// Actual is the VOC content per litre of material in g/L, from the regulatory content (g/L less water and exempt
// solvents) and the share of water and exempt solvents in the mix (percent by volume, 0 to below 100).
func Actual(w *calc.Working, regulatory, waterShare calc.Num) calc.Num {
	return w.Step("VOC in a litre of the mix", "VOC_a = VOC * (1 - w / 100)", unit.GramPerLitre, content,
		regulatory.V*(1-waterShare.V/100), regulatory, waterShare)
}

// Emitted is the VOC in g that a volume (mL) of mix puts into the air, from its actual content (g/L). All of it
// counts, also what lands on the part: it leaves as the film dries.
func Emitted(w *calc.Working, volume, actual calc.Num) calc.Num {
	return w.Step("VOC given off", "m = V / 1000 * VOC_a", unit.Gram, contentBy, volume.V/1000*actual.V, volume, actual)
}

// PerSolids is VOC in g for each litre of solids, from the regulatory content (g/L) and the density (kg/L) of
// the solvents, which fill what the solids do not. The content must be below the density.
func PerSolids(w *calc.Working, regulatory, density calc.Num) calc.Num {
	return w.Step("VOC for each litre of solids", "S = VOC / (1 - VOC / (1000 * D))", unit.GramPerLitre, perSolids,
		regulatory.V/(1-regulatory.V/(1000*density.V)), regulatory, density)
}

// Blend is the actual and the regulatory content (g/L) of a mix of parts: their volumes (mL), regulatory contents
// (g/L) and shares of water and exempt solvents (percent by volume; blank for none). It also returns the VOC in
// the whole mix in g. Volumes are taken to add up.
func Blend(w *calc.Working, volumes, regulatory, waters []calc.Num) (mixed, actual, mass calc.Num) {
	var all, dry, grams float64
	var whole, counted, heldBy []calc.Num
	for i, v := range volumes {
		left := v
		if waters[i].Given() {
			left = w.Step("Volume without water and exempt solvents", "V_d = V * (1 - w / 100)", unit.Millilitre, content,
				v.V*(1-waters[i].V/100), v, waters[i])
		}
		held := w.Step("VOC in this part", "m = V_d / 1000 * VOC", unit.Gram, content, left.V/1000*regulatory[i].V, left, regulatory[i])
		all, dry, grams = all+v.V, dry+left.V, grams+held.V
		whole, counted, heldBy = append(whole, v), append(counted, left), append(heldBy, held)
	}
	mass = total(w, "VOC in the whole mix", "m", unit.Gram, grams, heldBy)
	volume := total(w, "Volume of the mix", "V", unit.Millilitre, all, whole)
	without := total(w, "Volume without water and exempt solvents", "V_d", unit.Millilitre, dry, counted)
	mixed = w.Step("VOC of the mix, less water and exempt solvents", "VOC = 1000 * m / V_d", unit.GramPerLitre, content, 1000*grams/dry, mass, without)
	actual = w.Step("VOC in a litre of the mix", "VOC_a = 1000 * m / V", unit.GramPerLitre, content, 1000*grams/all, mass, volume)
	return mixed, actual, mass
}

// Thinner is the most thinner in mL that may go into a volume (mL) of mix holding voc (g/L), when the thinner
// holds more than the limit: voc <= limit < thinner, all less water and exempt solvents, which the mix has none of.
func Thinner(w *calc.Working, volume, voc, thinner, limit calc.Num) calc.Num {
	return w.Step("Most thinner", "y = V * (L - VOC) / (c - L)", unit.Millilitre, content,
		volume.V*(limit.V-voc.V)/(thinner.V-limit.V), volume, limit, voc, thinner)
}

// MultiStage is the average VOC content (g/L) that the US rule gives a topcoat of base, mid-coats and clear: the
// clear counts twice.
func MultiStage(w *calc.Working, base calc.Num, mids []calc.Num, clear calc.Num) calc.Num {
	formula, args, sum := "VOC_ms = (bc", []calc.Num{base}, base.V
	for i, mid := range mids {
		symbol := "mc_" + string(rune('1'+i))
		formula, args, sum = formula+" + "+symbol, append(args, mid), sum+mid.V
	}
	m := calc.N(float64(len(mids)), unit.One)
	m.Label = "Number of mid-coats"
	formula += " + 2 * cc) / (M + 3)"
	return w.Step("Average VOC of the stages", formula, unit.GramPerLitre, multiStage,
		(sum+2*clear.V)/(m.V+3), append(args, clear, m)...)
}
