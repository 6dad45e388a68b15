package climate

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/internal/ask"
)

func warmingForm(text string) calc.Form {
	form := calc.ParseForm(text)
	for key, x := range map[string]string{
		"part_material": "steel", "part_thickness": "3", "air_reaches": "both", "air_moves": "known", "heat_transfer": "10",
		"panel": "5", "air": "22", "humidity": "50", "margin_needed": "3",
	} {
		if form[key] == "" {
			form[key] = x
		}
	}
	return form
}

// Time goes with thickness and against heat transfer, and a part that air reaches from one side counts double.
func TestWarmUpIsInProportion(t *testing.T) {
	wait := func(text string) float64 { return ask.Value(t, PartWarmUp().Run(warmingForm(text)), "warm_up_high") }
	base := wait("")
	assert.InEpsilon(t, 2*base, wait("part_thickness=6"), 1e-9)
	assert.InEpsilon(t, base/2, wait("heat_transfer=20"), 1e-9)
	assert.InEpsilon(t, 2*base, wait("air_reaches=one"), 1e-9)
	assert.Greater(t, wait("panel=-5"), base)
	assert.Greater(t, wait("humidity=60"), base)
	assert.Greater(t, wait("margin_needed=5"), base)
	assert.Less(t, wait("air=28&humidity=35"), base)
}

// In the time that is answered a part heated step by step comes to the temperature that is answered.
func TestWarmUpAgainstSmallSteps(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	for range 50 {
		air, panel := 15+r.Float64()*20, -9+r.Float64()*9
		report := PartWarmUp().Run(warmingForm("air=" + ask.Show(air) + "&panel=" + ask.Show(panel) + "&humidity=30"))
		wait, tau := ask.Value(t, report, "warm_up_high"), ask.Value(t, report, "time_constant")
		T, dt := panel, wait/20000
		for range 20000 {
			T += (air - T) / tau * dt
		}
		assert.InDelta(t, ask.Value(t, report, "panel_goal"), T, 0.01)
	}
}

func TestWarmUpVerdicts(t *testing.T) {
	run := func(text string) calc.Report { return PartWarmUp().Run(warmingForm(text)) }
	never := run("humidity=84")
	assert.Equal(t, calc.Stop, never.Verdict[0].Level)
	assert.Contains(t, never.Verdict[0].Why, "never")
	assert.Equal(t, calc.Go, run("panel=20").Verdict[0].Level)
	cold := run("")
	assert.Equal(t, calc.Wait, cold.Verdict[0].Level)
	assert.Contains(t, cold.Cautions[0], "colder than the dew point")
	assert.NotContains(t, run("panel=12").Cautions[0], "colder than the dew point")
	thick := run("part_material=plastic&part_thickness=4.1")
	require.Len(t, thick.Problems, 1)
	assert.Equal(t, calc.Beyond, thick.Problems[0].Code)
	assert.Empty(t, run("part_material=plastic&part_thickness=3.9").Problems)
}

// Heating leaves the vapour where it is, and heating for a humidity gives that humidity.
func TestHeatedAirKeepsItsWater(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 7))
	for range 200 {
		air, rh, wanted := 2+r.Float64()*25, 30+r.Float64()*65, 30+r.Float64()*60
		hot := air + r.Float64()*30
		form := calc.Form{"air": ask.Show(air), "humidity": ask.Show(rh), "heated_to": ask.Show(hot), "humidity_wanted": ask.Show(wanted)}
		report := HeatedAir().Run(form)
		require.Empty(t, report.Problems)
		after := ask.Value(t, report, "heated_humidity")
		assert.InEpsilon(t, PartialPressure(air, rh), PartialPressure(hot, after), 1e-9)
		assert.LessOrEqual(t, after, rh+1e-9)
		assert.InEpsilon(t, PartialPressure(air, rh), PartialPressure(ask.Value(t, report, "heated_for"), wanted), 1e-6)
		if hot > air+0.1 {
			assert.Greater(t, ask.Value(t, report, "drying_gain"), 1.0)
		}
	}
}

func TestHeatedAirRefuses(t *testing.T) {
	r := HeatedAir().Run(calc.ParseForm("air=22&humidity=80&heated_to=15"))
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "heated_to", r.Problems[0].Field)
	r = HeatedAir().Run(calc.ParseForm("air=40&humidity=90&heated_to=45&humidity_wanted=10"))
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "humidity_wanted", r.Problems[0].Field)
	r = HeatedAir().Run(calc.ParseForm("air=20&humidity=100&heated_to=30"))
	assert.Empty(t, r.Problems, "saturated air has no wet-bulb depression to compare with")
	for _, f := range r.Figures {
		assert.NotEqual(t, "drying_gain", f.Key)
	}
}
