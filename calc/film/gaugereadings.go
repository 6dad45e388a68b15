package film

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// GaugeReadings judges dry-film readings by three published rules.
func GaugeReadings() *calc.Calculator {
	return &calc.Calculator{
		ID:       "gauge-readings",
		Title:    "Gauge readings",
		Question: "Do these gauge readings pass?",
		Range: "Up to 200 readings of one film, judged by ISO 19840, SSPC-PA 2 and IMO MSC.215(82), each as far as its rule is known here. " +
			"ISO 19840 is for films of 40 µm and more. Of the three only SSPC-PA 2 judges a film that is too thick.",
		Inputs:  []calc.Input{specified, field.FilmLeast, field.FilmMost, field.GaugeRule, gaugeTable, field.ProfileGrade, paintedArea},
		Outputs: []calc.Output{doubtful, rulings, filmMean, filmLowest, shareBelow, spotLow, spotHigh, readingsWanted, spots},
		Work:    gaugeReadings,
		Cautions: []calc.Phrase{
			"These are three different rules, told from summaries and, in part, from memory. The specification says which one counts; read it in the standard before you accept or refuse work by it.",
		},
	}
}

var (
	specified   = helped(field.DryFilm, "Dry film specified", "The nominal film, of all coats the gauge reads through", 100)
	paintedArea = helped(partArea, "Area painted", "To be told how many readings SSPC-PA 2 wants", 25).Maybe()
	gaugeTable  = calc.Input{
		Key: "reading", Label: "Readings", Help: "One row for each reading of the gauge", RowName: "reading", Most: 200,
		Rows: []calc.Input{field.GaugeReading},
	}

	rulings = calc.Output{Key: "ruling", Label: "By each rule", Columns: []calc.Output{
		{Key: "rule", Label: "Rule", Words: true}, {Key: "result", Label: "Result", Words: true}, {Key: "reason", Label: "Why", Words: true},
	}}
	filmMean   = calc.Output{Key: "film_mean", Label: "Mean of the readings", Unit: unit.Micrometre, Main: true}
	filmLowest = calc.Output{Key: "film_lowest", Label: "Lowest reading", Unit: unit.Micrometre}
	shareBelow = calc.Output{Key: "share_below", Label: "Readings below the film specified", Unit: unit.Percent, Decimals: 1}
	spotLow    = calc.Output{Key: "spot_low", Label: "SSPC-PA 2: lowest spot allowed", Unit: unit.Micrometre}
	spotHigh   = calc.Output{Key: "spot_high", Label: "SSPC-PA 2: highest spot allowed", Unit: unit.Micrometre}
	spots      = calc.Output{Key: "spot", Label: "Spots of three", Optional: true, Columns: []calc.Output{
		{Key: "spot", Label: "Spot", Unit: unit.One}, {Key: "spot_mean", Label: "Mean", Unit: unit.Micrometre},
	}}
	readingsWanted = calc.Output{Key: "readings_wanted", Label: "SSPC-PA 2: readings wanted", Unit: unit.One, Optional: true}
)

// helped rewords an input for a form that asks for it in another light.
func helped(in calc.Input, label, help calc.Phrase, example float64) calc.Input {
	in.Label, in.Help, in.Example = label, help, example
	return in
}

func gaugeReadings(w *calc.Working) {
	film := w.Given(field.DryFilm)
	least, most, ok := specifiedRange(w, film)
	if !ok {
		return
	}
	x, ok := lessProfile(w)
	if !ok {
		return
	}
	listDoubtful(w, film)
	r := survey(w, film, x)
	w.Result(filmMean, r.mean)
	w.Result(filmLowest, r.low)
	w.Result(shareBelow, r.below)
	judgements := []ruling{r.byISO19840(w), r.byPA2(w, least, most), r.byMSC215(w)}
	for i, says := range judgements {
		rule := []calc.Phrase{"ISO 19840", "SSPC-PA 2", "IMO MSC.215(82), 90/10"}[i]
		w.List(rulings, calc.Told(calc.Say(rule)), calc.Told(calc.Say(says.result)), calc.Told(says.why))
	}
	switch w.Picked(field.GaugeRule) {
	case "iso":
		judgeByOne(w, judgements[0], len(x))
	case "pa2":
		judgeByOne(w, judgements[1], len(x))
	case "msc":
		judgeByOne(w, judgements[2], len(x))
	default:
		judgeByAll(w, judgements, len(x))
	}
	r.listSpots(w)
	r.draw(w, least, most)
	wanted(w)
}

