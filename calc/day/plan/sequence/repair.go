package sequence

// mend is what the repairs of a plan keep in mind (large neighbourhood search; Shaw 1998, from memory). A repair takes a
// few chains out of the plan and finds the best way to put them back, the others keeping their order.
type mend struct {
	plan   []action // the plan that is being repaired
	cost   int64
	fails  int  // rises with repairs that brought nothing, and with it the number of chains taken out
	stale  int  // repairs since the last better plan, or since a worse one was taken
	shaken bool // the running repair may make the plan worse
}

// patience is after how many repairs that bring nothing a worse plan is taken, to go on from there for as long again.
const patience = 40

// back goes back to the best plan.
func (d *mend) back(v *Solver) { d.plan, d.cost, d.stale = v.steps, v.cost, 0 }

// neighbourhood begins a repair.
func (v *Solver) neighbourhood() {
	d := &v.mend
	if d.plan == nil || d.stale > 3*patience {
		d.back(v)
	}
	k := min(1+d.fails/4, 4)
	limit, width := d.cost, 8+8*k
	d.shaken = d.stale == patience
	if d.shaken {
		limit, width, k = d.cost+d.cost/8, 4, 4
	}
	v.s.stretch = int32(100 + 20*v.rand.below(5))
	free := make([]bool, len(v.p.Chains))
	if v.rand.below(2) == 0 {
		v.freeNear(free, k)
	} else {
		for ; k > 0; k-- {
			free[v.rand.below(len(free))] = true
		}
	}
	v.freeze(d.plan, free)
	v.ps.reset(v.root, width, limit)
}

// freeNear frees a chain and those whose steps are nearest to its own in the plan.
func (v *Solver) freeNear(free []bool, k int) {
	sum, steps := make([]int, len(free)), make([]int, len(free))
	for i, a := range v.mend.plan {
		sum[a.chain] += i
		steps[a.chain]++
	}
	centre := v.rand.below(len(free))
	free[centre] = true
	for ; k > 1 && steps[centre] > 0; k-- {
		best, gap := -1, 0
		for c := range free {
			if free[c] || steps[c] == 0 {
				continue
			}
			d := sum[c]/steps[c] - sum[centre]/steps[centre]
			if d = max(d, -d) + v.rand.below(6); best < 0 || d < gap {
				best, gap = c, d
			}
		}
		if best >= 0 {
			free[best] = true
		}
	}
}

// turn is an entry of a frozen order: it is chain c's turn for its i-th operation.
func turn(c, i int) int16 { return int16(c | i<<8) }

// freeze keeps the chains of a plan in its order, but for those that are free.
func (v *Solver) freeze(steps []action, free []bool) {
	s, key := v.s, append([]byte(nil), v.root.key...)
	v.free(free)
	for _, a := range steps {
		s.step.a = a
		s.step.joined = append(s.step.joined[:0], int(a.chain))
		if v.p.Chains[a.chain].Ops[key[a.chain]].Load > 0 {
			s.join(key)
		}
		for _, c := range s.step.joined {
			if !free[c] {
				v.ps.frozen = append(v.ps.frozen, turn(c, int(key[c])))
			}
			s.advance(key, c)
		}
	}
}

// repaired takes the plan of a repair.
func (v *Solver) repaired() bool {
	d := &v.mend
	d.stale++
	d.fails++
	if v.ps.best < 0 {
		return false
	}
	d.fails /= 2
	d.plan, d.cost = v.ps.steps(), v.ps.limit
	if v.take() {
		d.stale = 0
		return true
	}
	if !d.shaken {
		d.stale = min(d.stale, patience+1)
	}
	return false
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
