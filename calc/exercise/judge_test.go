package exercise_test

import (
	"encoding/json"
	"strconv"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/exercise"
	"spraywright/calc/film"
	"spraywright/calc/menu"
)

// wet is a task with fixed numbers: 60 µm in 2 coats of 40 % solids is 60/2/0.4 = 75 µm wet.
func wet(t *testing.T, more ...string) *exercise.Task {
	t.Helper()
	set := calc.Form{"dry_film": "60", "coats": "2", "volume_solids": "40", "solids_for": "mix"}
	for i := 0; i < len(more); i += 2 {
		set[more[i]] = more[i+1]
	}
	return drawn(t, film.WetFilm(), set)
}

// By hand. The tool, a comb, shows whole µm or tenths of a mil (2.54 µm), and one step of it counts as right; 5 % of 75 µm
// is 3.75 µm.
func TestRightCloseAndOff(t *testing.T) {
	for text, want := range map[string]exercise.Standing{
		"75": exercise.Right, "76": exercise.Right, "74.1": exercise.Right, "77": exercise.Close, "71.3": exercise.Close, "71.2": exercise.Off, "79": exercise.Off,
		"3 mil": exercise.Right, "2,95 mil": exercise.Right, "3.05mils": exercise.Right, "3.1 mil": exercise.Close, "75 microns": exercise.Right, "0": exercise.Off, "-75": exercise.Off,
	} {
		assert.Equal(t, want, wet(t).Judge(text, "um").Is, text)
	}
	assert.Equal(t, exercise.Right, wet(t).Judge("3", "mil").Is)
	strict := wet(t, "right", "0", "close", "0")
	assert.Equal(t, exercise.Right, strict.Judge("75.4", "um").Is, "the comb shows 75")
	assert.Equal(t, exercise.Off, strict.Judge("76", "um").Is)
	loose := wet(t, "right", "5", "close", "20")
	assert.Equal(t, exercise.Right, loose.Judge("78", "um").Is)
	assert.Equal(t, exercise.Close, loose.Judge("63", "um").Is)
}

// By hand: each number below is what the mistake gives.
func TestMistakesAreNamed(t *testing.T) {
	for _, tt := range []struct{ text, says string }{
		{"150", "This comes out where “Coats” is left out"},                                                                 // 60/0.4
		{"30", "This comes out where “Volume solids” is left out"},                                                          // 60/2
		{"12", "This comes out where “Volume solids” multiplies what it should divide, or divides what it should multiply"}, // 60/2*0.4
		{"50", "This comes out with what “Volume solids” lacks to 100 %"},                                                   // 60/2/0.6
		{"300", "This comes out where “Coats” multiplies what it should divide, or divides what it should multiply"},        // 60*2/0.4
		{"7500", "This is 100 times the right answer: check the decimal point, and whether a percentage was taken as it stands"},
		{"7.5", "The right answer is 10 times this: check the decimal point, and whether a percentage was taken as it stands"},
		{"3", "The number is right, but in mil and not in µm"}, // 75/25.4 = 2.95
		{"1905", "This comes out where “Dry film wanted”, 60\u202fµm, is read as 60\u202fmil"},
		{"97", ""},
	} {
		j := wet(t).Judge(tt.text, "um")
		assert.Equal(t, exercise.Off, j.Is, tt.text)
		assert.Equal(t, tt.says, j.Mistake, tt.text)
	}
}

// 45 % for the mix without its last part, 4:1:1, is 37.5 % of what is sprayed: 60/2/0.375 = 80 µm, and with the sheet's
// own figure 66.7 µm.
func TestSolidsOfTheUnthinnedPaint(t *testing.T) {
	task := wet(t, "volume_solids", "45", "solids_for", "unthinned", "ratio", "4:1:1")
	assert.Equal(t, "80", task.Figure.Text)
	assert.Equal(t, "This comes out with “The mix, ready to spray” for “Volume solids are for”", task.Judge("67", "um").Mistake)
}

