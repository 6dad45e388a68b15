package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// tape deals out numbers from a string of bytes; 0 when it is used up.
type tape []byte

// to is a number from 0 to n, and now and then one that is too small or too large.
func (p *tape) to(n int) int {
	if len(*p) == 0 {
		return 0
	}
	b := int((*p)[0])
	*p = (*p)[1:]
	switch b {
	case 254:
		return -1
	case 255:
		return n + 1 + n*1000
	}
	return b % (n + 1)
}

func (p *tape) is() bool { return p.to(1) == 1 }

// day makes a day of whatever numbers there are.
func (p *tape) day() *plan.Day {
	d := &plan.Day{
		Painters: p.to(2), Booths: p.to(2), PrepBays: p.to(2), Ovens: p.to(2), Room: p.to(3), Clean: p.to(9), RinseInBooth: p.is(),
		Walk: p.to(4), Door: p.to(4), ShareCups: p.is(), CupHolds: 100 * p.to(9), CupLoses: p.to(50), Now: p.to(200),
		Aim: plan.Aim{Late: p.to(250), Finish: p.to(10), Rinse: p.to(10), Trip: p.to(10), Cup: p.to(10), LeftOver: p.to(10)},
	}
	products := p.to(4)
	for range max(0, min(products, 80)) {
		d.Products = append(d.Products, plan.Product{Mix: p.to(9), PotLife: p.to(120)})
		row := []int(nil)
		for range products {
			row = append(row, p.to(9))
		}
		d.Rinse = append(d.Rinse, row)
	}
	for range max(0, min(p.to(4), 8)) {
		d.Jobs = append(d.Jobs, p.job(products))
	}
	for range max(0, min(p.to(2), 8)) {
		d.Breaks = append(d.Breaks, plan.Break{From: p.to(200), To: p.to(250), Painter: p.to(2)})
	}
	for range max(0, min(p.to(2), 8)) {
		d.Pins = append(d.Pins, plan.Pin{Ref: p.ref(), Start: p.to(250), Painter: p.to(2), Place: p.to(2)})
	}
	for range max(0, min(p.to(2), 8)) {
		x := plan.Done{Ref: p.ref(), Start: p.to(100), Painter: p.to(2), Place: p.to(2), Cup: p.to(2), Mixed: p.to(100), Gone: p.is()}
		x.End = x.Start + p.to(50)
		d.Done = append(d.Done, x)
	}
	return d
}

func (p *tape) ref() plan.Ref {
	return plan.Ref{Job: p.to(3), Kind: []plan.Kind{plan.PrepStep, plan.Spray, plan.Heat, plan.Mix}[max(0, p.to(3))%4], Coat: p.to(2)}
}

func (p *tape) job(products int) plan.Job {
	job := plan.Job{
		Ready: p.to(99), Promised: p.to(250), Priority: p.to(4), Prep: plan.Prep{Minutes: p.to(30) * p.to(1), ByPainter: p.is()},
		Bake: plan.Bake{Minutes: p.to(40) * p.to(1), InOven: p.is(), Heat: p.to(1)},
	}
	for range max(0, min(p.to(3), 6)) {
		job.Coats = append(job.Coats, plan.Coat{
			Product: p.to(max(0, products-1)), Spray: p.to(20), Amount: 10 * p.to(40), Flash: p.to(30), Latest: p.to(1) * p.to(200), NewCup: p.is(), Movable: p.is(),
		})
	}
	return job
}

// FuzzDay makes days of any numbers. Each has a fault or a plan, which keeps every rule; and so has the same day when a
// part of the plan is done.
func FuzzDay(f *testing.F) {
	for seed := range uint64(40) {
		dice, all := checkplan.Dice(seed), []byte(nil)
		for range 200 {
			all = append(all, byte(dice.Roll(254)))
		}
		f.Add(all)
	}
	f.Fuzz(func(t *testing.T, all []byte) {
		p := tape(all)
		d := p.day()
		best := planned(t, d)
		if best == nil || best.Finish <= d.Now || best.Finish > 1<<16 {
			return
		}
		later := slipped(d, best, d.Now+int(uint(p.to(250))%uint(best.Finish-d.Now)), max(0, min(30, p.to(30))))
		later.Pins = nil
		planned(t, later)
	})
}

// planned is the plan of a day after a few evaluations, nil where it has none.
func planned(t *testing.T, d *plan.Day) *plan.Plan {
	s, faults := plan.New(d, 1)
	if s == nil {
		require.NotEmpty(t, faults)
		return nil
	}
	first := s.Best()
	s.Improve(400)
	best := s.Best()
	require.Empty(t, checkplan.Check(d, &best), "%+v %+v", d, best)
	assert.LessOrEqual(t, best.Cost, first.Cost)
	assert.LessOrEqual(t, s.Bound().Cost, best.Cost)
	assert.LessOrEqual(t, s.Bound().Finish, best.Finish)
	return &best
}
