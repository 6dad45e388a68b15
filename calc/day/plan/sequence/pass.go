package sequence

// link is one step of a history: the step, and the place of the one before it.
type link struct {
	before int32
	a      action
}

// layer holds the states that have done the same number of operations.
type layer struct {
	states []state
	heads  []int32 // a hash table of the first of each key, chained by state.next
	same   []int32 // the next state of the same key, -1 for none
	bytes  []byte  // room for keys
	ints   []int32 // room for matrices
}

// pass is one sweep over all layers that keeps at most width states of each.
type pass struct {
	s       *search
	width   int
	strict  bool    // steps that do not touch each other in one order only, which the key tells; else by their starts
	frozen  []int16 // chains in the order in which they keep their steps; nil where all are free
	free    []bool  // chains that are not in it
	limit   int64   // only plans that cost less count
	layers  []layer
	at, i   int
	order   []int32 // of the states of the layer, those to carry on
	history []link
	best    int32 // the last step of the best plan; -1 for none
	let     int64 // the least bound among the states let go; none was where it is huge
	lay     layout
	spare   []layer
	done    bool
	heap    []int32
}

const huge = int64(1) << 62

func newPass(s *search) *pass {
	ps := &pass{s: s}
	ps.lay.make(len(s.p.Chains))
	total := 0
	for c := range s.p.Chains {
		total += len(s.p.Chains[c].Ops)
	}
	ps.layers = make([]layer, total+1)
	return ps
}

// reset makes the pass ready to sweep again, from a state.
func (ps *pass) reset(from *state, width int, limit int64) {
	for i := range ps.layers {
		ps.layers[i].clear()
	}
	ps.width, ps.limit, ps.history, ps.best, ps.let, ps.done = width, limit, ps.history[:0], -1, huge, false
	ps.s.commutes = ps.strict
	ps.s.cupsExhausted = false
	ps.at = 0
	for c := range ps.s.p.Chains {
		ps.at += int(from.key[c])
	}
	m := &ps.s.made
	m.key, m.d = append(m.key[:0], from.key...), append(m.d[:0], from.d...)
	m.late, m.cost, m.bound, m.ptr, m.last, m.left = m.late[:0], from.cost, 0, 0, action{chain: -1}, 0
	m.hash = hashOf(m.key)
	ps.s.arrange(&ps.s.child, m.key, 0)
	ps.keep(&ps.layers[ps.at], -1)
	ps.choose()
}

func (y *layer) clear() {
	y.states, y.heads, y.same, y.bytes, y.ints = y.states[:0], y.heads[:0], y.same[:0], y.bytes[:0], y.ints[:0]
}

// run carries the sweep on until it is done or the evaluations are used up.
func (ps *pass) run(budget int) {
	s := ps.s
	s.commutes = ps.strict
	end := s.Evaluations + budget
	for !ps.done && s.Evaluations < end {
		if ps.i == len(ps.order) {
			ps.layers[ps.at].clear()
			ps.at++
			ps.choose()
			continue
		}
		st := &ps.layers[ps.at].states[ps.order[ps.i]]
		ps.i++
		if st.bound < ps.limit {
			ps.expand(st)
		}
	}
}

// choose picks the states of the layer to carry on, and notes the bound of those let go.
func (ps *pass) choose() {
	ps.order, ps.i = ps.order[:0], 0
	if ps.at == len(ps.layers)-1 {
		ps.done = true
		return
	}
	y := &ps.layers[ps.at]
	for i := range y.states {
		if st := &y.states[i]; !st.dead && st.bound < ps.limit {
			ps.order = append(ps.order, int32(i))
		}
	}
	if len(ps.order) <= ps.width {
		return
	}
	ps.smallest(y)
	ps.keepCalm(y)
	for _, i := range ps.order[ps.width:] {
		ps.let = min(ps.let, y.states[i].bound)
	}
	ps.order = ps.order[:ps.width]
}

