package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// check rejects what cannot be true together in one row, before anything is planned.
func (d *day) check() {
	for p := range d.paints {
		d.checkPotLife(p)
	}
	all := 0
	for j, x := range d.jobs {
		m := &d.model.Jobs[j]
		if len(m.Coats) == 0 && m.Prep.Minutes == 0 && (m.Bake.Minutes == 0 || !m.Bake.InOven) {
			reject(x.Entry, &field.JobName, "has no coats", "Add its coats, or take it out")
		}
		if len(m.Coats) > mostCoats {
			reject(x.Entry, &field.JobName, "has {n} coats; a plan holds {most}", "Split it in two", args("n", itoa(len(m.Coats)), "most", itoa(mostCoats))...)
		}
		if last := len(m.Coats) - 1; last >= 0 && m.Bake.Minutes == 0 {
			m.Coats[last].Latest = 0 // nothing follows it
		}
		for _, r := range x.rounds {
			d.checkRound(r, m)
		}
		all += len(m.Coats)
	}
	if all > mostInAll {
		reject(d.Entry, &coats, "come to {n} in all; a plan holds {most}", "Split the day in two", args("n", itoa(all), "most", itoa(mostInAll))...)
	}
}

// How many coats one job may have, and all together.
const (
	mostCoats = 90
	mostInAll = 1500
)

func (d *day) checkRound(r *round, m *plan.Job) {
	flash := 0
	for i := range r.n {
		if c := m.Coats[r.first+i]; c.Latest > 0 {
			flash = max(flash, c.Flash)
		}
	}
	if within := given(r.Entry, &field.RecoatWithin); within.Given() && down(r.Entry, &field.RecoatWithin) <= flash {
		reject(r.Entry, &field.RecoatWithin, "leaves no time: flash-off alone takes {flash}", "Check both on the data sheet", mins(flash, "flash"))
	}
	if d.model.CupHolds > 0 && up(r.Entry, &field.CoatAmount) > d.model.CupHolds {
		d.smallCup(r)
	}
}

// smallCup says that one coat takes more than one cup.
func (d *day) smallCup(r *round) {
	reject(r.Entry, &field.CoatAmount, "is more than the {cup} that can be sprayed out of one cup", "Mix in something larger, or split the parts into two jobs",
		calc.N(float64(d.model.CupHolds), unit.Millilitre).To(0, "cup"))
}

// checkPotLife holds a pot life to the longest coat: mixing, walking in and spraying have to fit in it.
func (d *day) checkPotLife(p int) {
	x, least, of := &d.model.Products[p], 0, 0
	for j := range d.model.Jobs {
		for _, c := range d.model.Jobs[j].Coats {
			if needs := x.Mix + d.model.Walk + d.model.Door + c.Spray; c.Product == p && needs > least {
				least, of = needs, j
			}
		}
	}
	if x.PotLife > 0 && x.PotLife < least {
		reject(d.paints[p].Entry, &field.PotLife, "is over too soon: to mix, walk in and spray one coat on {job} takes {least}",
			"Spray fewer parts at a time, or use a hardener that gives {least}", append(args("job", d.jobs[of].name), mins(least, "least"))...)
	}
}
