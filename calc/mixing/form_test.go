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
