package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// simple is one job of two coats and a bake, which has a plan.
func simple() *plan.Day {
	return &plan.Day{
		Products: []plan.Product{{Mix: 5, PotLife: 60}},
		Rinse:    [][]int{{2}},
		Walk:     2, Door: 1,
		Jobs: []plan.Job{{
			Coats: []plan.Coat{{Spray: 10, Flash: 10, Latest: 30, Amount: 200}, {Spray: 10, Flash: 15, Latest: 60, Amount: 200}},
			Bake:  plan.Bake{Minutes: 30},
		}},
	}
}

func coat(i int) plan.Ref { return plan.Ref{Kind: plan.Spray, Coat: i} }

// bad are changes of the simple day that leave it without a plan, or a promise without hope.
var bad = map[string]struct {
	change func(d *plan.Day)
	want   plan.Fault
}{
	"flash longer than latest recoat": {
		func(d *plan.Day) { d.Jobs[0].Coats[0].Latest = 8 },
		plan.Fault{Rule: plan.LatestRecoat, Ref: coat(0), Product: -1, Has: 8, Needs: 10},
	},
	"pot life shorter than mixing, walking and spraying": {
		func(d *plan.Day) { d.Products[0].PotLife = 17 },
		plan.Fault{Rule: plan.PotLife, Ref: coat(0), Has: 17, Needs: 18},
	},
	"a coat larger than a cup": {
		func(d *plan.Day) { d.CupHolds = 150 },
		plan.Fault{Rule: plan.CupSize, Ref: coat(0), Has: 150, Needs: 200},
	},
	"promised before it can be done": {
		func(d *plan.Day) { d.Jobs[0].Ready, d.Jobs[0].Promised = 100, 90 },
		plan.Fault{Rule: plan.PromisedTooSoon, Product: -1, Has: 90, Needs: 175, Soft: true},
	},
	"no such product": {
		func(d *plan.Day) { d.Jobs[0].Coats[1].Product = 3 },
		plan.Fault{Rule: plan.BadNumber, Ref: coat(1), Product: -1, Field: "Product", Has: 3, Needs: 0},
	},
	// A new cup takes 2 of rinsing, 5 of mixing and 3 of walking.
	"no time for a new cup before the latest recoat": {
		func(d *plan.Day) {
			d.Jobs[0].Coats[0].Flash, d.Jobs[0].Coats[0].Latest, d.Jobs[0].Coats[1].NewCup = 5, 8, true
		},
		plan.Fault{Rule: plan.LatestRecoat, Ref: coat(0), Product: -1, Has: 8, Needs: 10},
	},
	"recoat limit over at this hour": {
		func(d *plan.Day) {
			d.Now, d.Products[0].PotLife = 100, 0
			d.Done = []plan.Done{{Ref: coat(0), Start: 50, End: 60, Mixed: 42}}
		},
		plan.Fault{Rule: plan.LatestRecoat, Ref: coat(0), Product: -1, Has: 30, Needs: 40},
	},
	// The cup is past its pot life at 102: another is mixed, which takes 10 more.
	"recoat limit and pot life over at this hour": {
		func(d *plan.Day) {
			d.Now = 100
			d.Done = []plan.Done{{Ref: coat(0), Start: 50, End: 60, Mixed: 42}}
		},
		plan.Fault{Rule: plan.LatestRecoat, Ref: coat(0), Product: -1, Has: 30, Needs: 50},
	},
	"pin before now": {
		func(d *plan.Day) { d.Now, d.Pins = 30, []plan.Pin{{Ref: coat(0), Start: 20}} },
		plan.Fault{Rule: plan.PinPast, Ref: coat(0), Product: -1, Has: 20, Needs: 30},
	},
	// The bake can start at 8+10+10+10+15 = 53 at the soonest.
	"pin too soon": {
		func(d *plan.Day) { d.Pins = []plan.Pin{{Ref: plan.Ref{Kind: plan.Heat}, Start: 50}} },
		plan.Fault{Rule: plan.PinTime, Ref: plan.Ref{Kind: plan.Heat}, Product: -1, Has: 50, Needs: 53},
	},
}

// Bad rows are named with what would do.
func TestFaults(t *testing.T) {
	for name, c := range bad {
		d := simple()
		c.change(d)
		_, faults := plan.New(d, 1)
		require.NotEmpty(t, faults, name)
		assert.Contains(t, faults, c.want, name)
	}
	_, faults := plan.New(simple(), 1)
	assert.Empty(t, faults)
}

// A named change makes an impossible day possible, and a minute less of it does not.
func TestRemedies(t *testing.T) {
	tried := 0
	for seed := uint64(0); seed < 300; seed++ {
		d := checkplan.Odd(2+int(seed%3), seed)
		s, _ := plan.New(d, seed)
		if s == nil {
			continue
		}
		best := s.Best()
		dice := checkplan.Dice(seed)
		later := slipped(d, &best, d.Now+dice.Roll(best.Finish-d.Now+1), 15+dice.Roll(60))
		if s, faults := plan.New(later, seed); s == nil {
			for _, f := range faults {
				if f.Needs >= 0 && !f.AllOf {
					tried++
					assert.True(t, possible(changed(later, f, f.Needs)), "seed %d: %+v", seed, f)
					assert.False(t, possible(changed(later, f, f.Needs-1)), "seed %d: %+v", seed, f)
				}
			}
		}
	}
	t.Log("changes tried:", tried)
}

func possible(d *plan.Day) bool {
	s, _ := plan.New(d, 1)
	return s != nil
}

// changed is the day with a fault's change made, other jobs that are impossible by themselves left out.
func changed(d *plan.Day, f plan.Fault, to int) *plan.Day {
	x := *d
	x.Jobs = append([]plan.Job(nil), d.Jobs...)
	x.Products = append([]plan.Product(nil), d.Products...)
	rule := f.Rule
	if rule == plan.Together {
		rule = f.Of
	} else {
		x.Done = nil
		for _, y := range d.Done {
			if y.Job == f.Job {
				y.Job = 0
				x.Done = append(x.Done, y)
			}
		}
		x.Jobs = x.Jobs[f.Job : f.Job+1]
		f.Job = 0
	}
	switch rule {
	case plan.LatestRecoat:
		x.Jobs[f.Job].Coats = append([]plan.Coat(nil), x.Jobs[f.Job].Coats...)
		x.Jobs[f.Job].Coats[f.Coat].Latest = to
	case plan.PotLife:
		x.Products[f.Product].PotLife = to
	}
	return &x
}
