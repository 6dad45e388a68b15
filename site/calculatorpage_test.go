package main

import (
	"os"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/unit"
)

func TestEveryCalculatorShowsAnExampleAnswered(t *testing.T) {
	for _, c := range calculators() {
		p, err := newCalculatorPage(tongue{}, c, os.DirFS("../testdata"))
		require.NoError(t, err)
		assert.NotEmpty(t, p.Example.Places, c.ID)
	}
}

// sample halves a number, which must not be 3.
func sample() *calc.Calculator {
	in := calc.Input{Key: "n", Label: "Number", Unit: unit.One, Limits: calc.Between(0, 9), Example: 4}
	out := calc.Output{Key: "half", Label: "Half", Unit: unit.One}
	return &calc.Calculator{ID: "sample", Inputs: []calc.Input{in}, Outputs: []calc.Output{out}, Work: func(w *calc.Working) {
		n := w.Given(in)
		if n.V == 3 {
			w.Reject(in, calc.Impossible, "must not be 3", "Take another")
			return
		}
		w.Result(out, calc.N(n.V/2, unit.One))
	}}
}

func TestAPageNeedsNoFiles(t *testing.T) {
	p, err := newCalculatorPage(tongue{}, sample(), fstest.MapFS{})
	require.NoError(t, err)
	assert.Equal(t, "2", p.Example.Places[0].Answers[0].Figure.Text)
	assert.Empty(t, p.Checks)
}

// A page is not made without its example or its check values.
func TestAPageThatLacksSomethingStopsTheBuild(t *testing.T) {
	for name, tt := range map[string]struct{ file, text, says string }{
		"an example with a problem":  {"demo/sample.txt", "n=3", "must not be 3"},
		"an example that is empty":   {"demo/sample.txt", "", "is blank"},
		"a file that cannot be read": {"published/sample.csv", "source,known_by,warmth degC\n", "has no input or output"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := newCalculatorPage(tongue{}, sample(), fstest.MapFS{tt.file: {Data: []byte(tt.text)}})
			assert.ErrorContains(t, err, tt.says)
			assert.ErrorContains(t, err, "sample")
		})
	}
}
