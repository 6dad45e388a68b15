package calc_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// echo answers what it reads, in the input's own unit.
func echo(u unit.Unit) *calc.Calculator {
	in := calc.Input{Key: "x", Label: "X", Help: "h", Unit: u, Limits: calc.Between(-1e9, 1e9), Example: 7}
	out := calc.Output{Key: "y", Label: "Y", Unit: u}
	return &calc.Calculator{ID: "echo", Inputs: []calc.Input{in}, Outputs: []calc.Output{out},
		Work: func(w *calc.Working) { w.Result(out, w.Given(in)) }}
}

func TestNumbersAsPeopleTypeThem(t *testing.T) {
	for text, want := range map[string]float64{
		"12": 12, "12.5": 12.5, "12,5": 12.5, " 12 ": 12, "+3": 3, ".5": 0.5, ",5": 0.5, "5.": 5, "5,": 5, "007": 7,
		"-5": -5, "−5": -5, "–5": -5, "-0,5": -0.5, "-0": 0,
		"3/4": 0.75, "1 1/2": 1.5, "½": 0.5, "1½": 1.5, "2 ¾": 2.75, "⅛": 0.125, "10/4": 2.5,
		"1.250": 1.25, "1250": 1250, "0,250": 0.25, "-0,250": -0.25, "12,3456": 12.3456, "1,25": 1.25, "1234,567": 1234.567,
		"1.250,5": 1250.5, "1,250.5": 1250.5, "12.345,75": 12345.75,
		"0.1234567890123456": 0.1234567890123456,
		"5 mm":               5, "5mm": 5, "5 MM": 5, "5\u202fmm": 5, "5\u00a0mm": 5, "3/4 mm": 0.75,
	} {
		r := echo(unit.Millimetre).Run(calc.Form{"x": text})
		require.Empty(t, r.Problems, "%q", text)
		assert.Equal(t, want, figure(t, r, "y").Value, "%q", text)
	}
}

func TestTextThatIsNoNumberIsRefused(t *testing.T) {
	for text, code := range map[string]calc.Code{
		"": calc.Missing, " ": calc.Missing, "\u00a0": calc.Missing,
		"1,250": calc.Unclear, "12,500": calc.Unclear, "-1,250": calc.Unclear, "1,000,000": calc.Unclear, "1.000.000": calc.Unclear,
		"12,50.3": calc.Unclear, "1.25,5": calc.Unclear, "1,2,3": calc.Unclear,
		"damp": calc.NotNumber, "NaN": calc.NotNumber, "nan": calc.NotNumber, "Inf": calc.NotNumber, "-Inf": calc.NotNumber, "infinity": calc.NotNumber,
		"0x10": calc.NotNumber, "1e5": calc.NotNumber, "1e400": calc.NotNumber, "0b1": calc.NotNumber, "1_000": calc.NotNumber,
		"1 250": calc.NotNumber, "1 2 3": calc.NotNumber, "--5": calc.NotNumber, "5-": calc.NotNumber, "5-3": calc.NotNumber, "5+3": calc.NotNumber,
		"-": calc.NotNumber, ".": calc.NotNumber, ",": calc.NotNumber, "/": calc.NotNumber, "3/": calc.NotNumber, "/4": calc.NotNumber,
		"3/0": calc.NotNumber, "3/4/5": calc.NotNumber, "1.5/2": calc.NotNumber, "-1/2": calc.NotNumber, "1 1": calc.NotNumber, "½½": calc.NotNumber,
		"🎨": calc.NotNumber, "١٢": calc.NotNumber, "12 bananas": calc.NotNumber, "mm": calc.NotNumber, "12 g": calc.NotNumber, "5 mm 3": calc.NotNumber,
		"12\x00": calc.NotNumber, "<b>12</b>": calc.NotNumber, strings.Repeat("9", 41): calc.NotNumber,
		strings.Repeat("9", 201): calc.TooLong, "2000000000": calc.TooHigh, "-2000000000": calc.TooLow,
	} {
		r := echo(unit.Millimetre).Run(calc.Form{"x": text})
		require.Len(t, r.Problems, 1, "%q", text)
		p := r.Problems[0]
		assert.Equal(t, code, p.Code, "%q: %v", text, p)
		assert.Equal(t, "x", p.Field)
		assert.NotEmpty(t, p.Fix)
	}
}

func TestAUnitTypedAfterTheNumberCounts(t *testing.T) {
	for _, tt := range []struct {
		own    unit.Unit
		text   string
		chosen string
		want   float64
	}{
		{unit.DegC, "72F", "", (72. - 32) * 5 / 9},
		{unit.DegC, "72 °F", "", (72. - 32) * 5 / 9},
		{unit.DegC, "72 °f", "degC", (72. - 32) * 5 / 9},
		{unit.DegC, "-40F", "", -40},
		{unit.DegC, "20 °C", "degF", 20},
		{unit.Millilitre, "3/4 qt", "", 0.75 * 946.352946},
		{unit.Millilitre, "2 oz", "", 2 * 29.5735295625},
		{unit.Gram, "2 oz", "", 2 * 28.349523125},
		{unit.Millimetre, `2 1/2"`, "", 63.5},
		{unit.Micrometre, "2 mils", "", 50.8},
		{unit.Minute, "1½ h", "", 90},
		{unit.Percent, "45 %", "", 45},
		{unit.Percent, "45%", "", 45},
	} {
		r := echo(tt.own).Run(calc.Form{"x": tt.text, "x.unit": tt.chosen})
		require.Empty(t, r.Problems, "%q", tt.text)
		f := figure(t, r, "y")
		back, _ := unit.ByID(f.UnitID)
		assert.InDelta(t, tt.want, unit.Convert(f.Value, back, tt.own), 1e-9, "%q", tt.text)
	}
}
