package sequence

// Placed is an operation with its time and place.
type Placed struct {
	Chain, Op     int
	Start, End    int32
	Painter, Unit int   // -1 where it needs none; the unit within its kind of place
	Cup           int   // the cup's number from 1 on, facts' cups first; 0 for none
	Fresh         bool  // the cup is mixed for it
	Rinse         int32 // minutes of the rinse before it, and when that begins
	RinseAt       int32
	Trip          bool  // the painter walks into the booth for it
	Mixed         int32 // when mixing of its cup began
	Latest        int32 // starting later breaks a wait or a kept promise, or makes the plan longer
	Lead          int32 // minutes right before the start for mixing and the walk
}

// wait is a least difference between the ends of two placed operations; -1 stands for the beginning.
type wait struct {
	from, to int
	w        int32
}

// schedule puts times to a list of steps: every operation as early as the order allows. It repeats the rules of
// tryStep over whole operations, so that tests can hold one against the other.
type schedule struct {
	s        *search
	key      []byte
	placed   []Placed
	waits    []wait
	painter  []int // the last placed operation of each painter; -1 for none
	unit     []int
	chain    []int
	dry      []int
	after    [][]wait     // of each unit: what nothing there may start before; see leaves
	mixed    [slots]int32 // from the start of mixing to the end of the cup's first operation
	cupFirst [slots]int
	cupNo    [slots]int
	cups     int
}

func (s *search) schedule(steps []action) []Placed {
	saved := s.commutes
	s.commutes = false
	defer func() { s.commutes = saved }()
	c := &schedule{s: s, key: make([]byte, s.at.size)}
	for u := range s.p.Gun {
		c.key[s.at.painter+4*u] = byte(s.p.Gun[u] + 1)
	}
	c.painter, c.unit = fill(s.p.Painters), fill(s.units)
	c.chain, c.dry = fill(len(s.p.Chains)), fill(len(s.p.Chains))
	c.after = make([][]wait, s.units)
	c.facts()
	for _, a := range steps {
		c.add(a)
	}
	c.settle()
	return c.placed
}

func fill(n int) []int {
	a := make([]int, n)
	for i := range a {
		a[i] = -1
	}
	return a
}

// facts places what is done, at its times.
func (c *schedule) facts() {
	s := c.s
	begin := s.begin()
	e := newEnds(s)
	shadow := &state{key: make([]byte, s.at.size)}
	copy(shadow.key, c.key)
	for i := range s.p.Facts {
		f := &s.p.Facts[i]
		s.enter(shadow, f, e)
		a := s.step.a
		at := len(c.placed)
		op := s.p.Chains[f.Chain].Ops[f.Op]
		pl := Placed{Chain: f.Chain, Op: f.Op, Start: f.Start, End: f.End, Painter: int(a.painter), Unit: f.Place}
		if op.Place < 0 {
			pl.Unit = -1
		}
		if a.unit >= 0 {
			c.unit[a.unit] = at
		}
		if a.painter >= 0 {
			c.painter[a.painter] = at
		}
		if a.cup >= 0 {
			if a.fresh {
				c.cups++
				c.cupNo[a.cup], c.cupFirst[a.cup], c.mixed[a.cup] = c.cups, at, f.End-f.Mixed
				pl.Fresh = true
			}
			pl.Cup, pl.Mixed = c.cupNo[a.cup], f.Mixed
		}
		c.chain[f.Chain], c.dry[f.Chain] = at, at
		c.placed = append(c.placed, pl)
		c.waits = append(c.waits, wait{-1, at, f.End})
	}
	copy(c.key, begin.key)
}

