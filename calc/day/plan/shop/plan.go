package shop

// dispatch makes a first plan: always the operation that can start first, of those the one with the most work after it.
func (t *tabu) dispatch() {
	g := t.g
	n := len(g.minutes)
	work := make([]int32, n)
	for i := n - 1; i >= 0; i-- {
		work[i] = g.minutes[i]
		if g.after[i] != none {
			work[i] += work[g.after[i]]
		}
	}
	free, last := make([]int32, len(g.onMachine)), make([]int32, len(g.onMachine))
	for m := range last {
		last[m] = none
	}
	ready, done := make([]int32, n), make([]bool, n)
	for range g.minutes {
		best, at := int32(none), int32(0)
		for i := range g.minutes {
			if done[i] || g.before[i] != none && !done[g.before[i]] {
				continue
			}
			start := max(ready[i], free[g.machine[i]])
			if best == none || start < at || start == at && work[i] > work[best] {
				best, at = int32(i), start
			}
		}
		m := g.machine[best]
		done[best] = true
		free[m] = at + g.minutes[best]
		if a := g.after[best]; a != none {
			ready[a] = free[m]
		}
		t.prev[best], t.next[best] = last[m], none
		if last[m] != none {
			t.next[last[m]] = best
		}
		last[m] = best
	}
}

// evaluate finds heads, tails and the length of the plan.
func (t *tabu) evaluate() {
	g := t.g
	t.topo = t.topo[:0]
	for i := range g.minutes {
		d := int8(0)
		if g.before[i] != none {
			d++
		}
		if t.prev[i] != none {
			d++
		}
		t.degree[i] = d
		if d == 0 {
			t.topo = append(t.topo, int32(i))
		}
	}
	for k := 0; k < len(t.topo); k++ {
		i := t.topo[k]
		h := int32(0)
		if b := g.before[i]; b != none {
			h = t.head[b] + g.minutes[b]
		}
		if b := t.prev[i]; b != none {
			h = max(h, t.head[b]+g.minutes[b])
		}
		t.head[i] = h
		for _, a := range [2]int32{g.after[i], t.next[i]} {
			if a != none {
				if t.degree[a]--; t.degree[a] == 0 {
					t.topo = append(t.topo, a)
				}
			}
		}
	}
	t.evaluateTails()
}

// evaluateTails goes through the operations from the end, in the order that evaluate has found.
func (t *tabu) evaluateTails() {
	g := t.g
	t.span = 0
	for k := len(t.topo) - 1; k >= 0; k-- {
		i := t.topo[k]
		q := int32(0)
		if a := g.after[i]; a != none {
			q = t.tail[a] + g.minutes[a]
		}
		if a := t.next[i]; a != none {
			q = max(q, t.tail[a]+g.minutes[a])
		}
		t.tail[i] = q
		t.span = max(t.span, t.head[i]+g.minutes[i]+q)
	}
}

func (t *tabu) set(next []int32) {
	copy(t.next, next)
	for i := range t.prev {
		t.prev[i] = none
	}
	for i, a := range t.next {
		if a != none {
			t.prev[a] = int32(i)
		}
	}
}

// adopt takes over a plan found elsewhere.
func (t *tabu) adopt(starts []int32, span int32) {
	t.best, t.stale = span, 0
	copy(t.bestStart, starts)
	for _, ops := range t.g.onMachine {
		order := append([]int32(nil), ops...)
		for i := range order {
			for k := i; k > 0 && starts[order[k-1]] > starts[order[k]]; k-- {
				order[k-1], order[k] = order[k], order[k-1]
			}
		}
		for i, op := range order {
			t.bestNext[op] = none
			if i+1 < len(order) {
				t.bestNext[op] = order[i+1]
			}
		}
	}
	t.set(t.bestNext)
	t.evaluate()
}

// random is a stream of numbers (SplitMix64; Steele, Lea and Flood 2014).
type random uint64

func (r *random) below(n int) int {
	*r += 0x9e3779b97f4a7c15
	z := uint64(*r)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return int((z ^ z>>31) >> 32 * uint64(n) >> 32)
}
