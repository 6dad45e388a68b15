package sequence

// limits are what must end within some minutes of a moment: each takes some minutes of one painter or unit.
type limits struct{ end, takes []int32 }

func (d *limits) add(end, takes int32) {
	d.end, d.takes = append(d.end, end), append(d.takes, takes)
	for i := len(d.end) - 1; i > 0 && d.end[i-1] > d.end[i]; i-- {
		d.end[i-1], d.end[i] = d.end[i], d.end[i-1]
		d.takes[i-1], d.takes[i] = d.takes[i], d.takes[i-1]
	}
}

// kept tells whether one after the other, the most urgent first, all end in time (Jackson 1955, from memory).
func (d *limits) kept() bool {
	sum := int32(0)
	for i, takes := range d.takes {
		sum += takes
		if sum > d.end[i] {
			return false
		}
	}
	return true
}

// inTime tells whether every chain with a longest wait, and every cup, can still be served in time: each by itself, and
// all of them by one painter and in each single place.
func (s *search) inTime(m *state, l *layout) bool {
	b := &s.bounds
	for i := range s.limits {
		s.limits[i].end, s.limits[i].takes = s.limits[i].end[:0], s.limits[i].takes[:0]
	}
	for c := range s.p.Chains {
		at := int(m.key[c])
		if at == 0 || at == len(s.p.Chains[c].Ops) {
			continue
		}
		var wait, cup []int32
		if r := int(l.lastRow[c]); r >= 0 {
			wait = m.d[r*l.cols : (r+1)*l.cols]
			if !s.waitInTime(m, l, c, wait) {
				return false
			}
		}
		if slot := int(m.key[s.at.cup+c]) - 1; slot >= 0 {
			cup = m.d[int(l.cupRow[slot])*l.cols : (int(l.cupRow[slot])+1)*l.cols]
			if cup[l.last[c]]+b.batch[c][at] > s.pot[c][at] {
				return false
			}
		}
		if wait != nil || cup != nil {
			s.limit(c, at, wait, cup, l)
		}
	}
	for i := range s.limits {
		if !s.limits[i].kept() {
			return false
		}
	}
	return true
}

// waitInTime checks the longest wait of one chain, whose row is given.
func (s *search) waitInTime(m *state, l *layout, c int, row []int32) bool {
	at := int(m.key[c])
	op := &s.p.Chains[c].Ops[at]
	wait := int32(0)
	if op.Painted {
		wait = Never
		for u := 0; u < s.p.Painters; u++ {
			wait = min(wait, row[1+u]+s.bounds.lead[c][at])
		}
	}
	if home := int(m.key[s.at.home+c]); home > 0 && op.Place >= 0 {
		if v := home - 1; v >= s.firstUnit[op.Place] && v < s.firstUnit[op.Place]+s.p.Places[op.Place] {
			wait = max(wait, row[l.unit+v])
		}
	}
	return wait <= op.Within
}

// limit enters a chain's remaining operations, as far as longest waits follow each other or the cup binds, for the
// painter (the last list) and for each kind of place with one unit.
func (s *search) limit(c, at int, wait, cup []int32, l *layout) {
	ends, inCup := int32(0), cup != nil
	for i := at; i < len(s.p.Chains[c].Ops); i++ {
		op := &s.p.Chains[c].Ops[i]
		inCup = inCup && op.Product != Clean && (i == at || !op.First)
		if wait == nil || op.Within == Never || op.Load > 0 {
			wait = nil
		} else {
			ends += op.Within + op.Minutes
		}
		if wait == nil && !inCup {
			return
		}
		by := func(col int) int32 {
			end := int32(Never)
			if wait != nil {
				end = ends - wait[col]
			}
			if inCup {
				end = min(end, s.pot[c][i]-cup[col])
			}
			return end
		}
		if op.Painted && s.p.Painters == 1 {
			s.limits[len(s.p.Places)].add(by(1), s.bounds.lead[c][i]+op.Minutes)
		}
		if op.Place >= 0 && s.p.Places[op.Place] == 1 && op.Load == 0 {
			s.limits[op.Place].add(by(l.unit+s.firstUnit[op.Place]), op.Minutes)
		}
	}
}
