package sequence

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan/shop"
)

// A job shop is a problem with machines as places and nothing else: the other method's proven optima hold here.
func TestJobShopIsASpecialCase(t *testing.T) {
	for seed := uint64(1); seed <= 60; seed++ {
		r := random(seed)
		p := &Problem{Weigh: Weights{Finish: 1}, Rinse: [][]int32{{0}}}
		machines := 2 + r.below(3)
		var jobs [][]shop.Task
		for range machines {
			p.Places, p.Room = append(p.Places, 1), append(p.Room, 0)
		}
		for range 2 + r.below(3) {
			ch, tasks := Chain{Due: Never, Priority: 1}, []shop.Task(nil)
			first := r.below(machines)
			for i := range machines {
				t := shop.Task{Machine: (first + i*(machines-1)) % machines, Minutes: int32(1 + r.below(30))}
				tasks = append(tasks, t)
				ch.Ops = append(ch.Ops, Op{Minutes: t.Minutes, Place: t.Machine, Product: Clean, Within: Never, Latest: Never, Painter: -1, Unit: -1})
			}
			jobs, p.Chains = append(jobs, tasks), append(p.Chains, ch)
		}
		s := shop.New(jobs, 1)
		s.Improve(50000)
		require.True(t, s.Proven())
		v := New(p, 1)
		v.Improve(300000)
		cost, _ := v.Cost()
		assert.EqualValues(t, s.Finish(), cost, "seed %d", seed)
		assert.True(t, v.Proven(), "seed %d", seed)
	}
}
