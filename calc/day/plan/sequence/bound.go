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
	mixes, mixing := s.toMix(m.key)
	r.cost += mixes
	r.finish = max(r.finish, s.placesFinish(m, l, r.bakes))
	weigh := func(late int64, finish int32) int64 { return r.cost + late + int64(finish)*s.p.Weigh.Finish }
	if r.work == 0 {
		m.bound = weigh(r.late, r.finish)
		return m.bound < limit
	}
	more, rinses := s.rinsing(m, r.colours)
	more += mixing
	r.cost += int64(rinses) * s.p.Weigh.Rinse
	r.finish = max(r.finish, s.painted(m, r.work+more)+r.tail)
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

// rinsing is the least minutes of rinsing that the products to come need, and in how many rinses.
func (s *search) rinsing(m *state, colours uint64) (more int32, rinses int) {
	if !s.bounds.rinses {
		return 0, 0
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
	return more, rinses
}

// painted is when the painters have together worked some minutes, breaks taken, at the soonest.
func (s *search) painted(m *state, minutes int32) int32 {
	free := s.freeFrom[:0]
	for u := 0; u < s.p.Painters; u++ {
		free = append(free, m.d[1+u])
	}
	end := served(free, minutes)
	for s.p.Breaks != nil {
		worked := int32(0)
		for u, from := range m.d[1 : 1+s.p.Painters] {
			worked += max(0, end-from)
			for _, b := range s.p.Breaks[u] {
				worked -= max(0, min(end, b.To)-max(from, b.From))
			}
		}
		if worked >= minutes {
			break
		}
		end += (minutes - worked + int32(s.p.Painters) - 1) / int32(s.p.Painters)
	}
	return end
}

// served is when units, each of them free from a time on, have together worked some minutes. It sorts the times.
func served(free []int32, minutes int32) int32 {
	sum := minutes
	for n := range free {
		for i := n; i+1 < len(free); i++ { // the soonest that is left
			if free[i+1] < free[n] {
				free[i+1], free[n] = free[n], free[i+1]
			}
		}
		sum += free[n]
		if end := (sum + int32(n)) / int32(n+1); n+1 == len(free) || end <= least(free[n+1:]) {
			return end
		}
	}
	return minutes
}

func least(all []int32) int32 {
	n := all[0]
	for _, x := range all[1:] {
		n = min(n, x)
	}
	return n
}

// placesFinish bounds the end by what each kind of place has still to take.
func (s *search) placesFinish(m *state, l *layout, loads uint64) int32 {
	b, finish := &s.bounds, int32(0)
	for k, units := range s.p.Places {
		var work, tail int32 = 0, Never
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
			free := s.freeFrom[:0]
			for v := 0; v < units; v++ {
				free = append(free, max(m.d[l.unit+s.firstUnit[k]+v], s.p.Now))
			}
			finish = max(finish, served(free, work)+tail)
		}
	}
	return finish
}
