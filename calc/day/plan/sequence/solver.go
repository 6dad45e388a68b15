package sequence

// Solver improves a plan for as long as it is asked to. Equal problems, seeds and evaluations give equal plans.
type Solver struct {
	p         *Problem
	s         *search
	ps        *pass
	root      *state
	rand      random
	steps     []action
	cost      int64 // of the best plan; huge without one
	bound     int64 // no plan costs less
	width     int   // of the last free sweep
	kind      int   // what the running pass is for
	running   bool
	stale     int // neighbourhoods since the last better plan
	spent     [2]int
	patience  int
	cur       []action // the plan that is being repaired
	curCost   int64
	fails     int
	kicked    bool
	exhausted bool
}

// What a pass is for.
const (
	sweep  = iota // all chains free
	repair        // some chains free, the others in the order of the best plan
)

// widest is how many states of a layer are kept at most: about a gigabyte would be too much for a phone.
const widest = 1 << 18

// New makes a solver and a first plan where whole chains one after the other are one, which they are unless facts,
// pins or a chain by itself forbid it.
func New(p *Problem, seed uint64) *Solver {
	clip(p)
	v := &Solver{p: p, s: newSearch(p), rand: random(seed), cost: huge, patience: 20}
	v.ps = newPass(v.s)
	v.root = v.s.begin()
	v.rootBound()
	v.oneByOne()
	return v
}

// rootBound is the bound before anything is decided.
func (v *Solver) rootBound() {
	m := *v.root
	v.s.arrange(&v.s.child, m.key, 0)
	v.bound = huge
	if v.s.judge(&m, &v.s.child, huge) {
		v.bound = m.bound
	}
}

// oneByOne tries whole chains in the order of promises.
func (v *Solver) oneByOne() {
	for try := 0; try < 3 && v.steps == nil; try++ {
		v.frozenBy(v.order(try), nil)
		v.ps.strict = false
		v.ps.reset(v.root, 8, huge)
		v.ps.run(1 << 30)
		v.take()
	}
}

// insert builds a plan by adding chain after chain where each fits best.
func (v *Solver) insert(order []int, width int) bool {
	n := len(v.p.Chains)
	root := *v.root
	root.key = append([]byte(nil), v.root.key...)
	for c := range v.p.Chains {
		if v.root.key[c] == 0 {
			root.key[c] = byte(len(v.p.Chains[c].Ops))
		}
	}
	var steps []action
	v.ps.strict = false
	for i, c := range order {
		if v.root.key[c] == 0 {
			root.key[c] = 0
		} else if i+1 < n && v.root.key[order[i+1]] > 0 {
			continue // chains under way go in together
		}
		v.freeze(&root, steps, func(d int) bool { return d == c || len(steps) == 0 })
		v.ps.reset(&root, width, huge)
		v.ps.run(1 << 30)
		if v.ps.best < 0 {
			return false
		}
		steps = v.ps.steps()
	}
	return v.take()
}

// freeze keeps the chains of a plan in its order, but for those to be free.
func (v *Solver) freeze(root *state, steps []action, isFree func(c int) bool) {
	n := len(v.p.Chains)
	v.ps.free = make([]bool, n)
	at := make([]int, n)
	for c := range at {
		at[c] = int(root.key[c])
		v.ps.free[c] = isFree(c)
	}
	v.ps.frozen = v.ps.frozen[:0]
	key := append([]byte(nil), root.key...)
	for _, a := range steps {
		v.s.step.a = a
		v.s.step.joined = append(v.s.step.joined[:0], int(a.chain))
		if v.p.Chains[a.chain].Ops[key[a.chain]].Load > 0 {
			v.s.join(key)
		}
		for _, c := range v.s.step.joined {
			if !v.ps.free[c] {
				v.ps.frozen = append(v.ps.frozen, int16(c|int(key[c])<<8))
			}
			v.s.advance(key, c)
		}
	}
}

// order sorts chains for a first plan: those under way first, then by promise, by earliest start or by place.
func (v *Solver) order(by int) []int {
	var list []int
	for c := range v.p.Chains {
		list = append(list, c)
		for i := len(list) - 1; i > 0 && v.rank(list[i], by) < v.rank(list[i-1], by); i-- {
			list[i], list[i-1] = list[i-1], list[i]
		}
	}
	return list
}

func (v *Solver) rank(c, by int) int64 {
	ch := &v.p.Chains[c]
	r := int64(1) << 40
	if at := int(v.root.key[c]); at > 0 {
		r = 0
	}
	switch by {
	case 0:
		r += int64(min(ch.Due, 1<<20))<<20 + int64(ch.Ops[0].Earliest)
	case 1:
		r += int64(ch.Ops[0].Earliest)
	}
	return r
}

// frozenBy freezes whole chains in an order, or chain by chain the steps of a plan.
func (v *Solver) frozenBy(chains []int, free []bool) {
	v.ps.frozen = v.ps.frozen[:0]
	if free == nil {
		free = make([]bool, len(v.p.Chains))
	}
	v.ps.free = free
	for _, c := range chains {
		for i := range v.p.Chains[c].Ops {
			v.ps.frozen = append(v.ps.frozen, int16(c|i<<8))
		}
	}
}

// take keeps the pass's plan if it is better.
func (v *Solver) take() bool {
	if v.ps.best < 0 || v.ps.limit >= v.cost {
		return false
	}
	v.cost, v.steps = v.ps.limit, v.ps.steps()
	return true
}

// Cost is the cost of the best plan, and false where there is none yet.
func (v *Solver) Cost() (int64, bool) { return v.cost, v.steps != nil }

// Found tells whether there is a plan yet.
func (v *Solver) Found() bool { return v.steps != nil }

