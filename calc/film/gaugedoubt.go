package film

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

var doubtful = calc.Output{Key: "doubtful", Label: "Check these readings", Optional: true, Columns: []calc.Output{
	{Key: "doubtful_reading", Label: "Reading", Unit: unit.One}, {Key: "doubt", Label: "Why", Words: true},
}}

// farOff is how many times more, or less, than the film specified a reading is before it is asked about: common practice,
// no source. A decimal mark left out makes it ten times, mils taken for µm 25 times.
const farOff = 5

// listDoubtful names the readings that are likely slips of a key or of a unit, as the gauge showed them. They count until
// somebody takes them out: a film can be that wrong.
func listDoubtful(w *calc.Working, film calc.Num) {
	for i, row := range w.Rows(gaugeTable) {
		x := row.Given(field.GaugeReading)
		why := calc.Say("{x} is more than 5 times the film specified, {film}", x.As("x"), film.As("film"))
		switch {
		case under(x.V, film.V/farOff):
			why = calc.Say("{x} is less than a fifth of the film specified, {film}", x.As("x"), film.As("film"))
		case !under(farOff*film.V, x.V):
			continue
		}
		w.List(doubtful, calc.Of(calc.N(float64(i+1), unit.One)), calc.Told(why))
	}
}
