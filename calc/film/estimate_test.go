package film_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/film"
	"spraywright/calc/internal/ask"
)

func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// What a job needs goes as far as the job.
func TestCoverageLeftUndoesDemand(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	for range 300 {
		area, dft, vs, te := between(r, 0.1, 50), between(r, 10, 200), between(r, 10, 100), between(r, 10, 100)
		demand := film.Demand(nil, calc.N(area, 0), um(dft), pct(vs), pct(te)).V
		if demand < 1 || demand > 200000 {
			continue
		}
		report := film.CoverageLeft().Run(calc.Form{"paint_left": plain(demand), "losses": "0", "volume_solids": plain(vs), "dry_film": plain(dft),
			"transfer_efficiency": plain(te), "area": plain(area)})
		assert.Empty(t, report.Problems)
		assert.InEpsilon(t, area, ask.Value(t, report, "area_covered"), 1e-9)
		assert.InEpsilon(t, dft, ask.Value(t, report, "film_there"), 1e-9)
	}
}

func TestFilmAndTransferUndoEachOther(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 2))
	for range 300 {
		form := calc.Form{"find_out": "film", "used_by": "volume", "paint_used": plain(between(r, 10, 5000)), "area": plain(between(r, 0.5, 40)),
			"volume_solids": plain(between(r, 10, 90)), "transfer_efficiency": plain(between(r, 5, 99))}
		made := ask.Value(t, film.FilmFromPaint().Run(form), "film_made")
		if made < 1 || made > 5000 {
			continue
		}
		form["find_out"], form["film_measured"] = "transfer", plain(made)
		te, _ := strconv.ParseFloat(form["transfer_efficiency"], 64)
		assert.InEpsilon(t, te, ask.Value(t, film.FilmFromPaint().Run(form), "transfer_found"), 1e-9)
	}
}

func TestEstimatesRefuse(t *testing.T) {
	for _, c := range []struct {
		calculator *calc.Calculator
		link, want string
	}{
		{film.FilmFromPaint(), "find_out=transfer&used_by=volume&paint_used=100&area=10&volume_solids=40&film_measured=60", "film_measured"},
		{film.CoverageLeft(), "paint_left=40&losses=40&volume_solids=40&dry_film=60&transfer_efficiency=50", "losses"},
		{film.ProfilePaint(), "area=1&dry_film=60&profile_height=500&volume_solids=40&transfer_efficiency=50", "profile_height"},
	} {
		problems := c.calculator.Run(calc.ParseForm(c.link)).Problems
		if assert.Len(t, problems, 1, c.link) {
			assert.Equal(t, c.want, problems[0].Field)
		}
	}
}

// The allowance grows with the profile and is never more than it, but for the smallest.
func TestDeadFilm(t *testing.T) {
	last := 0.0
	for r := 1.0; r <= 400; r++ {
		d := film.DeadFilm(nil, um(r)).V
		assert.GreaterOrEqual(t, d, last)
		assert.LessOrEqual(t, d, max(r, 10))
		last = d
	}
}

// A round blend against a sum over thin rings.
func TestRoundBlendAgainstRings(t *testing.T) {
	for _, c := range []struct{ d, b float64 }{{150, 200}, {1, 500}, {2000, 10}} {
		report := film.BlendArea().Run(calc.Form{"blend_shape": "spot", "spot_diameter": plain(c.d), "blend_width": plain(c.b), "dry_film": "60", "volume_solids": "45",
			"transfer_efficiency": "50", "losses": "0"})
		sum, n := math.Pi*c.d*c.d/4, 20000
		for i := range n {
			at := (float64(i) + 0.5) / float64(n)
			sum += 2 * math.Pi * (c.d/2 + at*c.b) * (1 - at) * c.b / float64(n)
		}
		assert.InEpsilon(t, sum/1e6, ask.Value(t, report, "full_film_area"), 1e-7)
		assert.Less(t, ask.Value(t, report, "full_film_area"), ask.Value(t, report, "area_touched"))
	}
}
