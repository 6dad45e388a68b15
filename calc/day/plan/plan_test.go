package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// Every plan of random days, from the first on, passes the independent checker.
func TestPlansAreSound(t *testing.T) {
	made := 0
	for seed := uint64(0); seed < 1500; seed++ {
		n := 1 + int(seed%6)
		d := checkplan.Odd(n, seed)
		s, faults := plan.New(d, seed)
		if s == nil {
			require.NotEmpty(t, faults, "seed %d", seed)
			continue
		}
		made++
		first := s.Best()
		require.Empty(t, checkplan.Check(d, &first), "first plan of seed %d", seed)
		s.Improve(3000)
		best := s.Best()
		require.Empty(t, checkplan.Check(d, &best), "seed %d", seed)
		assert.LessOrEqual(t, best.Cost, first.Cost)
		assert.LessOrEqual(t, s.Bound().Cost, best.Cost)
		assert.LessOrEqual(t, s.Bound().Finish, best.Finish)
	}
	t.Log("days with a plan:", made)
}
