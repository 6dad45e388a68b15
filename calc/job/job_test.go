package job

import (
	"maps"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/internal/ask"
)

// demo is the invented job of the workshop.
func demo(t testing.TB) calc.Form {
	text, err := os.ReadFile("../../testdata/demo/job.txt")
	require.NoError(t, err)
	return calc.ParseForm(string(text))
}

func with(form calc.Form, pairs ...string) calc.Form {
	form = maps.Clone(form)
	for i := 0; i < len(pairs); i += 2 {
		form[pairs[i]] = pairs[i+1]
	}
	return form
}

func list(r calc.Report, key string) []map[string]calc.Figure {
	var rows []map[string]calc.Figure
	for _, l := range r.Lists {
		if l.Key != key {
			continue
		}
		for _, row := range l.Rows {
			cells := map[string]calc.Figure{}
			for _, f := range row {
				cells[f.Key] = f
			}
			rows = append(rows, cells)
		}
	}
	return rows
}

func TestTheDemoHasACard(t *testing.T) {
	r := Job().Run(demo(t))
	require.Empty(t, r.Problems)
	assert.Equal(t, calc.Go, r.Verdict[0].Level)
	assert.Len(t, list(r, "amounts"), 4)
	assert.NotEmpty(t, list(r, "timeline"))
	assert.Len(t, r.Rows, 6, "every row reads as a sentence")
	assert.Contains(t, strings.Join(r.Cautions, " "), "air-fed")
}

// A painter who has only read the thermometer already gets the verdict on condensation.
func TestTheVerdictComesWithTheAirAlone(t *testing.T) {
	r := Job().Run(calc.Form{"air": "29", "humidity": "90", "panel": "28", "air_speed": "0.2"})
	require.NotEmpty(t, r.Verdict)
	assert.Equal(t, calc.Wait, r.Verdict[0].Level)
	assert.Empty(t, r.Lists)
	for _, p := range r.Problems {
		assert.Equal(t, calc.Missing, p.Code, p.Error())
		assert.NotEqual(t, "Air", p.Place, p.Error())
	}
}

func TestEveryMillilitreMixedIsSprayedOrLost(t *testing.T) {
	form := demo(t)
	r := Job().Run(form)
	const losses = 40 // mL a cup, as the demo leaves it
	mixed := map[string]float64{}
	for _, e := range list(r, "timeline") {
		if name, rest, ok := strings.Cut(e["step"].Text, ", "); ok && strings.HasPrefix(name, "Mix ") {
			_, volume, _ := strings.Cut(rest, ": ")
			v, err := strconv.ParseFloat(strings.TrimSuffix(volume, "\u202fmL"), 64)
			require.NoError(t, err)
			mixed[strings.TrimPrefix(name, "Mix ")] += v
		}
	}
	for _, a := range list(r, "amounts") {
		name := a["product"].Text
		assert.InDelta(t, a["to_mix"].Value, mixed[name], 3, "the cups of %s hold what is to be mixed", name)
		assert.Greater(t, a["to_mix"].Value, a["demand"].Value+losses*a["cups"].Value, "95 %% sure is more than the film needs")
	}
}

func TestWhatCannotBeTrueTogetherIsSaidOnItsRow(t *testing.T) {
	for _, tt := range []struct{ key, value, field, says string }{
		{"coat.2.on_colour", "blue", "coat.2.on_colour", "fits no part"},
		{"coat.1.density_c", "", "coat.1.density_c", "is blank"},
		{"coat.1.latest_recoat", "0.1", "coat.1.latest_recoat", "before the flash-off"},
		{"coat.1.air_lowest", "36", "coat.1.air_highest", "not above"},
		{"coat.1.ratio", "5:4:3:2:1", "coat.1.ratio", "five parts"},
		{"coat.4.pot_life_second", "", "coat.4.pot_life_second", "is blank"},
		{"pressure", "30", "pressure", "above the gun's rated"},
		{"losses", "1000", "losses", "as much as the cup holds"},
		{"coat.1.pot_life", "2", "coat.1.pot_life", ""},
		{"part.1.count", "1e9", "part.1.count", ""},
	} {
		r := Job().Run(with(demo(t), tt.key, tt.value))
		require.NotEmpty(t, r.Problems, tt.key)
		assert.Equal(t, tt.field, r.Problems[0].Field)
		assert.Contains(t, r.Problems[0].Message, tt.says)
	}
}

func TestAProductOutsideItsLimitsStops(t *testing.T) {
	r := Job().Run(with(demo(t), "coat.1.air_highest", "25"))
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[0].Why, "over the 25")
	r = Job().Run(with(demo(t), "coat.2.humidity_highest", "60"))
	assert.Equal(t, calc.Wait, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[0].Do, "Heat the air to 32")
	r = Job().Run(with(demo(t), "coat.4.voc", "421"))
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[0].Why, "over the limit of 420")
}

