package sequence

// batch is the first operation of a batch.
type batch struct {
	chain, op int
	amount    int32
}

// search holds a problem with what is worked out about it once, and the room in which steps are tried.
type search struct {
	p         *Problem
	at        keys
	units     int   // of all kinds of place
	firstUnit []int // of each kind
	cups      int   // slots in use
	loads     []bool
	promised  []bool
	pot       [][]int32 // of each operation out of a cup, from the cup's mixing to the operation's end
	lastOut   [][]bool  // the operation is the last of its batch
	batches   [][]batch // of each product, those that may share a cup
	bounds    bounds
	commutes  bool // the key tells the last step
	// independent tells that there may be steps which do not touch each other.
	independent bool

	step          step
	made          state
	child         layout
	copy          []int32
	col, row      []int
	lateFrom      []int
	options       []action
	limits        []limits // of each kind of place, and of the painter
	stretch       int32    // see guess
	Evaluations   int
	cupsExhausted bool // a cup was not mixed because too many were open
}

func newSearch(p *Problem) *search {
	s := &search{p: p, stretch: 130}
	s.firstUnit = make([]int, len(p.Places))
	s.loads = make([]bool, len(p.Places))
	for k, n := range p.Places {
		s.firstUnit[k] = s.units
		s.units += n
	}
	s.batches = make([][]batch, p.Products)
	batches := 0
	for c := range p.Chains {
		ch := &p.Chains[c]
		s.promised = append(s.promised, ch.Due < Never && ch.Priority > 0 && p.Weigh.Late > 0)
		pot, last := make([]int32, len(ch.Ops)), make([]bool, len(ch.Ops))
		ends, left := int32(Never), int32(0)
		for i := range ch.Ops {
			op := &ch.Ops[i]
			if op.Load > 0 {
				s.loads[op.Place] = true
			}
			if op.First {
				ends, left = op.Pot, op.Batch
				batches++
				if p.Holds > 0 {
					s.batches[op.Product] = append(s.batches[op.Product], batch{c, i, op.Amount})
				}
			}
			if op.Product != Clean {
				left--
				last[i], pot[i] = left == 0, ends
			}
		}
		s.pot, s.lastOut = append(s.pot, pot), append(s.lastOut, last)
	}
	s.cups = min(slots, batches)
	s.independent = s.twoAtOnce()
	s.at = keysFor(len(p.Chains), p.Painters, s.cups)
	s.child.make(len(p.Chains))
	s.limits = make([]limits, len(p.Places)+1)
	s.bounds.prepare(s)
	return s
}

// twoAtOnce tells whether two operations may run at once, which they cannot where all need the one unit of one kind.
func (s *search) twoAtOnce() bool {
	kind := -1
	for c := range s.p.Chains {
		for i := range s.p.Chains[c].Ops {
			k := s.p.Chains[c].Ops[i].Place
			if k < 0 || kind >= 0 && k != kind || s.p.Places[k] > 1 {
				return true
			}
			kind = k
		}
	}
	return false
}

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
	slot := -1
	for i := s.cups - 1; i >= 0; i-- {
		cup := st.key[s.at.cups+5*i:]
		if cup[0] == 0 {
			slot = i
		} else if s.p.Holds > 0 && int(cup[0])-1 == op.Product && int8(cup[1]) == a.painter && int32(cup[3])<<8+int32(cup[4]) >= op.Amount {
			join := a
			join.cup = int8(i)
			s.breaks(st, join, op)
		}
	}
	a.fresh = true
	if op.Batch > 1 || s.p.Holds > 0 && s.shares(st.key, int(a.chain), op) {
		if slot < 0 {
			s.cupsExhausted = true
			return
		}
		a.cup = int8(slot)
	}
	s.breaks(st, a, op)
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
