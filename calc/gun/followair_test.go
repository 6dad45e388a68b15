package gun_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/gun"
	"spraywright/calc/unit"
)

func pair(ratio, psi float64) gun.Pair {
	return gun.Pair{Ratio: n(ratio, unit.One), Pressure: n(psi, unit.PSI)}
}

func TestRefitFindsThePlantedExponent(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for range 500 {
		m := 0.4 * r.Float64()
		var pairs []gun.Pair
		for range 1 + r.IntN(6) {
			x := math.Exp(3*r.Float64() - 1.5)
			pairs = append(pairs, pair(x, 27.5*math.Pow(x, -m)))
		}
		got, spread, ok := gun.RefitExponent(nil, ref, pairs)
		if !ok {
			continue
		}
		require.InDelta(t, m, got.V, 1e-9)
		require.Equal(t, len(pairs) >= 3, spread.Given())
		if spread.Given() {
			require.InDelta(t, 0, spread.V, 1e-6)
		}
	}
}

// A thousand shops whose pressures scatter by 3 %: the standard error told is the one they show.
func TestTheSpreadIsTheScatter(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	var square, told float64
	const shops = 1000
	for range shops {
		var pairs []gun.Pair
		for _, x := range []float64{0.4, 0.7, 1.5, 2.4, 3.5} {
			pairs = append(pairs, pair(x, 27.5*math.Pow(x, -0.15)*math.Exp(0.03*r.NormFloat64())))
		}
		m, spread, ok := gun.RefitExponent(nil, ref, pairs)
		require.True(t, ok)
		square, told = square+(m.V-0.15)*(m.V-0.15), told+spread.V*spread.V
	}
	assert.InEpsilon(t, math.Sqrt(square/shops), math.Sqrt(told/shops), 0.1)
}

func TestPairsInOrdinaryAirTellNothing(t *testing.T) {
	_, _, ok := gun.RefitExponent(nil, ref, []gun.Pair{pair(1.05, 27), pair(0.95, 28)})
	assert.False(t, ok)
	_, _, ok = gun.RefitExponent(nil, ref, nil)
	assert.False(t, ok)
}

// The law and the card's own start pressure are one.
func TestFollowAirIsTheStartPressure(t *testing.T) {
	half := n(0.5, unit.PSI)
	m, _ := gun.Exponent(nil, "hvlp")
	for _, E := range []float64{0, 100, 700, 1500, 2600} {
		_, start := gun.FollowAir(nil, m, ref, most, n(E, unit.SquareMicronPerSec), n(740, unit.SquareMicronPerSec), half)
		assert.LessOrEqual(t, start.V, most.V)
		assert.Equal(t, 0.0, math.Mod(start.V, 0.5))
	}
	bar := n(unit.Convert(0.05, unit.Bar, unit.PSI), unit.PSI)
	_, start := gun.FollowAir(nil, m, ref, n(unit.Convert(2, unit.Bar, unit.PSI), unit.PSI), n(10, unit.SquareMicronPerSec), n(740, unit.SquareMicronPerSec), bar)
	assert.InDelta(t, 2, unit.Convert(start.V, unit.PSI, unit.Bar), 1e-9, "a rating of 2 bar stays 2 bar")
}
