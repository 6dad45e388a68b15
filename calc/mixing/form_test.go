package mixing_test

import (
	"testing"

	"spraywright/calc"
	"spraywright/calc/mixing"

	"github.com/stretchr/testify/assert"
)

func TestMixAsksForTheDensitiesTheRatioNeeds(t *testing.T) {
	form := calc.ParseForm("ratio=4:1:1&ratio_by=volume&amount=600&density_a=1.3&density_b=1.05")
	r := mixing.Mix().Run(form)
	if assert.Len(t, r.Problems, 1) {
		assert.Equal(t, "density_c", r.Problems[0].Field)
		assert.Equal(t, calc.Missing, r.Problems[0].Code)
		assert.Equal(t, "Density of the third part is blank. Enter it: the ratio has 3 parts.", r.Problems[0].Error())
	}
	form["pour_by"] = "cup"
	assert.Empty(t, mixing.Mix().Run(form).Problems, "a cup needs none")
}

func TestMixRefuses(t *testing.T) {
	for text, field := range map[string]string{
		"ratio=4:1&ratio_by=weight&amount=600&pour_by=cup":                                       "pour_by",
		"ratio=4&ratio_by=volume&amount=600&pour_by=cup":                                         "ratio",
		"ratio=100:1&ratio_by=volume&amount=50&density_a=1.3&density_b=1&scale_step=1":           "scale_step",
		"ratio=4:%2B&ratio_by=volume&amount=50&density_a=1.3&density_b=1&scale_step=1":           "ratio",
		"ratio=4:1&ratio_by=volume&amount=600&density_a=1.3&density_b=1.05&density_b.unit=g%2FL": "density_b",
	} {
		r := mixing.Mix().Run(calc.ParseForm(text))
		if assert.Len(t, r.Problems, 1, text) {
			assert.Equal(t, field, r.Problems[0].Field, text)
		}
		assert.Empty(t, r.Lists, text)
	}
}

func TestMixSaysWhenTheScaleIsTooCoarse(t *testing.T) {
	form := calc.ParseForm("ratio=10:1&ratio_by=volume&amount=100&density_a=1.3&density_b=1&scale_step=1")
	assert.Equal(t, calc.Wait, mixing.Mix().Run(form).Verdict[0].Level) // 9.1 g of hardener by steps of 1 g
	form["scale_step"] = "0.1"
	assert.Equal(t, calc.Go, mixing.Mix().Run(form).Verdict[0].Level)
}

func TestBlendStrengthRefuses(t *testing.T) {
	for text, field := range map[string]string{
		"weak=50&strong=50&wanted=50&amount=100": "strong",
		"weak=60&strong=50&wanted=55&amount=100": "strong",
		"weak=50&strong=60&wanted=70&amount=100": "wanted",
	} {
		r := mixing.BlendStrength().Run(calc.ParseForm(text))
		if assert.Len(t, r.Problems, 1, text) {
			assert.Equal(t, field, r.Problems[0].Field, text)
		}
	}
}

func TestMixHoldsTheToleranceStated(t *testing.T) {
	form := calc.ParseForm("ratio=4:1:1&ratio_by=volume&amount=600&density_a=1.3&density_b=1.05&density_c=0.87&scale_step=5") // out by 6.26 %
	assert.Equal(t, calc.Wait, mixing.Mix().Run(form).Verdict[0].Level)
	form["ratio_tolerance"] = "7"
	assert.Equal(t, calc.Go, mixing.Mix().Run(form).Verdict[0].Level)
}

func TestOverPourWarnsOfCupAndPotLife(t *testing.T) {
	const poured = "component.1.target=400&component.1.poured=400&component.2.target=100&component.2.poured=160" // comes to 800 g
	run := func(more string) calc.Report { return mixing.OverPour().Run(calc.ParseForm(poured + more)) }
	assert.Equal(t, calc.Wait, run("").Verdict[0].Level)
	assert.Equal(t, calc.Stop, run("&cup_size=700&mix_density=1.1").Verdict[0].Level, "727 mL overflow")
	assert.Equal(t, calc.Wait, run("&cup_size=750&mix_density=1.1").Verdict[0].Level)
	assert.Len(t, run("&pot_life=60&mixed_ago=20").Verdict, 2)
	for more, field := range map[string]string{
		"&cup_size=700": "mix_density", "&pot_life=60": "mixed_ago", "&mixed_ago=20": "pot_life", "&pot_life=60&mixed_ago=60": "mixed_ago",
	} {
		r := run(more)
		if assert.Len(t, r.Problems, 1, more) {
			assert.Equal(t, field, r.Problems[0].Field, more)
		}
		assert.Empty(t, r.Lists, more)
	}
}

func TestOverPourLeadsWithWhatToAdd(t *testing.T) {
	const first = "component.1.target=400&component.1.poured=470&component.2.target=67.7&component.2.poured=0&component.3.target=30.05&component.3.poured=0"
	run := func(more string) calc.Report { return mixing.OverPour().Run(calc.ParseForm(more + "&" + first)) }
	r := run("&pot_life=60&mixed_ago=90")
	assert.Empty(t, r.Problems, "nothing cures while only the first part is in")
	if assert.Len(t, r.Verdict, 1) {
		assert.Equal(t, "Add 79.5\u202fg of the second part, the scale then reads 549.5\u202fg", r.Verdict[0].Why)
	}
	assert.Empty(t, run("&pot_life=60").Problems)
	assert.Equal(t, "nothing", r.Lists[0].Rows[0][1].Text)
	assert.Equal(t, "584.8", r.Lists[0].Rows[2][2].Text, "549.5 and 35.3")

	r = run("&component.2.poured=10&pot_life=60&mixed_ago=20")
	assert.Len(t, r.Verdict, 2)
	assert.Contains(t, r.Verdict[0].Why, "Add 69.5\u202fg of the second part")
	r = run("&component.2.poured=80&component.3.poured=36")
	assert.Contains(t, r.Verdict[0].Why, "first part")

	right := mixing.OverPour().Run(calc.ParseForm("component.1.target=400&component.1.poured=440&component.2.target=100&component.2.poured=110"))
	assert.Equal(t, calc.Go, right.Verdict[0].Level)
	assert.Contains(t, right.Verdict[0].Why, "Add nothing")
}
