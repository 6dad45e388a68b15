package sequence

// inOrder bounds the ends of chains that keep their order, where one painter and one place do all the spraying: it runs
// through what is left of the order as if nothing came in between and no wait could run out. It adds to late, which has
// the others' share, and returns the end of the last.
func (s *search) inOrder(m *state, l *layout) (late int64, finish int32) {
	j, b := &s.bounds.joint, &s.bounds
	unit := l.unit + s.firstUnit[j.place]
	painter, spray, bakes := m.d[1], m.d[unit], m.d[unit]
	gun, load := int(m.key[s.at.painter])-1, int32(0)
	s.chainEnds(m, l)
	for _, f := range s.frozen[m.ptr:] {
		c, i := int(f)&255, int(f)>>8
		if int(m.key[c]) > i {
			continue
		}
		op := &s.p.Chains[c].Ops[i]
		start := max(s.p.Now, op.Earliest, s.reached[c]+op.After)
		switch {
		case op.Painted:
			lead := b.lead[c][i]
			if b.rinses && gun != op.Product {
				if gun != Clean {
					lead += b.enter[op.Product]
				}
				gun = op.Product
			}
			start = max(start, painter+lead, spray, bakes)
			painter, spray, load = start+op.Minutes, start+op.Minutes, 0
		case op.Place == j.place:
			start = max(start, spray)
			if op.Load == 0 || op.Load != load {
				start = max(start, bakes)
			}
			load = op.Load
			bakes = max(bakes, start+op.Minutes)
		}
		s.reached[c] = start + op.Minutes
		if i == len(s.p.Chains[c].Ops)-1 {
			finish = max(finish, s.reached[c]+s.p.Chains[c].Done)
			if s.promised[c] {
				late += s.lateCost(c, s.reached[c])
			}
		}
	}
	return late, finish
}

// chainEnds notes when the last operation of each chain under way ends.
func (s *search) chainEnds(m *state, l *layout) {
	s.reached = s.reached[:0]
	for c := range s.p.Chains {
		end := int32(neg)
		if i := l.last[c]; i >= 0 {
			end = m.d[i]
		}
		s.reached = append(s.reached, end)
	}
}
