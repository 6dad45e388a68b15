package calc_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check/sound"
	"spraywright/calc/unit"
)

// Whatever a link holds, the reader of the page gets an answer or problems in words.
func FuzzRun(f *testing.F) {
	for _, s := range []string{"temp=20&how=long&reach=½ ft&times=2&part.1.name=Lid&part.1.shape=disc", "part.1.shape=strip&part.1.length=9&part.length.unit=ft", "units=us&temp=68F&warmer.unit=degC", "temp=-0&rise=,&times=1/1"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		r := sound.Run(t, &sample, calc.Language{}, s)
		for _, p := range r.Problems {
			require.NotEmpty(t, p.Message)
			require.NotEmpty(t, p.Fix)
			require.Less(t, len(p.Message)+len(p.Fix), 2000)
			require.NotNil(t, sample.Input(tableKey(p.Field)), "%q", p.Field)
		}
		require.True(t, len(r.Problems) > 0 || len(r.Figures) >= 2, "neither answer nor problem")
		decoded(t, r)
	})
}

// A quantity as somebody types it is taken as a number or refused. What the page then puts into the field means the same,
// and so does what a report hands on.
func FuzzQuantity(f *testing.F) {
	for _, s := range []string{"72F", "12,5", "1.250,5", "1,250", "3/4 qt", "½", "1 1/2 in", "-40 °C", "+5", "−5", "1/0", "0x10", "1e3", ".", ",5", "5.", "\u202f5", "5µm", "5 µM", strings.Repeat("9", 41), "NaN", "٣"} {
		f.Add(s, uint8(0), false)
		f.Add(s, uint8(7), true)
	}
	all := unit.All()
	f.Fuzz(func(t *testing.T, text string, n uint8, comma bool) {
		c := echo(all[int(n)%len(all)])
		c.Inputs[0].Limits = calc.Between(-1e12, 1e12)
		form := calc.Form{"x": text}
		r := sound.Run(t, c, calc.Language{Comma: comma}, form.String())
		if len(r.Problems) > 0 {
			return
		}
		x := r.Figures[0]
		for _, re := range r.Retyped {
			again := sound.Run(t, c, calc.Language{}, calc.Form{re.Field: re.Text, re.Field + ".unit": re.Unit}.String())
			require.Empty(t, again.Problems, "%q is put into the field as %q %s", text, re.Text, re.Unit)
			require.Equal(t, x.Value, again.Figures[0].Value, "%q is put into the field as %q %s", text, re.Text, re.Unit)
		}
		if math.Abs(x.Value) > 1e-3 && math.Abs(x.Value) < 1e12 {
			full := sound.Run(t, c, calc.Language{}, calc.Form{"x": x.Full, "x.unit": x.UnitID}.String())
			require.Empty(t, full.Problems, "%q is handed on as %q", text, x.Full)
			require.InEpsilon(t, x.Value, full.Figures[0].Value, 1e-8, "%q is handed on as %q", text, x.Full)
		}
	})
}

// Whatever a file of words holds, forms are answered.
func FuzzParseWords(f *testing.F) {
	f.Add("Warmer\tPlus chaud\nlengths.who|Part\tPièce", "temp=20&rise=2&times=2&how=plain")
	f.Add("{t} will do\t{t}{t}{x}{", "temp=20")
	f.Add("\t\n|\t|\nTemperature\t{label}", "temp=x&rise=99999")
	f.Fuzz(func(t *testing.T, words, form string) {
		sound.Run(t, &sample, calc.Language{Words: calc.ParseWords(words)}, form)
	})
}
