package plan_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// General-purpose solvers prove the same optima: glpsol 5.0 those of 4 jobs, cbc 2.10.8 all but the last, of which only
// our own proof is known. Calculated with calc/day/plan/compare.
func TestOtherSolversAgree(t *testing.T) {
	for name, want := range map[string]int{"4-1": 319, "4-2": 315, "4-3": 356, "4-4": 310, "5-1": 451, "5-2": 428} {
		text, err := os.ReadFile("../../../testdata/days/" + name + ".csv")
		require.NoError(t, err)
		d, err := checkplan.Parse(string(text))
		require.NoError(t, err)
		s, _ := plan.New(d, 1)
		s.Improve(1500000)
		best := s.Best()
		assert.Equal(t, want, best.Cost, name)
		assert.True(t, s.Proven(), name)
		assert.Empty(t, checkplan.Check(d, &best), name)
	}
}
