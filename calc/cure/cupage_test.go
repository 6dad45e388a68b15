package cure_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/cure"
	"spraywright/calc/internal/ask"
)

// Where a cup stood in one place and stays there, what is used and what is left make the pot life there.
func TestUsedAndLeftMakeThePotLife(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 11))
	for range 200 {
		at, stood := 6+r.Float64()*28, r.Float64()*14
		form := calc.Form{"pot_life": "60", "pot_life_at": "20", "air": ask.Show(at), "stay.1.stood_for": ask.Show(stood), "stay.1.stood_at": ask.Show(at)}
		report := cure.CupAge().Run(form)
		low, high, refused := cure.PotLife(nil, minutes(60), degC(20), none, none, degC(at))
		require.Nil(t, refused)
		assert.InDelta(t, low.V, ask.Value(t, report, "left_low")+stood, 1e-6)
		assert.InDelta(t, high.V, ask.Value(t, report, "left_high")+stood, 1e-6)
		assert.LessOrEqual(t, ask.Value(t, report, "used_low"), ask.Value(t, report, "used_high")+1e-9)

		form["stay.1.stood_for"], form["stay.2.stood_for"], form["stay.2.stood_at"] = ask.Show(stood/3), ask.Show(stood*2/3), ask.Show(at)
		assert.InDelta(t, ask.Value(t, report, "used_high"), ask.Value(t, cure.CupAge().Run(form), "used_high"), 1e-6, "a stay cut in two is the same stay")
	}
}

func TestCupVerdicts(t *testing.T) {
	level := func(stood string) calc.Level {
		return cure.CupAge().Run(calc.Form{"pot_life": "60", "pot_life_at": "20", "air": "20", "stay.1.stood_for": stood, "stay.1.stood_at": "25"}).Verdict[0].Level
	}
	assert.Equal(t, calc.Go, level("10"))
	assert.Equal(t, calc.Wait, level("30"))
	assert.Equal(t, calc.Stop, level("45"), "it may be past its pot life")
	assert.Equal(t, calc.Stop, level("60"))
	r := cure.CupAge().Run(calc.ParseForm("pot_life=60&pot_life_at=20&air=20&stay.1.stood_for=5&stay.1.stood_at=20&stay.2.stood_for=5&stay.2.stood_at=36"))
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "stay.2.stood_at", r.Problems[0].Field)
}

// The earliest recoat comes later in the cold; the latest never comes later than the sheet says.
func TestRecoatWindowIsCautiousBothWays(t *testing.T) {
	before := 1e9
	for air := 5.0; air <= 35; air++ {
		r := cure.RecoatWindow().Run(calc.Form{"recoat_time": "4", "recoat_at": "20", "latest_recoat": "24", "air": ask.Show(air)})
		earliest, maybe, latest := ask.Value(t, r, "earliest"), ask.Value(t, r, "earliest_maybe"), ask.Value(t, r, "latest")
		assert.Less(t, earliest, before)
		assert.LessOrEqual(t, maybe, earliest+1e-9)
		assert.LessOrEqual(t, latest, 24+1e-9)
		if air <= 20 {
			assert.InDelta(t, 24, latest, 1e-9, "cold does not keep the window open")
			assert.GreaterOrEqual(t, earliest, 4-1e-9)
		}
		before = earliest
	}
}

func TestRecoatRefusals(t *testing.T) {
	for text, field := range map[string]string{
		"recoat_time=4&recoat_at=20&air=36":                                                      "air",
		"recoat_time=4&recoat_at=20&air=20&latest_recoat=4":                                      "latest_recoat",
		"recoat_time=4&recoat_at=20&air=20&recoat_second=6&recoat_second_at=30":                  "recoat_second",
		"recoat_time=4&recoat_at=20&air=38&recoat_second=2&recoat_second_at=30&latest_recoat=24": "air",
	} {
		r := cure.RecoatWindow().Run(calc.ParseForm(text))
		if assert.Len(t, r.Problems, 1, text) {
			assert.Equal(t, field, r.Problems[0].Field, text)
		}
	}
	r := cure.RecoatWindow().Run(calc.ParseForm("recoat_time=4&recoat_at=20&air=10&latest_recoat=6"))
	assert.Equal(t, calc.Stop, r.Verdict[0].Level, "the window shuts before it opens")
}