// add places one more operation, and a bake's companions.
func (c *schedule) add(a action) {
	s := c.s
	t := &s.step
	op := &s.p.Chains[a.chain].Ops[c.key[a.chain]]
	t.a, t.op = a, op
	t.joined = append(t.joined[:0], int(a.chain))
	if op.Load > 0 {
		s.join(c.key)
	}
	at, p := len(c.placed), op.Minutes
	pl := Placed{Chain: int(a.chain), Op: int(c.key[a.chain]), Painter: int(a.painter), Unit: -1}
	start := max(s.p.Now, op.Earliest)
	if op.Painted {
		start = max(start, c.painted(&pl, a, op, at))
	}
	c.wait(-1, at, start+p)
	for _, j := range t.joined {
		if last := c.chain[j]; last >= 0 {
			next := &s.p.Chains[j].Ops[c.key[j]]
			c.wait(last, at, next.After+p)
			if next.Within < Never {
				c.wait(at, last, -next.Within-p)
			}
		}
	}
	if a.unit >= 0 {
		pl.Unit = int(a.unit) - s.firstUnit[op.Place]
		c.wait(c.unit[a.unit], at, p)
		for _, w := range c.after[a.unit] {
			c.wait(w.from, at, w.w+p)
		}
		c.standing(a, op, at)
		c.unit[a.unit] = at
	}
	c.placed = append(c.placed, pl)
	for i, j := range t.joined {
		if i > 0 {
			c.placed = append(c.placed, Placed{Chain: j, Op: int(c.key[j]), Painter: -1, Unit: pl.Unit})
			c.wait(at, at+i, 0)
			c.wait(at+i, at, 0)
		}
	}
	if old := int(c.key[s.at.dry+int(a.chain)]) - 1; old >= 0 && old != int(a.unit) {
		c.after[old] = append(c.after[old], wait{from: c.dry[a.chain], w: s.p.Chains[a.chain].Ops[c.key[a.chain]-1].Dry})
	}
	for i, j := range t.joined {
		s.advance(c.key, j)
		c.chain[j], c.dry[j] = at+i, at+i
	}
	if op.Painted {
		s.useCup(c.key)
		c.painter[a.painter] = at
	}
}

func (c *schedule) wait(from, to int, w int32) { c.waits = append(c.waits, wait{from, to, w}) }

// standing waits for what may still be wet in the unit.
func (c *schedule) standing(a action, op *Op, at int) {
	s := c.s
	full := false
	if room := s.p.Room[op.Place]; room > 0 && op.Opens && c.key[s.at.home+int(a.chain)] == 0 {
		full = s.standing(c.key, int(a.unit), true, int(a.chain)) >= room
	}
	for j := range s.p.Chains {
		if (op.Load > 0 || full) && int8(c.key[s.at.dry+j]) == a.unit+1 {
			c.wait(c.dry[j], at, s.p.Chains[j].Ops[c.key[j]-1].Dry+op.Minutes)
		}
	}
}

// painted adds the waits for the painter, and tells how soon the operation may start because of breaks.
func (c *schedule) painted(pl *Placed, a action, op *Op, at int) int32 {
	s, p := c.s, op.Minutes
	rinse, trip := s.gun(c.key, a, op)
	pl.Rinse, pl.Trip, pl.Fresh = rinse, trip, a.fresh
	if a.fresh {
		pl.Lead = op.Mix
	}
	if trip {
		pl.Lead += s.p.Trip
	}
	c.cup(pl, a, at)
	over, slot := int(c.key[s.at.painter+4*int(a.painter)+3]), int(a.slot)
	last := c.painter[a.painter]
	earliest := s.p.Now + pl.Lead
	if s.p.Breaks == nil || slot == over {
		c.wait(last, at, rinse+pl.Lead+p)
		earliest += rinse
	}
	if s.p.Breaks == nil {
		return earliest
	}
	breaks := s.p.Breaks[a.painter]
	if slot < len(breaks) {
		c.wait(at, -1, -breaks[slot].From)
	}
	if slot > 0 {
		earliest = max(earliest, breaks[slot-1].To+pl.Lead)
	}
	if slot > over && a.early < 0 {
		earliest = max(earliest, breaks[slot-1].To+pl.Lead+rinse)
	}
	if slot > over && last >= 0 {
		by := breaks[over].From
		if int(a.early) == over {
			by -= rinse
		}
		c.wait(last, -1, -by)
	}
	pl.RinseAt = c.rinseAt(a, over)
	return earliest
}

