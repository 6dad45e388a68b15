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

// run fills in the example, changed as a link says, without its pair, its exponent and its limits.
func run(t testing.TB, link string) calc.Report {
	c := Settings()
	form := c.ExampleForm()
	for _, key := range []string{"pair.1.air", "pair.1.humidity", "pair.1.pressure_worked", "pressure_exponent", "air_lowest", "air_highest"} {
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
		"air=24&humidity=60&panel=18", "air=28&humidity=20&panel=28",
	} {
		for _, l := range run(t, link).Lists {
			for _, row := range l.Rows {
				if l.Key != "ways" {
					continue
				}
				kind := strings.Fields(row[0].Text)[0]
				next := calc.ParseForm(link)
				next["air"], next["humidity"] = plain(row[1].Value), plain(row[2].Value)
				if kind != "Dry" && kind != "Damp" && kind != "Move" {
					next["panel"] = next["air"]
				}
				after := run(t, next.String())
				assert.NotEqual(t, calc.Stop, after.Verdict[0].Level, link)
				assert.InDelta(t, row[4].Value, value(after, "drying_ratio"), 1e-4, link)
				assert.InDelta(t, row[3].Value, value(after, "margin"), 1e-4, link)
				for _, l := range after.Lists {
					assert.False(t, l.Key == "ways" && kind != "Move" && !strings.HasPrefix(l.Rows[0][0].Text, "Move"), "%s: %s", link, l.Rows)
				}
				found[kind]++
			}
		}
	}
	for _, kind := range []string{"Warm", "Cool", "Bring", "Dry", "Damp", "Move"} {
		assert.Positive(t, found[kind], kind)
	}
}

// Each change keeps a film wet for longer in dry air, and for less long in damp air. What is advised lays no more film,
// and what lays less of it is named.
func TestLeversPullTheRightWay(t *testing.T) {
	for _, c := range []struct {
		link, most string
		up         bool
	}{
		{"air=38&humidity=15&panel=36", "Distance", true}, {"air=31&humidity=25&panel=30", "Distance", true},
		{"air=20&humidity=72&panel=20", "Thinner coats", false}, {"air=40&humidity=6&panel=38&overlap=60", "Distance", true},
	} {
		r := run(t, c.link)
		for _, l := range r.Lists {
			if l.Key != "levers" {
				continue
			}
			assert.Equal(t, 100.0, l.Rows[0][3].Value)
			now := l.Rows[1][3].Value
			for _, row := range l.Rows[2:] {
				assert.Equal(t, c.up, row[3].Value > now, "%s: %s %g %g", c.link, row[0].Text, now, row[3].Value)
				switch film := row[1].Value; {
				case strings.Contains(row[0].Text, "etter coats"):
					assert.True(t, film > 1 && film <= 1.2, row[0].Text)
				case strings.Contains(row[0].Text, "hinner coats"):
					assert.True(t, film < 1 && film >= 0.8-1e-9, row[0].Text)
				default:
					assert.InDelta(t, 1, film, 1e-12, row[0].Text)
				}
			}
		}
		assert.Contains(t, told(r, "strongest"), c.most, c.link)
	}
}

func told(r calc.Report, key string) string {
	for _, f := range r.Figures {
		if f.Key == key {
			return f.Text
		}
	}
	return ""
}

// One thing to do stands first, in the verdict and in the list, and each reason once.
func TestOneThingFirst(t *testing.T) {
	for _, c := range []struct {
		link, first string
		level       calc.Level
		reasons     int
	}{
		{"air=14&humidity=85&panel=14", "Warm booth and part to 17.5", calc.Wait, 2},
		{"air=40&humidity=6&panel=38", "Cool booth and part to", calc.Wait, 1},
		{"air=12&humidity=50&panel=12&air_lowest=15", "Warm booth and part to 15.0", calc.Stop, 2},
		{"air=22&humidity=50&panel=12&air_lowest=15", "Bring the part to the booth’s 22.0", calc.Stop, 2},
		{"air=34&humidity=40&panel=34&air_highest=30&carrier=solvent&solvent=xylene", "Cool booth and part to 30.0", calc.Stop, 3},
		{"air=34&humidity=70&panel=33&air_highest=30&carrier=solvent&solvent=xylene", "Cool booth and part to 30.0 °C, and dry the air to 70", calc.Stop, 3},
		{"air=22&humidity=50&panel=22&air_lowest=15&air_highest=30", "Keep your settings", calc.Go, 2},
	} {
		r := run(t, c.link)
		assert.Equal(t, c.level, r.Verdict[0].Level, c.link)
		assert.Len(t, r.Verdict, c.reasons, c.link)
		if c.level != calc.Go {
			assert.Contains(t, strings.ReplaceAll(r.Verdict[0].Do, "\u202f", " "), c.first, c.link)
			for _, v := range r.Verdict[1:] {
				assert.NotEqual(t, r.Verdict[0].Do, v.Do, c.link)
			}
		}
		require.Equal(t, "todo", r.Lists[0].Key)
		assert.Contains(t, strings.ReplaceAll(r.Lists[0].Rows[0][0].Text, "\u202f", " "), "1. "+c.first, c.link)
	}
}

// A sheet's limits are not gone past on the way out.
func TestWaysOutKeepToTheSheet(t *testing.T) {
	for _, l := range run(t, "air=20&humidity=88&panel=20&air_highest=20.4").Lists {
		for _, row := range l.Rows {
			assert.False(t, l.Key == "ways" && strings.HasPrefix(row[0].Text, "Warm"), row[0].Text)
		}
	}
	r := Settings().Run(calc.ParseForm("air=20&humidity=50&panel=20&air_speed=0.3&carrier=water&pack=one&role=base&flash=10&flash_at=20&flash_humidity=50&air_lowest=30&air_highest=20"))
	assert.Contains(t, r.Problems.Error(), "is above the hottest allowed")
}

// What is not worked out says so in whole sentences.
func TestRefusalsAreSentences(t *testing.T) {
	assert.Equal(t, "Go by the data sheet. Flash-off cannot be scaled: the panel must be 3 °C (5.4 °F) or more above the dew point",
		told(run(t, "air=14&humidity=85&panel=14"), "flash_why"))
	assert.Equal(t, "Go by the data sheet. The air is more than 15 °C (27 °F) from any temperature the sheet states this time at",
		told(run(t, "air=38&humidity=40&panel=38&carrier=solvent&solvent=xylene&pack=two&pot_life=60&pot_life_at=20"), "pot_life_why"))
}

// The one desert setting says nothing about damp air: there only a shop's own number moves the pressure.
func TestDampAirHasNoFigure(t *testing.T) {
	assert.Equal(t, 27.5, value(run(t, "air=16&humidity=75&panel=16"), "start_pressure"))
	assert.Contains(t, told(run(t, "air=16&humidity=75&panel=16"), "pressure_why"), "nobody has said how far")
	assert.Equal(t, 29.0, value(run(t, "air=16&humidity=75&panel=16&pressure_exponent=0.15"), "start_pressure"))
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
