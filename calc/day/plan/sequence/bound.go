package sequence

import "math/bits"

// rest adds up what the chains of a state have still to do.
type rest struct {
	finish         int32  // the last of them is done no sooner
	cost           int64  // with the state's own, lateness apart
	late, freeLate int64  // least cost of lateness, and the part of it that chains outside a frozen order have
	work, tail     int32  // painter's minutes, and from the end of these until a chain is done, at least
	colours, bakes uint64 // products, and kinds of bakes of whole units
}

// left adds up over the chains of a state.
func (s *search) left(m *state, l *layout) rest {
	b, p := &s.bounds, s.p
	r := rest{finish: m.d[l.end], cost: m.cost, tail: Never}
	for c := range p.Chains {
		at := int(m.key[c])
		if at == len(p.Chains[c].Ops) {
			continue
		}
		done := b.least[c][at]
		if at == 0 {
			done = max(done, p.Now+b.span[c][0])
		} else {
			done = max(done, m.d[l.last[c]]+p.Chains[c].Ops[at].After+b.span[c][at])
		}
		r.finish = max(r.finish, done)
		if s.promised[c] && done > p.Chains[c].Due {
			over := s.lateCost(c, done-p.Chains[c].Done)
			r.late += over
			if s.frozen != nil && s.isFree[c] {
				r.freeLate += over
			}
		}
		r.cost += b.cups[c][at]
		r.colours |= b.colour[c][at]
		r.bakes |= b.load[c][at]
		if w := b.work[c][at]; w > 0 {
			r.work += w
			r.tail = min(r.tail, b.tail[c][at])
		}
	}
	for i, c := range m.late {
		over := s.lateCost(int(c), m.d[l.end+1+i])
		r.late += over
		r.freeLate += over
	}
	return r
}

// judge fills in a state's bound, and is false where a wait can no longer be kept or no completion costs less than the
// limit.
func (s *search) judge(m *state, l *layout, limit int64) bool {
	if !s.inTime(m, l) {
		return false
	}
	r := s.left(m, l)
	r.finish = max(r.finish, s.placesFinish(m, l, r.bakes))
	weigh := func(late int64, finish int32) int64 { return r.cost + late + int64(finish)*s.p.Weigh.Finish }
	if r.work == 0 {
		m.bound = weigh(r.late, r.finish)
		return m.bound < limit
	}
	free, more, rinses := s.painterFree(m, r.colours)
	r.cost += int64(rinses) * s.p.Weigh.Rinse
	painters := int32(s.p.Painters)
	r.finish = max(r.finish, s.across(free, (r.work+more+painters-1)/painters)+r.tail)
	if m.bound = weigh(r.late, r.finish); m.bound >= limit {
		return false
	}
	if s.frozen != nil && s.bounds.joint.place >= 0 {
		late, finish := s.inOrder(m, l)
		m.bound = weigh(max(r.late, late+r.freeLate), max(r.finish, finish))
	} else {
		late, finish := s.together(m, l, more)
		m.bound = weigh(max(r.late, late), max(r.finish, finish))
	}
	return m.bound < limit
}

// painterFree is when painters are free, on average and rounded down; the least minutes of rinsing that the products to
// come need, and in how many rinses.
func (s *search) painterFree(m *state, colours uint64) (free, more int32, rinses int) {
	for u := 0; u < s.p.Painters; u++ {
		free += m.d[1+u]
	}
	free /= int32(s.p.Painters)
	if !s.bounds.rinses {
		return free, 0, 0
	}
	gun := int(m.key[s.at.painter]) - 1
	if gun >= 0 {
		colours &^= 1 << uint(gun)
	}
	longest := int32(0)
	for ; colours != 0; colours &= colours - 1 {
		w := s.bounds.enter[bits.TrailingZeros64(colours)]
		more += w
		longest = max(longest, w)
		if w > 0 {
			rinses++
		}
	}
	if gun < 0 && rinses > 0 {
		more -= longest
		rinses--
	}
	return free, more, rinses
}

// across is when a single painter has worked for some minutes from a time on, breaks taken.
func (s *search) across(from, minutes int32) int32 {
	end := from + minutes
	if s.p.Breaks == nil || s.p.Painters > 1 {
		return end
	}
	for _, b := range s.p.Breaks[0] {
		if b.To > from && b.From < end {
			end += b.To - max(b.From, from)
		}
	}
	return end
}

// placesFinish bounds the end by what each kind of place has still to take.
func (s *search) placesFinish(m *state, l *layout, loads uint64) int32 {
	b, finish := &s.bounds, int32(0)
	for k, units := range s.p.Places {
		var free, work, tail int32 = 0, 0, Never
		for v := 0; v < units; v++ {
			free += max(m.d[l.unit+s.firstUnit[k]+v], s.p.Now)
		}
		for c := range s.p.Chains {
			at := m.key[c]
			if w := b.place[c][k][at]; w > 0 || b.load[c][at] > 0 {
				work += w
				tail = min(tail, b.placeTail[c][k][at])
			}
		}
		for set := loads; set != 0; set &= set - 1 {
			if kind := b.loads[bits.TrailingZeros64(set)]; kind.place == k {
				work += kind.minutes
				tail = min(tail, 0)
			}
		}
		if work > 0 {
			finish = max(finish, (free+work+int32(units)-1)/int32(units)+tail)
		}
	}
	return finish
}
