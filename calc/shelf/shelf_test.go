package shelf

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/job"
	"spraywright/calc/settings"
)

// keysOf are the keys of a list of inputs, columns of tables left out.
func keysOf(ins []calc.Input) map[string]bool {
	keys := map[string]bool{}
	for _, in := range ins {
		keys[in.Key] = true
	}
	return keys
}

// A row of the job that is kept as a data sheet comes back whole.
func TestADataSheetHoldsAllThatARowOfTheJobAsks(t *testing.T) {
	kept := keysOf(DataSheet().Inputs)
	for _, in := range job.Job().Input("coat").Rows {
		if in.Key != "on_colour" { // belongs to the job
			assert.True(t, kept[in.Key], "a data sheet does not hold %s", in.Key)
		}
	}
}

// What the job and the settings ask besides the parts, the products and the air of the day is kept somewhere.
func TestWhatIsAskedAgainAndAgainIsKept(t *testing.T) {
	ofTheDay := map[string]bool{"part": true, "coat": true, "air": true, "humidity": true, "panel": true, "wet_bulb": true, "air_reading": true, "clock": true}
	kept := map[string]bool{}
	for _, m := range Calculators {
		for key := range keysOf(m.Make().Inputs) {
			kept[key] = true
		}
	}
	for _, c := range []*calc.Calculator{job.Job(), settings.Settings()} {
		for _, in := range c.Inputs {
			assert.True(t, kept[in.Key] || ofTheDay[in.Key], "%s asks for %s, which nothing keeps", c.ID, in.Key)
		}
	}
}

func TestWhatIsKeptIsAskedToBeNamedAndAssumesNothing(t *testing.T) {
	for _, k := range Kinds() {
		var c *calc.Calculator
		for _, m := range Calculators {
			if m.ID == k.ID {
				c = m.Make()
			}
		}
		for i, in := range c.Inputs {
			assert.Equal(t, i == 0, !in.Optional, "%s of %s", in.Key, k.ID)
			assert.False(t, in.Prefill, "%s of %s starts filled in", in.Key, k.ID)
		}
		assert.Equal(t, k.Name.Key, c.Inputs[0].Key)
	}
}

// Every unit that the shop can choose is one that a form may name.
func TestTheShopsUnitsAreThoseOfForms(t *testing.T) {
	c := Shop()
	form := calc.Form{"shop": "A", "unit_temperature": "degf", "unit_coverage": "ft2-gal", "unit_price": "per-gal", "unit_air_speed": "m-s-air"}
	for _, f := range c.Run(form).Figures {
		if f.Key == "link_units" {
			assert.Equal(t, "units.temperature=degF&units.temperature-difference=diffF&units.air-speed=m/s_air&units.coverage=ft2/gal&units.volume-price=/gal", f.Text)
			return
		}
	}
	assert.Fail(t, "the shop names no units")
}

// A name with signs in it that nobody sees looks like another.
func TestNamesHoldNothingUnseen(t *testing.T) {
	for key, c := range map[string]*calc.Calculator{"product": DataSheet(), "sheet_dated": DataSheet(), "gun_name": Gun(), "booth_name": Booth(), "shop": Shop(), "sheet.1.product": CustomerSheets(), "sender": CustomerSheets()} {
		form := calc.Form{}
		check.Complete(c, form)
		for _, sign := range []string{"\u200b", "\u202e", "\u00ad", "\u2066", "\ufeff", "\u3164", "\U000e0041", "\x07", "\ufe0f"} {
			form[key] = "Cl" + sign + "ear"
			problems := c.Run(form).Problems
			if assert.Len(t, problems, 1, "%s %q", key, sign) {
				assert.Equal(t, key, problems[0].Field)
				assert.Contains(t, problems[0].Message, "has signs in it that cannot be seen")
			}
		}
		for _, fine := range []string{"Größe 3/4", "Señal", "透明", "Лак", "क्षेत्र", "A\u00a0B", "😀"} {
			form[key] = fine
			assert.Empty(t, c.Run(form).Problems, fine)
		}
	}
}

func TestNamesAreTheSameHoweverTheyAreSpaced(t *testing.T) {
	form := calc.ParseForm("sender=Us&sheet.1.product=Clear%20coat&sheet.2.product=clear%20%C2%A0%20Coat&sheet.3.product=Clear&sheet.4.product=coat")
	stops := 0
	for _, r := range CustomerSheets().Run(form).Verdict {
		if r.Level == calc.Stop {
			stops++
		}
	}
	assert.Equal(t, 1, stops)
}
