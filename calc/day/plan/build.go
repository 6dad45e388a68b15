package plan

import "spraywright/calc/day/plan/sequence"

// builder makes a Plan of placed operations.
type builder struct {
	d     *Day
	p     *sequence.Problem
	out   Plan
	facts int
}

func build(d *Day, p *sequence.Problem, placed []sequence.Placed, cost int64) Plan {
	b := &builder{d: d, p: p, facts: len(p.Facts)}
	b.out.Jobs = make([]JobEnd, len(d.Jobs))
	b.out.Cost = int(cost)
	for i := range placed {
		b.add(&placed[i], i < b.facts)
	}
	b.ends(placed)
	b.savings()
	b.out.LeftOver = 0
	for i := range b.out.Cups {
		if !b.out.Cups[i].Done {
			b.out.LeftOver += d.CupLoses
		}
	}
	order(b.out.Steps)
	return b.out
}

// add enters an operation and what goes before it.
func (b *builder) add(pl *sequence.Placed, done bool) {
	r := ref(b.d, pl.Chain, pl.Op)
	s := Step{Kind: r.Kind, Job: r.Job, Coat: r.Coat, Product: -1, Painter: pl.Painter + 1, Place: pl.Unit + 1, Latest: int(pl.Latest), Done: done}
	if r.Kind == Spray {
		s.Product, s.Cup = b.d.Jobs[r.Job].Coats[r.Coat].Product, pl.Cup
		b.cup(pl, r, done)
	}
	if !done && pl.Painter >= 0 {
		b.ready(s, pl)
	}
	s.Start, s.End = int(pl.Start), int(pl.End)
	b.out.Steps = append(b.out.Steps, s)
	if r.Kind == Spray {
		s.Kind, s.Cup, s.Painter, s.Latest, s.Done = Flash, 0, 0, -1, false
		s.Start, s.End = s.End, s.End+b.d.Jobs[r.Job].Coats[r.Coat].Flash
		b.out.Steps = append(b.out.Steps, s)
	}
}

// ready enters rinse, mix and walk before a painter's operation.
func (b *builder) ready(s Step, pl *sequence.Placed) {
	s.Latest = -1
	line := func(kind Kind, start, minutes int32) {
		if minutes > 0 {
			s.Kind, s.Start, s.End = kind, int(start), int(start+minutes)
			b.out.Steps = append(b.out.Steps, s)
		}
	}
	cup := s.Cup
	if pl.Rinse > 0 {
		s.Cup = 0
		line(Rinse, pl.RinseAt, pl.Rinse)
		s.Cup = cup
		b.out.Rinses++
		b.out.Rinsing += int(pl.Rinse)
	}
	mix := pl.Lead
	if pl.Trip {
		mix -= b.p.Trip
		b.out.Trips++
	}
	line(Mix, pl.Start-pl.Lead, mix)
	line(Walk, pl.Start-pl.Lead+mix, pl.Lead-mix)
}

// cup notes that a coat comes out of a cup.
func (b *builder) cup(pl *sequence.Placed, r Ref, done bool) {
	product := b.d.Jobs[r.Job].Coats[r.Coat].Product
	for len(b.out.Cups) < pl.Cup {
		c := Cup{Product: product, Painter: pl.Painter + 1, Mixed: int(pl.Mixed), UseBy: -1, Done: done}
		if life := b.d.Products[product].PotLife; life > 0 {
			c.UseBy = c.Mixed + life
		}
		b.out.Cups = append(b.out.Cups, c)
	}
	if pl.Cup == 0 {
		return
	}
	c := &b.out.Cups[pl.Cup-1]
	seen := false
	for _, x := range c.Coats {
		seen = seen || x.Job == r.Job
	}
	if !seen {
		c.Jobs++
	}
	c.Coats = append(c.Coats, r)
	c.Amount += b.d.Jobs[r.Job].Coats[r.Coat].Amount
	c.LastOut = max(c.LastOut, int(pl.End))
	c.Gone = c.Gone || done && b.d.Lost(b.d.sprayed(r.Job, r.Coat))
}

// ends notes when each job is done.
func (b *builder) ends(placed []sequence.Placed) {
	for i := range placed {
		ch := &b.p.Chains[placed[i].Chain]
		if placed[i].Op < len(ch.Ops)-1 {
			continue
		}
		e := &b.out.Jobs[placed[i].Chain]
		e.Done = int(placed[i].End + ch.Done)
		if ch.Due < sequence.Never {
			e.Late = max(0, e.Done-int(ch.Due))
		}
		b.out.Late += e.Late * int(ch.Priority)
		b.out.Finish = max(b.out.Finish, e.Done)
	}
}

// savings tells what sharing spares: each further batch would have had a cup of its own.
func (b *builder) savings() {
	for i := range b.out.Cups {
		c := &b.out.Cups[i]
		for _, r := range c.Coats[1:] {
			if n, _ := batch(b.d, r.Job, r.Coat); n > 0 {
				c.Saves += b.d.Products[c.Product].Mix + b.d.Walk + b.d.Door
			}
		}
	}
}

// order sorts steps by their starts; at equal times as they were.
func order(steps []Step) {
	if len(steps) < 2 {
		return
	}
	half := len(steps) / 2
	a, b := append([]Step(nil), steps[:half]...), append([]Step(nil), steps[half:]...)
	order(a)
	order(b)
	for i := range steps {
		if len(b) == 0 || len(a) > 0 && a[0].Start <= b[0].Start {
			steps[i], a = a[0], a[1:]
		} else {
			steps[i], b = b[0], b[1:]
		}
	}
}
