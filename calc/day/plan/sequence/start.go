package sequence

// begin is the state from which a plan starts: nothing done, but for the facts.
func (s *search) begin() *state {
	p := s.p
	st := &state{key: make([]byte, s.at.size), past: -1, next: -1}
	for u := range p.Gun {
		st.key[s.at.painter+4*u] = byte(p.Gun[u] + 1)
	}
	ends := newEnds(s)
	for i := range p.Facts {
		s.enter(st, &p.Facts[i], ends)
	}
	for u := 0; u < p.Painters; u++ {
		k := st.key[s.at.painter+4*u:]
		if over := s.breaksOver(u, max(p.Now, ends.painter[u])); int(k[3]) != over {
			k[2], k[3] = 0, byte(over)
		}
	}
	s.fixed(st, ends)
	return st
}

// ends are the times that facts fix.
type ends struct {
	painter, unit, chain, dry []int32
	mixed                     [slots]int32
	cup                       []int // of each open cup's slot, the number in the facts
	finish                    int32
}

func newEnds(s *search) *ends {
	e := &ends{
		painter: make([]int32, s.p.Painters), unit: make([]int32, s.units),
		chain: make([]int32, len(s.p.Chains)), dry: make([]int32, len(s.p.Chains)), cup: make([]int, s.cups),
	}
	for i := range e.painter {
		e.painter[i] = s.p.Now
	}
	for i := range e.unit {
		e.unit[i] = s.p.Now
	}
	return e
}

// enter adds a fact to the state.
func (s *search) enter(st *state, f *Fact, e *ends) {
	ch := &s.p.Chains[f.Chain]
	op := &ch.Ops[f.Op]
	unit := -1
	if op.Place >= 0 {
		unit = s.firstUnit[op.Place] + f.Place
		e.unit[unit] = max(e.unit[unit], f.End)
	}
	s.step.a = action{chain: int8(f.Chain), painter: -1, unit: int8(unit), cup: -1}
	s.step.op = op
	s.advance(st.key, f.Chain)
	e.chain[f.Chain], e.dry[f.Chain] = f.End, f.End
	if int(st.key[f.Chain]) == len(ch.Ops) {
		e.finish = max(e.finish, f.End+ch.Done)
		if s.promised[f.Chain] {
			st.cost += s.lateCost(f.Chain, f.End)
		}
	}
	if !op.Painted {
		return
	}
	e.painter[f.Painter] = max(e.painter[f.Painter], f.End)
	a := &s.step.a
	a.painter, a.slot = int8(f.Painter), int8(s.breaksOver(f.Painter, f.End))
	if op.Product != Clean {
		s.cupOf(st.key, f, op, e)
	}
	s.useCup(st.key)
	if f.Gone && a.cup >= 0 {
		s.drop(st.key, int(a.cup))
	}
}

// cupOf finds the slot of a fact's cup, or takes one.
func (s *search) cupOf(key []byte, f *Fact, op *Op, e *ends) {
	a := &s.step.a
	if slot := int(key[s.at.cup+f.Chain]) - 1; !op.First && slot >= 0 {
		a.cup = int8(slot)
		return
	}
	for i := range e.cup {
		if key[s.at.cups+5*i] > 0 && f.Cup > 0 && e.cup[i] == f.Cup {
			a.cup = int8(i)
			return
		}
	}
	free, taken := s.freeSlot(key)
	s.narrow = s.narrow || taken
	if free >= 0 {
		a.cup, a.fresh, e.cup[free], e.mixed[free] = int8(free), true, f.Cup, f.Mixed
	}
}

// breaksOver counts a painter's breaks that have ended by a time.
func (s *search) breaksOver(u int, by int32) int {
	n := 0
	if s.p.Breaks != nil {
		for n < len(s.p.Breaks[u]) && s.p.Breaks[u][n].To <= by {
			n++
		}
	}
	return n
}

// fixed makes the matrix of a state in which every time is fixed.
func (s *search) fixed(st *state, e *ends) {
	var l layout
	l.make(len(s.p.Chains))
	s.arrange(&l, st.key, 0)
	at := make([]int32, l.cols)
	copy(at[1:], e.painter)
	copy(at[l.unit:], e.unit)
	rows := make([]int32, l.rows)
	for c := range s.p.Chains {
		if l.last[c] >= 0 {
			at[l.last[c]] = e.chain[c]
		}
		if l.lastRow[c] >= 0 {
			rows[l.lastRow[c]] = e.chain[c]
		}
		if l.dry[c] >= 0 {
			at[l.dry[c]] = e.dry[c]
		}
	}
	for i := 0; i < s.cups; i++ {
		if l.cupRow[i] >= 0 {
			rows[l.cupRow[i]] = e.mixed[i]
		}
	}
	at[l.end] = e.finish
	for _, r := range rows {
		for _, v := range at {
			st.d = append(st.d, v-r)
		}
	}
}

// clip begins a break that is already under way, or was worked into, where work ended.
func clip(p *Problem) {
	if p.Breaks == nil {
		return
	}
	end := make([]int32, p.Painters)
	for u := range end {
		end[u] = p.Now
	}
	for _, f := range p.Facts {
		if p.Chains[f.Chain].Ops[f.Op].Painted {
			end[f.Painter] = max(end[f.Painter], f.End)
		}
	}
	breaks := make([][]Span, p.Painters)
	for u, old := range p.Breaks {
		for _, b := range old {
			if b.From < end[u] && end[u] < b.To {
				b.From = end[u]
			}
			breaks[u] = append(breaks[u], b)
		}
	}
	p.Breaks = breaks
}
