package film_test

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/film"
)

// judged puts readings in µm against a film of 100 µm and returns what each rule says.
func judged(t *testing.T, readings ...float64) (iso, pa2, msc string, report calc.Report) {
	form := calc.Form{"dry_film": "100"}
	for i, x := range readings {
		form["reading."+strconv.Itoa(i+1)+".gauge_reading"] = strconv.FormatFloat(x, 'f', -1, 64)
	}
	report = film.GaugeReadings().Run(form)
	if !assert.Empty(t, report.Problems) {
		t.FailNow()
	}
	by := report.Lists[slices.IndexFunc(report.Lists, func(l calc.List) bool { return l.Key == "ruling" })]
	rows := by.Rows
	return rows[0][1].Text, rows[1][1].Text, rows[2][1].Text, report
}

func repeated(n int, x float64) (xs []float64) {
	for range n {
		xs = append(xs, x)
	}
	return xs
}

// At each limit, and just past it.
func TestRulesAtTheirLimits(t *testing.T) {
	for _, c := range []struct {
		what          string
		readings      []float64
		iso, pa2, msc string
	}{
		{"all as specified", repeated(15, 100), "Pass", "Pass", "Pass"},
		{"three of fifteen at 80, the mean kept", append(repeated(12, 105), 80, 80, 80), "Pass", "Pass", "Fail"},
		{"one just below 80", append(repeated(14, 105), 79.9), "Fail", "Pass", "Fail"},
		{"four of fifteen below", append(repeated(11, 105), 95, 95, 95, 95), "Fail", "Pass", "Fail"},
		{"one of ten at 90", append(repeated(9, 102), 90), "Pass", "Not judged", "Pass"},
		{"one of ten below 90", append(repeated(9, 102), 89.9), "Pass", "Not judged", "Fail"},
		{"mean short by a hair", append(repeated(9, 100), 99), "Fail", "Not judged", "Pass"},
		{"a spot at 144", append(repeated(12, 100), 144, 144, 144), "Pass", "Pass", "Pass"},
		{"a spot above 144", append(repeated(12, 100), 144.5, 144.5, 144.5), "Pass", "Fail", "Pass"},
		{"a spot below 64", append(repeated(12, 120), 63.9, 63.9, 63.9), "Fail", "Fail", "Fail"},
		{"the area above 120", repeated(15, 120.1), "Pass", "Fail", "Pass"},
		{"the area below 80", repeated(15, 79.9), "Fail", "Fail", "Fail"},
		{"one area of two below 80", append(repeated(15, 120), repeated(15, 79)...), "Fail", "Fail", "Fail"},
	} {
		iso, pa2, msc, _ := judged(t, c.readings...)
		assert.Equal(t, []string{c.iso, c.pa2, c.msc}, []string{iso, pa2, msc}, c.what)
	}
}

func TestGaugeVerdictWeighsTheRules(t *testing.T) {
	for _, c := range []struct {
		readings []float64
		want     calc.Level
	}{{repeated(15, 100), calc.Go}, {append(repeated(9, 102), 89), calc.Wait}, {repeated(4, 100), calc.Wait}, {repeated(15, 60), calc.Stop}} {
		_, _, _, report := judged(t, c.readings...)
		assert.Equal(t, c.want, report.Verdict[0].Level)
	}
}

// 4 mil is 80 % of 5 mil, though not to the last bit of their micrometres.
func TestLimitsInMils(t *testing.T) {
	report := film.GaugeReadings().Run(calc.ParseForm("dry_film=5&dry_film.unit=mil&reading.gauge_reading.unit=mil&reading.1.gauge_reading=4&reading.2.gauge_reading=6&" +
		"reading.3.gauge_reading=6&reading.4.gauge_reading=6&reading.5.gauge_reading=6"))
	assert.Equal(t, "Pass", report.Lists[0].Rows[0][1].Text, "%v", report.Lists)
}

// More film never turns a pass by a rule without an upper limit into a fail.
func TestMoreFilmNeverHurts(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 1))
	for range 300 {
		thin, thick := []float64{}, []float64{}
		for range 10 {
			x := between(r, 75, 130)
			thin, thick = append(thin, x), append(thick, x+between(r, 0, 30))
		}
		iso, _, msc, _ := judged(t, thin...)
		more, _, msc2, _ := judged(t, thick...)
		assert.False(t, iso == "Pass" && more == "Fail", "%v %v", thin, thick)
		assert.False(t, msc == "Pass" && msc2 == "Fail", "%v %v", thin, thick)
	}
}

func TestGaugeRefusals(t *testing.T) {
	for text, field := range map[string]string{
		"film_least=120":               "film_least", // highest stays 20 % above 100
		"film_most=80":                 "film_most",
		"film_least=110&film_most=105": "film_most",
		"profile_grade=coarse":         "reading.1.gauge_reading",
		"reading.1.gauge_reading=-1":   "reading.1.gauge_reading",
		"profile_grade=rough":          "profile_grade",
	} {
		form := calc.ParseForm("dry_film=100&reading.1.gauge_reading=30")
		for key, value := range calc.ParseForm(text) {
			form[key] = value
		}
		problems := film.GaugeReadings().Run(form).Problems
		if assert.Len(t, problems, 1, text) {
			assert.Equal(t, field, problems[0].Field, text)
		}
	}
}

// A reading five times off is named, one at the limit is not; it counts all the same.
func TestReadingsFarOffAreNamed(t *testing.T) {
	_, _, _, report := judged(t, 100, 500, 20, 101)
	assert.NotEqual(t, "doubtful", report.Lists[0].Key, "at the limits nothing is asked")
	_, _, _, report = judged(t, 100, 1050, 19.9)
	assert.Equal(t, "doubtful", report.Lists[0].Key)
	assert.Equal(t, "2", report.Lists[0].Rows[0][0].Typed)
	assert.Equal(t, "3", report.Lists[0].Rows[1][0].Typed)
	assert.InDelta(t, (100+1050+19.9)/3, report.Figures[0].Value, 1e-9)
}

// However far a reading is off, the labels of the chart stand clear of each other and on the chart.
func TestLabelsOfTheChartStandApart(t *testing.T) {
	for _, readings := range [][]float64{{100}, {5000}, {0}, {0, 5000}, {99, 101, 103}} {
		for _, rule := range []string{"all", "iso", "pa2", "msc"} {
			form := calc.Form{"dry_film": "100", "gauge_rule": rule}
			for i, x := range readings {
				form["reading."+strconv.Itoa(i+1)+".gauge_reading"] = strconv.FormatFloat(x, 'f', -1, 64)
			}
			p := film.GaugeReadings().Run(form).Pictures[0]
			var y []float64
			for _, s := range p.Shapes {
				if s.Kind == calc.Label {
					y = append(y, s.Y)
				}
			}
			slices.Sort(y)
			for i := range y {
				assert.Less(t, y[i], p.Height, "%v", readings)
				assert.Greater(t, y[i], 10.0, "%v", readings)
				assert.True(t, i == 0 || y[i]-y[i-1] >= 14.9, "%v by %s: %v", readings, rule, y)
			}
		}
	}
}
