package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// For tiny days with a little of everything, the solver's proven optimum is that of trying every list.
func TestExhaustive(t *testing.T) {
	tried, without := 0, 0
	for seed := uint64(0); tried < 800; seed++ {
		d := checkplan.Odd(1+int(seed%3), seed+5000)
		l := newLister(d)
		if l.steps() > 7 {
			continue
		}
		if l.extend(); l.seen > mostLists {
			continue
		}
		tried++
		s, _ := plan.New(d, seed)
		if l.best < 0 {
			without++
			require.Nil(t, s, "seed %d", seed)
			continue
		}
		require.NotNil(t, s, "seed %d: %d", seed, l.best)
		s.Improve(300000)
		require.True(t, s.Proven(), "seed %d", seed)
		assert.Equal(t, l.best, s.Best().Cost, "seed %d, %d lists", seed, l.seen)
	}
	t.Log("days:", tried, "without a plan:", without)
}
