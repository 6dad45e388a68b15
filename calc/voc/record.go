package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// Record adds up what a shop put into the air, month by month and over twelve months.
func Record() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-record",
		Title:    "VOC record, twelve months",
		Question: "How much VOC did we put into the air, and where do we stand over twelve months?",
		Range: "Up to 60 lines, one for each month or each job. All VOC used counts as given off, whatever part of the paint stays on the work. " +
			"Solvent you collect and hand in does not count: enter only what was lost.",
		Inputs:     []calc.Input{recordLines, field.MassLimit},
		Outputs:    []calc.Output{yearMass, yearSpare, record},
		Work:       workRecord,
		Cautions:   []calc.Phrase{"Your permit or local rule says what to count, over which months, and how long to keep the record. " + caution.LocalRule},
		Arithmetic: true,
	}
}

var (
	lostThen = func() calc.Input {
		in := field.CleanerLost
		in.Help = "Weight that evaporated, of this line; blank if none"
		return in
	}()
	recordLines = calc.Input{
		Key: "use", Label: "What was used", RowName: "line", Most: 60,
		Rows: []calc.Input{field.RecordMonth, field.RecordVolume, field.RecordVOC, lostThen},
	}

	yearMass  = calc.Output{Key: "year_mass", Label: "VOC in the last 12 months", Unit: unit.Kilogram, Decimals: 1, Main: true}
	yearSpare = calc.Output{Key: "year_spare", Label: "Left below the limit", Unit: unit.Kilogram, Decimals: 1, Optional: true}
	record    = calc.Output{Key: "record", Label: "Month by month", Columns: []calc.Output{
		{Key: "month", Label: "Month", Unit: unit.One},
		{Key: "mass", Label: "VOC that month", Unit: unit.Kilogram, Decimals: 1},
		{Key: "twelve", Label: "12 months up to it", Unit: unit.Kilogram, Decimals: 1},
	}}
)

// window is how many months are added up.
const window = 12

func workRecord(w *calc.Working) {
	months, masses := recordMasses(w)
	last := 0
	for _, m := range months {
		last = max(last, m)
	}
	var year, worst calc.Num
	for m := 1; m <= last; m++ {
		here := between(months, masses, m, m)
		if len(here) == 0 {
			continue
		}
		year = addUp(w, "VOC of the 12 months up to this one", between(months, masses, m-window+1, m))
		w.List(record, calc.Of(calc.N(float64(m), unit.One)), calc.Of(addUp(w, "VOC of the month", here)), calc.Of(year))
		if !worst.Given() || year.V > worst.V {
			worst = year
		}
	}
	w.Result(yearMass, year)
	limit := w.Given(field.MassLimit)
	if !limit.Given() {
		return
	}
	spare := w.Step("Left below the limit", "s = L - m / 1000", unit.Kilogram, contentBy, limit.V-year.V/1000, limit, year)
	w.Result(yearSpare, spare)
	if worst.V > 1000*limit.V {
		worst = w.Step("Highest of any twelve months", "m_kg = m / 1000", unit.Kilogram, contentBy, worst.V/1000, worst)
		w.Judge(calc.Stop, calc.Say("Twelve months came to {worst}, and the limit is {limit}", worst.To(0, "worst"), limit.To(0, "limit")), calc.Say("Ask whoever gave you the limit what to do now"))
		return
	}
	w.Judge(calc.Go, calc.Say("{spare} is left below the limit of {limit}", spare.To(1, "spare"), limit.To(0, "limit")), calc.Say("Enter each month as it ends, and plan ahead of the limit"))
}

// recordMasses is the month and the VOC in g of every line.
func recordMasses(w *calc.Working) (months []int, masses []calc.Num) {
	for _, row := range w.Rows(recordLines) {
		v, voc, lost := row.Given(field.RecordVolume), row.Given(field.RecordVOC), row.Given(lostThen)
		m := w.Step("VOC of this line", "m = V * VOC_a", unit.Gram, contentBy, v.V*voc.V, v, voc)
		if lost.Given() {
			m = w.Step("VOC of this line, with cleaning", "m_c = m + l", unit.Gram, contentBy, m.V+lost.V, m, lost)
		}
		months, masses = append(months, int(row.Given(field.RecordMonth).V)), append(masses, m)
	}
	return months, masses
}

// between picks the masses of the months from first to last.
func between(months []int, masses []calc.Num, first, last int) (picked []calc.Num) {
	for i, m := range months {
		if first <= m && m <= last {
			picked = append(picked, masses[i])
		}
	}
	return picked
}

func addUp(w *calc.Working, label calc.Phrase, masses []calc.Num) calc.Num {
	sum := 0.0
	for _, m := range masses {
		sum += m.V
	}
	return total(w, label, "m", unit.Gram, sum, masses)
}
