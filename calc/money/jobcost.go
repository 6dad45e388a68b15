package money

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// JobCost tells what a job costs, and what of it is wasted.
func JobCost() *calc.Calculator {
	return &calc.Calculator{
		ID:       "job-cost",
		Title:    "Cost of a job",
		Question: "What does this job cost, and what of it goes to waste?",
		Range: "One product on smooth parts of a known area, the mean job: paint that is mixed and left over comes on top. Booth, filters, sanding, taxes and profit are not in it. " +
			"Labour counts where both its fields are filled in.",
		Inputs:     []calc.Input{area, field.DryFilm, volumeSolids, field.TransferEfficiency, losses, price, field.Labour, field.Wage},
		Outputs:    []calc.Output{costJob, costArea, costPaint, costWaste, costLabour},
		Work:       jobCost,
		Arithmetic: true,
	}
}

var (
	area         = asked(field.PartArea, "Area painted", "All parts together", 6)
	volumeSolids = asked(field.VolumeSolids, field.VolumeSolids.Label, "Of the mix ready to spray, thinner included", 45)
	losses       = asked(field.Losses, "Stays in cups and gun", "Over the whole job", 80)
	price        = asked(field.Price, field.Price.Label, field.Price.Help, 40)

	costJob    = calc.Output{Key: "cost_job", Label: "Cost of the job", Unit: unit.PlainMoney, Decimals: 2, Main: true}
	costArea   = calc.Output{Key: "cost_area", Label: "Cost of a square metre", Unit: unit.PricePerSquareMetre, Decimals: 2, Main: true}
	costPaint  = calc.Output{Key: "cost_paint", Label: "Paint in it", Unit: unit.PlainMoney, Decimals: 2}
	costWaste  = calc.Output{Key: "cost_waste", Label: "Paint wasted", Unit: unit.PlainMoney, Decimals: 2}
	costLabour = calc.Output{Key: "cost_labour", Label: "Labour in it", Unit: unit.PlainMoney, Decimals: 2, Optional: true}
)

// asked is an input that must be filled in whatever else is.
func asked(in calc.Input, label, help calc.Phrase, example float64) calc.Input {
	in.Label, in.Help, in.Example, in.Optional, in.When = label, help, example, false, nil
	return in
}

func jobCost(w *calc.Working) {
	a, te, lost, c := w.Given(area), w.Given(field.TransferEfficiency), w.Given(field.Losses), w.Given(field.Price)
	demand := film.Demand(w, a, w.Given(field.DryFilm), w.Given(field.VolumeSolids), te)
	all := w.Step("Paint used", "V = q + H", unit.Millilitre, source.Definition, demand.V+lost.V, demand, lost)
	gone := w.Step("Paint wasted", "V = q * (1 - TE / 100) + H", unit.Millilitre, source.Definition, demand.V*(1-te.V/100)+lost.V, demand, te, lost)
	total := worth(w, "Cost of the paint", all, c)
	w.Result(costPaint, total)
	w.Result(costWaste, worth(w, "Cost Paint wasted", gone, c))
	if t, wage := w.Given(field.Labour), w.Given(field.Wage); t.Given() && wage.Given() {
		labour := w.Step("Cost of the labour", "C_w = t / 60 * w", unit.PlainMoney, source.Definition, t.V/60*wage.V, t, wage)
		w.Result(costLabour, labour)
		total = w.Step(costJob.Label, "C_job = C + C_w", unit.PlainMoney, source.Definition, total.V+labour.V, total, labour)
	}
	w.Result(costJob, total)
	w.Result(costArea, w.Step(costArea.Label, "c_A = C / A", unit.PricePerSquareMetre, source.Definition, total.V/a.V, total, a))
}