// rinseAt notes where the rinse goes: a time for a gap between breaks, -1 for right after the painter's operation
// before, -2 for right before mixing; settle turns the latter two into times.
func (c *schedule) rinseAt(a action, over int) int32 {
	switch {
	case int(a.slot) == over || int(a.early) == over:
		return -1
	case a.early < 0:
		return -2
	}
	return c.s.p.Breaks[a.painter][a.early-1].To
}

// cup numbers the cup and keeps its pot life.
func (c *schedule) cup(pl *Placed, a action, at int) {
	if a.fresh {
		c.cups++
		pl.Cup = c.cups
		if a.cup >= 0 {
			c.cupNo[a.cup], c.cupFirst[a.cup], c.mixed[a.cup] = c.cups, at, pl.Lead+c.s.step.op.Minutes
		}
		return
	}
	if a.cup >= 0 {
		pl.Cup = c.cupNo[a.cup]
		pot := c.s.pot[a.chain][c.key[a.chain]]
		c.wait(at, c.cupFirst[a.cup], -(pot - c.mixed[a.cup]))
	}
}

// settle finds the earliest ends that keep every wait, and places the rinses.
func (c *schedule) settle() {
	end := make([]int32, len(c.placed))
	for changed := true; changed; {
		changed = false
		for _, w := range c.waits {
			from := int32(0)
			if w.from >= 0 {
				from = end[w.from]
			}
			if w.to >= 0 && end[w.to] < from+w.w {
				end[w.to] = from + w.w
				changed = true
			}
		}
	}
	latest := c.latest(end)
	last := make([]int32, c.s.p.Painters)
	mixed := make([]int32, c.cups+1)
	for i := range c.placed {
		pl := &c.placed[i]
		fact := i < len(c.s.p.Facts)
		pl.End = end[i]
		if !fact {
			pl.Start = pl.End - c.s.p.Chains[pl.Chain].Ops[pl.Op].Minutes
		}
		pl.Latest = pl.Start + latest[i] - pl.End
		if pl.Painter < 0 {
			continue
		}
		if !fact {
			switch {
			case pl.Rinse == 0:
				pl.RinseAt = 0
			case pl.RinseAt == -2:
				pl.RinseAt = pl.Start - pl.Lead - pl.Rinse
			case pl.RinseAt <= 0:
				pl.RinseAt = max(last[pl.Painter], c.s.p.Now)
			}
			if pl.Fresh {
				pl.Mixed = pl.Start - pl.Lead
			}
		}
		if pl.Fresh {
			mixed[pl.Cup] = pl.Mixed
		} else if pl.Cup > 0 {
			pl.Mixed = mixed[pl.Cup]
		}
		last[pl.Painter] = pl.End
	}
}

// latest finds the latest ends in the same order that break no wait, make no job late or later and the plan no longer.
func (c *schedule) latest(end []int32) []int32 {
	p, latest := c.s.p, make([]int32, len(end))
	finish := int32(0)
	for i := range c.placed {
		finish = max(finish, end[i]+p.Chains[c.placed[i].Chain].Done)
	}
	for i := range c.placed {
		ch := &p.Chains[c.placed[i].Chain]
		latest[i] = finish
		if c.placed[i].Op == len(ch.Ops)-1 {
			latest[i] = finish - ch.Done
			if ch.Due < Never {
				latest[i] = min(latest[i], max(end[i], ch.Due-ch.Done))
			}
		}
		if op := &ch.Ops[c.placed[i].Op]; op.Latest < Never {
			latest[i] = min(latest[i], op.Latest+op.Minutes)
		}
		if i < len(p.Facts) {
			latest[i] = end[i]
		}
	}
	for changed := true; changed; {
		changed = false
		for _, w := range c.waits {
			to := int32(0)
			if w.to >= 0 {
				to = latest[w.to]
			}
			if w.from >= 0 && latest[w.from] > to-w.w {
				latest[w.from], changed = to-w.w, true
			}
		}
	}
	return latest
}