// keepCalm puts the states with the fewest waits that can run out among those to carry on, an eighth of them. A beam
// that keeps none of these may find that nothing it has kept can be completed.
func (ps *pass) keepCalm(y *layer) {
	least := uint8(255)
	for _, i := range ps.order {
		least = min(least, y.states[i].waits)
	}
	calm := 0
	for _, i := range ps.order[:ps.width] {
		if y.states[i].waits == least {
			calm++
		}
	}
	for at := ps.width - 1; calm < (ps.width+7)/8 && at >= 0; calm++ {
		best := -1
		for k, i := range ps.order[ps.width:] {
			if o := &y.states[i]; o.waits == least && (best < 0 || o.guide < y.states[ps.order[best]].guide) {
				best = ps.width + k
			}
		}
		for at >= 0 && y.states[ps.order[at]].waits == least {
			at--
		}
		if best < 0 || at < 0 {
			return
		}
		ps.order[at], ps.order[best] = ps.order[best], ps.order[at]
		at--
	}
}

// smallest moves the width states of the least guide to the front of the order (heap selection).
func (ps *pass) smallest(y *layer) {
	less := func(a, b int32) bool { // ties by age, so that the choice does not hang on the method
		x, z := y.states[a].guide, y.states[b].guide
		return x < z || x == z && a < b
	}
	h := ps.order[:ps.width]
	sift := func(i int) { // the largest at the root
		for {
			c := 2*i + 1
			if c >= len(h) {
				return
			}
			if c+1 < len(h) && less(h[c], h[c+1]) {
				c++
			}
			if !less(h[i], h[c]) {
				return
			}
			h[i], h[c] = h[c], h[i]
			i = c
		}
	}
	for i := len(h)/2 - 1; i >= 0; i-- {
		sift(i)
	}
	for i := ps.width; i < len(ps.order); i++ {
		if less(ps.order[i], h[0]) {
			ps.order[i], h[0] = h[0], ps.order[i]
			sift(0)
		}
	}
}

// expand tries every next step of a state.
func (ps *pass) expand(st *state) {
	s := ps.s
	s.arrange(&ps.lay, st.key, len(st.late))
	ptr := st.ptr
	if ps.frozen != nil {
		seen := ps.skip(st, &ptr)
		for c := range s.p.Chains {
			if (ps.free[c] || c == seen) && int(st.key[c]) < len(s.p.Chains[c].Ops) {
				ps.expandChain(st, c, ptr)
			}
		}
		return
	}
	for c := range s.p.Chains {
		if int(st.key[c]) < len(s.p.Chains[c].Ops) {
			ps.expandChain(st, c, 0)
		}
	}
}

// skip finds the next chain of the frozen order that has not had its turn, with a bake that it joined; -1 for none.
func (ps *pass) skip(st *state, ptr *int32) int {
	for int(*ptr) < len(ps.frozen) {
		c := int(ps.frozen[*ptr]) & 255
		if int(st.key[c]) <= int(ps.frozen[*ptr])>>8 {
			return c
		}
		*ptr++
	}
	return -1
}

func (ps *pass) expandChain(st *state, c int, ptr int32) {
	s := ps.s
	s.choices(st, &ps.lay, c)
	for _, a := range s.options {
		s.Evaluations++
		if !s.tryStep(st, &ps.lay, a) || ps.swapped(st, a) {
			continue
		}
		s.follow(st, &ps.lay)
		m := &s.made
		m.ptr = ptr
		if !s.judge(m, &s.child, ps.limit) {
			continue
		}
		s.level(m, &s.child)
		m.guide = s.guess(m, &s.child)
		y := &ps.layers[ps.at+len(s.step.joined)]
		if !ps.keep(y, st.past) {
			continue
		}
		if &ps.layers[len(ps.layers)-1] == y {
			ps.limit, ps.best = m.bound, int32(len(ps.history)-1)
		}
	}
}

