package plan

// checker gathers faults.
type checker struct {
	d   *Day
	all []Fault
}

// Check finds what is wrong with a day by its numbers alone, row by row.
func Check(d *Day) []Fault {
	c := &checker{d: d}
	c.shop()
	for j := range d.Jobs {
		c.job(j)
	}
	if len(c.all) > 0 {
		return c.all
	}
	for i := range d.Done {
		c.done(i)
	}
	if len(c.all) == 0 {
		c.overlaps()
	}
	for i := range d.Pins {
		c.pin(i)
	}
	return c.all
}

// number faults a field that is not between two limits.
//
//go:noinline
func (c *checker) number(r Ref, field string, has, least, most int) {
	if has < least || has > most {
		needs := least
		if has > most {
			needs = most
		}
		c.all = append(c.all, Fault{Rule: BadNumber, Ref: r, Product: -1, Field: field, Has: has, Needs: needs})
	}
}

// many faults a list that is too long.
func (c *checker) many(field string, has, most int) {
	if has > most {
		c.all = append(c.all, Fault{Rule: TooMany, Ref: Ref{Job: -1}, Product: -1, Field: field, Has: has, Needs: most})
	}
}

func (c *checker) shop() {
	d, none := c.d, Ref{Job: -1}
	steps := 0
	for j := range d.Jobs {
		steps += len(d.Jobs[j].Coats) + 2
	}
	c.many("Jobs", len(d.Jobs), mostJobs)
	c.many("Coats", steps, mostSteps)
	c.many("Breaks", len(d.Breaks), mostBreaks)
	for _, f := range []struct {
		name      string
		has, most int
	}{
		{"Painters", d.Painters, 8}, {"Booths", d.Booths, 8}, {"PrepBays", d.PrepBays, 8}, {"Ovens", d.Ovens, 8}, {"Room", d.Room, mostJobs},
		{"Walk", d.Walk, lasting}, {"Door", d.Door, lasting}, {"Clean", d.Clean, lasting}, {"CupHolds", d.CupHolds, most}, {"CupLoses", d.CupLoses, most},
		{"Now", d.Now, longest}, {"Products", len(d.Products), 64}, {"Aim", max(d.Aim.Late, d.Aim.Finish, d.Aim.Rinse, d.Aim.Trip, d.Aim.Cup, d.Aim.LeftOver), heaviest},
		{"Aim", -min(d.Aim.Late, d.Aim.Finish, d.Aim.Rinse, d.Aim.Trip, d.Aim.Cup, d.Aim.LeftOver, 0), 0},
	} {
		c.number(none, f.name, f.has, 0, f.most)
	}
	for i, p := range d.Products {
		c.number(Ref{Job: -1, Coat: i}, "Mix", p.Mix, 0, lasting)
		c.number(Ref{Job: -1, Coat: i}, "PotLife", p.PotLife, 0, longest)
		row := 0
		if i < len(d.Rinse) {
			row = len(d.Rinse[i])
		}
		c.number(Ref{Job: -1, Coat: i}, "Rinse", row, len(d.Products), len(d.Products))
		for k := 0; k < row; k++ {
			c.number(Ref{Job: -1, Coat: i}, "Rinse", d.Rinse[i][k], 0, lasting)
		}
	}
	for i, b := range d.Breaks {
		c.number(Ref{Job: -1, Coat: i}, "Breaks", b.From, 0, longest)
		c.number(Ref{Job: -1, Coat: i}, "Breaks", b.To, b.From, longest)
		c.number(Ref{Job: -1, Coat: i}, "Breaks", b.Painter, 0, count(d.Painters))
	}
}

func (c *checker) job(j int) {
	job, r := &c.d.Jobs[j], Ref{Job: j}
	c.number(r, "Ready", job.Ready, 0, longest)
	c.number(r, "Promised", job.Promised, 0, longest)
	c.number(r, "Priority", job.Priority, 0, 1000)
	c.number(r, "Prep", job.Prep.Minutes, 0, lasting)
	c.number(r, "Bake", job.Bake.Minutes, 0, lasting)
	c.number(r, "Heat", job.Bake.Heat, 0, longest)
	c.number(r, "Coats", len(job.Coats), 0, mostRows)
	if len(job.Coats) == 0 && job.Prep.Minutes == 0 && (job.Bake.Minutes == 0 || !job.Bake.InOven) {
		c.number(r, "Coats", 0, 1, mostRows)
	}
	for i := range job.Coats {
		coat, r := &job.Coats[i], Ref{Job: j, Kind: Spray, Coat: i}
		bad := len(c.all)
		c.number(r, "Product", coat.Product, 0, len(c.d.Products)-1)
		c.number(r, "Spray", coat.Spray, 1, lasting)
		c.number(r, "Amount", coat.Amount, 0, most)
		c.number(r, "Flash", coat.Flash, 0, lasting)
		c.number(r, "Latest", coat.Latest, 0, longest)
		if len(c.all) == bad {
			c.coat(r)
		}
	}
}

// coat checks a coat against its product and against what follows it.
func (c *checker) coat(r Ref) {
	coat := &c.d.Jobs[r.Job].Coats[r.Coat]
	product := &c.d.Products[coat.Product]
	if least := product.Mix + c.d.Walk + c.d.Door + coat.Spray; product.PotLife > 0 && product.PotLife < least {
		c.all = append(c.all, Fault{Rule: PotLife, Ref: r, Product: coat.Product, Has: product.PotLife, Needs: least})
	}
	if c.d.CupHolds > 0 && coat.Amount > c.d.CupHolds {
		c.all = append(c.all, Fault{Rule: CupSize, Ref: r, Product: coat.Product, Has: c.d.CupHolds, Needs: coat.Amount})
	}
	if coat.Latest > 0 && coat.Latest < coat.Flash {
		c.all = append(c.all, Fault{Rule: LatestRecoat, Ref: r, Product: -1, Has: coat.Latest, Needs: coat.Flash})
	}
}
