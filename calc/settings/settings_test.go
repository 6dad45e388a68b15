package settings

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
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

// What is offered as a way out must be one: filled in, it is judged clear, and a step short of it is not.
func TestTheWaysOutAreClear(t *testing.T) {
	plain := func(x float64) string { return strconv.FormatFloat(x, 'f', 6, 64) }
	found := map[string]int{}
	for _, link := range []string{
		"air=15&humidity=85&panel=15", "air=10&humidity=89&panel=9", "air=40.6&humidity=4&panel=40", "air=20&humidity=88&panel=20", "air=24&humidity=75&panel=18",
		"air=26&humidity=90&panel=25&carrier=solvent&solvent=xylene", "air=18&humidity=65&panel=18",
	} {
		for _, l := range run(t, link).Lists {
			for _, row := range l.Rows {
				if l.Key != "ways" {
					continue
				}
				kind := strings.Fields(row[0].Text)[0]
				next := calc.ParseForm(link)
				next["air"], next["humidity"] = plain(row[1].Value), plain(row[2].Value)
				if kind == "Heat" || kind == "Cool" {
					next["panel"] = next["air"]
				}
				after := run(t, next.String())
				assert.InDelta(t, row[4].Value, value(after, "drying_ratio"), 1e-4, link)
				assert.InDelta(t, row[3].Value, value(after, "margin"), 1e-4, link)
				for _, l := range after.Lists {
					assert.False(t, l.Key == "ways" && kind != "Move" && !strings.HasPrefix(l.Rows[0][0].Text, "Move"), "%s: %s", link, l.Rows)
				}
				found[kind]++
			}
		}
	}
	for _, kind := range []string{"Heat", "Cool", "Dry", "Damp", "Move"} {
		assert.Positive(t, found[kind], kind)
	}
}

// Moving nearer, overlapping more and going slower each keep a film wet for longer, and in damp air the other way round.
func TestLeversPullTheRightWay(t *testing.T) {
	for _, c := range []struct {
		link string
		up   bool
	}{{"air=38&humidity=15&panel=36", true}, {"air=31&humidity=25&panel=30", true}, {"air=20&humidity=72&panel=20", false}} {
		for _, l := range run(t, c.link).Lists {
			if l.Key != "levers" {
				continue
			}
			now := l.Rows[1][2].Value
			for _, row := range l.Rows[2:] {
				assert.True(t, row[2].Value == now || (row[2].Value > now) == c.up, "%s: %s %g %g", c.link, row[0].Text, now, row[2].Value)
			}
			assert.Equal(t, 100.0, l.Rows[0][2].Value)
		}
	}
}

// In bar the answer stands in steps of 0.05 bar.
func TestGaugeInBar(t *testing.T) {
	r := run(t, "air=35&humidity=20&panel=35&pressure=1.9&pressure.unit=bar&pressure_most=2&pressure_most.unit=bar")
	x := value(r, "start_pressure") / 0.05
	assert.InDelta(t, math.Round(x), x, 1e-9)
	assert.Less(t, x*0.05, 1.9)
}

// Not all need be filled in: the air alone is judged, and the paint without the gun.
func TestInStages(t *testing.T) {
	c := Settings()
	r := c.Run(calc.ParseForm("air=22&humidity=55&panel=21&air_speed=0.3"))
	assert.NotEmpty(t, r.Verdict)
	assert.InDelta(t, 0.86, value(r, "drying_ratio"), 0.01)
	r = c.Run(calc.ParseForm("air=22&humidity=55&panel=21&air_speed=0.3&carrier=water&pack=one&role=base&flash=10&flash_at=20&flash_humidity=50"))
	assert.Positive(t, value(r, "flash_high"))
	assert.Equal(t, -1.0, value(r, "start_pressure"))
	r = c.Run(calc.ParseForm("air=22&air_reading=wet-bulb&wet_bulb=23&panel=21&air_speed=0.3"))
	assert.Contains(t, r.Problems.Error(), "never warmer")
}

func BenchmarkSettings(b *testing.B) {
	c := Settings()
	form := c.ExampleForm()
	for b.Loop() {
		c.Run(form).JSON()
	}
}
