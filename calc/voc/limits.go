package voc

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// LimitTables shows what each table of limits allows a kind of coat.
func LimitTables() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-limits",
		Title:    "VOC limits side by side",
		Question: "What VOC limit does this kind of coat fall under?",
		Range: "Vehicle refinishing, ready to spray. The EU table leaves water out, the US one water and exempt solvents. The US rule binds makers and importers; " +
			"many states and districts are stricter with whoever sprays. A mix that serves two kinds of coat falls under the lower limit. No later change of either table has been looked for.",
		Inputs:   []calc.Input{kinds(), field.Stages.If("role", "base", "clear")},
		Outputs:  []calc.Output{limitTable},
		Work:     limitTables,
		Cautions: []calc.Phrase{caution.LocalRule},
	}
}

var limitTable = calc.Output{Key: "limit_table", Label: "Limits", Main: true, Columns: []calc.Output{
	{Key: "table", Label: "Table", Words: true},
	{Key: "limit_category", Label: "Category", Words: true},
	{Key: "limit", Label: "Limit", Unit: unit.GramPerLitre},
	{Key: "holds_for", Label: "Holds for", Words: true},
	{Key: "table_date", Label: "Published", Words: true},
}}

// kinds are the kinds of coat of a job, and what else the tables have a line for.
func kinds() calc.Input {
	in := field.Role
	in.Choices = append(slices.Clone(in.Choices), calc.Choice{Key: "multicolour", Label: "Multi-coloured topcoat"},
		calc.Choice{Key: "bodyfiller", Label: "Bodyfiller or stopper"}, calc.Choice{Key: "preparatory", Label: "Preparatory product"}, calc.Choice{Key: "pre-cleaner", Label: "Pre-cleaner"})
	return in
}

func limitTables(w *calc.Working) {
	stages := int(w.Given(field.Stages).Or(1).V)
	for _, table := range field.Limits.Choices {
		l, ok := LimitFor(table.Key, w.Picked(field.Role), stages)
		if !ok {
			continue
		}
		whole := calc.Phrase("This coat")
		if l.Average {
			whole = "The average of all stages"
		}
		told := func(p calc.Phrase) calc.Cell { return calc.Told(calc.Say(p)) }
		limit := l.Allowed(w)
		w.List(limitTable, told(table.Label), told(l.Category), calc.Of(limit), told(whole), told(l.Dated))
	}
}
