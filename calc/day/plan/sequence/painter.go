package sequence

// byPainter adds what the painter does before: a rinse, mixing, the walk; and keeps it out of breaks.
func (s *search) byPainter(st *state, l *layout) bool {
	t := &s.step
	op, u, p := t.op, int(t.a.painter), t.op.Minutes
	rinse, trip := s.gun(st.key, t.a, op)
	if t.a.fresh {
		t.lead = op.Mix
		t.cost += s.p.Weigh.Cup
	}
	if rinse > 0 {
		t.cost += s.p.Weigh.Rinse
	}
	if trip {
		t.lead += s.p.Trip
		t.cost += s.p.Weigh.Trip
	}
	if t.a.fresh && t.lead+p > op.Pot {
		return false
	}
	if t.a.cup >= 0 && !t.a.fresh {
		t.out = append(t.out, arc{int(l.cupRow[t.a.cup]), -s.pot[t.a.chain][st.key[t.a.chain]]})
	}
	if s.p.Breaks == nil || len(s.p.Breaks[u]) == 0 {
		t.in = append(t.in, arc{1 + u, rinse + t.lead + p})
		return true
	}
	breaks, over, slot := s.p.Breaks[u], int(st.key[s.at.painter+4*u+3]), int(t.a.slot)
	if slot < len(breaks) {
		t.out = append(t.out, arc{0, -breaks[slot].From})
	}
	if slot == over {
		t.in = append(t.in, arc{1 + u, rinse + t.lead + p})
		if slot > 0 {
			t.in = append(t.in, arc{0, breaks[slot-1].To + t.lead + p})
		}
		return true
	}
	after, before := breaks[slot-1].To+t.lead+p, breaks[over].From
	if t.a.early < 0 {
		after += rinse
	} else if int(t.a.early) == over {
		before -= rinse
	}
	t.in = append(t.in, arc{0, after})
	return s.tighten(l, 1+u, before)
}

// gun tells the minutes of the rinse before an operation, and whether the painter walks into the booth for it.
func (s *search) gun(key []byte, a action, op *Op) (rinse int32, trip bool) {
	k := key[s.at.painter+4*int(a.painter):]
	sameCup := a.cup >= 0 && !a.fresh && int8(k[1]) == a.cup+1
	if !sameCup {
		rinse = s.p.rinse(int(k[0])-1, op.Product)
	}
	trip = op.Product != Clean && a.unit >= 0 &&
		(a.fresh || int8(k[2]) != a.unit+1 || rinse > 0 && !s.p.RinseInside || int8(k[3]) != a.slot)
	return rinse, trip
}

// tighten makes the operation of a column end by a time, in a copy of the matrix.
func (s *search) tighten(l *layout, col int, by int32) bool {
	t := &s.step
	if t.d[col] > by {
		return false
	}
	s.copy = append(s.copy[:0], t.d...)
	t.d = s.copy
	for r := 1; r < l.rows; r++ {
		row := t.d[r*l.cols : (r+1)*l.cols]
		back := row[col] - by
		if back <= row[0] || row[col] <= neg/2 {
			continue
		}
		row[0] = back
		for v, w := range t.d[:l.cols] {
			row[v] = max(row[v], tidy(back+w))
		}
	}
	return true
}
