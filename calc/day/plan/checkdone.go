package plan

// done checks that what is done of a job is its first steps, one after the other.
func (c *checker) done(i int) {
	d, x := c.d, &c.d.Done[i]
	if !c.known(x.Ref, "Done") {
		return
	}
	c.number(x.Ref, "Done", x.Start, 0, longest)
	c.number(x.Ref, "Done", x.End, x.Start, longest)
	c.number(x.Ref, "Done", x.Mixed, 0, x.Start)
	c.number(x.Ref, "Painter", x.Painter, 0, count(d.Painters))
	c.number(x.Ref, "Place", x.Place, 0, c.places(x.Kind, x.Job))
	at, before, twice := index(d, x.Ref), 0, false
	for k := range d.Done {
		y := &d.Done[k]
		if y.Job != x.Job || k == i {
			continue
		}
		if o := index(d, y.Ref); o == at {
			twice = true
		} else if o >= 0 && o < at && y.End <= x.Start {
			before++
		}
	}
	if twice || before != at {
		c.all = append(c.all, Fault{Rule: DoneOrder, Ref: x.Ref, Product: -1, Has: before, Needs: at})
	}
}

// overlaps checks that no painter and no place did two things at once; bakes join.
func (c *checker) overlaps() {
	for i := range c.d.Done {
		for k := range c.d.Done[:i] {
			x, y := &c.d.Done[i], &c.d.Done[k]
			if x.Start >= y.End || y.Start >= x.End || x.Kind == Heat && y.Kind == Heat && x.Start == y.Start && x.End == y.End {
				continue
			}
			painter := c.painted(x) && c.painted(y) && count(x.Painter) == count(y.Painter)
			if painter || c.where(x) == c.where(y) {
				c.all = append(c.all, Fault{Rule: DoneOverlap, Ref: x.Ref, Product: -1, Has: x.Start, Needs: y.End})
			}
		}
	}
}

func (c *checker) painted(x *Done) bool {
	return x.Kind == Spray || x.Kind == PrepStep && c.d.Jobs[x.Job].Prep.ByPainter
}

// where numbers all places through.
func (c *checker) where(x *Done) int {
	kind := booth
	if x.Kind == PrepStep {
		kind = bay
	} else if x.Kind == Heat && c.d.Jobs[x.Job].Bake.InOven {
		kind = oven
	}
	return kind<<16 + count(x.Place)
}

func (c *checker) places(k Kind, job int) int {
	switch {
	case k == PrepStep:
		return count(c.d.PrepBays)
	case k == Heat && c.d.Jobs[job].Bake.InOven:
		return count(c.d.Ovens)
	}
	return count(c.d.Booths)
}

// known faults a reference to a step that there is not.
func (c *checker) known(r Ref, field string) bool {
	if r.Job < 0 || r.Job >= len(c.d.Jobs) || index(c.d, r) < 0 {
		c.all = append(c.all, Fault{Rule: BadNumber, Ref: r, Product: -1, Field: field, Has: r.Coat, Needs: -1})
		return false
	}
	return true
}

// pin checks that a pin holds a step to come, and is its only one.
func (c *checker) pin(i int) {
	x := &c.d.Pins[i]
	if !c.known(x.Ref, "Pins") {
		return
	}
	c.number(x.Ref, "Painter", x.Painter, 0, count(c.d.Painters))
	c.number(x.Ref, "Place", x.Place, 0, c.places(x.Kind, x.Job))
	c.number(x.Ref, "Start", x.Start, 0, longest)
	for k := range c.d.Pins[:i] {
		if same(c.d.Pins[k].Ref, x.Ref) {
			c.all = append(c.all, Fault{Rule: BadNumber, Ref: x.Ref, Product: -1, Field: "Pins", Has: 2, Needs: 1})
		}
	}
	for i := range c.d.Done {
		if same(c.d.Done[i].Ref, x.Ref) {
			c.all = append(c.all, Fault{Rule: PinPast, Ref: x.Ref, Product: -1, Has: x.Start, Needs: -1})
			return
		}
	}
	if least := max(c.d.Now, c.d.Jobs[x.Job].Ready); x.Start > 0 && x.Start < least {
		c.all = append(c.all, Fault{Rule: PinPast, Ref: x.Ref, Product: -1, Has: x.Start, Needs: least})
	}
}
