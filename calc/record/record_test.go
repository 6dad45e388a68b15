package record_test

import (
	"encoding/csv"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/internal/ask"
	"spraywright/calc/record"
)

func words(t *testing.T, r calc.Report, key string) string {
	t.Helper()
	require.Empty(t, r.Problems)
	for _, f := range r.Figures {
		if f.Key == key {
			return f.Text
		}
	}
	t.Fatalf("no %s", key)
	return ""
}

func lines(t *testing.T, r calc.Report) [][]string {
	t.Helper()
	records, err := csv.NewReader(strings.NewReader(words(t, r, "csv_lines"))).ReadAll()
	require.NoError(t, err)
	return records
}

// Whatever people call things, encoding/csv reads back what they typed, one record for each mix.
func FuzzCSV(f *testing.F) {
	for _, s := range []string{"Clear", `b"bb`, "a,b", "=1+2", "+A", "-A", "@A", "a\r\nb", "a\nb", `""`, "'", " ", "é, “ñ”", "\t=x", "\r", "a\rb", `=HYPERLINK("x")`} {
		f.Add(s, "Booth 1")
		f.Add("Primer", s)
	}
	f.Fuzz(func(t *testing.T, product, booth string) {
		form := calc.Form{"mix.1.mixed_on": "2026-11-25", "mix.1.product": product, "mix.1.booth_name": booth,
			"mix.2.mixed_on": "2026-11-26", "mix.2.product": "Second", "mix.2.booth_name": product}
		r := record.MixCSV().Run(calc.ParseForm(form.String()))
		if len(r.Problems) > 0 {
			return // too long: nothing is written
		}
		got := lines(t, r)
		require.Len(t, got, 2)
		require.Equal(t, []string{"2026-11-25", "Second"}, []string{got[0][0], got[1][2]})
		for cell, typed := range map[string]string{got[0][2]: product, got[0][10]: booth, got[1][10]: product} {
			require.Equal(t, guarded(typed), cell)
			require.NotContains(t, "=+-@\t\r", firstOf(cell))
		}
	})
}

// guarded is what a reader of the file should see: what was typed, trimmed as the form trims it, line breaks as the
// reader gives them, and an apostrophe before what would be a formula.
func guarded(typed string) string {
	typed = strings.TrimSpace(strings.ToValidUTF8(typed, "\uFFFD"))
	for range 2 { // the writer makes a break of each return and break, and the reader does
		typed = strings.ReplaceAll(typed, "\r\n", "\n")
	}
	if strings.Contains("=+-@", firstOf(typed)) && typed != "" {
		return "'" + typed
	}
	return typed
}

func firstOf(s string) string {
	if s == "" {
		return "none"
	}
	return s[:1]
}

func TestTheFileHasAsManyCellsAsItsHeadings(t *testing.T) {
	c := record.MixCSV()
	r := c.Run(c.ExampleForm())
	head, err := csv.NewReader(strings.NewReader(words(t, r, "csv_head"))).Read()
	require.NoError(t, err)
	for _, l := range lines(t, r) {
		assert.Len(t, l, len(head))
	}
	assert.NotContains(t, words(t, r, "csv_lines"), ";;")
}

