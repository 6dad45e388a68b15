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
	m.d = room(m.d, len(s.row)*(len(s.col)+1+len(s.lateFrom)))
	i := 0
	for _, r := range s.row {
		reach, base := s.reach(r, l)
		row := m.d[i : i+len(s.col)]
		s.paths(row, reach, base)
		if c := int(t.a.chain); t.left > 0 {
			dry := s.path(reach, base, int(l.dry[c])) + s.p.Chains[c].Ops[st.key[c]-1].Dry
			row[t.left] = max(row[t.left], tidy(dry))
		}
		i += len(row)
		m.d[i] = max(s.path(reach, base, l.end), tidy(reach+done))
		i++
		for _, v := range s.lateFrom {
			m.d[i] = s.path(reach, base, v)
			i++
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

// paths finds the longest path from a row to each column of the child: what path does, in one go.
func (s *search) paths(row []int32, reach int32, base []int32) {
	to := s.step.to
	for i, v := range s.col[:len(row)] {
		w := reach
		if v >= 0 {
			if w += to[v]; base != nil && base[v] > w {
				w = base[v]
			}
		}
		row[i] = tidy(w)
	}
}

// room is a slice of n numbers in the place of an old one, which it may overwrite.
func room(old []int32, n int) []int32 {
	if cap(old) < n {
		return make([]int32, n, 2*n)
	}
	return old[:n]
}
