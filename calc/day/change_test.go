package day

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// changeOf puts a change to a form; the rest of the change is as a link would write it.
func changeOf(form calc.Form, change string) calc.Report {
	in := calc.ParseForm(change)
	in["day_form"] = form.String()
	return (&session{}).dayChange().Run(in)
}

// changedForm is the form after a change that must succeed.
func changedForm(t *testing.T, form calc.Form, change string) calc.Form {
	t.Helper()
	r := changeOf(form, change)
	require.Empty(t, r.Problems)
	return calc.ParseForm(r.Figures[0].Text)
}

func TestAHeldStepStaysAndIsLetGo(t *testing.T) {
	form := demo(t)
	held := changedForm(t, form, "day_change=hold&step_of=2-5-1&to_time=11:00&by_painter=2")
	d, r := run(held)
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	rows := rowsOf(r, "by_job")
	at := slices.IndexFunc(rows, func(row []calc.Figure) bool { return row[3].Of == "2-5-1" })
	require.GreaterOrEqual(t, at, 0)
	assert.Equal(t, "11:00", rows[at][1].Text)
	assert.Equal(t, 2, (&changing{day: d}).planned(plan.Ref{Job: 1, Kind: plan.Spray}).Painter)
	again := changedForm(t, held, "day_change=hold&step_of=2-5-1&to_time=11:30")
	assert.Len(t, again.Rows("pin"), 1, "a step is held once")
	assert.Equal(t, form, changedForm(t, again, "day_change=free&step_of=2-5-1"))
}

// begun lists the steps of a plan that begin before a time, as the plan names them.
func begun(d *day, by int) (names []string) {
	for i := range d.plan.Steps {
		if s := &d.plan.Steps[i]; s.Kind == stepRef(s).Kind && s.Start < by {
			names = append(names, of(stepRef(s)))
		}
	}
	return names
}

func TestPlanningAgainFromNow(t *testing.T) {
	form := changedTo(demo(t), "tried=40000")
	before, _ := run(form)
	names := begun(before, 9*60+40)
	later := changedForm(t, form, "day_change=now&to_time=9:40&counted="+strings.Join(names, "+"))
	d, r := run(later)
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	require.Greater(t, len(names), 3)
	assert.Len(t, later.Rows("done"), len(names))
	assert.NotEmpty(t, r.Rows, "what is done reads as sentences")
	// And once more, some time later: what was done stays done, at the same times.
	last := changedForm(t, later, "day_change=now&to_time=10:30&counted="+strings.Join(begun(d, 10*60+30), "+"))
	was := r.Rows
	d, r = run(last)
	require.Empty(t, r.Problems)
	assert.Greater(t, len(r.Rows), len(was))
	for _, row := range was {
		assert.True(t, slices.ContainsFunc(r.Rows, func(x calc.RowText) bool { return x.Text == row.Text }), row.Text)
	}
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
}

// A coat that nobody has ticked off is not on: it is planned again, and the painter is told what was counted.
func TestNothingIsDoneThatNobodyTicked(t *testing.T) {
	form := demo(t)
	before, _ := run(form)
	r := changeOf(form, "day_change=now&to_time=9:40")
	require.Empty(t, r.Problems)
	assert.Equal(t, "Planned again from 9:40.", r.Figures[1].Text)
	later := calc.ParseForm(r.Figures[0].Text)
	assert.Empty(t, later.Rows("done"))
	d, r := run(later)
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	assert.Empty(t, begun(d, 9*60+40))

	second := ""
	for i := range before.plan.Steps {
		if s := &before.plan.Steps[i]; s.Kind == plan.Spray && s.Coat == 1 {
			second = of(stepRef(s))
			break
		}
	}
	r = changeOf(form, "day_change=now&to_time=11:00&counted="+second)
	require.Empty(t, r.Problems)
	assert.Contains(t, r.Figures[1].Text, "coat 2", "the coat itself")
	assert.Contains(t, r.Figures[1].Text, "coat 1", "what it cannot be without")
	later = calc.ParseForm(r.Figures[0].Text)
	for _, n := range later.Rows("done") {
		assert.Equal(t, later["done.1.of_job"], later["done."+n+".of_job"], "only what was named, and what it follows")
	}
}

