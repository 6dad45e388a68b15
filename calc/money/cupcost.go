package money

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// CupCost tells what a mixed cup costs.
func CupCost() *calc.Calculator {
	return &calc.Calculator{
		ID:         "cup-cost",
		Title:      "Cost of a cup",
		Question:   "What does a cup of this mix cost me?",
		Range:      "Up to six parts, with their numbers in the ratio by volume. The volumes are taken to add up.",
		Inputs:     []calc.Input{tins, amount, field.LeftOver},
		Outputs:    []calc.Output{costCup, mixPrice, costLeft},
		Work:       cupCost,
		Arithmetic: true,
	}
}

var (
	tins = calc.Input{
		Key: "tin", Label: "What goes in", Help: "One row for each tin you pour from", RowName: "tin", Most: ratio.Most,
		Rows: []calc.Input{field.TinParts, field.TinSize, field.TinPrice},
	}
	amount = asked(field.Amount, "Amount mixed", field.Amount.Help, 600)

	costCup  = calc.Output{Key: "cost_cup", Label: "Cost of the cup", Unit: unit.PlainMoney, Decimals: 2, Main: true}
	mixPrice = calc.Output{Key: "mix_price", Label: "Price of the mix", Unit: unit.PricePerLitre, Decimals: 2}
	costLeft = calc.Output{Key: "cost_left", Label: "Cost thrown away", Unit: unit.PlainMoney, Decimals: 2, Optional: true}
)

func cupCost(w *calc.Working) {
	v, left := w.Given(field.Amount), w.Given(field.LeftOver)
	if left.V > v.V {
		w.Reject(field.LeftOver, calc.Impossible, "is more than was mixed, {v}", "Check the two", v.As("v"))
		return
	}
	sum := calc.N(0, unit.PartsByVolume).Called("Parts before")
	cost := calc.N(0, unit.PlainMoney).Called("Cost before")
	for _, row := range w.Rows(tins) {
		r, size, price := row.Given(field.TinParts), row.Given(field.TinSize), row.Given(field.TinPrice)
		sum = w.Step("Parts so far", "R = R_before + r", unit.PartsByVolume, source.Definition, sum.V+r.V, sum, r)
		cost = w.Step("Cost so far, of a litre to the part", "K = K_before + r * 1000 * P / S", unit.PlainMoney, source.Definition,
			cost.V+r.V*1000*price.V/size.V, cost, r, price, size)
	}
	c := w.Step(mixPrice.Label, "c = K / R", unit.PricePerLitre, source.AdditiveVolumes, cost.V/sum.V, cost, sum)
	w.Result(mixPrice, c)
	w.Result(costCup, worth(w, "Cost of the cup", v, c))
	if left.Given() {
		w.Result(costLeft, worth(w, "Cost of what is thrown away", left, c))
	}
}
