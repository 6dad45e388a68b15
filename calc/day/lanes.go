package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
)

// A column is one painter, booth, bay or oven.
type column struct {
	kind   int // 0 painter, 1 booth, 2 bay, 3 oven
	number int
}

// columns lists whoever and whatever has something to do.
func (d *day) columns() []column {
	var all []column
	for kind, n := range []int{d.model.Painters, d.model.Booths, d.model.PrepBays, d.model.Ovens} {
		for i := 1; i <= n; i++ {
			c := column{kind, i}
			busy := kind == 0
			for k := range d.plan.Steps {
				busy = busy || d.in(c, &d.plan.Steps[k])
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
	switch {
	case s.Kind == plan.Flash:
		return false
	case c.kind == 0:
		return s.Painter == c.number
	case s.Place != c.number:
		return false
	case s.Kind == plan.Spray:
		return c.kind == 1
	case s.Kind == plan.PrepStep:
		return c.kind == 2
	case s.Kind == plan.Heat && d.model.Ovens > 0:
		return c.kind == 3
	}
	return s.Kind == plan.Heat && c.kind == 1
}

// called names a column; by its number where there are several.
func (d *day) called(c column) calc.Text {
	n := whole(c.number, "n")
	several := []int{d.model.Painters, d.model.Booths, d.model.PrepBays, d.model.Ovens}[c.kind] > 1
	switch {
	case c.kind == 0 && several:
		return calc.Say("Painter {n}", n)
	case c.kind == 0:
		return calc.Say("Painter")
	case c.kind == 1 && several:
		return calc.Say("Booth {n}", n)
	case c.kind == 1:
		return calc.Say("Booth")
	case c.kind == 2 && several:
		return calc.Say("Bay {n}", n)
	case c.kind == 2:
		return calc.Say("Prep bay")
	case several:
		return calc.Say("Oven {n}", n)
	}
	return calc.Say("Oven")
}

// lanes lists what the two pictures show.
func (d *day) lanes() {
	for _, c := range d.columns() {
		for i := range d.plan.Steps {
			if s := &d.plan.Steps[i]; d.in(c, s) {
				d.List(byLane, calc.Told(d.called(c)), told(s.Start), told(s.End), calc.Told(d.doing(s)).About(of(stepRef(s))))
			}
		}
		for i := range d.model.Breaks {
			if b := &d.model.Breaks[i]; c.kind == 0 && (b.Painter == 0 || b.Painter == c.number) {
				d.List(byLane, calc.Told(d.called(c)), told(b.From), told(b.To), calc.Told(calc.Say("Break")))
			}
		}
	}
	for j, x := range d.jobs {
		for i := range d.plan.Steps {
			if s := &d.plan.Steps[i]; s.Job == j && own(s.Kind) {
				d.List(byJob, named(x.name), told(s.Start), told(s.End), calc.Told(d.doing(s)).About(of(stepRef(s))))
			}
		}
	}
}

// own reports whether a step happens to the parts.
func own(k plan.Kind) bool {
	return k == plan.PrepStep || k == plan.Spray || k == plan.Flash || k == plan.Heat
}