// A change is made to the plan that its form names, also when the search has gone on to better ones, and leaves the
// search where it is.
func TestAChangeIsMadeToThePlanItNames(t *testing.T) {
	s := &session{}
	change := func(s *session, tried string) string {
		return s.dayChange().Run(calc.Form{"day_form": changedTo(demo(t), "tried="+tried).String(), "day_change": "done", "step_of": "2-5-1"}).Figures[0].Text
	}
	s.day().Run(changedTo(demo(t), "tried=60000"))
	plans := map[string]bool{}
	for _, tried := range []string{"0", "2000", "20000", "60000"} {
		made := change(s, tried)
		assert.Equal(t, change(&session{}, tried), made, "%s steps", tried)
		plans[made] = true
	}
	assert.Greater(t, len(plans), 1)
	assert.Equal(t, 60000, s.tried)
	s.dayChange().Run(calc.Form{"day_form": changedTo(demo(t), "tried=60000").String(), "day_change": "add", "added": "job.1.job_name=Racks"})
	assert.Equal(t, 60000, s.tried, "jobs need no plan to be added to")
}

func TestWhatSlippedIsPlannedAround(t *testing.T) {
	form := demo(t)
	_, r := run(form)
	first := rowsOf(r, "by_job")[0]
	late := changedForm(t, form, "day_change=done&step_of="+first[3].Of+"&end_time=8:40")
	d, r := run(changedTo(late, "now=8:45"))
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	undone := changedForm(t, late, "day_change=undo&step_of="+first[3].Of)
	assert.Empty(t, undone.Rows("done"))
}

// What is left in a cup past its pot life is thrown away, and another is mixed.
func TestAHalfUsedCupIsGoneWhenTheDaySlips(t *testing.T) {
	const day = "tried=2000&paint.1.product=Clear&paint.1.pot_life=60&job.1.job_name=A&coat.1.of_job=A&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10" +
		"&done.1.of_job=A&done.1.day_step=spray&done.1.coat_number=1&done.1.started_at=8:08&done.1.ended_at=8:16&now=10:00"
	d, r := run(calc.ParseForm(day))
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	assert.Len(t, d.plan.Cups, 2)
	soon, r := run(calc.ParseForm(strings.Replace(day, "now=10:00", "now=8:20", 1)))
	require.Empty(t, r.Problems)
	assert.Len(t, soon.plan.Cups, 1)
}

// A coat that is done before the plan had even its cup mixed leaves a day that can be planned.
func TestACoatDoneSoonerThanPlanned(t *testing.T) {
	form := changedTo(demo(t), "tried=20000")
	d, _ := run(form)
	n := 0
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		if s.Kind != plan.Spray || s.Coat > 0 || s.Start < 9*60 {
			continue
		}
		n++
		r := changeOf(form, "day_change=done&step_of="+of(stepRef(s))+"&end_time="+show(d.plan.Cups[s.Cup-1].Mixed-1))
		require.Empty(t, r.Problems)
		_, after := run(calc.ParseForm(r.Figures[0].Text))
		for _, p := range after.Problems {
			assert.NotContains(t, p.Message, "is after the coat began")
		}
	}
	assert.Positive(t, n)
}

