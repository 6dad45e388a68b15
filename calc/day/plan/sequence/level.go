package sequence

// level raises times in a state's matrix to the latest that makes no difference to what can follow, so that more states
// cover each other. A chain whose flash is over before the painter is free is worth no more than one whose flash ends
// just then.
func (s *search) level(m *state, l *layout) {
	late := l.end + 1
	for i, c := range m.late { // until the promise it does not matter
		ch := &s.p.Chains[c]
		m.d[late+i] = max(m.d[late+i], ch.Due-ch.Done)
	}
	work := false
	for c := range s.p.Chains {
		work = work || s.bounds.work[c][m.key[c]] > 0
	}
	s.needed(m.key)
	for r := 0; r < l.rows; r++ {
		row := m.d[r*l.cols : (r+1)*l.cols]
		s.levelPlaces(m, l, row)
		s.levelPainter(l, row, work)
		for c := range s.p.Chains {
			if i := l.last[c]; i >= 0 {
				s.levelChain(m, l, row, c)
				row[l.end] = max(row[l.end], tidy(row[i]+s.p.Chains[c].Ops[m.key[c]].After+s.bounds.span[c][m.key[c]]))
			}
		}
	}
	if s.p.Weigh.Finish == 0 {
		for r := 0; r < l.rows; r++ {
			m.d[r*l.cols+l.end] = 0
		}
	}
}

// needed finds the kinds of place that something still needs.
func (s *search) needed(key []byte) {
	for k := range s.need {
		s.need[k] = false
		for c := range s.p.Chains {
			if s.bounds.needs[c][k][key[c]] {
				s.need[k] = true
				break
			}
		}
	}
}

// levelPlaces forgets units that nothing needs any more, and wet ends that are over before their unit is free.
func (s *search) levelPlaces(m *state, l *layout, row []int32) {
	for k, units := range s.p.Places {
		for v := s.firstUnit[k]; v < s.firstUnit[k]+units && !s.need[k]; v++ {
			row[l.unit+v] = neg
		}
	}
	for c := range s.p.Chains {
		if i := l.dry[c]; i >= 0 {
			unit := int(m.key[s.at.dry+c]) - 1
			row[i] = max(row[i], tidy(row[l.unit+unit]-s.p.Chains[c].Ops[m.key[c]-1].Dry))
		}
	}
}

// levelPainter forgets a painter with nothing left to do, and one who is free so long before the only place to spray in
// that anything can be cleaned and mixed meanwhile. With breaks it leaves the end of work alone: it binds backwards.
func (s *search) levelPainter(l *layout, row []int32, work bool) {
	if s.p.Breaks != nil {
		return
	}
	if !work {
		for u := 0; u < s.p.Painters; u++ {
			row[1+u] = neg
		}
		return
	}
	if j := &s.bounds.joint; j.place >= 0 {
		row[1] = max(row[1], tidy(row[l.unit+s.firstUnit[j.place]]-s.bounds.spread))
	}
}

// levelChain raises the end of a chain's last operation as far as its next cannot start sooner anyway.
func (s *search) levelChain(m *state, l *layout, row []int32, c int) {
	at := int(m.key[c])
	op := &s.p.Chains[c].Ops[at]
	soon := int32(neg)
	if op.Painted {
		soon = Never
		for u := 0; u < s.p.Painters; u++ {
			soon = min(soon, row[1+u]+s.bounds.lead[c][at])
		}
	}
	if op.Place >= 0 {
		first, last := s.firstUnit[op.Place], s.firstUnit[op.Place]+s.p.Places[op.Place]
		if home := int(m.key[s.at.home+c]) - 1; home >= first && home < last {
			first, last = home, home+1
		}
		place := int32(Never)
		for v := first; v < last; v++ {
			place = min(place, row[l.unit+v])
		}
		soon = max(soon, place)
	}
	i := l.last[c]
	row[i] = max(row[i], tidy(soon-op.After))
}
