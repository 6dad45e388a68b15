package climate

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/unit"
)

func judged(t *testing.T, link string) calc.Ruling {
	t.Helper()
	report := Condensation().Run(calc.ParseForm(link))
	assert.Empty(t, report.Problems)
	if !assert.Len(t, report.Verdict, 1) {
		t.FailNow()
	}
	return report.Verdict[0]
}

// 20 °C and 60 % has its dew point at 12.0 °C.
func TestVerdict(t *testing.T) {
	for link, level := range map[string]calc.Level{
		"air=20&humidity=60&panel=20":                      calc.Go,
		"air=20&humidity=60&panel=15.2":                    calc.Go, // but only just
		"air=20&humidity=60&panel=14.9":                    calc.Wait,
		"air=20&humidity=60&panel=12.1":                    calc.Wait,
		"air=20&humidity=60&panel=11.9":                    calc.Stop,
		"air=20&humidity=100&panel=20&margin_needed=0":     calc.Stop,
		"air=20&humidity=85&panel=20":                      calc.Wait, // 85 % breaks the 3 °C rule
		"air=20&humidity=82.8&panel=20":                    calc.Go,
		"air=50&air.unit=degF&humidity=60&panel=6":         calc.Go,
		"air=20&humidity=60&panel=15.0&margin_needed=2.78": calc.Go, // 5 °F is less than 3 °C
	} {
		assert.Equal(t, level, judged(t, link).Level, link)
	}
}

func TestVerdictSaysWhatToDo(t *testing.T) {
	r := judged(t, "air=20&humidity=60&panel=13.5")
	assert.Equal(t, "Panel 1.5\u202f°C above dew point", r.Why)
	assert.Contains(t, r.Do, "Warm the panel to 15.0\u202f°C, or dry the air to 54.3\u202f%")
	assert.Contains(t, r.Do, "0.7\u202f°C")
	r = judged(t, "air=20&humidity=90&panel=18.5")
	assert.Contains(t, r.Do, "booth and panel", "a panel cannot stay warmer than its air")
	r = judged(t, "air=20&humidity=60&panel=10&units=us")
	assert.Equal(t, "Panel 3.6\u202f°F below dew point: water settles on it", r.Why)
}

// The humidity to aim for, put back in, gives just the margin asked for.
func TestGoalsAreExact(t *testing.T) {
	for _, panel := range []float64{-5, 2, 3.01, 10, 18} {
		air, needed := calc.N(20, unit.DegC), calc.N(3, unit.DiffC)
		d := condense(nil, calc.N(panel, unit.DegC), air, calc.N(95, unit.Percent), needed)
		margin, _ := JudgeCondensation(nil, calc.N(panel, unit.DegC), air, d.humidityGoal, needed)
		assert.InDelta(t, 3, margin.V, 1e-6, panel)
	}
}

// A hygrometer 3 % low at 80 % hides 0.54 to 0.62 °C of dew point from 10 to 30 °C (computed, second reader's figures).
func TestMisreadHygrometer(t *testing.T) {
	for _, air := range []float64{10, 20, 30} {
		d := condense(nil, calc.N(20, unit.DegC), calc.N(air, unit.DegC), calc.N(80, unit.Percent), calc.N(3, unit.DiffC))
		assert.Greater(t, d.shift.V, 0.535, air)
		assert.Less(t, d.shift.V, 0.625, air)
	}
}