// Bakes in the booth join only where the data sheets are known to ask for the same heat.
func TestBakesOfUnknownHeatAreApart(t *testing.T) {
	const two = "paint.1.product=Clear&job.1.job_name=A&job.1.bake_time=30&job.2.job_name=B&job.2.bake_time=30&ovens=0&tried=20000" +
		"&coat.1.of_job=A&coat.1.coats=1&coat.1.spray_time=5&coat.1.flash=10&coat.2.of_job=B&coat.2.coats=1&coat.2.spray_time=5&coat.2.flash=10"
	apart, r := run(calc.ParseForm(two))
	require.Empty(t, r.Problems)
	assert.NotEqual(t, apart.model.Jobs[0].Bake.Heat, apart.model.Jobs[1].Bake.Heat)
	joined, _ := run(calc.ParseForm(two + "&job.1.bake_heat=60&job.2.bake_heat=60"))
	assert.Equal(t, joined.model.Jobs[0].Bake.Heat, joined.model.Jobs[1].Bake.Heat)
	assert.Less(t, joined.plan.Finish, apart.plan.Finish)
}

// After the last coat of a job that is not baked nothing follows, so that a recoat window does not bind.
func TestALongDryingEndsAJob(t *testing.T) {
	_, r := run(calc.ParseForm("paint.1.product=Primer&job.1.job_name=A&coat.1.coats=1&coat.1.spray_time=5&coat.1.flash=10&coat.1.flash_last=960&coat.1.recoat_within=240"))
	assert.Empty(t, r.Problems)
}

func TestJobsAreAdded(t *testing.T) {
	rows := "job.1.job_name=Lids&paint.1.product=IVORY&paint.2.product=Grey&coat.1.coats=2&coat.1.spray_time=6&coat.1.flash=600&coat.1.flash.unit=s&coat.1.product=ivory"
	form := changedForm(t, calc.Form{}, "day_change=add&added="+escaped(rows))
	_, r := run(form)
	require.Empty(t, r.Problems, "the first job of a day")
	form["coat.flash.unit"] = "h"
	form = changedForm(t, form, "day_change=add&added="+escaped(strings.Replace(rows, "&coat.1.flash.unit=s", "", 1)))
	form = changedForm(t, form, "day_change=add&added="+escaped(rows))
	assert.Equal(t, []string{"Lids", "Lids 2", "Lids 3"}, []string{form["job.1.job_name"], form["job.2.job_name"], form["job.3.job_name"]})
	assert.Len(t, form.Rows("paint"), 2, "the same products")
	hot := changeOf(form, "day_change=add&added="+escaped("paint.1.product=Ivory&paint.1.pot_life=35&"+rows[:strings.Index(rows, "&")]+"&coat.1.coats=1&coat.1.spray_time=6&coat.1.flash=9"))
	require.Empty(t, hot.Problems)
	assert.Contains(t, hot.Figures[1].Text, "check that it is today’s")
	assert.Equal(t, "Lids 2", form["coat.2.of_job"])
	assert.Equal(t, "Lids", form["coat.1.of_job"], "what was left blank is written out")
	assert.Equal(t, []string{"s", "min", "s"}, []string{form["coat.1.flash.unit"], form["coat.2.flash.unit"], form["coat.3.flash.unit"]})
}

func escaped(s string) string { return strings.NewReplacer("&", "%26", "=", "%3D").Replace(s) }

func TestAChangeThatCannotBe(t *testing.T) {
	form := demo(t)
	for change, field := range map[string]string{
		"day_change=hold&step_of=9-5-1&to_time=9:00":               "step_of",
		"day_change=hold&step_of=x":                                "step_of",
		"day_change=done&step_of=1-7-0&to_time=9:00&end_time=8:10": "end_time",
		"day_change=now": "to_time",
		"day_change=now&to_time=9:00&counted=1-5-1+7x": "counted",
		"day_change=add&added=clock%3D8":               "added",
	} {
		r := changeOf(form, change)
		require.Len(t, r.Problems, 1, change)
		assert.Equal(t, field, r.Problems[0].Field, change)
		assert.Empty(t, r.Figures, change)
	}
	r := changeOf(changedTo(form, "job.1.job_name="), "day_change=now&to_time=9:00")
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "day_form", r.Problems[0].Field)
}
