package day

import (
	"strconv"

	"spraywright/calc/day/plan"
)

// A session remembers the last day that was planned, and its solver. It changes how long an answer takes, never the
// answer: the same day and number of steps give the same plan whether the solver began anew or went on.
type session struct {
	last   *day
	key    string // of the day below
	solver *plan.Solver
	faults []plan.Fault
	tried  int
}

const (
	seed       = 1
	stride     = 1000  // steps tried at one go; the same for every way to a number, so that the plan is, too
	firstTries = 2000  // where the form says nothing
	moreTries  = 20000 // what a page may ask for next
)

// solve plans a day by trying so many steps, rounded up to whole strides. tried tells how many the form would have to say
// for this plan.
func (s *session) solve(model *plan.Day, want int) (solver *plan.Solver, faults []plan.Fault, tried int) {
	want = (want + stride - 1) / stride * stride
	if key := keyOf(model); key != s.key || s.key == "" || s.tried > want {
		s.key, s.tried = key, 0
		s.solver, s.faults = plan.New(model, seed)
	}
	for ; s.solver != nil && s.tried < want && !s.solver.Settled(); s.tried += stride {
		s.solver.Improve(stride)
	}
	return s.solver, s.faults, want
}

// keyOf writes down all numbers of a day.
func keyOf(d *plan.Day) string {
	k := key{}
	k.ints(d.Painters, d.Booths, d.PrepBays, d.Ovens, d.Room, d.Clean, d.Walk, d.Door, d.CupHolds, d.CupLoses, d.Now, bit(d.RinseInBooth), bit(d.ShareCups))
	k.ints(d.Aim.Late, d.Aim.Finish, d.Aim.Rinse, d.Aim.Trip, d.Aim.Cup, d.Aim.LeftOver)
	for _, row := range d.Rinse {
		k.ints(row...)
	}
	for i := range d.Products {
		k.ints(d.Products[i].Mix, d.Products[i].PotLife)
	}
	for i := range d.Jobs {
		j := &d.Jobs[i]
		k.part()
		k.ints(j.Ready, j.Promised, j.Priority, j.Prep.Minutes, bit(j.Prep.ByPainter), j.Bake.Minutes, bit(j.Bake.InOven), j.Bake.Heat)
		for n := range j.Coats {
			c := &j.Coats[n]
			k.ints(c.Product, c.Spray, c.Amount, c.Flash, c.Latest, bit(c.NewCup), bit(c.Movable))
		}
	}
	k.part()
	for _, b := range d.Breaks {
		k.ints(b.From, b.To, b.Painter)
	}
	k.part()
	for _, x := range d.Done {
		k.ints(x.Job, int(x.Kind), x.Coat, x.Start, x.End, x.Painter, x.Place, x.Cup, x.Mixed)
	}
	k.part()
	for _, x := range d.Pins {
		k.ints(x.Job, int(x.Kind), x.Coat, x.Start, x.Painter, x.Place)
	}
	return string(k.b)
}

type key struct{ b []byte }

//go:noinline
func (k *key) ints(ns ...int) {
	for _, n := range ns {
		k.b = append(strconv.AppendInt(k.b, int64(n), 36), ' ')
	}
}

// part keeps lists of any length apart.
func (k *key) part() { k.b = append(k.b, '/') }

func bit(is bool) int {
	if is {
		return 1
	}
	return 0
}
