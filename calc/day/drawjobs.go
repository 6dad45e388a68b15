package day

import (
	"unicode/utf8"

	"spraywright/calc"
	"spraywright/calc/day/plan"
)

// The measures of the picture by job: each has a line of words and under it a lane, so that names have the whole width.
const (
	jobHeight = 42.0
	jobBar    = 14.0
	jobBarTop = 20.0
	jobAxis   = 22.0
	mostName  = 34 // characters of a name that have room beside the time
)

// across is how far to the right in the picture by job a time is.
func (d *day) across(t int) float64 {
	return float64(t-d.top()) / float64(max(1, d.bottom()-d.top())) * (pictureWidth - 4)
}

// drawJobs draws each job's way through the day.
func (d *day) drawJobs() calc.Picture {
	top, end := d.top(), d.bottom()
	p := &pen{calc.Picture{
		Key: "by_job", Title: d.voiced("The day by job"), Width: pictureWidth, Height: jobAxis + jobHeight*float64(len(d.jobs)) + 4,
		Says: d.voiced("{n} jobs from {a} to {b}: prep, coats, flash-off and bake one after another, with what is promised. The list says the same in words.",
			"n", itoa(len(d.jobs)), "a", show(top), "b", show(end)),
	}}
	every := 30
	for (end-top)/every > 7 {
		every *= 2
	}
	for t := (top + every - 1) / every * every; t <= end; t += every {
		p.mark(calc.Rule, "grid", "", d.across(t), jobAxis-6, 0, p.Height-jobAxis+6)
		if d.across(t) < pictureWidth-32 {
			p.label("axis", show(t%aDay), d.across(t), 12, toStart)
		}
	}
	for j := range d.jobs {
		d.drawJob(p, j, jobAxis+jobHeight*float64(j))
	}
	if d.model.Now > d.start {
		p.mark(calc.Rule, "now", "", d.across(d.model.Now), jobAxis-6, 0, p.Height-jobAxis+6)
	}
	return p.Picture
}

func (d *day) drawJob(p *pen, j int, y float64) {
	n, end := itoa(j+1), d.plan.Jobs[j]
	name := d.voiced("{n} {job}", "n", n, "job", d.jobs[j].name)
	if utf8.RuneCountInString(d.jobs[j].name) > mostName {
		name = d.voiced("Job {n}", "n", n)
	}
	p.label("lane", name, 0, y+14, toStart)
	if end.Late > 0 {
		p.label("lane late", d.voiced("done {t}, late", "t", show(end.Done)), pictureWidth-2, y+14, toEnd)
	} else {
		p.label("lane", d.voiced("done {t}", "t", show(end.Done)), pictureWidth-2, y+14, toEnd)
	}
	y += jobBarTop
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		if s.Job != j || !own(s.Kind) || s.End <= s.Start {
			continue
		}
		x, w := d.across(s.Start), max(1, d.across(s.End)-d.across(s.Start))
		if s.Kind == plan.Flash {
			p.mark(calc.Bar, look(s), of(stepRef(s)), x, y+jobBar/2-2, w, 4)
			continue
		}
		p.mark(calc.Bar, look(s), of(stepRef(s)), x, y, w, jobBar)
		if s.Kind == plan.Spray {
			d.drawLatest(p, s, y)
		}
	}
	if t := d.model.Jobs[j].Promised; t > 0 && t <= d.bottom() {
		p.mark(calc.Rule, "promised", "", d.across(t), y-4, 0, jobBar+8)
	}
}

// drawLatest marks when the next coat has to be begun at the latest.
func (d *day) drawLatest(p *pen, s *plan.Step, y float64) {
	coats := d.model.Jobs[s.Job].Coats
	if c := &coats[s.Coat]; c.Latest > 0 && s.End+c.Latest <= d.bottom() {
		p.mark(calc.Rule, "latest", "", d.across(s.End+c.Latest), y+2, 0, jobBar-4)
	}
}
