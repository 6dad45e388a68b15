package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// Every plan of random days, from the first on, passes the independent checker.
func TestPlansAreSound(t *testing.T) {
	made := 0
	for seed := uint64(0); seed < 3000; seed++ {
		n := 1 + int(seed%6)
		d := checkplan.Odd(n, seed)
		s, faults := plan.New(d, seed)
		if s == nil {
			require.NotEmpty(t, faults, "seed %d", seed)
			continue
		}
		made++
		first := s.Best()
		require.Empty(t, checkplan.Check(d, &first), "first plan of seed %d", seed)
		s.Improve(1000)
		best := s.Best()
		require.Empty(t, checkplan.Check(d, &best), "seed %d", seed)
		assert.LessOrEqual(t, best.Cost, first.Cost)
		assert.LessOrEqual(t, s.Bound().Cost, best.Cost)
		assert.LessOrEqual(t, s.Bound().Finish, best.Finish)
	}
	t.Log("days with a plan:", made)
}

// A day replanned from some moment keeps what is done and passes the checker. Where it has become impossible, a named
// change makes it possible again, and one minute less does not.
func TestReplanning(t *testing.T) {
	made, not := 0, 0
	for seed := uint64(0); seed < 400; seed++ {
		d := checkplan.Odd(2+int(seed%4), seed)
		s, _ := plan.New(d, seed)
		if s == nil {
			continue
		}
		best := s.Best()
		dice := checkplan.Dice(seed)
		later := slipped(d, &best, d.Now+dice.Roll(best.Finish-d.Now+1), dice.Roll(2)*dice.Roll(15))
		again, faults := plan.New(later, seed)
		if again == nil {
			require.NotEmpty(t, faults, "seed %d", seed)
			not++
			continue
		}
		made++
		again.Improve(2000)
		replanned := again.Best()
		require.Empty(t, checkplan.Check(later, &replanned), "seed %d", seed)
	}
	t.Log("replanned:", made, "impossible:", not)
}

// slipped is the day at a moment of its plan: what has started is done, or will be some minutes later than planned.
func slipped(d *plan.Day, p *plan.Plan, now, late int) *plan.Day {
	later := *d
	later.Now, later.Done = now+late, nil
	for _, s := range p.Steps {
		if s.Start >= now || s.Kind != plan.PrepStep && s.Kind != plan.Spray && s.Kind != plan.Heat {
			continue
		}
		x := plan.Done{Ref: plan.Ref{Job: s.Job, Kind: s.Kind, Coat: s.Coat}, Start: s.Start, End: s.End, Painter: s.Painter, Place: s.Place, Cup: s.Cup}
		if s.Cup > 0 {
			x.Mixed = p.Cups[s.Cup-1].Mixed
		}
		later.Done = append(later.Done, x)
	}
	return &later
}

// Nothing more comes out of a cup that is lost, and what is left of the day is planned with another; also once coats out of
// that one are done.
func TestACupThatIsLost(t *testing.T) {
	made, mixed := 0, 0
	for seed := uint64(0); seed < 1000; seed++ {
		d := checkplan.Odd(2+int(seed%4), seed)
		s, _ := plan.New(d, seed)
		if s == nil {
			continue
		}
		best := s.Best()
		dice := checkplan.Dice(seed)
		now := d.Now + dice.Roll(best.Finish-d.Now+1)
		for range 2 {
			later := slipped(d, &best, now, 0)
			whole := len(best.Cups)
			lose(later, d.Done, &dice)
			again, faults := plan.New(later, seed)
			if again == nil {
				require.NotEmpty(t, faults, "seed %d", seed)
				break
			}
			again.Improve(500)
			best = again.Best()
			require.Empty(t, checkplan.Check(later, &best), "seed %d", seed)
			made++
			if len(best.Cups) > whole {
				mixed++
			}
			d, now = later, min(best.Finish, now+10+dice.Roll(40))
		}
	}
	t.Log("replanned:", made, "with a cup more:", mixed)
	assert.Greater(t, mixed, 50)
}

// lose says of one coat that is done that it was the last out of its cup, and once more what was said before.
func lose(d *plan.Day, before []plan.Done, dice *checkplan.Dice) {
	for i := range d.Done {
		for _, x := range before {
			d.Done[i].Gone = d.Done[i].Gone || x.Gone && x.Ref == d.Done[i].Ref
		}
	}
	if len(d.Done) == 0 {
		return
	}
	if x := &d.Done[dice.Roll(len(d.Done))]; x.Kind == plan.Spray {
		if x.Gone = true; dice.Roll(4) == 0 {
			x.Cup = 0
		}
	}
}

// Days of many jobs have a sound plan at once, replanned or not, or a named reason why not.
func TestManyJobs(t *testing.T) {
	days := []*plan.Day{checkplan.Day(30, 1), checkplan.Day(100, 1), checkplan.Day(128, 1)}
	for seed := uint64(1); seed <= 12; seed++ {
		days = append(days, checkplan.Odd(30, seed))
	}
	made := 0
	for i, d := range days {
		s, faults := plan.New(d, 1)
		if s == nil {
			assert.False(t, faults[0].Unknown, "day %d", i)
			continue
		}
		made++
		best := s.Best()
		require.Empty(t, checkplan.Check(d, &best), "day %d", i)
		dice := checkplan.Dice(i)
		later := slipped(d, &best, d.Now+dice.Roll(best.Finish-d.Now), dice.Roll(2)*dice.Roll(25))
		again, faults := plan.New(later, 1)
		if again == nil {
			assert.False(t, faults[0].Unknown, "day %d replanned", i)
			continue
		}
		again.Improve(500)
		best = again.Best()
		require.Empty(t, checkplan.Check(later, &best), "day %d replanned", i)
	}
	assert.Greater(t, made, 12)
}
