package day

import (
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
	for _, row := range rowsOf(r, "by_job") {
		if row[3].Of == "2-5-1" {
			assert.Equal(t, "11:00", row[1].Text)
			break
		}
	}
	again := changedForm(t, held, "day_change=hold&step_of=2-5-1&to_time=11:30")
	assert.Len(t, again.Rows("pin"), 1, "a step is held once")
	assert.Equal(t, form, changedForm(t, again, "day_change=free&step_of=2-5-1"))
}

func TestPlanningAgainFromNow(t *testing.T) {
	form := changedTo(demo(t), "tried=40000")
	before, _ := run(form)
	later := changedForm(t, form, "day_change=now&to_time=9:40")
	d, r := run(later)
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	n := 0
	for i := range before.plan.Steps {
		if s := &before.plan.Steps[i]; s.Kind == stepRef(s).Kind && s.Start < 9*60+40 {
			n++
		}
	}
	assert.Len(t, later.Rows("done"), n)
	assert.NotEmpty(t, r.Rows, "what is done reads as sentences")
	// And once more, some time later: what was done stays done, at the same times.
	last := changedForm(t, later, "day_change=now&to_time=10:30")
	d, r = run(last)
	require.Empty(t, r.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	assert.Greater(t, len(last.Rows("done")), n)
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
		"day_change=now":                 "to_time",
		"day_change=add&added=clock%3D8": "added",
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
