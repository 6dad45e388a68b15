package sequence

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

// lateCost is what it costs that the chain's last operation ends at a time.
func (s *search) lateCost(c int, end int32) int64 {
	ch := &s.p.Chains[c]
	over := end + ch.Done - ch.Due
	if over <= 0 {
		return 0
	}
	return int64(over) * ch.Priority * s.p.Weigh.Late
}
