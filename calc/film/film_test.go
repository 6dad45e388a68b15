package film_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/film"
	"spraywright/calc/unit"
)

func um(x float64) calc.Num  { return calc.N(x, unit.Micrometre) }
func pct(x float64) calc.Num { return calc.N(x, unit.Percent) }
func ml(x float64) calc.Num  { return calc.N(x, unit.Millilitre) }

// between draws a number from a fixed seed.
func between(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

func TestDryUndoesWet(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 1000 {
		dft, vs := um(between(r, 1, 2000)), pct(between(r, 1, 100))
		assert.InEpsilon(t, dft.V, film.Dry(nil, film.Wet(nil, dft, vs, calc.N(1, unit.One)), vs).V, 1e-12)
	}
}

// A litre at the theoretical rate is a litre of demand.
func TestDemandAgreesWithSpreadingRate(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 1000 {
		dft, vs, te := um(between(r, 1, 2000)), pct(between(r, 1, 100)), pct(between(r, 5, 100))
		covered := film.SprayedRate(nil, film.SpreadingRate(nil, vs, dft), te)
		assert.InEpsilon(t, 1000, film.Demand(nil, calc.N(covered.V, unit.SquareMetre), dft, vs, te).V, 1e-12)
	}
}

// Thinner neither adds nor takes solids: the dry film of the unthinned litre is that of the litres it becomes.
func TestThinnerKeepsSolids(t *testing.T) {
	parts := []float64{4, 1, 2}
	thinned := film.SprayedSolids(nil, pct(49), parts, true)
	assert.InEpsilon(t, 49*5./7, thinned.V, 1e-12)
	assert.Equal(t, 49., film.SprayedSolids(nil, pct(49), parts, false).V)
}

func TestCombBracketsFilm(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 3))
	for range 1000 {
		wet, step := um(between(r, 1, 2000)), um(between(r, 1, 500))
		last, next := film.Comb(nil, wet, step)
		assert.LessOrEqual(t, last.V, wet.V+1e-5*step.V)
		assert.Greater(t, next.V, wet.V-1e-5*step.V)
		assert.InDelta(t, step.V, next.V-last.V, 1e-9)
	}
	last, _ := film.Comb(nil, um(60/2/0.3), um(25)) // 100 but for rounding
	assert.Equal(t, 100., last.V)
}

func TestCombReadingRulings(t *testing.T) {
	for _, c := range []struct {
		last, next string
		want       calc.Level
	}{{"50", "75", calc.Go}, {"75", "100", calc.Wait}, {"25", "50", calc.Wait}} {
		report := film.CombReading().Run(calc.Form{"last_wet": c.last, "first_dry": c.next, "volume_solids": "45", "dry_film": "60", "coats": "2"})
		if assert.Empty(t, report.Problems) && assert.Len(t, report.Verdict, 1) {
			assert.Equal(t, c.want, report.Verdict[0].Level, c.last)
		}
	}
}

func TestRefusals(t *testing.T) {
	base := calc.Form{"dry_film": "60", "coats": "2", "volume_solids": "45", "solids_for": "unthinned"}
	for ratio, code := range map[string]calc.Code{"4": calc.Impossible, "1:400": calc.Beyond, "": calc.Missing, "4:x": calc.Unclear} {
		base["ratio"] = ratio
		problems := film.WetFilm().Run(base).Problems
		if assert.Len(t, problems, 1, ratio) {
			assert.Equal(t, code, problems[0].Code)
			assert.Equal(t, "ratio", problems[0].Field)
		}
	}
	problems := film.CombReading().Run(calc.Form{"last_wet": "100", "first_dry": "100", "volume_solids": "45"}).Problems
	if assert.Len(t, problems, 1) {
		assert.Equal(t, "first_dry", problems[0].Field)
	}
}
