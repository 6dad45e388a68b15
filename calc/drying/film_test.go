package drying

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc/climate"
)

// Incropera and DeWitt, examples 7.1 and 7.2, second-hand through github:FOSSEE/Python-Textbook-Companions
// (Fundamentals_of_Heat_and_Mass_Transfer/Chapter_7.ipynb): heat to or from a plate in laminar air.
func TestFlatPlate(t *testing.T) {
	nu := nusselt(10*0.5/0.0005208105, 0.687)
	assert.InDelta(t, 570, nu*0.0364*273, 0.5, "7.1: 10 m/s over 0.5 m, W for each metre of width")
	nu = nusselt(60*0.05/2.641e-5, 0.69)
	assert.InDelta(t, 1370, nu*0.0338*205, 5, "7.2: first heater, W, printed to 10")
}

// Incropera table A.8, second-hand as above (Chapter_6.ipynb, example 6.3): water in air at 319 K. The table's other
// value, 0.26e-4 m²/s at 298 K, lies 4 % above Marrero and Mason's and is not met.
func TestDiffusivity(t *testing.T) {
	assert.InDelta(t, 2.88e-5, liquids[Water].diffusivity(319, standardAir), 0.005e-5)
	// Twice the pressure halves it.
	for key, l := range liquids {
		assert.InEpsilon(t, l.diffusivity(293, 1e5)/2, l.diffusivity(293, 2e5), 1e-12, key)
	}
}

// Vapour pressures at 20 °C from DIPPR equation 101, an independent fit (second-hand, github:CalebBell/chemicals). A
// set that is wrong there, as two in common tables are, would miss by more than half; sound ones differ by 7 % at most.
func TestVapourPressures(t *testing.T) {
	for key, p := range map[string]float64{
		Water: 2339, "butyl-acetate": 1098, "acetone": 24711, "toluene": 2926, "xylene": 834, "mek": 9687, "mibk": 1995,
		"ethyl-acetate": 9686, "isopropanol": 4387, "heptanone": 377, "butanol": 625,
	} {
		assert.InEpsilon(t, p, liquids[key].pressure(293.15), 0.07, key)
	}
	// NIOSH by way of an encyclopaedia: 0.8 mmHg at a temperature not stated, 20 or 25 °C; the set gives 0.58 and 0.88.
	l := liquids["butyl-glycol"]
	assert.Less(t, l.pressure(293.15), 0.8*133.322)
	assert.Greater(t, l.pressure(298.15), 0.8*133.322)
}

// Heats of evaporation at 25 °C in kJ/mol, from memory of handbook tables: what Clausius and Clapeyron make of the
// vapour pressures is within 5 %.
func TestLatentHeats(t *testing.T) {
	for key, kJ := range map[string]float64{Water: 43.99, "acetone": 30.99, "toluene": 38.01, "ethyl-acetate": 35.60, "butyl-acetate": 43.86, "isopropanol": 45.39} {
		l := liquids[key]
		assert.InEpsilon(t, kJ, l.latent(298.15)*l.molar/1000, 0.05, key)
	}
}

// The thermodynamic wet bulb is what an adiabatic wet surface comes to in air (Lewis relation, Le about 0.87): without
// radiation the film must stand within 0.7 °C of it (our own limit). A water bath in an insulated wind tunnel was measured to
// do so (amt.copernicus.org/articles/16/4833/2023, abstract).
func TestFilmStandsAtTheWetBulb(t *testing.T) {
	for _, c := range [][2]float64{{20, 50}, {25, 50}, {30, 80}, {15, 85}, {40, 20}} {
		d := drying{liquid: liquids[Water], setup: ordinary, place: in(c[0], c[1], 0.5)}
		d.emissivity = 0
		d.pivot = 0.5
		d.transfer(d.air)
		assert.InDelta(t, climate.WetBulbLiquid(c[0], c[1], standardAir), d.steady()-kelvin, 0.7, "%v", c)
	}
}

// A second reading of the same model, written independently in another language: seconds in ordinary air, and ratios.
func TestSecondReading(t *testing.T) {
	l, s := liquids[Water], ordinary
	s.pivot = 0.2
	ref := l.seconds(s, in(20, 50, 0.2))
	assert.InEpsilon(t, 755, ref, 0.01)
	for _, c := range []struct{ air, rh, speed, ratio float64 }{
		{20, 50, 0.5, 0.692}, {20, 50, 1.5, 0.422}, {25, 50, 0.5, 0.524}, {40.6, 4, 0.2, 0.139}, {40.6, 4, 0.5, 0.092},
		{15, 85, 0.2, 4.967}, {15, 85, 0.5, 3.584}, {15, 85, 1.5, 2.314}, {30, 80, 0.2, 1.839}, {30, 80, 0.5, 1.36},
	} {
		assert.InEpsilon(t, c.ratio, l.seconds(s, in(c.air, c.rh, c.speed))/ref, 0.03, "%v", c)
	}
}

// The quick integration against Euler's rule with ten thousand steps.
func TestAgainstSmallSteps(t *testing.T) {
	for key, l := range liquids {
		for _, s := range variants(0.2) {
			at := in(18, 60, 0.4)
			if key != Water {
				at.vapour = 0
			}
			at.panel -= 2
			quick := l.seconds(s, at)
			d := drying{liquid: l, setup: s, place: at}
			d.transfer(at.air)
			d.transfer((at.air + d.steady()) / 2)
			T, t0, left, dt := at.panel, 0.0, s.film*s.leaves, quick/10000
			for left > 0 && t0 < 2*quick {
				T, left, t0 = T+dt*d.warming(T), left-dt*d.flux(T), t0+dt
			}
			assert.InEpsilon(t, t0, quick, 2e-3, "%s %+v", key, s)
		}
	}
}

// A heavy panel hardly cools, and a light one soon stands at the steady temperature: the two ends in closed form.
func TestEnds(t *testing.T) {
	l, s, at := liquids[Water], ordinary, in(20, 50, 0.2)
	s.pivot = 0.2
	d := drying{liquid: l, setup: s, place: at}
	d.transfer(at.air)
	d.transfer((at.air + d.steady()) / 2)
	s.heatCapacity = 1e9
	assert.InEpsilon(t, s.film*s.leaves/d.flux(at.panel), l.seconds(s, at), 1e-3)
	s.heatCapacity, s.film = 300, 0.3
	assert.InEpsilon(t, s.film*s.leaves/d.flux(d.steady()), l.seconds(s, at), 1e-2)
	assert.True(t, math.IsInf(l.seconds(ordinary, in(20, 100, 0.2)), 1), "saturated air dries nothing")
}

// in is a climate with the panel as warm as the air.
func in(air, rh, speed float64) place {
	return place{air: air + kelvin, panel: air + kelvin, pressure: standardAir, vapour: climate.PartialPressure(air, rh), speed: speed}
}
