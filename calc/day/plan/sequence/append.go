package sequence

// arc is a least difference: to or from the operation that is appended.
type arc struct {
	at int   // a column for an arc to it, a row for one from it
	w  int32 // minutes
}

// step is an operation while it is appended to a state.
type step struct {
	a       action
	op      *Op
	in, out []arc
	from    []int32 // longest path from each row to the end of the operation
	to      []int32 // longest path from there to each column
	d       []int32 // the state's matrix, or a copy where a break tightened it
	lead    int32   // mixing and the walk, right before the start
	cost    int64
	joined  []int // the chains that it carries on
	left    int   // the column of a unit that the chain has been wet in and leaves with this step; 0 for none
}

// tryStep works out what appending an operation does to the times; false where it breaks a rule.
func (s *search) tryStep(st *state, l *layout, a action) bool {
	t := &s.step
	t.a, t.op = a, &s.p.Chains[a.chain].Ops[st.key[a.chain]]
	t.in, t.out, t.d, t.lead, t.cost = t.in[:0], t.out[:0], st.d, 0, 0
	t.left = s.leaves(st.key, l, a)
	op, p := t.op, t.op.Minutes
	t.joined = append(t.joined[:0], int(a.chain))
	if op.Load > 0 {
		s.join(st.key)
	}
	start := s.p.Now
	for _, c := range t.joined {
		own := &s.p.Chains[c].Ops[st.key[c]]
		start = max(start, own.Earliest)
		if own.Latest < Never {
			t.out = append(t.out, arc{0, -own.Latest - p})
		}
	}
	if op.Painted {
		if !s.byPainter(st, l) {
			return false
		}
		start = max(start, s.p.Now+t.lead)
	}
	t.in = append(t.in, arc{0, start + p})
	for _, c := range t.joined {
		s.afterChain(st, l, c)
	}
	if a.unit >= 0 {
		t.in = append(t.in, arc{l.unit + int(a.unit), p})
		s.inPlace(st, l)
	}
	return s.close(l)
}

// leaves finds the unit that a chain has been wet in and leaves with a step. From then on nothing starts there before
// the chain was dry. Nothing is lost by that: in an order by starts all that follows starts later anyway.
func (s *search) leaves(key []byte, l *layout, a action) int {
	unit := int(key[s.at.dry+int(a.chain)])
	if unit == 0 || unit == int(a.unit)+1 {
		return 0
	}
	return l.unit + unit - 1
}

// join adds the other chains that stand wet where a bake is to be.
func (s *search) join(key []byte) {
	t := &s.step
	for c := range s.p.Chains {
		if c != int(t.a.chain) && int8(key[s.at.home+c]) == t.a.unit+1 {
			t.joined = append(t.joined, c)
		}
	}
}

// afterChain adds the waits between a chain's last operation and its next.
func (s *search) afterChain(st *state, l *layout, c int) {
	t := &s.step
	at := st.key[c]
	if at == 0 {
		return
	}
	op := &s.p.Chains[c].Ops[at]
	t.in = append(t.in, arc{int(l.last[c]), op.After + op.Minutes})
	if op.Within < Never {
		t.out = append(t.out, arc{int(l.lastRow[c]), -op.Within - op.Minutes})
	}
}

// inPlace adds the waits for chains that are no longer at work in the unit but may still be wet in it.
func (s *search) inPlace(st *state, l *layout) {
	t := &s.step
	op, unit := t.op, t.a.unit
	full := false
	if room := s.p.Room[op.Place]; room > 0 && op.Opens && st.key[s.at.home+int(t.a.chain)] == 0 {
		full = s.standing(st.key, int(unit), true, int(t.a.chain)) >= room
	}
	if op.Load == 0 && !full {
		return
	}
	for c := range s.p.Chains {
		if int8(st.key[s.at.dry+c]) == unit+1 {
			dry := s.p.Chains[c].Ops[st.key[c]-1].Dry
			t.in = append(t.in, arc{int(l.dry[c]), dry + op.Minutes})
		}
	}
}

// standing counts the chains that stand wet in a unit, with those that may be dry by now or without; one is left out.
func (s *search) standing(key []byte, unit int, drying bool, but int) int {
	n := 0
	for c := range s.p.Chains {
		if c != but && (int(key[s.at.home+c]) == unit+1 || drying && int(key[s.at.dry+c]) == unit+1) {
			n++
		}
	}
	return n
}

// close finds the longest paths to and from the appended operation; false where its waits contradict each other.
func (s *search) close(l *layout) bool {
	t := &s.step
	t.from, t.to = room(t.from, l.rows), room(t.to, l.cols)
	for r := range t.from {
		row, w := t.d[r*l.cols:(r+1)*l.cols], int32(neg)
		for _, a := range t.in {
			w = max(w, row[a.at]+a.w)
		}
		t.from[r] = tidy(w)
	}
	for _, a := range t.out {
		if t.from[a.at]+a.w > 0 {
			return false
		}
	}
	for v := range t.to {
		t.to[v] = neg
	}
	for _, a := range t.out {
		row := t.d[a.at*l.cols : (a.at+1)*l.cols]
		for v, w := range t.to {
			t.to[v] = max(w, tidy(row[v]+a.w))
		}
	}
	return true
}

// tidy keeps paths that are not there at one value.
func tidy(w int32) int32 {
	if w < neg/2 {
		return neg
	}
	return w
}
