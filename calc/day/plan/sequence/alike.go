package sequence

// sameUnit tells whether an earlier unit of the kind, from the first on, stands in every respect as this one does.
func (s *search) sameUnit(st *state, l *layout, first, v int) bool {
	for w := first; w < v; w++ {
		if s.idle(st.key, w) && s.idle(st.key, v) && sameColumn(st.d, l, l.unit+w, l.unit+v) {
			return true
		}
	}
	return false
}

// idle tells that nothing but its last operation's end binds a unit, and that nothing is pinned to a unit.
func (s *search) idle(key []byte, v int) bool {
	if s.bounds.pinned || s.standing(key, v, true, -1) > 0 {
		return false
	}
	for u := 0; u < s.p.Painters; u++ {
		if int(key[s.at.painter+4*u+2]) == v+1 {
			return false
		}
	}
	return true
}

func (s *search) samePainter(st *state, l *layout, u int) bool {
	for w := 0; w < u; w++ {
		x, y := st.key[s.at.painter+4*w:], st.key[s.at.painter+4*u:]
		if !s.bounds.pinned && x[0] == y[0] && x[1] == 0 && y[1] == 0 && x[2] == y[2] && x[3] == y[3] &&
			s.sameBreaks(w, u) && s.withoutCup(st.key, w) && s.withoutCup(st.key, u) && sameColumn(st.d, l, 1+w, 1+u) {
			return true
		}
	}
	return false
}

func (s *search) withoutCup(key []byte, u int) bool {
	for i := 0; i < s.cups; i++ {
		if key[s.at.cups+5*i] > 0 && int(key[s.at.cups+5*i+1]) == u {
			return false
		}
	}
	return true
}

func (s *search) sameBreaks(a, b int) bool {
	if s.p.Breaks == nil {
		return true
	}
	if len(s.p.Breaks[a]) != len(s.p.Breaks[b]) {
		return false
	}
	for i, x := range s.p.Breaks[a] {
		if x != s.p.Breaks[b][i] {
			return false
		}
	}
	return true
}

func sameColumn(d []int32, l *layout, a, b int) bool {
	for r := 0; r < l.rows; r++ {
		if d[r*l.cols+a] != d[r*l.cols+b] {
			return false
		}
	}
	return true
}
