package day

import (
	"unicode/utf8"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// The measures of the picture by job: each has a line of words and under it a lane, so that names have the whole width.
const (
	jobHeight = 42.0
	jobBar    = 14.0
	jobBarTop = 20.0
	jobAxis   = 22.0
)

// drawJobs draws each job's way through the day.
func (d *day) drawJobs() calc.Picture {
	top, end := d.top(), d.last()
	x := func(t int) float64 { return float64(t-top) / float64(max(1, end-top)) * (picturesWidth - 4) }
	p := calc.Picture{
		Key: "by_job", Title: d.Voiced(calc.Say("The day by job")), Width: picturesWidth, Height: jobAxis + jobHeight*float64(len(d.jobs)) + 4,
		Says: d.Voiced(calc.Say("{n} jobs from {a} to {b}: prep, coats, flash-off and bake one after another, with what is promised. The list below says the same in words.",
			whole(len(d.jobs), "n"), show(top, "a"), show(end, "b"))),
	}
	every := 30
	for _, every = range []int{30, 60, 120, 240, 480, 1440, 2880, 10080} {
		if (end-top)/every <= 7 {
			break
		}
	}
	for t := (top + every - 1) / every * every; t <= end; t += every {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "grid", X: x(t), Y: jobAxis - 6, H: p.Height - jobAxis + 6})
		if x(t) < picturesWidth-32 {
			p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: "axis", X: x(t), Y: 12, Text: field.ShowClock(t % aDay)})
		}
	}
	for j := range d.jobs {
		d.jobLane(&p, j, jobAxis+jobHeight*float64(j), x)
	}
	if d.model.Now > d.start {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "now", X: x(d.model.Now), Y: jobAxis - 6, H: p.Height - jobAxis + 6})
	}
	return p
}

// mostName is how many characters of a name have room beside the time.
const mostName = 34

func (d *day) jobLane(p *calc.Picture, j int, y float64, x func(int) float64) {
	name := calc.Say("{n} {job}", whole(j+1, "n"), calc.Words(d.jobs[j].name, "job"))
	if utf8.RuneCountInString(d.jobs[j].name) > mostName {
		name = calc.Say("Job {n}", whole(j+1, "n"))
	}
	end := d.plan.Jobs[j]
	done, look := calc.Say("done {t}", show(end.Done, "t")), "lane"
	if end.Late > 0 {
		done, look = calc.Say("done {t}, late", show(end.Done, "t")), "lane late"
	}
	p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Label, Look: "lane", Y: y + 14, Text: d.Voiced(name)},
		calc.Shape{Kind: calc.Label, Look: look, X: picturesWidth - 2, Y: y + 14, Text: d.Voiced(done), AnchorEnd: true})
	for i := range d.plan.Steps {
		s := &d.plan.Steps[i]
		if s.Job != j || !own(s.Kind) {
			continue
		}
		d.drawStep(p, s, x(s.Start), y+jobBarTop, x(s.End)-x(s.Start))
		if s.Kind == plan.Spray {
			if c := &d.model.Jobs[j].Coats[s.Coat]; c.Latest > 0 && s.End+c.Latest <= d.last() && s.Coat+1 < len(d.model.Jobs[j].Coats) {
				p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "latest", X: x(s.End + c.Latest), Y: y + jobBarTop + 2, H: jobBar - 4})
			}
		}
	}
	if t := d.model.Jobs[j].Promised; t > 0 && t <= d.last() {
		p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Rule, Look: "promised", X: x(t), Y: y + jobBarTop - 4, H: jobBar + 8})
	}
}

// drawStep draws a step in its job's lane; what takes no time there is left out.
func (d *day) drawStep(p *calc.Picture, s *plan.Step, x, y, w float64) {
	if s.End <= s.Start {
		return
	}
	look := looks[s.Kind]
	if s.Done {
		look += " done"
	}
	bar := calc.Shape{Kind: calc.Bar, Look: look, X: x, Y: y, W: max(1, w), H: jobBar, Of: of(stepRef(s))}
	if s.Kind == plan.Flash {
		bar.Y, bar.H = y+jobBar/2-2, 4
	}
	p.Shapes = append(p.Shapes, bar)
}
