package sequence

// choices fills s.options with every next step of a chain.
func (s *search) choices(st *state, l *layout, c int) {
	s.options = s.options[:0]
	op := &s.p.Chains[c].Ops[st.key[c]]
	if op.Place < 0 {
		s.painters(st, l, op, action{chain: int8(c), unit: -1, painter: -1, cup: -1, early: -1})
		return
	}
	first, last := s.firstUnit[op.Place], s.firstUnit[op.Place]+s.p.Places[op.Place]
	if home := int(st.key[s.at.home+c]) - 1; home >= first && home < last {
		if op.Unit >= 0 && first+op.Unit != home {
			return
		}
		first, last = home, home+1
	} else if op.Unit >= 0 {
		first += op.Unit
		last = first + 1
	}
	for v := first; v < last; v++ {
		if !s.free(st, l, op, c, v) || last-first > 1 && s.sameUnit(st, l, first, v) {
			continue
		}
		s.painters(st, l, op, action{chain: int8(c), unit: int8(v), painter: -1, cup: -1, early: -1})
	}
}

// free tells whether what stands wet in a unit lets the operation in: a bake takes all of it. Of chains that a bake
// joins only the first is offered it.
func (s *search) free(st *state, l *layout, op *Op, c, v int) bool {
	if op.Load == 0 {
		room := s.p.Room[op.Place]
		return room == 0 || !op.Opens || st.key[s.at.home+c] > 0 || s.standing(st.key, v, false, c) < room
	}
	wet := st.key[s.at.home+c] > 0
	for j := range s.p.Chains {
		if j != c && int(st.key[s.at.home+j]) != v+1 {
			continue
		}
		next := &s.p.Chains[j].Ops[st.key[j]]
		if next.Load != op.Load || next.Minutes != op.Minutes || wet && j < c {
			return false
		}
		if next.Unit >= 0 && s.firstUnit[op.Place]+next.Unit != v {
			return false
		}
	}
	return true
}

// painters adds the choices of painter to those of unit.
func (s *search) painters(st *state, l *layout, op *Op, a action) {
	if !op.Painted {
		s.options = append(s.options, a)
		return
	}
	cup := int(st.key[s.at.cup+int(a.chain)]) - 1
	if op.Product != Clean && !op.First {
		if cup < 0 {
			return // the cup is unknown: a fact left it out
		}
		a.cup, a.painter = int8(cup), int8(st.key[s.at.cups+5*cup+1])
		s.breaks(st, a, op)
		return
	}
	for u := 0; u < s.p.Painters; u++ {
		if op.Painter >= 0 && op.Painter != u || op.Painter < 0 && s.samePainter(st, l, u) {
			continue
		}
		a.painter = int8(u)
		if op.First {
			s.cupsFor(st, a, op)
		} else {
			s.breaks(st, a, op)
		}
	}
}

// cupsFor adds a new cup, and every open one that holds enough.
func (s *search) cupsFor(st *state, a action, op *Op) {
	for i := s.cups - 1; i >= 0 && s.p.Holds > 0; i-- {
		cup := st.key[s.at.cups+5*i:]
		if int(cup[0])-1 == op.Product && int8(cup[1]) == a.painter && cupLeft(cup) >= op.Amount {
			if int(cup[2])+int(op.Batch) > 255 {
				s.lost = min(s.lost, st.bound)
				continue
			}
			join := a
			join.cup = int8(i)
			s.breaks(st, join, op)
		}
	}
	a.fresh = true
	if op.Batch > 1 || s.p.Holds > 0 && s.shares(st.key, int(a.chain), op) {
		slot := s.slot(st)
		if slot < 0 && op.Batch > 1 {
			return
		}
		a.cup = int8(slot)
	}
	s.breaks(st, a, op)
}

// cupLeft is what is left in a cup, which begins a part of a key.
func cupLeft(cup []byte) int32 { return int32(cup[3])<<8 + int32(cup[4]) }

// slot finds a free slot for a cup; without one it takes that of the cup with the least left of those that nothing under
// way comes out of, or -1. What is lost by that is noted.
func (s *search) slot(st *state) int {
	slot, taken := s.freeSlot(st.key)
	if taken {
		s.lost = min(s.lost, st.bound)
	}
	return slot
}

func (s *search) freeSlot(key []byte) (slot int, taken bool) {
	slot = -1
	for i := 0; i < s.cups; i++ {
		cup := key[s.at.cups+5*i:]
		if cup[0] == 0 {
			return i, false
		}
		if cup[2] == 0 && (slot < 0 || cupLeft(cup) < cupLeft(key[s.at.cups+5*slot:])) {
			slot = i
		}
	}
	return slot, true
}

// shares tells whether another chain may still want what the batch leaves in a new cup.
func (s *search) shares(key []byte, c int, op *Op) bool {
	for _, b := range s.batches[op.Product] {
		if b.amount <= s.p.Holds-op.Amount && int(key[b.chain]) <= b.op && (b.chain != c || int(key[c]) < b.op) {
			return true
		}
	}
	return false
}

// breaks adds the choices of when, between the painter's breaks, an operation stands and its gun is rinsed.
func (s *search) breaks(st *state, a action, op *Op) {
	if s.p.Breaks == nil {
		s.options = append(s.options, a)
		return
	}
	breaks := s.p.Breaks[a.painter]
	over := int(st.key[s.at.painter+4*int(a.painter)+3])
	for slot := over; slot <= len(breaks); slot++ {
		a.slot, a.early = int8(slot), -1
		rinse, _ := s.gun(st.key, a, op)
		if rinse == 0 || slot == over {
			s.options = append(s.options, a)
			continue
		}
		fits := -1
		for j := over + 1; j < slot; j++ {
			if breaks[j].From-breaks[j-1].To >= rinse {
				fits = j
			}
		}
		if fits < 0 {
			s.options = append(s.options, a)
			fits = over
		}
		a.early = int8(fits)
		s.options = append(s.options, a)
	}
}
