package day

import (
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/day/plan/checkplan"
)

const small = "paint.1.product=Ivory&paint.1.pot_life=60&job.1.job_name=Lids&job.1.bake_time=30&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10&coat.1.recoat_within=40&coat.1.coat_amount=200"

func TestBadRowsHaveProblemsOfTheirOwn(t *testing.T) {
	for _, tt := range []struct{ changes, field, says, fix string }{
		{"coat.1.flash=50", "coat.1.recoat_within", "leaves no time: flash-off alone takes 50\u202fmin", "Check both"},
		{"coat.1.flash_last=40", "coat.1.recoat_within", "leaves no time", "Check both"},
		{"paint.1.pot_life=15", "paint.1.pot_life", "one coat on Lids takes 16\u202fmin", "a hardener that gives 16\u202fmin"},
		{"job.1.promised_by=9:00&job.1.ready_from=10:00", "job.1.promised_by", "is 9:00, and the parts are there no sooner than 10:00", "Check both times"},
		{"coat.1.of_job=Forks", "coat.1.of_job", "“Forks” is not among them", "Write it as in its own row"},
		{"coat.1.product=Green", "coat.1.product", "“Green” is not among them", "Write it as in its own row"},
		{"job.2.job_name=+LIDS", "job.2.job_name", "stands twice", "a name of its own"},
		{"paint.2.product=ivory", "paint.2.product", "stands twice", "a name of its own"},
		{"job.2.job_name=Forks&coat.1.of_job=Lids", "job.2.job_name", "has no coats", "Add its coats"},
		{"job.2.job_name=Forks", "coat.1.of_job", "is blank", "Enter it: there are several"},
		{"cup_size=220", "coat.1.coat_amount", "is more than the 180\u202fmL", "Mix in something larger"},
		{"cup_size=40", "losses", "is as much as the cup holds", "Check both"},
		{"break.1.break_from=12:00&break.1.break_to=11:00", "break.1.break_to", "is not after it begins, 12:00", "Check both times"},
		{"break.1.break_from=12:00&break.1.break_to=13:00&break.1.painter_number=2", "break.1.painter_number", "is 2, and there are 1", "how many the shop has"},
		{"pin.1.day_step=spray&pin.1.coat_number=3", "pin.1.coat_number", "is 3, and Lids has 2", "Count the coats"},
		{"pin.1.day_step=prep", "pin.1.day_step", "is one that Lids does not have", "Choose another"},
		{"pin.1.day_step=bake&pin.1.held_at=9:00&pin.1.place_number=2", "pin.1.place_number", "is 2, and there are 1", "how many the shop has"},
		{"pin.1.day_step=spray&pin.1.coat_number=1&pin.1.held_at=9:00&now=10:00", "pin.1.held_at", "is too soon for Lids, coat 1", "10:00 is the nearest time"},
		{"done.1.day_step=spray&done.1.coat_number=2&done.1.started_at=8:00&done.1.ended_at=8:08", "done.1.day_step", "comes before what it follows is done", "earlier steps"},
	} {
		_, r := run(changedTo(calc.ParseForm(small), strings.ReplaceAll(tt.changes, "+", " ")))
		var own []calc.Problem
		for _, p := range r.Problems {
			if p.Field == tt.field {
				own = append(own, p)
			}
		}
		if !assert.Len(t, own, 1, "%s: %v", tt.changes, r.Problems) {
			continue
		}
		assert.Contains(t, own[0].Message, tt.says, tt.changes)
		assert.Contains(t, own[0].Fix, tt.fix, tt.changes)
	}
}

// The change that a problem names does what it promises, and one minute less does not.
func TestTheLeastChangeNamedIsTheLeast(t *testing.T) {
	// One painter: two jobs in one colour, held so that the second coat of the first falls into the other's.
	form := func(within string) calc.Form {
		return calc.ParseForm("paint.1.product=Ivory&job.1.job_name=Lids&job.2.job_name=Forks&rinse_same=0" +
			"&coat.1.of_job=Lids&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10&coat.1.recoat_within=" + within +
			"&coat.2.of_job=Forks&coat.2.coats=1&coat.2.spray_time=30&coat.2.flash=10" +
			"&pin.1.of_job=Lids&pin.1.day_step=spray&pin.1.coat_number=1&pin.1.held_at=9:00&pin.2.of_job=Forks&pin.2.day_step=spray&pin.2.coat_number=1&pin.2.held_at=9:10")
	}
	_, r := run(form("20"))
	require.NotEmpty(t, r.Problems)
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	fix := ""
	for _, p := range r.Problems {
		if p.Field == "coat.1.recoat_within" {
			fix = p.Fix
		}
	}
	require.Contains(t, fix, "It would fit if it were ")
	needs, _, _ := strings.Cut(strings.TrimPrefix(fix, "It would fit if it were "), "\u202f")
	_, r = run(form(needs))
	assert.Empty(t, r.Problems, "%s min", needs)
	minutes, err := strconv.Atoi(needs)
	require.NoError(t, err)
	_, r = run(form(strconv.Itoa(minutes - 1)))
	assert.NotEmpty(t, r.Problems, "a minute less")
	assert.Equal(t, "32", needs, "coat 1 ends at 9:08, the other job holds the painter until 9:40")
}

func TestAPromiseThatCannotBeKeptIsRuledOn(t *testing.T) {
	_, r := run(changedTo(calc.ParseForm(small), "job.1.promised_by=9:00"))
	require.Empty(t, r.Problems)
	assert.Equal(t, calc.Wait, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[0].Why, "cannot be done before 9:14")
	assert.Equal(t, "Give Lids until 9:14, or start it sooner", r.Verdict[0].Do)
}

// Numbers far from any shop's make a problem or a sound plan.
func TestWildNumbersHaveAnAnswer(t *testing.T) {
	for seed := range uint64(days) {
		form, r := random(seed), checkplan.Dice(seed+1000)
		keys := slices.Sorted(maps.Keys(form))
		for range 1 + r.Roll(6) {
			key := keys[r.Roll(len(keys))]
			form[key] = []string{"0.5", "1", "2", "9", "60", "240", "600", "1440", "8:00", "23:59"}[r.Roll(10)]
		}
		d, rep := run(form)
		if d.solver == nil {
			require.NotEmpty(t, rep.Problems, "%s", form)
			continue
		}
		require.Empty(t, checkplan.Check(&d.model, &d.plan), "%s", form)
		require.Empty(t, crowded(rep), "%s", form)
	}
}