// 4:1 by weight of 1.25 and 1.00 kg/L weighs (4+1)/(4/1.25+1/1) = 1.190 kg/L; taken by volume (4*1.25+1)/5 = 1.200.
func TestARatioByWeightTakenByVolume(t *testing.T) {
	c := menu.Find("mix-ratio")
	set := calc.Form{"ask": "component.2.by_volume", "ratio": "4:1", "ratio_by": "weight", "density_a": "1.6", "density_b": "1", "seed": "1"}
	task := drawn(t, c, set)
	assert.Equal(t, "1.60", task.Figure.Text) // by volume 4/1.6 : 1/1 = 4 : 1.6
	assert.Equal(t, "This comes out with “Volume” for “Ratio is by”", task.Judge("1", "").Mistake)
}

// 70 °F and 60 °F: a margin of 5 °C is 9 °F, and 41 °F with the 32 of a temperature.
func TestADifferenceTakenForATemperature(t *testing.T) {
	c := menu.Find("condensation")
	task := drawn(t, c, calc.Form{"ask": "margin", "ask.unit": "diffF", "air": "20", "humidity": "50", "panel": "15"})
	right, err := strconv.ParseFloat(task.Figure.Typed, 64)
	require.NoError(t, err)
	j := task.Judge(strconv.FormatFloat(right+32, 'f', 1, 64), "diffF")
	assert.Equal(t, "A difference of temperatures is converted without the 32", j.Mistake)
}

func TestAnAnswerNeedsItsUnit(t *testing.T) {
	task := wet(t)
	j := task.Judge("75", "")
	assert.Empty(t, j.Is)
	require.Len(t, task.Problems, 1)
	assert.Equal(t, "Your answer has no unit. Choose it, or write it after the number.", task.Problems[0].Error())
	for _, text := range []string{"", "a lot", "75 kg", "1,250", "7 5 5", "75 um um", "1/0"} {
		task := wet(t)
		assert.Empty(t, task.Judge(text, "um").Is, text)
		assert.NotEmpty(t, task.Problems, text)
	}
}

func TestWhatIsWrongWithSettings(t *testing.T) {
	for field, set := range map[string]calc.Form{
		"level": {"level": "4"}, "close": {"right": "5", "close": "2"}, "right": {"right": "all"}, "ask": {"ask": "dry_film"}, "ask.unit": {"ask.unit": "kg"},
		"dry_flim": {"dry_flim": "60"}, "dry_film": {"dry_film": "60..40"}, "coats": {"coats": "few"}, "solids_for": {"solids_for": "paint"},
		"volume_solids.unit": nil, "": {"dry_film": "0.1"},
	} {
		if set == nil {
			field, set = "volume_solids", calc.Form{"volume_solids": "40", "volume_solids.unit": "kg"}
		}
		task := exercise.New(calc.Language{}, film.WetFilm(), set)
		if assert.NotEmpty(t, task.Problems, "%v", set) {
			assert.Equal(t, field, task.Problems[0].Field, "%v", set)
		}
	}
}

// The text of a task must not hold the answer before the learner has given one.
func TestTheAnswerIsHeldBack(t *testing.T) {
	set := calc.Form{"dry_film": "61", "coats": "2", "volume_solids": "43"} // 61/2/0.43 = 70.9
	c := film.WetFilm()
	before := exercise.Answer(calc.Language{}, c, set)
	assert.NotContains(t, before, "71")
	assert.NotContains(t, before, "70.9")
	assert.NotContains(t, before, "report")
	set["answer"], set["answer.unit"] = "71", "um"
	after := exercise.Answer(calc.Language{}, c, set)
	assert.Contains(t, after, `"judged":"right"`)
	assert.Contains(t, after, `"report":{"id":"wet-film"`)
	set["answer"] = "seventy"
	assert.NotContains(t, exercise.Answer(calc.Language{}, c, set), "report")
}

// The same settings give the same text, and another seed, draw or level another task.
func TestATaskFollowsFromItsSettings(t *testing.T) {
	c := menu.Find("paint-needed")
	texts := map[string]bool{}
	for _, set := range []calc.Form{{}, {"seed": "1"}, {"seed": "2"}, {"seed": "1", "draw": "2"}, {"seed": "1", "level": "3"}, {"seed": "1", "units": "us"}} {
		text := exercise.Answer(calc.Language{}, c, set)
		assert.Equal(t, text, exercise.Answer(calc.Language{}, menu.Find("paint-needed"), set))
		assert.False(t, texts[text], "%v gives what others give", set)
		texts[text] = true
	}
}