// A month's total stands for its mixes: adding up twice gives what adding up once gives.
func TestTotalsOfTotalsAreTheTotals(t *testing.T) {
	all, parted := calc.Form{"log_month": "2026-11"}, calc.Form{"log_month": "2026-11"}
	put := func(form calc.Form, n int, pairs ...string) {
		for i := 0; i < len(pairs); i += 2 {
			form["mix."+strconv.Itoa(n)+"."+pairs[i]] = pairs[i+1]
		}
	}
	row := 0
	for half := range 2 {
		part := calc.Form{"log_month": "2026-10"}
		for i := 1; i <= 7; i++ {
			n := half*7 + i
			pairs := []string{"mixed_on", "2026-10-" + strconv.Itoa(10+n), "product", []string{"Clear", "Base", "Primer"}[n%3], "mixed_volume", strconv.Itoa(100 * n), "mix_density", "1.1"}
			if n != 5 {
				pairs = append(pairs, "voc", "420")
			}
			put(all, n, pairs...)
			put(part, i, pairs...)
		}
		for _, l := range record.MixLog().Run(part).Lists {
			if l.Key != "product_total" {
				continue
			}
			for _, cells := range l.Rows {
				row++
				put(parted, row, "mixed_on", "2026-10", "product", cells[0].Text)
				for key, f := range map[string]calc.Figure{"mixes": cells[1], "voc_unknown": cells[2], "mixed_volume": cells[3], "mixed_mass": cells[4], "voc_weighed": cells[5]} {
					if f.UnitID != "" {
						put(parted, row, key, strconv.FormatFloat(f.Value, 'f', -1, 64), key+".unit", f.UnitID)
					}
				}
			}
		}
	}
	once, twice := record.MixLog().Run(all), record.MixLog().Run(parted)
	require.Empty(t, twice.Problems)
	for _, key := range []string{"month_voc", "year_mass", "year_volume"} {
		assert.InDelta(t, ask.Value(t, once, key), ask.Value(t, twice, key), 1e-9, key)
	}
	assert.Equal(t, once.Verdict[0].Why, twice.Verdict[0].Why)
	assert.Contains(t, once.Verdict[0].Why, "1 of the mixes have no VOC")
}

func TestDaysOfTheCalendar(t *testing.T) {
	for s, ok := range map[string]bool{
		"2026-11-25": true, "2024-02-29": true, "2000-02-29": true, "2026-02-29": false, "1900-02-29": false, "2026-04-31": false, "2026-13-01": false,
		"2026-00-10": false, "2026-1-5": false, "25.11.2026": false, "2026-11": false, "2026-11-00": false, "": false, "2026-11-25-1": false, "+026-11-25": false,
	} {
		assert.Equal(t, ok, field.CheckDay(s) == nil, s)
	}
	assert.Nil(t, field.CheckMonth("2026-11"))
	assert.NotNil(t, field.CheckMonth("2026-11-25"))
	month, _, _ := field.ReadDay("2026-01-31")
	assert.Equal(t, "2025-12", field.ShowMonth(month-1))
	assert.Equal(t, "0999-12", field.ShowMonth(12*999+11))
}

func TestALogIsRefusedWhereItMakesNoSense(t *testing.T) {
	for says, form := range map[string]string{
		"Volume mixed is blank, and so is the weight":               "mixed_on=2026-11-25&product=Clear",
		"Weight mixed and the volume come to 7":                     "mixed_on=2026-11-25&product=Clear&mixed_volume=100&mixed_mass=700",
		"Left in the cup must be less than was mixed":               "mixed_on=2026-11-25&product=Clear&mixed_volume=100&mixed_mass=120&left_mass=120",
		"Stays in gun and filter is all that was sprayed":           "mixed_on=2026-11-25&product=Clear&mixed_volume=100&mixed_mass=120&left_mass=60&losses=50&area=1&dry_film=50&volume_solids=50",
		"Dry film it made takes more solids than were sprayed: 200": "mixed_on=2026-11-25&product=Clear&mixed_volume=100&mixed_mass=120&left_mass=60&area=1&dry_film=50&volume_solids=50",
		"Day is not a day of the calendar":                          "mixed_on=2026-02-30&product=Clear&mixed_volume=100",
	} {
		r := record.MixRecord().Run(calc.ParseForm(form))
		if assert.NotEmpty(t, r.Problems, form) {
			assert.Contains(t, r.Problems[0].Message, says)
		}
	}
}

func TestTheRecordSaysWhereItBegins(t *testing.T) {
	r := record.MixLog().Run(calc.ParseForm("mix.1.mixed_on=2026-11-25&mix.1.product=Clear&mix.1.mixed_volume=600&mix.1.voc=420&mass_limit=1"))
	require.Empty(t, r.Problems)
	assert.Contains(t, r.Cautions[0], "begins with 2026-11")
	assert.Equal(t, calc.Go, r.Verdict[0].Level)
	r = record.MixLog().Run(calc.ParseForm("mix.1.mixed_on=2026-11-25&mix.1.product=Clear&mix.1.mixed_volume=6000&mix.1.voc=420&mass_limit=1"))
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[0].Why, "The 12 months up to 2026-11 came to 2.5")
}
