package arith_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/internal/arith"
)

var values = map[string]float64{"DFT": 60, "n": 2, "VS": 45, "ρ_1": 1.35, "neg": -4}

func TestFormulasAreWorkedOutAsWritten(t *testing.T) {
	for text, want := range map[string]float64{
		"WFT = DFT / n / (VS / 100)": 60. / 2 / 0.45,
		"2 + 3 * 4":                  14,
		"10 - 4 - 3":                 3,
		"-n + 5":                     3,
		"n - -n":                     4,
		"neg * neg":                  16,
		"1.5e3 * ρ_1":                2025,
		"ln(exp(2))":                 2,
		"log10(1000)":                3,
		"sqrt(2) * sqrt(2)":          math.Sqrt2 * math.Sqrt2,
		"pow(2, 10)":                 1024,
		"min(3, n, 7)":               2,
		"max(3, n, 7)":               7,
		"sin(pi / 6)":                math.Sin(math.Pi / 6),
		"cos(pi) + tan(0)":           -1,
		"4 * atan(1)":                math.Pi,
		"floor(2.7) + ceil(2.2)":     5,
		"round(2.5) + round(neg)":    -1,
		"erf(0.5)":                   math.Erf(0.5),
	} {
		f, err := arith.Parse(text)
		require.NoError(t, err)
		got, err := f.Right(values)
		require.NoError(t, err)
		assert.InDelta(t, want, got, 1e-15*math.Abs(want), text)
	}
}

func TestBothSidesOfAnEquation(t *testing.T) {
	f, err := arith.Parse("n * x = DFT - x")
	require.NoError(t, err)
	assert.Equal(t, []string{"DFT", "n", "x"}, f.Names())
	assert.Empty(t, f.Symbol())
	at := map[string]float64{"n": 2, "DFT": 60, "x": 20}
	left, err := f.Left(at)
	require.NoError(t, err)
	right, err := f.Right(at)
	require.NoError(t, err)
	assert.Equal(t, left, right)
}

func TestNamesLeaveOutFunctionsConstantsAndTheSymbol(t *testing.T) {
	f, err := arith.Parse("A = pi * pow(d, 2) / 4 + min(d, w)")
	require.NoError(t, err)
	assert.Equal(t, "A", f.Symbol())
	assert.Equal(t, []string{"d", "w"}, f.Names())
}

func TestWhatIsNoFormulaIsRefusedInWords(t *testing.T) {
	for text, says := range map[string]string{
		"A = ":             "expected operand",
		"A = B +":          "expected operand",
		"A = B = C":        "expected",
		"A = log(B)":       `no function "log"`,
		"A = math.Log(B)":  "plain name",
		"A = pow(B)":       "called with 1 numbers",
		"A = min()":        "called with 0 numbers",
		"A = B ^ 2":        "^ is not allowed",
		"A = B % 2":        "% is not allowed",
		"A = !B":           "not allowed",
		"A = \"B\"":        "not allowed",
		"A = x[1]":         "not allowed",
		"A = func() {}":    "not allowed",
		"A = B.C":          "not allowed",
		"WFT = DFT ÷ n":    "illegal character",
		"A = []float64{1}": "not allowed",
	} {
		_, err := arith.Parse(text)
		assert.ErrorContains(t, err, says, text)
	}
}

func TestNamesWithoutAValueAreNamed(t *testing.T) {
	f, err := arith.Parse("A = DFT * pow(2, missing)")
	require.NoError(t, err)
	_, err = f.Right(values)
	assert.ErrorContains(t, err, `"missing" has no value; named are DFT VS n neg ρ_1`)
	_, err = f.Left(nil)
	assert.ErrorContains(t, err, `"A" has no value`)
	f, err = arith.Parse("1 + 1")
	require.NoError(t, err)
	_, err = f.Left(nil)
	assert.ErrorContains(t, err, "no left side")
}
