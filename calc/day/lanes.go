package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
)

// A column is one painter, booth, bay or oven.
type column struct{ kind, number int }

// The kinds of column.
const (
	painters = iota
	booths
	bays
	ovens
)

// several and only name the columns of each kind.
var (
	several = [...]calc.Phrase{"Painter {n}", "Booth {n}", "Bay {n}", "Oven {n}"}
	only    = [...]calc.Phrase{"Painter", "Booth", "Prep bay", "Oven"}
)

func (d *day) count(kind int) int {
	return [...]int{d.model.Painters, d.model.Booths, d.model.PrepBays, d.model.Ovens}[kind]
}

// columns lists whoever and whatever has something to do.
func (d *day) columns() []column {
	var all []column
	for kind := range only {
		for n := 1; n <= d.count(kind); n++ {
			c := column{kind, n}
			busy := kind == painters
			for i := range d.plan.Steps {
				busy = busy || d.in(c, &d.plan.Steps[i])
			}
			if busy {
				all = append(all, c)
			}
		}
	}
	return all
}

// in reports whether a step keeps a painter or a place busy. Flash-off keeps nobody.
func (d *day) in(c column, s *plan.Step) bool {
	if c.kind == painters {
		return s.Painter == c.number && s.Kind != plan.Flash
	}
	kind := -1
	switch {
	case s.Kind == plan.PrepStep:
		kind = bays
	case s.Kind == plan.Heat && d.model.Ovens > 0:
		kind = ovens
	case s.Kind == plan.Spray || s.Kind == plan.Heat:
		kind = booths
	}
	return c.kind == kind && s.Place == c.number
}

// takes reports whether a break is one of this painter's.
func (c column) takes(b *plan.Break) bool {
	return c.kind == painters && (b.Painter == 0 || b.Painter == c.number)
}

// called names a column; by its number where there are several.
func (d *day) called(c column) string {
	if d.count(c.kind) > 1 {
		return d.voiced(several[c.kind], "n", itoa(c.number))
	}
	return d.voiced(only[c.kind])
}
