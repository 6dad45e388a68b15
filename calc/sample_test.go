package calc_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A small calculator that uses every kind of input and of answer. Its trade is made up.
var (
	temp  = calc.Input{Key: "temp", Label: "Temperature", Symbol: "t", Help: "h", Unit: unit.DegC, Limits: calc.Between(5, 40), Example: 20}
	rise  = calc.Input{Key: "rise", Label: "Rise", Help: "h", Unit: unit.DiffC, Limits: calc.Between(0, 20), Example: 2, Prefill: true}
	how   = calc.Input{Key: "how", Label: "How", Help: "h", Choices: []calc.Choice{{Key: "plain", Label: "Plain"}, {Key: "long", Label: "Long"}}}
	reach = calc.Input{Key: "reach", Label: "Reach", Help: "h", Unit: unit.Metre, Limits: calc.Between(0.001, 5000), Example: 2}.If("how", "long")
	times = calc.Input{Key: "times", Label: "Times", Help: "h", Unit: unit.One, Limits: calc.Between(1, 10), Example: 2, Whole: true}
	note  = calc.Input{Key: "note", Label: "Note", Help: "h", Words: "dry: yes", Optional: true, Check: func(s string) *calc.Fault {
		if !strings.Contains(s, ":") {
			return &calc.Fault{Message: "needs a colon", Fix: "Write it like dry: yes"}
		}
		return nil
	}}
	name   = calc.Input{Key: "name", Label: "Name", Help: "h", Words: "Lid"}
	shape  = calc.Input{Key: "shape", Label: "Shape", Help: "h", Choices: []calc.Choice{{Key: "disc", Label: "Disc"}, {Key: "strip", Label: "Strip"}}}
	length = calc.Input{Key: "length", Label: "Length", Help: "h", Unit: unit.Millimetre, Limits: calc.Between(1, 20000), Example: 600}.If("shape", "strip")
	part   = calc.Input{Key: "part", Label: "Parts", Help: "h", RowName: "part", Most: 3, Rows: []calc.Input{name, shape, length}}

	warmer  = calc.Output{Key: "warmer", Label: "Warmer", Unit: unit.DegC, Decimals: 1, Main: true}
	total   = calc.Output{Key: "total", Label: "Total", Unit: unit.Metre, Decimals: 2}
	said    = calc.Output{Key: "said", Label: "Said", Words: true, Optional: true}
	lengths = calc.Output{Key: "lengths", Label: "Lengths", Columns: []calc.Output{
		{Key: "who", Label: "Part", Words: true}, {Key: "long", Label: "Long", Unit: unit.Millimetre},
	}}

	sample = calc.Calculator{
		ID: "sample", Title: "Sample", Question: "What?", Range: "Anything.",
		Inputs:   []calc.Input{temp, rise, how, reach, times, note, part},
		Outputs:  []calc.Output{warmer, total, said, lengths},
		Work:     workSample,
		Cautions: []calc.Phrase{"Keep a window open."},
	}
)

func workSample(w *calc.Working) {
	t, r := w.Given(temp), w.Given(rise)
	if t.V+r.V > 50 {
		w.Reject(rise, calc.Impossible, "takes {hot} past 50 °C", "Take a smaller rise", t.As("hot"))
		return
	}
	to := w.Step("Warmer", "t_2 = t + dt", unit.DegC, source.Definition, t.V+r.V, t, r)
	w.Result(warmer, to)
	sum := calc.N(0, unit.Metre)
	if w.Picked(how) == "long" {
		sum = w.Given(reach)
	}
	for _, row := range w.Rows(part) {
		l := calc.N(100, unit.Millimetre)
		if row.Picked(shape) == "strip" {
			l = row.Given(length)
		}
		sum = w.Step("Sum", "S = S_0 + l / 1000", unit.Metre, source.Definition, sum.V+l.V/1000, sum, l)
		w.List(lengths, calc.Told(calc.Say("{name}", calc.Words(row.Words(name), "name"))), calc.Of(l))
		row.Describe(calc.Say("{name}, {l}", calc.Words(row.Words(name), "name"), l.To(0, "l")))
	}
	w.Result(total, sum)
	if w.Words(note) != "" {
		w.Tell(said, calc.Say("“{it}” at {t}", calc.Words(w.Words(note), "it"), to.To(0, "t")))
	}
	w.Judge(calc.Go, calc.Say("{t} will do", to.To(1, "t")), calc.Say("Carry on"))
	if r.V > 10 {
		w.Judge(calc.Stop, calc.Say("A rise of {r} is too much", r.To(1, "r")), calc.Say("Wait"))
		w.Caution("Hot at {t}.", to.To(0, "t"))
	}
}

// filled is the sample's example with some answers changed, written as in a link.
func filled(changes string) calc.Form {
	form := calc.ParseForm("temp=20&how=plain&times=2&part.1.name=Lid&part.1.shape=disc")
	for k, v := range calc.ParseForm(changes) {
		form[k] = v
	}
	return form
}

func figure(t *testing.T, r calc.Report, key string) calc.Figure {
	t.Helper()
	for _, f := range r.Figures {
		if f.Key == key {
			return f
		}
	}
	require.Failf(t, "no such figure", "%s; problems: %v", key, r.Problems)
	return calc.Figure{}
}

// shown is a figure as a person reads it.
func shown(t *testing.T, r calc.Report, key string) string {
	t.Helper()
	f := figure(t, r, key)
	return strings.TrimSpace(f.Text + " " + f.Unit)
}
