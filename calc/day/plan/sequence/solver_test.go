package sequence

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// An earlier program of other code (branch and bound over the orders of pairs) proved these optima of invented days; the
// first was confirmed by two general-purpose mixed-integer solvers. All of them: calculated, not published.
func TestOptimaFoundBefore(t *testing.T) {
	for _, c := range []struct {
		jobs int
		seed uint64
		want int64
	}{{4, 1, 382}, {4, 2, 290}, {4, 3, 327}, {4, 4, 385}, {4, 5, 333}, {5, 2, 387}, {5, 3, 335}, {5, 5, 410}} {
		v := New(machineDay(c.jobs, c.seed, false), 1)
		require.True(t, v.Found())
		v.Improve(300000)
		cost, _ := v.Cost()
		assert.Equal(t, c.want, cost, "%d jobs, seed %d", c.jobs, c.seed)
		assert.True(t, v.Proven(), "%d jobs, seed %d", c.jobs, c.seed)
	}
}

// The times that a plan is built with are those the search reckoned with.
func TestScheduleAgreesWithSearch(t *testing.T) {
	for seed := uint64(1); seed <= 40; seed++ {
		p := machineDay(3+int(seed%5), seed, seed%2 == 0)
		v := New(p, seed)
		v.Improve(5000)
		cost, late, finish := int64(0), int64(0), int32(0)
		for _, pl := range v.Plan() {
			ch := &p.Chains[pl.Chain]
			if pl.Op == len(ch.Ops)-1 {
				finish = max(finish, pl.End)
				late += int64(max(0, pl.End-ch.Due))
			}
			assert.GreaterOrEqual(t, pl.Latest, pl.Start)
		}
		cost, _ = v.Cost()
		assert.Equal(t, cost, late+int64(finish), "seed %d", seed)
	}
}

// More evaluations never make a plan worse, nor a bound; how they are dealt out makes no difference.
func TestAnytime(t *testing.T) {
	a, b := New(machineDay(7, 3, false), 5), New(machineDay(7, 3, false), 5)
	last, _ := a.Cost()
	bound := a.Bound()
	for i := 0; i < 60; i++ {
		a.Improve(1000)
		cost, _ := a.Cost()
		assert.LessOrEqual(t, cost, last)
		assert.GreaterOrEqual(t, a.Bound(), bound)
		assert.LessOrEqual(t, a.Bound(), cost)
		last, bound = cost, a.Bound()
	}
	b.Improve(a.Evaluations())
	cost, _ := b.Cost()
	assert.Equal(t, last, cost)
	assert.Equal(t, a.Plan(), b.Plan())
}

// Without a job the optimum is no higher, and neither is the bound.
func TestFewerChains(t *testing.T) {
	for seed := uint64(1); seed <= 12; seed++ {
		p := machineDay(4, seed, seed%2 == 0)
		v := New(p, 1)
		v.Improve(1000000)
		require.True(t, v.Proven())
		all, _ := v.Cost()
		for c := range p.Chains {
			fewer := *p
			fewer.Chains = append(append([]Chain(nil), p.Chains[:c]...), p.Chains[c+1:]...)
			w := New(&fewer, 1)
			assert.LessOrEqual(t, w.Bound(), all)
			w.Improve(400000)
			cost, _ := w.Cost()
			assert.LessOrEqual(t, cost, all, "seed %d without %d", seed, c)
		}
	}
}