func FuzzAnswer(f *testing.F) {
	for _, s := range []string{"75", "3/4 qt", "2,95 mil", "1e9", "−75 µm", "½", "½ in", "\xff", "9999999999999999999999", "75 um um"} {
		f.Add(s, "um")
	}
	f.Add("75", "")
	f.Add("75", "kg")
	c := film.WetFilm()
	f.Fuzz(func(t *testing.T, text, unit string) {
		task := exercise.New(calc.Language{}, c, calc.Form{"seed": "1"})
		j := task.Judge(text, unit)
		require.Equal(t, j.Is == "", len(task.Problems) > 0, "%q %q: %v", text, unit, task.Problems)
	})
}

func FuzzSettings(f *testing.F) {
	for _, s := range []string{"", "ask=wet_film&seed=7&level=3", "dry_film=40..95+by+5&solids_for=any&ratio=4:1:1;2:1", "dry_film=1e99..2&answer=1", "ask=wet_film.1.x", "level=9&right=-1", "answer=75+um&show=answer"} {
		f.Add(s)
	}
	makers := []*calc.Calculator{film.WetFilm(), menu.Find("mix-ratio"), menu.Find("parts-area")}
	f.Fuzz(func(t *testing.T, s string) {
		for _, c := range makers {
			text := exercise.Answer(calc.Language{}, c, calc.ParseForm(s))
			require.True(t, utf8.ValidString(text) && json.Valid([]byte(text)), "%s", text)
		}
	})
}

// Mistakes that calculators declare themselves. By hand: 46 g in half a minute of a mix of 1.15 kg/L are 40 mL, 80 mL a
// minute; as of water 92 mL; taken for a whole minute's 40 mL. A closed cylinder of 1 m diameter and 2 m length has
// pi*1*2 + 2*pi*0.25 = 7.85 m²; of 2 m diameter 4*pi + 2*pi = 18.85 m².
func TestMistakesThatACalculatorDeclares(t *testing.T) {
	delivery := drawn(t, menu.Find("gun-delivery"), calc.Form{"caught_by": "weighed", "caught_mass": "46", "mix_density": "1.15", "caught_for": "30"})
	assert.Equal(t, "80", delivery.Figure.Typed)
	assert.Equal(t, "This comes out where 1 g is taken for 1 mL, as of water", delivery.Judge("92", "mL/min").Mistake)
	assert.Equal(t, "This comes out where what was caught is taken as that of a whole minute", delivery.Judge("40", "mL/min").Mistake)

	tank := drawn(t, menu.Find("tank-area"), calc.Form{"tank": "cylinder", "diameter": "1", "diameter.unit": "m", "length": "2", "length.unit": "m", "tank_ends": "flat"})
	assert.Equal(t, "7.85", tank.Figure.Typed)
	assert.Equal(t, "This comes out where the diameter is taken for a radius", tank.Judge("18.85", "m2").Mistake)

	cup := drawn(t, menu.Find("cup-seconds"), calc.Form{"flow_cup": "ford-4", "cup_seconds": "40"})
	din := drawn(t, menu.Find("cup-seconds"), calc.Form{"flow_cup": "din-4", "cup_seconds": "40"})
	assert.Equal(t, "This comes out with the DIN cup of 4 mm", cup.Judge(din.Figure.Typed, "mm2/s").Mistake)
}

// mixed are settings that draw the choices which declared mistakes are about.
func mixed(c *calc.Calculator, seed int) calc.Form {
	set := calc.Form{"seed": strconv.Itoa(seed), "level": strconv.Itoa(1 + seed%3)}
	for _, key := range []string{"flow_cup", "used_by", "caught_by"} {
		if c.Input(key) != nil {
			set[key] = "any"
		}
	}
	return set
}

// Every declared mistake leads somewhere: to a number clearly off the right one, on some task.
func TestDeclaredMistakesLeadSomewhere(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		found := map[string]bool{}
		for seed := range 40 {
			if c.Mistakes == nil {
				return
			}
			for _, trap := range drawn(t, c, mixed(c, seed)).Traps() {
				found[trap.Says] = true
			}
		}
		for _, m := range c.Mistakes {
			assert.True(t, found[string(m.Says)], "%s: %s", c.ID, m.Says)
		}
	})
}
