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
	start := s.p.Now
	for _, j := range t.joined {
		start = max(start, s.p.Chains[j].Ops[c.key[j]].Earliest)
	}
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
	c.moveOn(a, op, at, pl.Unit)
}

// moveOn places a bake's companions at the same time, and notes where all that joined it stand now.
func (c *schedule) moveOn(a action, op *Op, at, unit int) {
	s, joined := c.s, c.s.step.joined
	for i, j := range joined {
		if i > 0 {
			c.placed = append(c.placed, Placed{Chain: j, Op: int(c.key[j]), Painter: -1, Unit: unit})
			c.wait(at, at+i, 0)
			c.wait(at+i, at, 0)
		}
	}
	if old := int(c.key[s.at.dry+int(a.chain)]) - 1; old >= 0 && old != int(a.unit) {
		c.after[old] = append(c.after[old], wait{from: c.dry[a.chain], w: s.p.Chains[a.chain].Ops[c.key[a.chain]-1].Dry})
	}
	for i, j := range joined {
		s.advance(c.key, j)
		c.chain[j], c.dry[j] = at+i, at+i
	}
	if op.Painted {
		s.useCup(c.key)
		c.painter[a.painter] = at
	}
}

func (c *schedule) wait(from, to int, w int32) { c.waits = append(c.waits, wait{from, to, w}) }
