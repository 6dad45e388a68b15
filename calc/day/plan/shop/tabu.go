package shop

// tabu is a search that always makes the best move which does not undo a recent one. A move takes an operation of a
// critical path's block to the block's other end, or to just inside (Balas and Vazacopoulos 1998), with the estimate of
// the length after the move given there; the search over such moves follows Nowicki and Smutnicki 1996.
type tabu struct {
	g          *graph
	rand       random
	prev, next []int32 // on the machine
	head, tail []int32 // longest path to the start, and from the end
	topo       []int32
	forbidden  []int32 // until when an operation may not go before another; n by n
	span       int32
	best       int32
	bestStart  []int32
	bestNext   []int32
	step       int32
	stale      int   // moves without a better plan since the last restart
	round      int32 // the best since the last restart, and its order
	roundNext  []int32
	pool       []elite
	idle       int // starts that left the pool as it was

	degree       []int8
	path, block  []int32
	queue        []int32
	newHead, nrT []int32
}

// patience is after how many moves that bring nothing it starts again elsewhere.
const patience = 4000

// move takes operation u to just after v, or v to just before u.
type move struct {
	u, v    int32
	forward bool
}

func newTabu(g *graph, seed uint64) *tabu {
	n := len(g.minutes)
	t := &tabu{g: g, rand: random(seed)}
	t.prev, t.next, t.head, t.tail = make([]int32, n), make([]int32, n), make([]int32, n), make([]int32, n)
	t.forbidden = make([]int32, n*n)
	t.degree = make([]int8, n)
	t.newHead, t.nrT = make([]int32, n), make([]int32, n)
	t.bestStart, t.bestNext = make([]int32, n), make([]int32, n)
	t.dispatch()
	t.evaluate()
	t.best, t.round = t.span, 1<<30
	t.roundNext = make([]int32, n)
	t.note()
	return t
}

func (t *tabu) note() {
	copy(t.bestStart, t.head)
	copy(t.bestNext, t.next)
}

// run makes a number of moves, and tells whether a better plan came of it.
func (t *tabu) run(moves int) bool {
	found := false
	for ; moves > 0; moves-- {
		t.step++
		if t.stale > patience {
			t.restart()
		}
		t.critical()
		m, ok := t.choose()
		if !ok {
			t.restart()
			continue
		}
		t.forbid(m)
		t.apply(m)
		t.evaluate()
		t.stale++
		if t.span < t.round {
			t.round, t.stale = t.span, 0
			copy(t.roundNext, t.next)
		}
		if t.span < t.best {
			t.best, found = t.span, true
			t.note()
		}
	}
	return found
}

// critical walks one longest path, at random where there are several.
func (t *tabu) critical() {
	g := t.g
	t.path = t.path[:0]
	at, seen := int32(none), 0
	for i := range g.minutes {
		if t.head[i] == 0 && g.minutes[i]+t.tail[i] == t.span {
			if seen++; t.rand.below(seen) == 0 {
				at = int32(i)
			}
		}
	}
	for at != none {
		t.path = append(t.path, at)
		end := t.head[at] + g.minutes[at]
		a, b := g.after[at], t.next[at]
		isA := a != none && t.head[a] == end && end+g.minutes[a]+t.tail[a] == t.span
		isB := b != none && t.head[b] == end && end+g.minutes[b]+t.tail[b] == t.span
		switch {
		case isA && isB:
			at = a
			if t.rand.below(2) == 0 {
				at = b
			}
		case isA:
			at = a
		case isB:
			at = b
		default:
			at = none
		}
	}
}
