package calc_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

func TestProblemsInFull(t *testing.T) {
	for _, tt := range []struct{ changes, field, want string }{
		{"temp=+", "temp", "Temperature is blank. Enter temperature."},
		{"temp=warm", "temp", "Temperature must be a number in °C, like 20; “warm” is not. Enter digits, with one point or comma for decimals."},
		{"temp=--4", "temp", "Temperature must be a number in °C, like 20; “--4” is not. Enter digits, with one point or comma for decimals."},
		{"temp=1/0", "temp", "Temperature must be a number, like 20. Enter digits, with one point or comma for decimals."},
		{"temp=1,250", "temp", "Temperature “1,250” can be read two ways. Write it without a separator for thousands."},
		{"temp=4", "temp", "Temperature must be 5\u202f°C or more. Check the number and its unit."},
		{"temp=40&temp.unit=degF", "temp", "Temperature must be 41\u202f°F or more. Check the number and its unit."},
		{"temp=105&temp.unit=degF", "temp", "Temperature must be 104\u202f°F or less. Check the number and its unit."},
		{"temp=105F", "temp", "Temperature must be 104\u202f°F or less. Check the number and its unit."},
		{"temp=20&temp.unit=g", "temp", "Temperature cannot be given in “g”. Choose one of the units in the list."},
		{"how=guess", "how", "How has no answer “guess”. Choose one of the answers in the list."},
		{"how=+", "how", "How is not chosen. Choose one."},
		{"times=2.5", "times", "Times must be a whole number. Round it up or down."},
		{"note=dry", "note", "Note needs a colon. Write it like dry: yes."},
		{"temp=39&rise=12", "rise", "Rise takes 39\u202f°C past 50 °C. Take a smaller rise."},
		{"part.1.shape=strip", "part.1.length", "Length is blank. Enter length."},
		{"part.2.name=Fork", "part.2.shape", "Shape is not chosen. Choose one."},
		{"part.2.name=a&part.3.name=a&part.4.name=a", "part", "Parts has 4 rows; it can hold 3. Take some out, or split the work in two."},
		{"note=" + strings.Repeat("x", 201), "note", "Note is 201 characters long. Keep it under 200 characters."},
		{"note={label}{text}", "note", "Note needs a colon. Write it like dry: yes."},
		{"how={label}", "how", "How has no answer “{label}”. Choose one of the answers in the list."},
	} {
		ps := sample.Run(filled(tt.changes)).Problems
		require.Len(t, ps, 1, tt.changes)
		assert.Equal(t, tt.want, ps[0].Error())
		assert.Equal(t, tt.field, ps[0].Field, tt.changes)
	}
}

func TestAllProblemsAtOnce(t *testing.T) {
	ps := sample.Run(calc.ParseForm("how=long&part.1.name=Lid&part.7.shape=strip")).Problems
	var fields []string
	for _, p := range ps {
		fields = append(fields, p.Field)
	}
	assert.Equal(t, []string{"temp", "reach", "times", "part.1.shape", "part.7.name", "part.7.length"}, fields)
	assert.Len(t, strings.Split(ps.Error(), "\n"), 6)
}

func TestAnEmptyFormAsksForEveryThingNeeded(t *testing.T) {
	r := sample.Run(calc.Form{})
	assert.Len(t, r.Problems, 4, "temperature, how, times and the table; not reach, which nobody asked for")
	assert.Equal(t, "Parts has no rows. Add a part.", r.Problems[3].Error())
	assert.Empty(t, r.Figures)
	assert.Empty(t, r.Steps)
}

func TestAnInputIsAskedOnlyWhenItsConditionHolds(t *testing.T) {
	assert.Equal(t, "0.10 m", shown(t, sample.Run(filled("reach=nonsense")), "total"))
	assert.Equal(t, "2.60 m", shown(t, sample.Run(filled("how=long&reach=2.5")), "total"))
	assert.Equal(t, "2.60 m", shown(t, sample.Run(filled("how=+long&reach=2.5")), "total"), "a space before a choice changes nothing")
	assert.NotEmpty(t, sample.Run(filled("how=guess&reach=nonsense")).Problems)
}

func TestAPrefilledInputMayBeLeft(t *testing.T) {
	assert.Equal(t, "22.0 °C", shown(t, sample.Run(filled("")), "warmer"))
	assert.Equal(t, "20.5 °C", shown(t, sample.Run(filled("rise=0.5")), "warmer"))
}

func TestUnitsOfAColumnAndOfOneCell(t *testing.T) {
	two := "part.1.shape=strip&part.1.length=10&part.2.name=Fork&part.2.shape=strip&part.2.length=10"
	assert.Equal(t, "0.02 m", shown(t, sample.Run(filled(two)), "total"))
	assert.Equal(t, "0.20 m", shown(t, sample.Run(filled(two+"&part.length.unit=cm&units.length=m")), "total"))
	r := sample.Run(filled(two + "&part.length.unit=cm&part.2.length.unit=m&units.length=m"))
	assert.Equal(t, "10.10 m", shown(t, r, "total"))
	ps := sample.Run(filled(two + "&part.length.unit=kg")).Problems
	require.Len(t, ps, 2)
	assert.Equal(t, "part.1.length", ps[0].Field)
}

func TestRowsComeInTheOrderOfTheirNumbers(t *testing.T) {
	r := sample.Run(filled("part.10.name=Ten&part.10.shape=disc&part.2.name=Two&part.2.shape=disc"))
	require.Len(t, r.Rows, 3)
	assert.Equal(t, []calc.RowText{{Row: "part.1", Text: "Lid, 100\u202fmm"}, {Row: "part.2", Text: "Two, 100\u202fmm"}, {Row: "part.10", Text: "Ten, 100\u202fmm"}}, r.Rows)
	require.Len(t, r.Lists, 1)
	assert.Equal(t, "Ten", r.Lists[0].Rows[2][0].Text)
}

func TestOddRowNumbersAreNoRows(t *testing.T) {
	odd := "part.0.name=a&part.01.name=a&part.-1.name=a&part.1e2.name=a&part.999999.name=a&part..name=a&part.１.name=a"
	assert.Len(t, sample.Run(filled(odd)).Rows, 1)
}

func TestALongUnitIsNotRepeatedInFull(t *testing.T) {
	form := filled("")
	form["temp.unit"] = strings.Repeat("é", 1<<20)
	ps := sample.Run(form).Problems
	require.Len(t, ps, 1)
	assert.Less(t, len(ps[0].Message), 200)
}
