// Package money works out what paint and a job cost, in whatever money the prices are typed in.
package money

import (
	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "job-cost", Make: JobCost},
	{ID: "cup-cost", Make: CupCost},
}

// worth is what a volume in mL costs at a price a litre.
func worth(w *calc.Working, label calc.Phrase, volume, price calc.Num) calc.Num {
	return w.Step(label, "C = V / 1000 * c", unit.PlainMoney, source.Definition, volume.V/1000*price.V, volume, price)
}
