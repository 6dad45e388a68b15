package sequence

// Solver improves a plan for as long as it is asked to. Equal problems, seeds and evaluations give equal plans.
//
// It takes turns between sweeps over all orders, each keeping four times as many states as the one before, and repairs
// of the best plan. A sweep that let nothing go is a proof; the least bound of what it let go is a bound of the whole.
type Solver struct {
	p      *Problem
	s      *search
	ps     *pass
	root   *state
	rand   random
	steps  []action // the best plan
	cost   int64    // of it; huge without one
	bound  int64    // no plan costs less
	width  int      // of the last sweep
	repair bool     // what the running pass is: a repair, or a sweep
	active bool     // a pass is running
	spent  [2]int   // evaluations of sweeps and repairs
	mend   mend
	full   bool // the last sweep was as wide as can be, and there is nothing to repair
}

// widest is how many states of a layer a sweep carries on at most.
const widest = 1 << 15

// New makes a solver and a first plan, where whole chains one after the other are one. They are, unless facts, pins or a
// chain by itself forbid it.
func New(p *Problem, seed uint64) *Solver {
	clip(p)
	v := &Solver{p: p, s: newSearch(p), rand: random(seed), cost: huge}
	v.ps = newPass(v.s)
	v.root = v.s.begin()
	v.rootBound()
	if v.ps.whole(v.root) { // all is done
		v.cost, v.steps = v.bound, []action{}
	}
	for try := 0; try < 6 && !v.Found(); try++ {
		v.oneByOne(try%3, []int{1, 8}[try/3])
	}
	return v
}

// rootBound is the bound before anything is decided.
func (v *Solver) rootBound() {
	m := *v.root
	v.s.arrange(&v.s.child, m.key, 0)
	v.bound = huge
	if v.s.judge(&m, &v.s.child, huge) || v.s.narrow {
		v.bound = m.bound
	}
}

// oneByOne tries whole chains one after the other, in the order of list.
func (v *Solver) oneByOne(by, width int) {
	v.free(nil)
	for _, c := range v.list(by) {
		for i := range v.p.Chains[c].Ops {
			v.ps.frozen = append(v.ps.frozen, turn(c, i))
		}
	}
	v.ps.reset(v.root, width, huge)
	v.ps.run(1 << 30)
	v.take()
}

// list is the chains under way first, then by promise (0), by earliest start (1) or as they are given.
func (v *Solver) list(by int) []int {
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
	ch, r := &v.p.Chains[c], int64(0)
	if len(ch.Ops) == 0 {
		return r
	}
	if v.root.key[c] == 0 {
		r = 1 << 40
	}
	switch by {
	case 0:
		r += int64(min(ch.Due, 1<<19))<<20 + int64(ch.Ops[0].Earliest)
	case 1:
		r += int64(ch.Ops[0].Earliest)
	}
	return r
}

// take keeps the pass's plan if it is better.
func (v *Solver) take() bool {
	if v.ps.best < 0 || v.ps.limit >= v.cost {
		return false
	}
	v.cost, v.steps = v.ps.limit, v.ps.steps()
	return true
}

// Found tells whether there is a plan yet.
func (v *Solver) Found() bool { return v.steps != nil }

// Cost is the cost of the best plan, and false where there is none yet.
func (v *Solver) Cost() (int64, bool) { return v.cost, v.Found() }

// Bound is a cost that no plan goes below.
func (v *Solver) Bound() int64 { return min(v.bound, v.cost) }

// Proven tells that the best plan is the best there is, or, without one, that there is none.
func (v *Solver) Proven() bool { return v.bound >= v.cost }

// Settled tells that more evaluations change nothing.
func (v *Solver) Settled() bool { return v.Proven() || v.full }

// Evaluations is how many steps have been tried so far.
func (v *Solver) Evaluations() int { return v.s.Evaluations }

// Plan is the best plan's operations, facts first, then in the order of the plan.
func (v *Solver) Plan() []Placed {
	if !v.Found() {
		return nil
	}
	return v.s.schedule(v.steps)
}

// Improve looks for a better plan by trying about that many steps, and tells whether it found one.
func (v *Solver) Improve(evaluations int) bool {
	end, better := v.s.Evaluations+evaluations, false
	for v.s.Evaluations < end && !v.Settled() {
		if !v.active {
			v.next()
		}
		before := v.s.Evaluations
		v.ps.run(end - before)
		kind := 0
		if v.repair {
			kind = 1
		}
		v.spent[kind] += max(1, v.s.Evaluations-before)
		if v.ps.done {
			v.active = false
			better = v.finish() || better
		}
	}
	return better
}

// next begins another pass.
func (v *Solver) next() {
	v.active = true
	n := len(v.p.Chains)
	part := v.repairPart()
	v.repair = v.Found() && n > 2 && (v.width >= widest || part > 0 && v.spent[0]*part >= v.spent[1])
	if v.repair {
		v.neighbourhood()
		return
	}
	v.width = min(widest, max(8, v.width*4))
	v.ps.frozen, v.ps.free, v.ps.strict = nil, nil, v.width > 128
	v.s.stretch = 140
	v.ps.reset(v.root, v.width, v.cost)
}

// repairPart is how many times as much goes into repairs as into sweeps. Few chains are best swept to the proof.
func (v *Solver) repairPart() int {
	switch n := len(v.p.Chains); {
	case v.width < 32 || n <= 5 && v.width < 2048:
		return 0
	case n <= 6:
		return 2
	}
	return 16
}

// finish takes what a pass found.
func (v *Solver) finish() bool {
	if v.repair {
		return v.repaired()
	}
	better := v.take()
	if better {
		v.mend.back(v)
	}
	if !v.s.narrow {
		v.bound = max(v.bound, min(v.ps.let, v.s.lost, v.cost))
	}
	v.full = v.width >= widest && len(v.p.Chains) <= 2
	return better
}
