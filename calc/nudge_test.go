package calc

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc/unit"
)

func TestNudgesGoToTheNextMark(t *testing.T) {
	pressure := Input{Key: "p", Label: "Pressure", Unit: unit.PSI, Limits: Between(5, 90), Step: 1}
	speed := Input{Key: "v", Label: "Speed", Unit: unit.MetrePerSecond, Limits: Between(0.02, 3), Step: 0.05}
	air := Input{Key: "t", Label: "Air", Unit: unit.DegC, Limits: Between(-10, 60), Step: 1}
	for _, c := range []struct {
		in               Input
		text, unit       string
		comma            bool
		less, more, mean string
	}{
		{pressure, "27", "", false, "26", "28", "on a mark"},
		{pressure, "27.5", "", false, "27", "28", "between marks"},
		{pressure, "90", "", false, "89", "", "the highest allowed"},
		{pressure, "5", "", false, "", "6", "the lowest allowed"},
		{pressure, "1.9", "bar", false, "1.85", "1.95", "1 psi is 0.069 bar, near 0.05"},
		{pressure, "190", "kPa", false, "185", "195", "1 psi is 6.9 kPa, near 5"},
		{speed, "0.3", "", false, "0.25", "0.35", "0.3 is no whole multiple of 0.05 in binary"},
		{speed, "0.3", "", true, "0,25", "0,35", "the reader's own decimal mark"},
		{speed, "0.02", "", false, "", "0.05", "below the first mark"},
		{air, "0", "", false, "-1", "1", "across nought"},
		{air, "-1", "", false, "-2", "0", "no minus nought"},
		{air, "72", "degF", false, "70", "74", "a difference of 1 °C is 1.8 °F, near 2"},
	} {
		form := Form{c.in.Key: c.text}
		if c.unit != "" {
			form[c.in.Key+".unit"] = c.unit
		}
		r := reader{Language: Language{Comma: c.comma}, form: form, typed: map[unit.Quantity]unit.Unit{}}
		r.read(&Entry{}, []Input{c.in})
		assert.Equal(t, []Nudge{{c.in.Key, c.less, c.more}}, r.nudges, c.mean)
	}
}

func TestWhatIsBlankOrAsksForNoStepsHasNone(t *testing.T) {
	r := reader{form: Form{"q": "3"}, typed: map[unit.Quantity]unit.Unit{}}
	r.read(&Entry{}, []Input{
		{Key: "p", Label: "Pressure", Unit: unit.PSI, Limits: Between(5, 90), Step: 1, Optional: true},
		{Key: "q", Label: "Another", Unit: unit.PSI, Limits: Between(1, 90)},
	})
	assert.Empty(t, r.nudges)
	r.read(&Entry{}, []Input{{Key: "o", Label: "Overlap", Unit: unit.Percent, Limits: Between(0, 90), Step: 5, Prefill: true, Example: 50}})
	assert.Equal(t, []Nudge{{"o", "45", "55"}}, r.nudges, "a figure taken for granted can be nudged")
}
