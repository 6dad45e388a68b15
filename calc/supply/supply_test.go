package supply_test

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/supply"
)

// choke turns kg/s through a bore in m, of a gas of p Pa and rho kg/m³, into the pressure that the line chokes at.
func choke(m, bore, p, rho float64) float64 {
	return m / (math.Pi * bore * bore / 4) * math.Sqrt(p/rho)
}

// The fluids library (general purpose, MIT) prints for its isothermal gas flow: 11.3 kg/m³, friction 0.00185, 10 bar,
// 1 km of 0.5 m with 200 kg/s end at 784701.068182 Pa, and 145.4847572636031 kg/s at 9 bar.
func TestIsothermalFlowAgainstALibrary(t *testing.T) {
	p2, ok := supply.Outlet(1e6, choke(200, 0.5, 1e6, 11.3), 0.00185*1000/0.5)
	assert.True(t, ok)
	assert.InDelta(t, 784701.068182, p2, 1e-3)
	p2, ok = supply.Outlet(1e6, choke(145.4847572636031, 0.5, 1e6, 11.3), 0.00185*1000/0.5)
	assert.True(t, ok)
	assert.InDelta(t, 9e5, p2, 1e-3)
}

// Geankoplis, Transport Processes and Unit Operations, example 2.11-1, from memory: methane, 305 m of 52.5 mm steel pipe,
// 41.0 kg/(m² s) at 288.8 K from 345 kPa, 1.04e-5 Pa s, ends at 298.4 kPa. He reads Fanning's 0.0051 off a diagram, good to
// 1 % by its digits; Haaland's formula is good to 2 %: 3 % of what is lost.
func TestIsothermalFlowAgainstATextbook(t *testing.T) {
	const bore, G, RT = 0.0525, 41.0, 8314.3 / 16 * 288.8
	f := supply.Darcy(bore*G/1.04e-5, 4.6e-5/bore)
	assert.InEpsilon(t, 4*0.0051, f, 0.03)
	p2, ok := supply.Outlet(345e3, G*math.Sqrt(RT), f*305/bore)
	assert.True(t, ok)
	assert.InDelta(t, 298.4e3, p2, 0.03*(345e3-298.4e3))
}

func TestBothEndsAgree(t *testing.T) {
	for _, c := range []float64{1e3, 2e4, 8e4} {
		for _, fLD := range []float64{0.5, 5, 50} {
			p1, ok := supply.Inlet(3e5, c, fLD)
			assert.True(t, ok)
			p2, ok := supply.Outlet(p1, c, fLD)
			assert.True(t, ok)
			assert.InEpsilon(t, 3e5, p2, 1e-9)
		}
	}
	_, ok := supply.Outlet(3e5, 2e5, 10)
	assert.False(t, ok, "choked")
	_, ok = supply.Inlet(1e5, 1e5, 10)
	assert.False(t, ok, "choked at its end")
}

func lost(t *testing.T, flow, length, bore float64) float64 {
	t.Helper()
	text := func(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
	r := supply.HoseDrop().Run(calc.Form{"pressure_known": "gun", "inlet_pressure": "29", "air_demand": text(flow), "line_length": text(length), "bore": text(bore)})
	assert.Empty(t, r.Problems)
	return r.Figures[2].Value
}

func TestMoreAirLongerAndNarrowerLoseMore(t *testing.T) {
	last := 0.0
	for q := 50.; q <= 600; q += 50 {
		x := lost(t, q, 10, 9.5)
		assert.Greater(t, x, last)
		last = x
	}
	assert.Greater(t, lost(t, 300, 20, 9.5), lost(t, 300, 10, 9.5))
	assert.Greater(t, lost(t, 300, 10, 8), lost(t, 300, 10, 9.5))
}

// The regulator's setting, put back in, gives the pressure that was wanted.
func TestTheSettingGivesThePressureWanted(t *testing.T) {
	form := calc.Form{"pressure_known": "gun", "inlet_pressure": "29", "air_demand": "400", "line_length": "10", "bore": "8"}
	wall := supply.HoseDrop().Run(form).Figures[0].Value
	form["pressure_known"], form["wall_pressure"] = "wall", strconv.FormatFloat(wall, 'f', -1, 64)
	r := supply.HoseDrop().Run(form)
	assert.Empty(t, r.Problems)
	assert.InDelta(t, 29, r.Figures[1].Value, 1e-6)
}

func TestAChokedHoseIsRefused(t *testing.T) {
	r := supply.HoseDrop().Run(calc.Form{"pressure_known": "wall", "wall_pressure": "60", "air_demand": "25 cfm", "line_length": "25 ft", "bore": "1/4 in"})
	if assert.Len(t, r.Problems, 1) {
		assert.Equal(t, calc.Beyond, r.Problems[0].Code)
	}
}
