package plan_test

import (
	"hash/fnv"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// print is a number for a whole plan: every step, place and time of it.
func print(p *plan.Plan) string {
	h := fnv.New64a()
	for _, s := range p.Steps {
		for _, n := range []int{int(s.Kind), s.Job, s.Coat, s.Product, s.Cup, s.Painter, s.Place, s.Start, s.End, s.Latest} {
			h.Write([]byte(strconv.Itoa(n) + " "))
		}
	}
	return strconv.Itoa(p.Cost) + " " + strconv.FormatUint(h.Sum64(), 36)
}

// A seed and a number of evaluations make the same plan wherever the program runs: these tests run compiled to WASM too.
// The plans are no better for being written down here; a change of the search may change them.
func TestSamePlanEverywhere(t *testing.T) {
	for _, c := range []struct {
		jobs        int
		seed        uint64
		evaluations int
		want        string
	}{
		{4, 1, 20000, "3267 1wpte7ritevor"},
		{8, 2, 60000, "6182 3917b9mwse7gc"},
		{12, 3, 60000, "10009 1g5bh63lwx7sf"},
		{30, 4, 60000, "1113830 nay3qvgo131n"},
	} {
		s, _ := plan.New(checkplan.Day(c.jobs, c.seed), c.seed)
		s.Improve(c.evaluations)
		best := s.Best()
		assert.Equal(t, c.want, print(&best), "%d jobs", c.jobs)
	}
}

// Dealing the evaluations out in other portions changes nothing.
func TestPortions(t *testing.T) {
	d := checkplan.Day(7, 5)
	a, _ := plan.New(d, 3)
	b, _ := plan.New(d, 3)
	a.Improve(50000)
	for range 50 {
		b.Improve(1000)
	}
	x, y := a.Best(), b.Best()
	require.Equal(t, print(&x), print(&y))
	assert.Equal(t, a.Bound(), b.Bound())
}
