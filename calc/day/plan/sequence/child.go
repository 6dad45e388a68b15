package sequence

// Where a row or column of a child comes from, if not from its parent: the appended operation, or its cup.
const (
	fromStep = -1
	fromCup  = -2
)

// follow fills s.made with the state after the step, but for its bound; tryStep has been called.
func (s *search) follow(st *state, l *layout) {
	t, m := &s.step, &s.made
	m.key = append(m.key[:0], st.key...)
	m.cost = st.cost + t.cost
	m.last, m.left = t.a, int8(max(0, t.left-l.unit+1))
	for _, c := range t.joined {
		s.advance(m.key, c)
	}
	if t.op.Painted {
		s.useCup(m.key)
	}
	s.sources(st, l)
	s.fill(st, l)
	if s.commutes {
		k := m.key[s.at.last:]
		k[0], k[1], k[2], k[3] = byte(t.a.chain+1), byte(t.a.painter+1), byte(t.a.unit+1), byte(m.left)
	}
	m.hash = hashOf(m.key)
}

// advance moves a chain on by one operation.
func (s *search) advance(key []byte, c int) {
	op, unit := &s.p.Chains[c].Ops[key[c]], byte(s.step.a.unit+1)
	key[c]++
	key[s.at.dry+c] = 0
	switch {
	case op.Load > 0:
		s.emptied(key, unit)
	case op.Closes:
		key[s.at.home+c] = 0
		if s.loads[op.Place] || s.p.Room[op.Place] > 0 {
			key[s.at.dry+c] = unit
		}
	case op.Opens:
		key[s.at.home+c] = unit
	}
}

// emptied is what a bake of a whole unit leaves: nothing wet in it, and nobody.
func (s *search) emptied(key []byte, unit byte) {
	for c := range s.p.Chains {
		if key[s.at.home+c] == unit {
			key[s.at.home+c] = 0
		}
		if key[s.at.dry+c] == unit {
			key[s.at.dry+c] = 0
		}
	}
	for u := 0; u < s.p.Painters; u++ {
		if key[s.at.painter+4*u+2] == unit {
			key[s.at.painter+4*u+2] = 0
		}
	}
}

// useCup notes what the painter has in the gun now, and what is left in the cup. It drops cups that nothing needs.
func (s *search) useCup(key []byte) {
	t := &s.step
	op, c := t.op, int(t.a.chain)
	k := key[s.at.painter+4*int(t.a.painter):]
	k[0], k[1], k[2], k[3] = byte(op.Product+1), byte(t.a.cup+1), 0, byte(t.a.slot)
	if op.Product != Clean {
		k[2] = byte(t.a.unit + 1)
	}
	if t.a.cup < 0 {
		return
	}
	cup := key[s.at.cups+5*int(t.a.cup):]
	switch {
	case t.a.fresh:
		left := s.p.Holds - op.Amount
		if left < 0 {
			left = 0
		}
		cup[0], cup[1], cup[2] = byte(op.Product+1), byte(t.a.painter), byte(op.Batch-1)
		cup[3], cup[4] = byte(left>>8), byte(left)
	case op.First:
		left := int32(cup[3])<<8 + int32(cup[4]) - op.Amount
		cup[2] += byte(op.Batch - 1)
		cup[3], cup[4] = byte(left>>8), byte(left)
	default:
		cup[2]--
	}
	key[s.at.cup+c] = 0
	if !s.lastOut[c][key[c]-1] {
		key[s.at.cup+c] = byte(t.a.cup + 1)
	}
	for i := 0; i < s.cups; i++ {
		if key[s.at.cups+5*i] > 0 && key[s.at.cups+5*i+2] == 0 && !s.wanted(key, i) {
			s.drop(key, i)
		}
	}
}

// wanted tells whether a batch that is still to come fits what is left in a cup.
func (s *search) wanted(key []byte, slot int) bool {
	cup := key[s.at.cups+5*slot:]
	return s.fits(key, int(cup[0])-1, int32(cup[3])<<8+int32(cup[4]))
}

func (s *search) fits(key []byte, product int, left int32) bool {
	for _, b := range s.batches[product] {
		if b.amount <= left && int(key[b.chain]) <= b.op {
			return true
		}
	}
	return false
}

func (s *search) drop(key []byte, slot int) {
	clear(key[s.at.cups+5*slot : s.at.cups+5*slot+5])
	for u := 0; u < s.p.Painters; u++ {
		if key[s.at.painter+4*u+1] == byte(slot+1) {
			key[s.at.painter+4*u+1] = 0
		}
	}
}