// Settled tells that more evaluations change nothing.
func (v *Solver) Settled() bool { return v.Proven() || v.exhausted }

// Bound is a cost that no plan goes below.
func (v *Solver) Bound() int64 { return min(v.bound, v.cost) }

// Proven tells that the best plan is the best there is, or, without one, that there is none.
func (v *Solver) Proven() bool { return v.bound >= v.cost }

// Evaluations is how many steps have been tried so far.
func (v *Solver) Evaluations() int { return v.s.Evaluations }

// Plan is the best plan's operations, facts first, then in the order of the plan.
func (v *Solver) Plan() []Placed {
	if v.steps == nil {
		return nil
	}
	return v.s.schedule(v.steps)
}

// Improve looks for a better plan by trying about that many steps, and tells whether it found one.
func (v *Solver) Improve(evaluations int) bool {
	end, better := v.s.Evaluations+evaluations, false
	for v.s.Evaluations < end && !v.Proven() && !v.exhausted {
		if !v.running {
			v.next()
		}
		before := v.s.Evaluations
		v.ps.run(end - before)
		v.spent[v.kind] += v.s.Evaluations - before
		if v.ps.done {
			v.running = false
			if v.finish() {
				better = true
			}
		}
	}
	return better
}

// next begins another pass: sweeps as wide as they cost no more than repairs do, repairs in between.
func (v *Solver) next() {
	v.running = true
	n := len(v.p.Chains)
	wide := v.width < 32 || n <= 5 || v.spent[sweep] < v.spent[repair]/v.sweepPart()
	if v.steps == nil || v.width < widest && wide || n < 3 {
		v.kind = sweep
		v.width = max(8, v.width*4)
		v.ps.frozen, v.ps.free = nil, nil
		v.ps.strict = v.width > 128
		v.ps.reset(v.root, min(v.width, widest), v.cost)
		return
	}
	v.kind = repair
	if v.cur == nil {
		v.cur, v.curCost = v.steps, v.cost
	}
	v.neighbourhood()
}

// sweepPart is how many times as much goes into repairs as into sweeps.
func (v *Solver) sweepPart() int {
	if len(v.p.Chains) <= 6 {
		return 2
	}
	return Tune[2]
}

// finish takes what a pass found. A sweep that let no state go is a proof.
func (v *Solver) finish() bool {
	if v.kind == repair {
		return v.repaired()
	}
	better := v.take()
	if better {
		v.cur, v.curCost, v.stale = v.steps, v.cost, 0
	}
	touching := v.ps.strict || !v.s.independent
	if touching && !v.s.cupsExhausted {
		v.bound = max(v.bound, min(v.ps.let, v.cost))
	}
	if v.width >= widest && len(v.p.Chains) < 3 {
		v.exhausted = true
	}
	return better
}

// repaired takes the plan of a repair.
func (v *Solver) repaired() bool {
	kicked := v.kicked
	v.kicked = false
	v.stale++
	v.fails++
	if v.ps.best < 0 {
		return false
	}
	v.fails = v.fails * Tune[3] / 4
	v.cur, v.curCost = v.ps.steps(), v.ps.limit
	if !kicked {
		v.stale = min(v.stale, v.patience)
	}
	if v.take() {
		v.stale = 0
		return true
	}
	return false
}

// neighbourhood frees a few chains, and keeps the others in the order of the plan that is being repaired. After many
// that brought nothing it takes any plan that one of them gives, and goes on from there for a while.
func (v *Solver) neighbourhood() {
	n := len(v.p.Chains)
	free := make([]bool, n)
	k := min(1+v.fails/Tune[0], Tune[1])
	limit, width := v.curCost, 8+8*k
	v.s.stretch = int32(100 + 20*v.rand.below(5))
	switch {
	case v.stale >= v.patience*3:
		v.cur, v.curCost, v.stale = v.steps, v.cost, 0
		limit = v.curCost
	case v.stale == v.patience:
		limit, width, k = v.curCost+v.curCost/8, 4, 4
		v.kicked = true
	}
	if v.rand.below(2) == 0 {
		v.freeNear(free, k)
	} else {
		for ; k > 0; k-- {
			free[v.rand.below(n)] = true
		}
	}
	v.freeze(v.root, v.cur, func(c int) bool { return free[c] })
	v.ps.strict = false
	v.ps.reset(v.root, width, limit)
}

// freeNear frees a chain and those whose steps are nearest to its own in the plan.
func (v *Solver) freeNear(free []bool, k int) {
	n := len(v.p.Chains)
	sum, count := make([]int, n), make([]int, n)
	for i, a := range v.cur {
		sum[a.chain] += i
		count[a.chain]++
	}
	centre := v.rand.below(n)
	free[centre] = true
	for ; k > 1; k-- {
		best, gap := -1, 0
		for c := range free {
			if free[c] || count[c] == 0 || count[centre] == 0 {
				continue
			}
			d := sum[c]/count[c] - sum[centre]/count[centre]
			if d = max(d, -d) + v.rand.below(6); best < 0 || d < gap {
				best, gap = c, d
			}
		}
		if best >= 0 {
			free[best] = true
		}
	}
}

// random is a stream of numbers (SplitMix64; Steele, Lea and Flood 2014, from memory).
type random uint64

func (r *random) next() uint64 {
	*r += 0x9e3779b97f4a7c15
	z := uint64(*r)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// below is a number from 0 to n-1. n is far below 2^32, so that the remainder's bias does not matter.
func (r *random) below(n int) int { return int(r.next() >> 32 * uint64(n) >> 32) }

var Tune = [4]int{8, 3, 8, 0}
