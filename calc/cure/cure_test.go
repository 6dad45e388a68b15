package cure_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/cure"
	"spraywright/calc/unit"
)

func minutes(x float64) calc.Num { return calc.N(x, unit.Minute) }
func degC(x float64) calc.Num    { return calc.N(x, unit.DegC) }

var none calc.Num

// NIST/SEMATECH e-Handbook of Statistical Methods, 8.1.5.1, from memory: from 25 to 125 °C a process with 0.5 eV
// goes 133 times as fast, one with 1.0 eV 17 597 times. It uses 8.617e-5 eV/K and 273.16.
func TestSpeedUpOfTheStatisticsHandbook(t *testing.T) {
	const eV = 96.485 // kJ/mol
	assert.InDelta(t, 133, cure.Stretch(0.5*eV, 125, 25), 0.5)
	assert.InEpsilon(t, 17597, cure.Stretch(1.0*eV, 125, 25), 0.003, "the printed constants move the exponent by 2 parts in 10 000 of 9.8")
}

func TestPotLifeKeepsItsOrder(t *testing.T) {
	r := rand.New(rand.NewPCG(20, 23))
	for range 500 {
		stated, at := 5+r.Float64()*300, 10+r.Float64()*20
		last := [2]float64{math.Inf(1), math.Inf(1)}
		for now := at - 15; now <= at+15; now += 1.5 {
			low, high, refused := cure.PotLife(nil, minutes(stated), degC(at), none, none, degC(now))
			require.Nil(t, refused)
			assert.LessOrEqual(t, low.V, high.V)
			assert.Less(t, low.V, last[0], "hotter is shorter")
			assert.Less(t, high.V, last[1])
			last = [2]float64{low.V, high.V}
		}
		low, high, _ := cure.PotLife(nil, minutes(stated), degC(at), none, none, degC(at))
		assert.Equal(t, [2]float64{stated, stated}, [2]float64{low.V, high.V}, "nothing changes at the stated temperature")
	}
}

func TestASecondTimeIsMetExactly(t *testing.T) {
	low, high, refused := cure.PotLife(nil, minutes(60), degC(20), minutes(25), degC(31), degC(31))
	require.Nil(t, refused)
	assert.InDelta(t, 25, low.V, 1e-9)
	assert.Equal(t, low.V, high.V)
}

func TestPotLifeRefusesRatherThanGuesses(t *testing.T) {
	for name, c := range map[string][5]calc.Num{
		"16 °C hotter":               {minutes(60), degC(20), none, none, degC(36)},
		"16 °C colder":               {minutes(60), degC(20), none, none, degC(4)},
		"both times at one place":    {minutes(60), degC(20), minutes(40), degC(20), degC(20)},
		"longer when hotter":         {minutes(60), degC(20), minutes(70), degC(30), degC(20)},
		"the same when hotter":       {minutes(60), degC(20), minutes(60), degC(30), degC(20)},
		"steeper than anything":      {minutes(600), degC(20), minutes(60), degC(25), degC(20)},
		"a time without temperature": {minutes(60), degC(20), minutes(30), none, degC(20)},
		"a temperature without time": {minutes(60), degC(20), none, degC(30), degC(20)},
	} {
		_, _, refused := cure.PotLife(nil, c[0], c[1], c[2], c[3], c[4])
		if assert.NotNil(t, refused, name) {
			assert.NotEmpty(t, refused.Message)
			assert.NotEmpty(t, refused.Fix)
		}
	}
	_, _, refused := cure.PotLife(nil, minutes(60), degC(20), minutes(20), degC(35), degC(45))
	assert.Nil(t, refused, "the second temperature is near enough")
}

func TestTimesErrOnTheSafeSide(t *testing.T) {
	hotter, colder := degC(30), degC(12)
	_, long, _ := cure.AirDry(nil, minutes(600), degC(20), colder)
	assert.InEpsilon(t, 600*cure.Stretch(cure.Strongest, 20, 12), long.V, 1e-12, "cold: wait for the mix that it slows most")
	_, long, _ = cure.AirDry(nil, minutes(600), degC(20), hotter)
	assert.InEpsilon(t, 600*cure.Stretch(cure.Weakest, 20, 30), long.V, 1e-12, "heat: trust it least")
	_, _, refused := cure.AirDry(nil, minutes(600), degC(20), degC(2))
	assert.NotNil(t, refused)

	day := calc.N(24, unit.Hour)
	assert.Equal(t, 24.0, cure.LatestRecoat(nil, day, degC(20), colder).V, "cold does not keep the window open")
	hot := cure.LatestRecoat(nil, day, degC(20), hotter)
	assert.InEpsilon(t, 24*cure.Stretch(cure.Strongest, 20, 30), hot.V, 1e-12)
	assert.Equal(t, unit.Hour, hot.Unit)
}

func TestAnOvenThatIsHotFromTheStart(t *testing.T) {
	o := cure.Oven{T0: 60, Air: 60, Tau: 8}
	least, most := cure.Paces(cure.Weakest, cure.Strongest, 60)
	assert.InDelta(t, 30, o.Equivalent(least, 45, 30), 1e-9)
	assert.InDelta(t, 30, o.Equivalent(most, 45, 30), 1e-9)
	assert.InDelta(t, 30, o.TimeFor(least, 45, 30), 1e-9)
}

// The integral of a linear pace along an exponential approach is known in closed form.
func TestIntegralInClosedForm(t *testing.T) {
	o := cure.Oven{T0: 20, Air: 60, Tau: 7}
	linear := func(t float64) float64 { return t }
	want := 60*30.0 - 40*7*(1-math.Exp(-30./7))
	assert.InEpsilon(t, want, o.Equivalent(linear, 20, 30), 1e-9)
}

func TestEquivalentAndTimeForAgree(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 14))
	for range 100 {
		ref := 50 + r.Float64()*100
		o := cure.Oven{T0: 10 + r.Float64()*20, Air: ref - 10 + r.Float64()*25, Tau: 1 + r.Float64()*20}
		least, most := cure.Paces(cure.Weakest, cure.Strongest, ref)
		need := o.TimeFor(least, ref-15, 20)
		assert.InEpsilon(t, 20, o.Equivalent(least, ref-15, need), 1e-6)
		assert.GreaterOrEqual(t, need, o.TimeFor(most, ref-15, 20))
		assert.LessOrEqual(t, o.Equivalent(least, ref-15, need/2), 20.0)
	}
}

func TestNothingCountsInTheCold(t *testing.T) {
	o := cure.Oven{T0: 20, Air: 40, Tau: 5}
	least, _ := cure.Paces(cure.Weakest, cure.Strongest, 60)
	assert.Zero(t, o.Equivalent(least, 45, 500))
	assert.True(t, math.IsInf(o.TimeFor(least, 45, 1), 1))
}

// Six minutes after 9:30 are 9:36, whatever the last bits of a tenth of an hour are.
func TestWholeMinutesAreNotOneMore(t *testing.T) {
	c := cure.RecoatWindow()
	for n := range 200 {
		at := strconv.FormatFloat(20+float64(n)/9, 'f', 3, 64)
		r := c.Run(calc.ParseForm("recoat_time=5&recoat_at=11.503674465897875&recoat_second=0.1&recoat_second_at=" + at + "&air=" + at + "&coat_done=9:30"))
		for _, f := range r.Figures {
			if f.Key == "from_clock" {
				assert.Equal(t, "9:36", f.Text, at)
			}
		}
	}
}
