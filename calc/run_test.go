package calc_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

func TestTheGravestRulingLeads(t *testing.T) {
	r := sample.Run(filled("rise=12"))
	require.Len(t, r.Verdict, 2)
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Equal(t, calc.Go, r.Verdict[1].Level)
	assert.Equal(t, []string{"Hot at 32\u202f°C.", "Keep a window open."}, r.Cautions)
}

func TestAFigureNamesTheWorkingBehindIt(t *testing.T) {
	r := sample.Run(filled("how=long&reach=2"))
	var behind []string
	for _, n := range figure(t, r, "total").Steps {
		behind = append(behind, r.Steps[n-1].Label)
	}
	assert.Equal(t, []string{"Reach", "Sum"}, behind, "and not the temperature")
	warmer := r.Steps[figure(t, r, "warmer").Steps[2]-1]
	assert.Equal(t, "t_2 = t + dt", warmer.Formula)
	assert.Equal(t, "20 + 2", strings.TrimSpace(warmer.Numbers))
	assert.Equal(t, "22\u202f°C", warmer.Result)
	assert.Equal(t, "t: temperature, 20\u202f°C; dt: rise, 2\u202f°C", warmer.Legend)
}

func TestTheExampleNeedsNothingMore(t *testing.T) {
	form := sample.ExampleForm()
	assert.Equal(t, "how=plain&note=dry:+yes&part.1.name=Lid&part.1.shape=disc&rise=2&temp=20&times=2", form.String())
	assert.Empty(t, sample.Run(form).Problems)
}

func TestFindingInputsAndOutputsByKey(t *testing.T) {
	assert.EqualValues(t, "Temperature", sample.Input("temp").Label)
	assert.EqualValues(t, "Length", sample.Input("part.length").Label)
	assert.Nil(t, sample.Input("part.girth"))
	assert.Nil(t, sample.Input("partlength"))
	assert.EqualValues(t, "Part", sample.Output("lengths.who").Label)
	assert.Nil(t, sample.Output("who"))
}

// In stages, each place answers as soon as nothing is wrong with it.
var (
	early  = calc.Output{Key: "early", Label: "Early", Unit: unit.DegC}
	late   = calc.Output{Key: "late", Label: "Late", Unit: unit.DegC}
	staged = calc.Calculator{ID: "staged", InStages: true, Inputs: []calc.Input{temp.In("first"), rise.In("second"), part.In("third")},
		Outputs: []calc.Output{early, late}, Work: func(w *calc.Working) {
			if w.Ready("first") {
				w.Result(early, w.Given(temp))
			}
			if w.Ready("first", "second") {
				if w.Given(rise).V > 15 {
					w.Reject(rise, calc.Impossible, "is too steep", "Take less")
					return
				}
				w.Result(late, w.Given(rise))
			}
		}}
)

func TestStagesAnswerAsSoonAsTheyCan(t *testing.T) {
	r := staged.Run(calc.ParseForm("temp=20&rise=steep&part.1.name=Lid&part.1.shape=strip"))
	require.Len(t, r.Figures, 1)
	assert.Equal(t, "early", r.Figures[0].Key)
	assert.Equal(t, []calc.PlaceState{{Place: "first"}, {Place: "second", Wrong: 1}, {Place: "third", Missing: 1}}, r.Places)
	r = staged.Run(calc.ParseForm("temp=20&rise=18&part.1.name=Lid&part.1.shape=disc"))
	assert.Equal(t, calc.PlaceState{Place: "second", Wrong: 1}, r.Places[1], "what Work rejects stands in the place the form gives it")
}

func TestAnAnswerThatIsNoNumberIsAProblem(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		c := echo(unit.Millimetre)
		c.Work = func(w *calc.Working) { w.Result(c.Outputs[0], calc.N(x, unit.Millimetre)) }
		r := c.Run(calc.Form{"x": "1"})
		require.Len(t, r.Problems, 1)
		assert.Equal(t, "Y has no answer for these numbers. Check each number and its unit.", r.Problems[0].Error())
		assert.Empty(t, r.Figures)
	}
}

func TestAnOptionalNumberLeftBlankShowsADash(t *testing.T) {
	c := echo(unit.Millimetre)
	c.Inputs[0].Optional = true
	c.Work = func(w *calc.Working) { w.Result(c.Outputs[0], w.Given(c.Inputs[0])) }
	assert.Equal(t, "—", figure(t, c.Run(calc.Form{}), "y").Text)
	c.Work = func(w *calc.Working) { w.Result(c.Outputs[0], w.Given(c.Inputs[0]).Or(3)) }
	assert.Equal(t, "3", figure(t, c.Run(calc.Form{}), "y").Text)
}

func TestFunctionsWorkWithoutAWorking(t *testing.T) {
	var w *calc.Working
	n := w.Step("Double", "y = 2 * x", unit.One, source.Definition, 4, calc.N(2, unit.One))
	n = w.Solve("Root", "x", "x * x = y", unit.One, source.Definition, 2, n)
	n = w.Model("Walk", "step by step", unit.One, source.Definition, n.V+1, n.As("x"))
	assert.Equal(t, 3.0, n.V)
	assert.True(t, n.Given())
	assert.Equal(t, 5.0, w.Constant("Five", unit.One, source.Definition, 5).V)
}

func TestAFormulaAndItsNumbersPairUp(t *testing.T) {
	two := calc.N(2, unit.One)
	try := func(formula string, nums ...calc.Num) func() {
		c := echo(unit.Millimetre)
		c.Work = func(w *calc.Working) {
			w.Result(c.Outputs[0], w.Step("Double", formula, unit.Millimetre, source.Definition, 4, nums...))
		}
		return func() { c.Run(calc.Form{"x": "1"}) }
	}
	assert.NotPanics(t, try("y = a * min(a, pi) + 1.5e3 * ρ_1", two, two))
	assert.Panics(t, try("y = a * b", two))
	assert.Panics(t, try("y = a * a", two, two))
}

// tableKey takes the row number out of a field.
func tableKey(field string) string {
	if p := strings.Split(field, "."); len(p) == 3 {
		return p[0] + "." + p[2]
	}
	return field
}

// A sum to be added up further is asked for without its working; a page asks for it when somebody opens it.
func TestAnAnswerWithoutItsWorking(t *testing.T) {
	whole := sample.Run(filled(""))
	require.NotEmpty(t, whole.Steps)
	for _, working := range []string{"none", "later"} {
		brief := sample.Run(filled("working=" + working))
		assert.Empty(t, brief.Steps)
		require.Len(t, brief.Figures, len(whole.Figures))
		for i, f := range brief.Figures {
			assert.Equal(t, whole.Figures[i].Full, f.Full)
			assert.Equal(t, working == "later" && len(whole.Figures[i].Steps) > 0, len(f.Steps) > 0, f.Key)
		}
	}
}
