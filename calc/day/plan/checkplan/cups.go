package checkplan

import "spraywright/calc/day/plan"

// cups checks what comes out of each cup: one product, one painter, in time, no more than it holds, and all coats that
// belong together.
func (c *checker) cups() {
	seen := make([]int, len(c.p.Cups)) // the painter
	used := make([]int, len(c.p.Cups)) // mL
	lastOut := make([]int, len(c.p.Cups))
	owner := make([]int, len(c.p.Cups))
	for _, s := range c.p.Steps {
		if s.Kind != plan.Spray {
			continue
		}
		i := s.Cup - 1
		if i < 0 || i >= len(c.p.Cups) {
			c.fault("coat without a cup", s.Job, s.Coat)
			continue
		}
		cup := &c.p.Cups[i]
		coat := c.d.Jobs[s.Job].Coats[s.Coat]
		if seen[i] == 0 {
			seen[i], owner[i] = s.Painter, s.Job
		}
		if seen[i] != s.Painter || cup.Product != coat.Product || cup.Painter != s.Painter {
			c.fault("cup of another painter or product", s.Job, s.Coat)
		}
		if owner[i] != s.Job && !c.d.ShareCups && !s.Done {
			c.fault("cup shared", s.Job, s.Coat)
		}
		used[i] += coat.Amount
		lastOut[i] = max(lastOut[i], s.End)
		life := c.d.Products[coat.Product].PotLife
		if !s.Done && c.lost(s.Cup) {
			c.fault("out of a cup that is gone", s.Job, s.Coat, s.Cup)
		}
		if life > 0 && !s.Done && s.End > cup.Mixed+life {
			c.fault("past its pot life", s.Job, s.Coat, s.End, cup.Mixed+life)
		}
		if life > 0 && cup.UseBy != cup.Mixed+life || life == 0 && cup.UseBy != -1 {
			c.fault("use by", i, cup.UseBy)
		}
	}
	for i := range c.p.Cups {
		if used[i] != c.p.Cups[i].Amount || lastOut[i] != c.p.Cups[i].LastOut {
			c.fault("amount or last use of cup", i, used[i], c.p.Cups[i].Amount)
		}
		if c.d.CupHolds > 0 && used[i] > c.d.CupHolds && !c.p.Cups[i].Done {
			c.fault("more than a cup holds", i, used[i])
		}
	}
}

// lost tells whether one of the coats that came out of a cup is said to have been the last.
func (c *checker) lost(cup int) bool {
	for _, s := range c.p.Steps {
		for _, x := range c.d.Done {
			if s.Kind == plan.Spray && s.Cup == cup && s.Done && x.Ref == (plan.Ref{Job: s.Job, Kind: s.Kind, Coat: s.Coat}) && x.Gone {
				return true
			}
		}
	}
	return false
}
