package calc_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

func TestAnswersComeInTheReadersUnits(t *testing.T) {
	for _, tt := range []struct{ changes, warmer, why string }{
		{"", "22.0 °C", "the calculator's own"},
		{"units=si", "22.0 °C", "asked for SI"},
		{"units=us", "71.6 °F", "asked for US"},
		{"temp=68&temp.unit=degF", "71.6 °F", "as the temperature was typed"},
		{"temp=68F", "71.6 °F", "as the temperature was typed"},
		{"temp=68F&units.temperature=degC", "22.0 °C", "the choice for the quantity comes first"},
		{"temp=68F&units.temperature=degC&warmer.unit=degF", "71.6 °F", "the choice for this answer comes before all"},
		{"warmer.unit=kg", "22.0 °C", "a unit of something else is passed over"},
		{"warmer.unit=nonsense&units=nonsense&units.temperature=nonsense", "22.0 °C", "what is unknown is passed over"},
	} {
		assert.Equal(t, tt.warmer, shown(t, sample.Run(filled(tt.changes)), "warmer"), tt.why)
	}
}

func TestSentencesAreInTheReadersUnitsToo(t *testing.T) {
	r := sample.Run(filled("rise=12&note=so: so"))
	assert.Equal(t, "A rise of 12.0\u202f°C is too much", r.Verdict[0].Why)
	assert.Equal(t, "“so: so” at 32\u202f°C", figure(t, r, "said").Text)
	r = sample.Run(filled("temp=68F&rise=12&note=so: so"))
	assert.Equal(t, "A rise of 21.6\u202f°F is too much", r.Verdict[0].Why, "a difference follows the temperature, without its 32 degrees")
	assert.Equal(t, "“so: so” at 90\u202f°F", figure(t, r, "said").Text)
}

// Which unit wins must not hang on the order of a map.
func TestADifferenceTypedInItsOwnUnitKeepsIt(t *testing.T) {
	for range 50 {
		r := sample.Run(filled("temp=20&rise=21.6&rise.unit=diffF"))
		require.Equal(t, "A rise of 21.6\u202f°F is too much", r.Verdict[0].Why)
		r = sample.Run(filled("temp=68F&rise=21.6&rise.unit=diffF&units.temperature-difference=diffC"))
		require.Equal(t, "A rise of 12.0\u202f°C is too much", r.Verdict[0].Why)
	}
}

func TestWordsFromTheFormAreNotSearchedForHoles(t *testing.T) {
	assert.Equal(t, "“a: {t} {it}” at 22\u202f°C", figure(t, sample.Run(filled("note=a: {t} {it}")), "said").Text)
}

func TestAMinusIsAMinusSign(t *testing.T) {
	cold := sample
	cold.Inputs = append([]calc.Input{}, sample.Inputs...)
	cold.Inputs[0].Limits = calc.Between(-50, 40)
	r := cold.Run(filled("temp=-12&rise=2"))
	assert.Equal(t, "−10.0 °C", shown(t, r, "warmer"))
	assert.Equal(t, "−10.0\u202f°C will do", r.Verdict[0].Why)
	assert.Equal(t, "0.0 °C", shown(t, cold.Run(filled("temp=-2.04&rise=2")), "warmer"), "nothing is minus zero")
	numbers := ""
	for _, s := range r.Steps {
		if s.Label == "Warmer" {
			numbers = s.Numbers
		}
	}
	assert.Contains(t, numbers, "(−12) + 2")
}
