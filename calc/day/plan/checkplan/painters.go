package checkplan

import "spraywright/calc/day/plan"

// clean is a gun with nothing in it.
const clean = -1

// painters follows each painter through the day: one thing at a time, none in a break, the gun rinsed for what follows,
// the walk into the booth where there has to be one.
func (c *checker) painters() {
	trips := 0
	for u := 1; u <= units(c.d.Painters); u++ {
		var own []plan.Step
		for _, s := range c.p.Steps {
			if s.Painter == u && s.Kind != plan.Flash {
				own = append(own, s)
			}
		}
		c.apart(own, u)
		trips += c.follow(own, u)
	}
	if trips != c.p.Trips {
		c.fault("trips", c.p.Trips, trips)
	}
}

func (c *checker) apart(own []plan.Step, u int) {
	for i, s := range own {
		for _, o := range own[:i] {
			if s.Start < o.End && o.Start < s.End && !(s.Done && o.Done) {
				c.fault("painter does two things at once", u, s.Start, o.Start)
			}
		}
		if s.Done {
			continue
		}
		if s.Start < c.d.Now {
			c.fault("work before now", u, s.Start)
		}
		for _, b := range c.d.Breaks {
			if (b.Painter == 0 || b.Painter == u) && b.From < b.To && s.Start < b.To && b.From < s.End {
				c.fault("work in a break", u, s.Start, b.From)
			}
		}
	}
}

// hand is a painter as the day goes on.
type hand struct {
	product, cup, booth int // what is in the gun; where the painter is, 0 for outside
	end                 int // of the last work
	rinse, mix, walk    plan.Step
}

// follow goes through one painter's steps, and counts the walks.
func (c *checker) follow(own []plan.Step, u int) int {
	h := hand{product: clean}
	trips := 0
	for _, s := range own {
		switch s.Kind {
		case plan.Rinse:
			h.rinse = s
		case plan.Mix:
			h.mix = s
		case plan.Walk:
			h.walk = s
		case plan.PrepStep:
			c.rinsed(&h, s, clean, c.d.Clean)
			h.product, h.cup, h.booth, h.end = clean, 0, 0, s.End
			h.rinse, h.mix, h.walk = plan.Step{}, plan.Step{}, plan.Step{}
		case plan.Spray:
			if !s.Done && c.sprayed(&h, s, u) {
				trips++
			}
			h.product, h.cup, h.booth, h.end = s.Product, s.Cup, s.Place, s.End
			h.rinse, h.mix, h.walk = plan.Step{}, plan.Step{}, plan.Step{}
		}
	}
	return trips
}

// rinsed checks the rinse before a step: as long as the products ask for, after the work before.
func (c *checker) rinsed(h *hand, s plan.Step, to, minutes int) {
	if s.Done {
		return
	}
	if h.product == clean {
		minutes = 0
	}
	if h.rinse.End-h.rinse.Start != minutes {
		c.fault("rinse has other minutes", s.Job, s.Coat, h.product, to, minutes, h.rinse.End-h.rinse.Start)
	}
	if minutes > 0 && h.rinse.Start < h.end {
		c.fault("rinse before the work it follows", s.Job, s.Coat)
	}
}

// sprayed checks what leads to a coat, and tells whether the painter walked in for it.
func (c *checker) sprayed(h *hand, s plan.Step, u int) bool {
	fresh := c.first(s)
	rinse := 0
	if h.product != clean && h.cup != s.Cup {
		rinse = c.d.Rinse[h.product][s.Product]
	}
	c.rinsed(h, s, s.Product, rinse)
	mix := 0
	if fresh {
		mix = c.d.Products[s.Product].Mix
	}
	out := fresh || h.booth != s.Place || rinse > 0 && !c.d.RinseInBooth || c.wentOut(h, s, u)
	walk := 0
	if out {
		walk = c.d.Walk + c.d.Door
	}
	if h.mix.End-h.mix.Start != mix || h.walk.End-h.walk.Start != walk {
		c.fault("mixing or walking has other minutes", s.Job, s.Coat, mix, walk)
	}
	if mix > 0 && h.mix.End != s.Start-walk || walk > 0 && h.walk.End != s.Start {
		c.fault("mixing or walking not right before", s.Job, s.Coat)
	}
	if rinse > 0 && h.rinse.End > s.Start-walk-mix {
		c.fault("rinse too late", s.Job, s.Coat)
	}
	if fresh && s.Cup > 0 && c.p.Cups[s.Cup-1].Mixed != s.Start-walk-mix {
		c.fault("cup mixed at another time", s.Job, s.Coat)
	}
	return out
}

// wentOut tells whether a break or a bake took the painter out of the booth since the last work.
func (c *checker) wentOut(h *hand, s plan.Step, u int) bool {
	for _, b := range c.d.Breaks {
		if (b.Painter == 0 || b.Painter == u) && b.From >= h.end && b.To <= s.Start && b.To > b.From {
			return true
		}
	}
	for _, o := range c.p.Steps {
		if o.Kind == plan.Heat && !c.d.Jobs[o.Job].Bake.InOven && o.Place == s.Place && o.Start >= h.end && o.End <= s.Start {
			return true
		}
	}
	return false
}

// first tells whether a coat is the first out of its cup.
func (c *checker) first(s plan.Step) bool {
	for _, o := range c.p.Steps {
		if o.Kind == plan.Spray && o.Cup == s.Cup && (o.Start < s.Start || o.Start == s.Start && o.End < s.End) {
			return false
		}
	}
	return true
}
