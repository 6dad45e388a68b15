package calc_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// The working is for people who learnt their formulas from books, not from programs.
func TestFormulasReadAsInABook(t *testing.T) {
	for _, tt := range []struct {
		formula, reads, numbers string
		values                  []float64
	}{
		{"A_t = pi * pow(D / 2 + b, 2) / 1e6", "A_t = π × (D ÷ 2 + b)² ÷ 10⁶", "π × (300 ÷ 2 + 40)² ÷ 10⁶", []float64{300, 40}},
		{"m = sqrt(rho_2) - log10(theta)", "m = √(ρ_2) − log_10(θ)", "√(1.3) − log_10(0.5)", []float64{1.3, 0.5}},
		{"y = pow(x, -2)", "y = x⁻²", "0.5⁻²", []float64{0.5}},
		{"y = pow(x, n)", "y = x^n", "(−3)⁻²", []float64{-3, -2}},
		{"y = pow(x, 1 / 3) + 1", "y = x^(1 ÷ 3) + 1", "8^(1 ÷ 3) + 1", []float64{8}},
		{"y = pow(pow(a, 2) + pow(b + c, 1.5), 12)", "y = (a² + (b + c)^1.5)¹²", "(3² + (4 + 5)^1.5)¹²", []float64{3, 4, 5}},
		{"D = 22600000*x/y", "D = (2.26×10⁷)×x÷y", "(2.26×10⁷)×2÷(2.6945×10⁷)", []float64{2, 26944677}},
		{"y = 0.00000000000094840240*x - 0.0000225577", "y = (9.484024×10⁻¹³)×x − 0.0000225577", "(9.484024×10⁻¹³)×2 − 0.0000225577", []float64{2}},
		{"n = 15 * ceil(alpha) + floor(pie)", "n = 15 × round up(α) + round down(pie)", "15 × round up(1.5) + round down(2)", []float64{1.5, 2}},
	} {
		c := echo(unit.One)
		var nums []calc.Num
		for _, x := range tt.values {
			nums = append(nums, calc.N(x, unit.One).Called("Number"))
		}
		c.Work = func(w *calc.Working) {
			w.Result(c.Outputs[0], w.Step("Sum", tt.formula, unit.One, source.Definition, 1, nums...))
		}
		r := c.Run(calc.Form{"x": "1"})
		last := r.Steps[len(r.Steps)-1]
		assert.Equal(t, tt.reads, last.Formula)
		assert.Equal(t, tt.numbers, last.Numbers)
	}
}

func TestLongNumbersOfTheWorkingHavePowersOfTen(t *testing.T) {
	for x, want := range map[float64]string{
		26944677: "2.6945×10⁷", -26944677: "−2.6945×10⁷", 1e6: "1×10⁶", 999999: "999999", 3.2e12: "3.2×10¹²", 0.12345678: "0.12346", 0.00001: "0.00001",
		9.484024e-13: "9.484×10⁻¹³", -0.000002: "−2×10⁻⁶",
	} {
		c := echo(unit.One)
		c.Work = func(w *calc.Working) {
			n := w.Constant("So many", unit.One, source.Definition, x)
			w.Result(c.Outputs[0], w.Step("Twice", "y = 2 * nu_1", unit.One, source.Definition, 2*x, n))
		}
		r := c.Run(calc.Form{"x": "1"})
		require.Len(t, r.Steps, 2)
		assert.Equal(t, want, r.Steps[0].Result)
		assert.Equal(t, "ν_1: so many, "+want, r.Steps[1].Legend)
	}
}
