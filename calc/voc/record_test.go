package voc_test

import (
	"math/rand/v2"
	"strconv"
	"testing"

	"spraywright/calc"
	"spraywright/calc/voc"

	"github.com/stretchr/testify/assert"
)

// Lines in any order come to the same record, and each twelve months are what adding by hand gives.
func TestRollingTwelveMonths(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 60))
	for range 100 {
		form := calc.Form{}
		by := map[int]float64{}
		last := 0
		for i := range 1 + r.IntN(20) {
			month, litres := 1+r.IntN(30), float64(r.IntN(50))
			row := "use." + strconv.Itoa(i+1) + "."
			form[row+"record_month"], form[row+"record_volume"], form[row+"record_voc"] = strconv.Itoa(month), strconv.FormatFloat(litres, 'f', -1, 64), "500"
			by[month] += litres / 2
			last = max(last, month)
		}
		report := voc.Record().Run(form)
		assert.Empty(t, report.Problems)
		assert.Len(t, report.Lists[0].Rows, len(by))
		for _, row := range report.Lists[0].Rows {
			month, sum := int(row[0].Value), 0.0
			for m := month - 11; m <= month; m++ {
				sum += by[m]
			}
			assert.InDelta(t, by[month], row[1].Value, 1e-9)
			assert.InDelta(t, sum, row[2].Value, 1e-9)
			if month == last {
				assert.InDelta(t, sum, report.Figures[0].Value, 1e-9)
			}
		}
	}
}

// A limit broken last year is still said when this year is inside it.
func TestTheWorstTwelveMonthsCount(t *testing.T) {
	form := calc.ParseForm("use.1.record_month=1&use.1.record_volume=100&use.1.record_voc=500&use.2.record_month=20&use.2.record_volume=10&use.2.record_voc=500&mass_limit=40")
	assert.Equal(t, calc.Stop, voc.Record().Run(form).Verdict[0].Level)
	form["mass_limit"] = "50"
	assert.Equal(t, calc.Go, voc.Record().Run(form).Verdict[0].Level, "right at the limit is inside it")
}

func TestLimitsStandSideBySide(t *testing.T) {
	rows := voc.LimitTables().Run(calc.ParseForm("role=base&stages=3")).Lists[0].Rows
	if assert.Len(t, rows, 2) {
		assert.Equal(t, []float64{420, 630}, []float64{rows[0][2].Value, rows[1][2].Value})
	}
}