// sources arranges the child's matrix and tells where each row and column comes from.
func (s *search) sources(st *state, l *layout) {
	t, m, n := &s.step, &s.made, &s.child
	s.arrange(n, m.key, 0)
	s.col, s.row = s.col[:0], append(s.row[:0], 0)
	s.col = append(s.col, 0)
	for v := 1; v < l.unit+s.units; v++ {
		if t.op.Painted && v == 1+int(t.a.painter) || t.a.unit >= 0 && v == l.unit+int(t.a.unit) {
			s.col = append(s.col, fromStep)
		} else {
			s.col = append(s.col, v)
		}
	}
	for c := range s.p.Chains {
		if n.last[c] < 0 {
			continue
		}
		moved := m.key[c] != st.key[c]
		s.col = append(s.col, pick(moved, int(l.last[c])))
		if n.lastRow[c] >= 0 {
			s.row = append(s.row, pick(moved, int(l.lastRow[c])))
		}
	}
	for c := range s.p.Chains {
		if n.dry[c] >= 0 {
			s.col = append(s.col, pick(m.key[c] != st.key[c], int(l.dry[c])))
		}
	}
	for i := 0; i < s.cups; i++ {
		switch {
		case n.cupRow[i] < 0:
		case t.a.fresh && int(t.a.cup) == i:
			s.row = append(s.row, fromCup)
		default:
			s.row = append(s.row, int(l.cupRow[i]))
		}
	}
}

func pick(moved bool, parent int) int {
	if moved {
		return fromStep
	}
	return parent
}

// fill makes the child's matrix: paths of the parent, and those through the appended operation.
func (s *search) fill(st *state, l *layout) {
	t, m := &s.step, &s.made
	done := int32(neg)
	for _, c := range t.joined {
		if int(m.key[c]) == len(s.p.Chains[c].Ops) {
			done = max(done, s.p.Chains[c].Done)
		}
	}
	s.chooseLate(st, l)
	m.d = m.d[:0]
	for _, r := range s.row {
		reach, base := s.reach(r, l)
		for _, v := range s.col {
			m.d = append(m.d, s.path(reach, base, v))
		}
		if c := int(t.a.chain); t.left > 0 {
			dry := s.path(reach, base, int(l.dry[c])) + s.p.Chains[c].Ops[st.key[c]-1].Dry
			unit := len(m.d) - len(s.col) + t.left
			m.d[unit] = max(m.d[unit], tidy(dry))
		}
		m.d = append(m.d, max(s.path(reach, base, l.end), tidy(reach+done)))
		for _, v := range s.lateFrom {
			m.d = append(m.d, s.path(reach, base, v))
		}
	}
	s.child.cols += len(m.late)
}

// reach is the longest path from a row to the appended operation, and the row's paths in the parent.
func (s *search) reach(r int, l *layout) (int32, []int32) {
	switch r {
	case fromStep:
		return 0, nil
	case fromCup:
		return s.step.op.Minutes + s.step.lead, nil
	}
	return s.step.from[r], s.step.d[r*l.cols : (r+1)*l.cols]
}

// path is the longest path from a row to a column, over the appended operation where that is longer.
func (s *search) path(reach int32, base []int32, v int) int32 {
	if v == fromStep {
		return reach
	}
	w := reach + s.step.to[v]
	if base != nil {
		w = max(w, base[v])
	}
	return tidy(w)
}

// chooseLate keeps the finished chains whose lateness may still grow, and adds that of the others to the cost.
func (s *search) chooseLate(st *state, l *layout) {
	t, m := &s.step, &s.made
	m.late, s.lateFrom = m.late[:0], s.lateFrom[:0]
	old := 0
	for c := range s.p.Chains {
		from := fromStep
		if old < len(st.late) && int(st.late[old]) == c {
			from = l.end + 1 + old
			old++
		} else if m.key[c] == st.key[c] || int(m.key[c]) < len(s.p.Chains[c].Ops) || !s.promised[c] {
			continue
		}
		open := false
		for _, r := range s.row[1:] {
			reach, base := s.reach(r, l)
			if s.path(reach, base, from) > neg {
				open = true
				break
			}
		}
		if open {
			m.late, s.lateFrom = append(m.late, uint8(c)), append(s.lateFrom, from)
			continue
		}
		m.cost += s.lateCost(c, s.path(t.from[0], t.d[:l.cols], from))
	}
}