// judgeByOne rules on n readings by the rule that the specification names.
func judgeByOne(w *calc.Working, by ruling, n int) {
	switch {
	case by.result == fail:
		w.Judge(calc.Stop, by.why, calc.Say("Find where the film is wrong before you paint over it, and ask whoever specified it"))
	case by.result == notJudged, n < fewReadings:
		w.Judge(calc.Wait, by.why, calc.Say("Take as many, and where, as the rule wants"))
	default:
		w.Judge(calc.Go, by.why, calc.Say("File them with the job, under the name of the rule"))
	}
}

// judgeByAll rules on n readings by whatever rule can be applied.
func judgeByAll(w *calc.Working, by []ruling, n int) {
	passed, failed := 0, 0
	for _, says := range by {
		switch says.result {
		case pass:
			passed++
		case fail:
			failed++
		}
	}
	switch {
	case failed == 0 && n < fewReadings:
		w.Judge(calc.Wait, calc.Say("No rule that could be applied fails these readings, but they are too few to accept a film by"),
			calc.Say("Take as many, and where, as the rule named in the specification wants"))
	case failed == 0:
		w.Judge(calc.Go, calc.Say("No rule that could be applied fails these readings"), calc.Say("File them with the job, under the name of the rule specified"))
	case passed > 0:
		w.Judge(calc.Wait, calc.Say("The rules disagree about these readings"), calc.Say("See which rule the specification names; only that one counts"))
	default:
		w.Judge(calc.Stop, calc.Say("Every rule that could be applied fails these readings"), calc.Say("Find where the film is wrong before you paint over it, and ask whoever specified it"))
	}
}

// fewReadings is the number below which no film is accepted here, whatever the readings. The smallest plan of
// ISO 19840 asks for that many, from memory.
const fewReadings = 5

// specifiedRange is the lowest and the highest film specified; one that is not given is 20 % from the nominal film.
func specifiedRange(w *calc.Working, film calc.Num) (least, most calc.Num, ok bool) {
	if least = w.Given(field.FilmLeast); !least.Given() {
		least = w.Step("Lowest film, from a single value", "least = 0.8 * DFT", unit.Micrometre, pa2Single, 0.8*film.V, film)
	}
	if most = w.Given(field.FilmMost); !most.Given() {
		most = w.Step("Highest film, from a single value", "most = 1.2 * DFT", unit.Micrometre, pa2Single, 1.2*film.V, film)
	}
	if least.V >= most.V {
		in := field.FilmMost
		if !w.Given(in).Given() {
			in = field.FilmLeast
		}
		w.Reject(in, calc.Impossible, "leaves no range: {least} to {most}", "Check it against the film specified", least.As("least"), most.As("most"))
	}
	return least, most, least.V < most.V
}

// lessProfile are the readings in µm with the profile taken off.
func lessProfile(w *calc.Working) (x []float64, ok bool) {
	off, ok := 0.0, true
	switch w.Picked(field.ProfileGrade) {
	case "fine":
		off = 10
	case "medium":
		off = 25
	case "coarse":
		off = 40
	}
	if off > 0 {
		c := w.Constant("Taken off each reading for the profile", unit.Micrometre, iso19840Off, off)
		w.Caution("{c} is taken off each reading, as ISO 19840 does where the bare profile was not measured. SSPC-PA 2 takes off your own readings on the bare blasted steel instead.", c.As("c"))
	}
	for _, row := range w.Rows(gaugeTable) {
		v := row.Given(field.GaugeReading).V - off
		if v < 0 {
			row.Reject(field.GaugeReading, calc.Impossible, "is less than is taken off for the profile, {c}", "Check the reading, or the profile",
				calc.N(off, unit.Micrometre).As("c"))
			ok = false
		}
		x = append(x, v)
	}
	return x, ok
}

// wanted tells how many readings SSPC-PA 2 asks for on an area. Its counts in m² and in ft² differ a little: this is
// the one in ft², which is never fewer.
func wanted(w *calc.Working) {
	area := w.Given(partArea)
	if !area.Given() {
		return
	}
	ft := w.Step("Area in square feet", "A_ft = A / 0.09290304", unit.SquareFoot, source.Definition, area.V/0.09290304, area)
	n := calc.Num{}
	if ft.V <= 300 {
		n = w.Step(readingsWanted.Label, "n = 15 * ceil(A_ft / 100 - 0.000001)", unit.One, pa2, 15*math.Ceil(ft.V/100-0.000001), ft)
	} else {
		n = w.Step(readingsWanted.Label, "n = 45 + 15 * ceil(max(0, A_ft - 1000) / 1000 - 0.000001)", unit.One, pa2,
			45+15*math.Ceil(max(0, ft.V-1000)/1000-0.000001), ft)
	}
	w.Result(readingsWanted, n)
}
