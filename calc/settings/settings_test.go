package settings

import (
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

// run fills in the example, changed as a link says, without its pair and its exponent.
func run(t testing.TB, link string) calc.Report {
	c := Settings()
	form := c.ExampleForm()
	for _, key := range []string{"pair.1.air", "pair.1.humidity", "pair.1.pressure_worked", "pressure_exponent"} {
		delete(form, key)
	}
	for k, v := range calc.ParseForm(link) {
		form[k] = v
	}
	r := c.Run(form)
	require.Empty(t, r.Problems, link)
	return r
}

func value(r calc.Report, key string) float64 {
	for _, f := range r.Figures {
		if f.Key == key {
			return f.Value
		}
	}
	return -1
}

func text1(x float64) string { return strconv.FormatFloat(x, 'f', 1, 64) }

// What must hold in any air: a pressure that never rises as air dries faster, within the rating and in steps of the
// gauge; a ratio that falls with humidity and is 1 in ordinary air and 0 in saturated air.
func TestInAnyAir(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	type point struct{ ratio, psi float64 }
	var days []point
	for range 60 {
		air := 6 + 38*r.Float64()
		link := "air=" + text1(air) + "&panel=" + text1(air) + "&humidity="
		rep, damper := run(t, link+text1(5+80*r.Float64())), calc.Report{}
		p := point{value(rep, "drying_ratio"), value(rep, "start_pressure")}
		damper = run(t, link+text1(min(100, value(rep, "humidity_now")+6)))
		assert.Less(t, value(damper, "drying_ratio"), p.ratio, link)
		assert.LessOrEqual(t, p.psi, 29.0)
		days = append(days, p)
	}
	for _, a := range days {
		for _, b := range days {
			if a.ratio < b.ratio {
				assert.GreaterOrEqual(t, a.psi, b.psi)
			}
		}
	}
	assert.InDelta(t, 1, value(run(t, "air=23&humidity=50&panel=23"), "drying_ratio"), 1e-12)
	assert.InDelta(t, 0, value(run(t, "air=23&humidity=100&panel=23"), "drying_ratio"), 1e-6)
}

// What is offered as a way out must be one: filled in, it is judged clear.
func TestTheWaysOutAreClear(t *testing.T) {
	found := 0
	for _, link := range []string{
		"air=15&humidity=85&panel=15", "air=10&humidity=90&panel=9", "air=40.6&humidity=4&panel=40", "air=20&humidity=88&panel=20", "air=24&humidity=75&panel=18",
		"air=26&humidity=90&panel=25&carrier=solvent&solvent=xylene",
	} {
		for _, l := range run(t, link).Lists {
			if l.Key != "ways" {
				continue
			}
			for _, row := range l.Rows {
				panel := row[1].Value // the part with the air, or as it was
				if row[1].Value == value(run(t, link), "air") {
					continue
				}
				next := run(t, link+"&air="+strconv.FormatFloat(row[1].Value, 'f', -1, 64))
				_ = next
				if row[0].Text[:3] != "Dry" && row[0].Text[:4] != "Damp" && row[0].Text[:4] != "Move" {
					after := run(t, "air="+strconv.FormatFloat(panel, 'f', -1, 64)+"&panel="+strconv.FormatFloat(panel, 'f', -1, 64)+"&humidity="+strconv.FormatFloat(row[2].Value, 'f', 6, 64))
					assert.InDelta(t, row[4].Value, value(after, "drying_ratio"), 1e-4, link)
					assert.GreaterOrEqual(t, value(after, "margin"), 3-1e-6, link)
					found++
				}
			}
		}
	}
	assert.GreaterOrEqual(t, found, 4)
}
