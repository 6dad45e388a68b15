package shop

// far is the length of a path that is not there.
const far = -1 << 28

// branch is a depth-first branch and bound over the order of pairs that share a machine. It holds the longest path
// between every two operations (path consistency), fixes orders that leave no time for the other one, and tightens heads
// and tails by edge finding (Carlier and Pinson 1989).
type branch struct {
	g      *graph
	n      int // operations; node n is the beginning, n+1 the end
	size   int
	pairs  [][2]int32
	stack  []frame
	depth  int
	best   int32
	bound  int32 // no plan is shorter
	starts []int32
	done   bool
	edge   edges
}

// frame is a node on the way to the one being looked at.
type frame struct {
	long  []int32 // longest paths, size by size
	fixed []bool  // of each pair
	a, b  int32   // the pair to decide, in the order to try next
	tried int     // orders tried
}

func newBranch(g *graph) *branch {
	b := &branch{g: g, n: len(g.minutes), best: 1 << 28}
	b.size = b.n + 2
	for _, ops := range g.onMachine {
		for i, x := range ops {
			for _, y := range ops[i+1:] {
				b.pairs = append(b.pairs, [2]int32{x, y})
			}
		}
	}
	b.starts = make([]int32, b.n)
	f := b.frame(0)
	for i := range f.long {
		f.long[i] = far
	}
	for i := 0; i < b.size; i++ {
		f.long[i*b.size+i] = 0
	}
	b.add(f.long, b.n, b.n+1, 0)
	for i := range g.minutes {
		b.add(f.long, b.n, i, 0)
		b.add(f.long, i, b.n+1, g.minutes[i])
		if a := g.before[i]; a != none {
			b.add(f.long, int(a), i, g.minutes[a])
		}
	}
	b.bound = b.machines(f.long)
	f.a = none - 1 // not looked at yet
	return b
}

// machines bounds the end by each machine: the earliest head, all its work, the least tail.
func (b *branch) machines(long []int32) int32 {
	bound := long[b.n*b.size+b.n+1]
	for _, ops := range b.g.onMachine {
		b.edge.load(b, long, ops)
		bound = max(bound, b.edge.preemptive())
	}
	return bound
}

func (b *branch) frame(depth int) *frame {
	for len(b.stack) <= depth {
		b.stack = append(b.stack, frame{long: make([]int32, b.size*b.size), fixed: make([]bool, len(b.pairs))})
	}
	return &b.stack[depth]
}

// add makes j start at least w after i; false where it may not.
func (b *branch) add(long []int32, i, j int, w int32) bool {
	n := b.size
	if long[i*n+j] >= w {
		return true
	}
	if long[j*n+i] > far && long[j*n+i]+w > 0 {
		return false
	}
	from := long[j*n : j*n+n]
	for x := 0; x < n; x++ {
		row := long[x*n : x*n+n]
		if row[i] == far {
			continue
		}
		base := row[i] + w
		if base <= row[j] {
			continue
		}
		for y, v := range from {
			if v > far && base+v > row[y] {
				row[y] = base + v
			}
		}
	}
	return true
}

// run looks at a number of nodes, and tells whether a plan better than best was found.
func (b *branch) run(nodes int) bool {
	found := false
	for ; nodes > 0 && !b.done; nodes-- {
		if b.look() {
			found = true
		}
	}
	return found
}

// look goes on by one node: it decides the order of a pair one way, or goes back.
func (b *branch) look() bool {
	f := b.frame(b.depth)
	if f.a == none-1 { // the root
		if !b.tighten(f) {
			b.done = true
			return false
		}
		return b.pick(f)
	}
	for f.tried == 2 || f.a == none {
		if b.depth == 0 {
			b.done = true
			return false
		}
		b.depth--
		f = b.frame(b.depth)
	}
	x, y := f.a, f.b
	f.a, f.b, f.tried = y, x, f.tried+1
	next := b.frame(b.depth + 1)
	f = &b.stack[b.depth] // frame may have moved them
	copy(next.long, f.long)
	copy(next.fixed, f.fixed)
	if !b.add(next.long, int(x), int(y), b.g.minutes[x]) || !b.tighten(next) {
		return false
	}
	b.depth++
	return b.pick(next)
}

// pick chooses the pair that leaves least time, the likelier order first. With none left a plan is found.
func (b *branch) pick(f *frame) bool {
	n := b.size
	f.tried, f.a = 0, none
	least := int32(1) << 30
	for k, p := range b.pairs {
		if f.fixed[k] {
			continue
		}
		x, y := p[0], p[1]
		xy := -f.long[int(y)*n+int(x)] - b.g.minutes[x] // how much time there is for x before y
		yx := -f.long[int(x)*n+int(y)] - b.g.minutes[y]
		if yx > xy {
			x, y, xy, yx = y, x, yx, xy
		}
		if v := 2*yx + xy; v < least {
			least, f.a, f.b = v, x, y
		}
	}
	if f.a != none {
		return false
	}
	span := f.long[b.n*n+b.n+1]
	if span >= b.best {
		return false
	}
	b.best = span
	copy(b.starts, f.long[b.n*n:b.n*n+b.n])
	return true
}
