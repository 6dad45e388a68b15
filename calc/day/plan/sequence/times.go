package sequence

// settle finds the earliest ends that keep every wait, and places the rinses and mixes.
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
		pl.End = end[i]
		fact := i < len(c.s.p.Facts)
		if !fact {
			pl.Start = pl.End - c.s.p.Chains[pl.Chain].Ops[pl.Op].Minutes
		}
		pl.Latest = pl.Start + latest[i] - pl.End
		if pl.Painter < 0 {
			continue
		}
		if !fact {
			c.ready(pl, last[pl.Painter])
		}
		if pl.Fresh {
			mixed[pl.Cup] = pl.Mixed
		} else if pl.Cup > 0 {
			pl.Mixed = mixed[pl.Cup]
		}
		last[pl.Painter] = pl.End
	}
}

// ready puts times to the rinse and the mixing before an operation of a painter who was last at work until then.
func (c *schedule) ready(pl *Placed, last int32) {
	switch {
	case pl.Rinse == 0:
		pl.RinseAt = 0
	case pl.RinseAt == -2:
		pl.RinseAt = pl.Start - pl.Lead - pl.Rinse
	case pl.RinseAt <= 0:
		pl.RinseAt = max(last, c.s.p.Now)
	}
	if pl.Fresh {
		pl.Mixed = pl.Start - pl.Lead
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
