package sequence

// joint bounds what a single painter can do for all chains. It takes each chain's remaining painter's work as one piece
// that may be interrupted: served by the shortest remaining piece first, the k-th piece to end ends as early as it can
// (Schrage 1968), and set against the k-th promise these ends bound the total lateness (Chu 1992; both from memory).
//
// Where all spraying is in one unit that a bake holds too, most of the bake counts as work: the painter can meanwhile
// only clean and mix for one next coat.
type joint struct {
	place  int       // the kind with that one unit, or -1
	bake   [][]int32 // the part of bakes there that counts, from the i-th operation of a chain on
	baked  bool      // some bake counts
	levels []int64   // the priorities that there are, least first

	work, release, due []int32
	of                 []int
	ends               []int32
}

func (j *joint) prepare(s *search) {
	p := s.p
	j.place = -1
	for c := range p.Chains {
		if !s.promised[c] {
			continue
		}
		j.levels = append(j.levels, p.Chains[c].Priority)
		for i := len(j.levels) - 1; i > 0 && j.levels[i-1] >= j.levels[i]; i-- {
			if j.levels[i-1] == j.levels[i] {
				j.levels = append(j.levels[:i], j.levels[i+1:]...)
				break
			}
			j.levels[i-1], j.levels[i] = j.levels[i], j.levels[i-1]
		}
	}
	if p.Painters != 1 || s.bounds.spread >= Never || !j.onePlace(s) {
		return
	}
	for c := range p.Chains {
		ops := p.Chains[c].Ops
		bake := make([]int32, len(ops)+1)
		for i := len(ops) - 1; i >= 0; i-- {
			bake[i] = bake[i+1]
			if op := &ops[i]; !op.Painted && op.Place == j.place && op.Load == 0 {
				bake[i] += max(0, op.Minutes-s.bounds.spread)
			}
		}
		j.bake, j.baked = append(j.bake, bake), j.baked || bake[0] > 0
	}
}

// onePlace finds the kind of place where all spraying is, if it has one unit.
func (j *joint) onePlace(s *search) bool {
	for c := range s.p.Chains {
		for i := range s.p.Chains[c].Ops {
			op := &s.p.Chains[c].Ops[i]
			if !op.Painted {
				continue
			}
			if j.place >= 0 && op.Place != j.place || s.p.Places[op.Place] > 1 {
				j.place = -1
				return false
			}
			j.place = op.Place
		}
	}
	return j.place >= 0
}

// together bounds the cost of lateness, and the end, by the work of one painter for all chains. more is the least of
// rinsing that is not in the chains' own work.
func (s *search) together(m *state, l *layout, more int32) (late int64, finish int32) {
	j := &s.bounds.joint
	if s.p.Painters > 1 {
		return 0, 0
	}
	from := s.available(m, l)
	if j.place >= 0 {
		total := more
		for c := range s.p.Chains {
			total += s.bounds.work[c][m.key[c]] + j.bake[c][m.key[c]]
		}
		finish = from + total
	}
	if len(j.levels) == 0 {
		return 0, finish
	}
	late = s.lateBy(m, l, from, false, 100)
	if j.baked {
		late = max(late, s.lateBy(m, l, from, true, 100))
	}
	return late, finish
}

// available is when the painter can go on; several of them on average.
func (s *search) available(m *state, l *layout) int32 {
	if j := &s.bounds.joint; j.place >= 0 {
		return max(m.d[1], m.d[l.unit+s.firstUnit[j.place]]-s.bounds.spread)
	}
	sum := int32(0)
	for _, free := range m.d[1 : 1+s.p.Painters] {
		sum += free
	}
	return sum / int32(max(1, s.p.Painters))
}

// guess is what completing a state may cost: like the bound, but with work that takes longer by the waits it comes
// with, s.stretch in percent, and shared by the painters.
func (s *search) guess(m *state, l *layout) int64 {
	j, stretch := &s.bounds.joint, s.stretch/int32(max(1, s.p.Painters))
	if s.p.Painters == 0 {
		return m.bound
	}
	from, total := max(0, s.available(m, l)), int32(0)
	for c := range s.p.Chains {
		total += s.bounds.work[c][m.key[c]]
		if j.place >= 0 {
			total += j.bake[c][m.key[c]]
		}
	}
	cost := m.cost + s.p.Weigh.Finish*int64(max(m.d[l.end], from+total*stretch/100))
	if len(j.levels) > 0 {
		cost += s.lateBy(m, l, from, j.place >= 0, stretch)
	}
	for i, c := range m.late {
		cost += s.lateCost(int(c), m.d[l.end+1+i])
	}
	return max(cost, m.bound)
}