// swapped tells that the step and the one before do not touch each other and that their other order is tried too.
func (ps *pass) swapped(st *state, a action) bool {
	b := st.last
	if !ps.strict || a.chain >= b.chain || a.painter >= 0 && a.painter == b.painter {
		return false
	}
	return a.unit < 0 || a.unit != b.unit && a.unit+1 != st.left && int(b.unit+1) != int(st.key[ps.s.at.dry+int(a.chain)])
}

// keep puts s.made into a layer, unless a state there is as good; states that are no better than it go.
func (ps *pass) keep(y *layer, before int32) bool {
	m := &ps.s.made
	if len(y.heads) < 2*len(y.states)+16 {
		y.grow()
	}
	first := y.find(m)
	if first >= 0 && !ps.clear(y, first) {
		return false
	}
	st := *m
	y.bytes = append(y.bytes, m.key...)
	y.bytes = append(y.bytes, m.late...)
	mine := y.bytes[len(y.bytes)-len(m.key)-len(m.late):]
	st.key, st.late = mine[:len(m.key):len(m.key)], mine[len(m.key):]
	y.ints = append(y.ints, m.d...)
	st.d = y.ints[len(y.ints)-len(m.d):]
	st.past = int32(len(ps.history))
	if m.last.chain < 0 {
		st.past = -1
	} else {
		ps.history = append(ps.history, link{before, m.last})
	}
	st.dead, st.waits = false, uint8(ps.s.child.rows)
	y.add(st, first)
	return true
}

// find is the first state of the same key, -1 for none.
func (y *layer) find(m *state) int32 {
	i := y.heads[m.hash&uint32(len(y.heads)-1)]
	for i >= 0 && (y.states[i].hash != m.hash || string(y.states[i].key) != string(m.key)) {
		i = y.states[i].next
	}
	return i
}

// clear takes out the states of a key that s.made covers; false where one of them covers it.
func (ps *pass) clear(y *layer, first int32) bool {
	s, m := ps.s, &ps.s.made
	before := first
	for i := first; i >= 0; i = y.same[i] {
		o := &y.states[i]
		if !o.dead && s.covers(o, m, &s.child) {
			return false
		}
		if !o.dead && s.covers(m, o, &s.child) {
			o.dead = true
		}
		if o.dead && i != first { // the first stays, to be found
			y.same[before] = y.same[i]
		} else {
			before = i
		}
	}
	return true
}

// add enters a state, right after the first of its key.
func (y *layer) add(st state, first int32) {
	at := int32(len(y.states))
	if first >= 0 {
		y.same = append(y.same, y.same[first])
		y.same[first] = at
	} else {
		slot := st.hash & uint32(len(y.heads)-1)
		st.next, y.heads[slot] = y.heads[slot], at
		y.same = append(y.same, -1)
	}
	st.chained = first < 0
	y.states = append(y.states, st)
}

// grow makes the hash table twice as large and enters the states anew.
func (y *layer) grow() {
	size := max(64, 2*len(y.heads))
	for size < 2*len(y.states)+16 {
		size *= 2
	}
	if cap(y.heads) < size {
		y.heads = make([]int32, size)
	}
	y.heads = y.heads[:size]
	for i := range y.heads {
		y.heads[i] = -1
	}
	for i := range y.states {
		st := &y.states[i]
		if !st.chained {
			continue
		}
		slot := st.hash & uint32(size-1)
		st.next, y.heads[slot] = y.heads[slot], int32(i)
	}
}

// steps is the best plan found, in order.
func (ps *pass) steps() []action {
	var all []action
	for i := ps.best; i >= 0; i = ps.history[i].before {
		all = append(all, ps.history[i].a)
	}
	for i, j := 0, len(all)-1; i < j; i, j = i+1, j-1 {
		all[i], all[j] = all[j], all[i]
	}
	return all
}