// A row is read back in the units it was typed in, whatever the next row is in.
func TestARowSpeaksInItsOwnUnits(t *testing.T) {
	r := Job().Run(with(demo(t), "part.2.length", "28", "part.2.length.unit", "in"))
	assert.Contains(t, r.Rows[0].Text, "800\u202fmm")
	assert.Contains(t, r.Rows[1].Text, "28\u202fin")
}

// Heat that the data sheet does not know must not lengthen the pot life.
func TestAPotLifeTooFarFromItsSheetIsRefusedInTheHeat(t *testing.T) {
	hot := with(demo(t), "coat.1.pot_life_second", "", "coat.1.pot_life_second_at", "", "air", "36", "humidity", "40", "coat.1.air_highest", "40")
	r := Job().Run(hot)
	require.Empty(t, r.Problems)
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	said := ""
	for _, v := range r.Verdict {
		said += v.Why + "\n"
	}
	assert.Contains(t, said, "pot life of Grey two-pack primer is not known")
	assert.Equal(t, "—", list(r, "times")[0]["pot_life_low"].Text)
	cold := Job().Run(with(hot, "air", "4", "panel", "12", "coat.1.air_lowest", "0"))
	assert.Equal(t, 90.0, list(cold, "times")[0]["pot_life_low"].Value, "in the cold the stated time is on the safe side")
}

func TestALateRecoatIsSaidForEveryCoat(t *testing.T) {
	late := func(pairs ...string) string {
		for _, v := range Job().Run(with(demo(t), pairs...)).Verdict {
			if strings.Contains(v.Why, "latest recoat") {
				return v.Why
			}
		}
		return ""
	}
	assert.Empty(t, late())
	assert.Contains(t, late("coat.1.latest_recoat", "0.5"), "for Grey two-pack primer", "between its own coats")
	assert.Contains(t, late("coat.1.latest_recoat", "1.6"), "for Ivory waterborne base", "before the next product")
	assert.Contains(t, late("coat.1.latest_recoat", "2.4", "mix_time", "25"), "over the latest recoat", "mixing counts")
}

func TestTheCardSaysNothingThatNoSheetSays(t *testing.T) {
	form := demo(t)
	for _, c := range []string{"1", "2", "3", "4"} {
		form = with(form, "coat."+c+".air_lowest", "", "coat."+c+".air_highest", "")
	}
	for _, v := range Job().Run(form).Verdict {
		assert.NotContains(t, v.Why, "every product")
	}
	r := Job().Run(with(demo(t), "coat.2.humidity_highest", "60", "coat.2.air_highest", "30"))
	assert.NotContains(t, r.Verdict[0].Do, "Heat", "the sheet allows no such heat")
	r = Job().Run(with(demo(t), "coat.1.price", ""))
	assert.Contains(t, strings.Join(r.Cautions, " "), "No price is entered for Grey two-pack primer")
	for _, f := range r.Figures {
		assert.NotEqual(t, "cost_all", f.Key)
	}
}

// More of anything that takes paint never takes less of it.
func TestMoreAreaTakesMorePaint(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 60 {
		n := 1 + r.IntN(60)
		few, many := Job().Run(with(demo(t), "part.1.count", strconv.Itoa(n))), Job().Run(with(demo(t), "part.1.count", strconv.Itoa(n+1+r.IntN(9))))
		require.Empty(t, few.Problems)
		require.Empty(t, many.Problems)
		assert.Greater(t, ask.Value(t, many, "to_mix_all"), ask.Value(t, few, "to_mix_all"))
		assert.Greater(t, ask.Value(t, many, "emitted_all"), ask.Value(t, few, "emitted_all"))
	}
}

// A product is the same whether its sheet prints the ratio by volume or by weight, also where its solids are stated before
// the thinner goes in.
func TestSolidsBeforeThinnerByEitherRatio(t *testing.T) {
	volume := with(demo(t), "coat.1.ratio", "4:1:1", "coat.1.ratio_by", "volume", "coat.1.solids_for", "unthinned",
		"coat.1.density_a", "1.5", "coat.1.density_b", "1", "coat.1.density_c", "0.75")
	weight := with(volume, "coat.1.ratio", "600:100:75", "coat.1.ratio_by", "weight") // 4 x 1.5, 1 x 1, 1 x 0.75
	want, got := list(Job().Run(volume), "film"), list(Job().Run(weight), "film")
	require.NotEmpty(t, want)
	assert.InDelta(t, want[0]["wet_film"].Value, got[0]["wet_film"].Value, 1e-9)
}
