package sequence

// link is one step of a history: the step, and the place of the one before it.
type link struct {
	before int32
	a      action
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
	other   []int32 // an order for thin
	spare   []layer // room of layers that are done with
	done    bool
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
		ps.drop(&ps.layers[i])
	}
	ps.width, ps.limit, ps.history, ps.best, ps.let, ps.done = width, limit, ps.history[:0], -1, huge, false
	ps.s.commutes, ps.s.frozen, ps.s.isFree = ps.strict, ps.frozen, ps.free
	ps.s.lost = huge
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

// whole tells whether nothing is left to do in a state.
func (ps *pass) whole(st *state) bool {
	done := 0
	for c := range ps.s.p.Chains {
		done += int(st.key[c])
	}
	return done == len(ps.layers)-1
}

// run carries the sweep on until it is done or the evaluations are used up.
func (ps *pass) run(budget int) {
	s := ps.s
	s.commutes = ps.strict
	end := s.Evaluations + budget
	for !ps.done && s.Evaluations < end {
		if ps.i == len(ps.order) {
			ps.drop(&ps.layers[ps.at])
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
			ps.history = append(ps.history, link{st.past, m.last})
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
