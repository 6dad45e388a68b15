package shop

// swaps are the moves of neighbours on the critical path: each of them leaves a plan without a cycle (van Laarhoven,
// Aarts and Lenstra 1992).
func (t *tabu) swaps() []move {
	var all []move
	for i := 0; i+1 < len(t.path); i++ {
		if u, v := t.path[i], t.path[i+1]; t.next[u] == v {
			all = append(all, move{u, v, true})
		}
	}
	return all
}

// choose picks the move of the least estimated length that is not forbidden, or that promises a new best. Where all are
// forbidden it takes one at random.
func (t *tabu) choose() (move, bool) {
	var best, any move
	bestLen, ties, count := int32(1)<<30, 0, 0
	try := func(m move) {
		length := t.estimate(m)
		if count++; t.rand.below(count) == 0 {
			any = m
		}
		if t.isForbidden(m) && length >= t.best {
			return
		}
		switch {
		case length < bestLen:
			best, bestLen, ties = m, length, 1
		case length == bestLen:
			if ties++; t.rand.below(ties) == 0 {
				best = m
			}
		}
	}
	for from := 0; from < len(t.path); {
		to := from
		for to+1 < len(t.path) && t.next[t.path[to]] == t.path[to+1] {
			to++
		}
		if to > from {
			t.blockMoves(t.path[from:to+1], try)
		}
		from = to + 1
	}
	if bestLen == 1<<30 {
		return any, count > 0
	}
	return best, true
}

// blockMoves offers, for each operation of a block, the moves behind its last and before its first, and the first and
// last to just behind or before it, where no cycle can arise.
func (t *tabu) blockMoves(block []int32, try func(move)) {
	first, last := block[0], block[len(block)-1]
	for i, x := range block {
		if x != last && t.mayFollow(x, last) {
			try(move{x, last, true})
		}
		if x != first && t.mayLead(first, x) && len(block) > 2 {
			try(move{first, x, false})
		}
		if i > 1 && x != last && t.mayFollow(first, x) {
			try(move{first, x, true})
		}
		if i > 0 && i < len(block)-2 && t.mayLead(x, last) {
			try(move{x, last, false})
		}
	}
}

// mayFollow tells that u can go to just after v without a cycle: v is followed by at least as much as u's successor.
func (t *tabu) mayFollow(u, v int32) bool {
	a := t.g.after[u]
	return a == none || t.tail[v]+t.g.minutes[v] >= t.tail[a]+t.g.minutes[a]
}

// mayLead tells that v can go to just before u without a cycle.
func (t *tabu) mayLead(u, v int32) bool {
	b := t.g.before[v]
	return b == none || t.head[u]+t.g.minutes[u] >= t.head[b]+t.g.minutes[b]
}

// between lists the operations from u to v in their order after the move.
func (t *tabu) between(m move) []int32 {
	t.queue = t.queue[:0]
	if !m.forward {
		t.queue = append(t.queue, m.v)
	}
	for x := m.u; ; x = t.next[x] {
		if !(m.forward && x == m.u) && !(!m.forward && x == m.v) {
			t.queue = append(t.queue, x)
		}
		if x == m.v {
			break
		}
	}
	if m.forward {
		t.queue = append(t.queue, m.u)
	}
	return t.queue
}

// estimate is the longest path through the moved operations, had the rest not changed.
func (t *tabu) estimate(m move) int32 {
	g, ops := t.g, t.between(m)
	end := int32(0)
	if b := t.prev[m.u]; b != none {
		end = t.head[b] + g.minutes[b]
	}
	for _, x := range ops {
		h := end
		if b := g.before[x]; b != none {
			h = max(h, t.head[b]+g.minutes[b])
		}
		t.newHead[x] = h
		end = h + g.minutes[x]
	}
	tail, longest := int32(0), int32(0)
	if a := t.next[m.v]; a != none {
		tail = t.tail[a] + g.minutes[a]
	}
	for i := len(ops) - 1; i >= 0; i-- {
		x := ops[i]
		if a := g.after[x]; a != none {
			tail = max(tail, t.tail[a]+g.minutes[a])
		}
		longest = max(longest, t.newHead[x]+g.minutes[x]+tail)
		tail += g.minutes[x]
	}
	return longest
}

// isForbidden tells whether the move restores an order that was given up not long ago.
func (t *tabu) isForbidden(m move) bool {
	n := int32(len(t.g.minutes))
	for x := m.u; ; x = t.next[x] {
		if m.forward && x != m.u && t.forbidden[x*n+m.u] > t.step || !m.forward && x != m.v && t.forbidden[m.v*n+x] > t.step {
			return true
		}
		if x == m.v {
			return false
		}
	}
}

// forbid keeps the orders that a move gives up from coming back for a while.
func (t *tabu) forbid(m move) {
	n := int32(len(t.g.minutes))
	until := t.step + int32(8+t.rand.below(5))
	for x := m.u; ; x = t.next[x] {
		if m.forward && x != m.u {
			t.forbidden[m.u*n+x] = until
		}
		if !m.forward && x != m.v {
			t.forbidden[x*n+m.v] = until
		}
		if x == m.v {
			return
		}
	}
}

// apply makes the move.
func (t *tabu) apply(m move) {
	before, after := t.prev[m.u], t.next[m.v]
	last := before
	for _, x := range t.between(m) {
		t.prev[x] = last
		if last != none {
			t.next[last] = x
		}
		last = x
	}
	t.next[last] = after
	if after != none {
		t.prev[after] = last
	}
}
