package money_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/money"
)

func value(report calc.Report, key string) float64 {
	for _, f := range report.Figures {
		if f.Key == key {
			return f.Value
		}
	}
	return math.NaN()
}

// What is not wasted is the paint that dries on the parts: area by film by solids.
func TestWasteIsWhatDoesNotStay(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	num := func(lo, hi float64) (float64, string) {
		x := lo + (hi-lo)*r.Float64()
		return x, strconv.FormatFloat(x, 'f', -1, 64)
	}
	for range 300 {
		form := calc.Form{}
		var area, film, solids, price float64
		area, form["area"] = num(0.1, 100)
		film, form["dry_film"] = num(10, 200)
		solids, form["volume_solids"] = num(10, 100)
		price, form["price"] = num(1, 200)
		_, form["transfer_efficiency"] = num(5, 100)
		_, form["losses"] = num(0, 500)
		report := money.JobCost().Run(form)
		assert.Empty(t, report.Problems)
		assert.InEpsilon(t, area*film/(solids/100)/1000*price, value(report, "cost_paint")-value(report, "cost_waste"), 1e-9)
		assert.InEpsilon(t, value(report, "cost_job"), value(report, "cost_area")*area, 1e-9)
		assert.Equal(t, value(report, "cost_paint"), value(report, "cost_job"), "without labour")
	}
}

func TestLabourNeedsBothItsFields(t *testing.T) {
	form := money.JobCost().ExampleForm()
	assert.Equal(t, 54., value(money.JobCost().Run(form), "cost_labour"))
	delete(form, "wage")
	report := money.JobCost().Run(form)
	assert.Empty(t, report.Problems)
	assert.True(t, math.IsNaN(value(report, "cost_labour")))
}

func TestCupCostRefusesMoreLeftThanMixed(t *testing.T) {
	form := money.CupCost().ExampleForm()
	form["amount"], form["cup_left_over"] = "100", "101"
	problems := money.CupCost().Run(form).Problems
	if assert.Len(t, problems, 1) {
		assert.Equal(t, "cup_left_over", problems[0].Field)
	}
}
