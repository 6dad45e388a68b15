package sequence

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
