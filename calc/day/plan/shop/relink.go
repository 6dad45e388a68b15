package shop

// elite is a good plan, kept to start from: the order on the machines, and the end of the last job.
type elite struct {
	next []int32
	span int32
}

// elites is how many plans are kept.
const elites = 8

// barren is how many starts in a row may leave the elites as they are before they make way for others.
const barren = 40

// restart keeps the best plan since the last restart, and starts from somewhere else: as long as few plans are kept from
// one well shaken, then from halfway between two of them (path relinking; Nowicki and Smutnicki 2005, Peng, Lü and Cheng
// 2015; both from memory).
func (t *tabu) restart() {
	t.stale = 0
	if t.round < 1<<30 && !t.keep() {
		t.idle++
	}
	t.round = 1 << 30
	if t.idle > barren {
		t.idle, t.pool = 0, t.pool[:0]
	}
	if len(t.pool) < elites {
		t.set(t.bestNext)
		t.evaluate()
		t.shake(20 + 20*len(t.pool) + t.rand.below(60))
		return
	}
	a := t.rand.below(elites)
	b := (a + 1 + t.rand.below(elites-1)) % elites
	t.relink(t.pool[a].next, t.pool[b].next)
}

// keep enters the best plan since the last restart among the elites, in place of one much like it or of the worst; false
// where it is no better than these.
func (t *tabu) keep() bool {
	like, worst := none, 0
	for i, e := range t.pool {
		if inversions(t.g, e.next, t.roundNext) < len(t.g.minutes)/8 {
			like = i
		}
		if e.span > t.pool[worst].span {
			worst = i
		}
	}
	if like < 0 && len(t.pool) < elites {
		t.pool = append(t.pool, elite{append([]int32(nil), t.roundNext...), t.round})
		return true
	}
	if like >= 0 {
		worst = like
	}
	e := &t.pool[worst]
	if e.span <= t.round {
		return false
	}
	copy(e.next, t.roundNext)
	e.span = t.round
	return true
}

// shake swaps neighbours on critical paths.
func (t *tabu) shake(swaps int) {
	for ; swaps > 0; swaps-- {
		t.critical()
		all := t.swaps()
		if len(all) == 0 {
			return
		}
		t.apply(all[t.rand.below(len(all))])
		t.evaluate()
	}
}

// relink goes from one plan some way towards another, by swaps of neighbours that stand the other way round there.
func (t *tabu) relink(from, to []int32) {
	t.set(from)
	t.evaluate()
	rank := ranks(t.g, to)
	way := inversions(t.g, from, to)
	for steps := way/3 + t.rand.below(way/3+1); steps > 0; steps-- {
		var all []move
		for u, v := range t.next {
			if v != none && rank[u] > rank[v] {
				all = append(all, move{int32(u), v, true})
			}
		}
		for len(all) > 0 {
			i := t.rand.below(len(all))
			m := all[i]
			t.apply(m)
			t.evaluate()
			if len(t.topo) == len(t.g.minutes) {
				break
			}
			t.apply(move{m.v, m.u, true}) // a cycle
			all[i] = all[len(all)-1]
			all = all[:len(all)-1]
		}
	}
	t.evaluate()
}

// ranks tells of each operation how many come after it on its machine, counted down: later ones have higher ranks.
func ranks(g *graph, next []int32) []int32 {
	rank := make([]int32, len(next))
	for _, ops := range g.onMachine {
		for _, x := range ops {
			for y := next[x]; y != none; y = next[y] {
				rank[x]--
			}
		}
	}
	return rank
}

// inversions counts the pairs on machines that two plans have in different orders.
func inversions(g *graph, a, b []int32) int {
	x, y, n := ranks(g, a), ranks(g, b), 0
	for _, ops := range g.onMachine {
		for i, u := range ops {
			for _, v := range ops[i+1:] {
				if (x[u] < x[v]) != (y[u] < y[v]) {
					n++
				}
			}
		}
	}
	return n
}
