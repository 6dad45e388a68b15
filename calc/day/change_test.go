package day

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
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
