package day

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// report enters all that the plan says.
func (d *day) report() {
	d.judge()
	d.ends()
	d.sums()
	d.callSheet()
	d.jobList()
	d.cupList()
	d.lanes()
	d.Draw(d.drawPlaces())
	d.Draw(d.drawJobs())
}

// judge says which promises are kept, and by how much others are missed.
func (d *day) judge() {
	promised, late := 0, 0
	for j := range d.plan.Jobs {
		if d.model.Jobs[j].Promised > 0 {
			promised++
		}
		if d.plan.Jobs[j].Late == 0 {
			continue
		}
		if late++; late <= mostNamed {
			d.missed(j)
		}
	}
	if late > mostNamed {
		d.Judge(calc.Wait, say("{n} jobs in all miss their promise", "n", itoa(late)), say("See the list of jobs"))
	}
	end := show(d.plan.Finish)
	switch {
	case promised == 0:
		d.Judge(calc.Go, say("All is done at {t}", "t", end), say("Follow the call sheet"))
	case late == 0:
		d.Judge(calc.Go, say("Every promise is kept, and all is done at {t}", "t", end), say("Follow the call sheet"))
	}
	if promised > 0 {
		d.tell(&kept, say("{n} of {all}", "n", itoa(promised-late), "all", itoa(promised)))
	}
}

// mostNamed is how many missed promises are ruled on one by one.
const mostNamed = 6

// missed rules on a promise that the plan does not keep.
func (d *day) missed(j int) {
	job, t, late := d.jobs[j].name, show(d.plan.Jobs[j].Done), d.plan.Jobs[j].Late
	if d.soonest[j] > 0 {
		d.Judge(calc.Wait, with(say("{job} is done at {t}, {late} after its promise; even with the shop to itself it cannot be done before {soonest}",
			"job", job, "t", t, "soonest", show(d.soonest[j])), late, "late"), say("Give {job} until {t}, or start it sooner", "job", job, "t", t))
		return
	}
	d.Judge(calc.Wait, with(say("{job} is done at {t}, {late} after its promise", "job", job, "t", t), late, "late"),
		say("Promise it for {t}, let it go before others, or look longer for a better plan", "t", t))
}

// ends tells when all is done, and how much sooner it could be at the best.
func (d *day) ends() {
	finish := d.Model("From the start to the last job done", "the end of the last job in the best order of steps found", unit.Minute, source.RoySussmann, float64(d.plan.Finish-d.start))
	least := d.Model("No plan takes less than", "the search has ruled out every order of steps that ends sooner", unit.Minute, source.RoySussmann, float64(max(0, d.bound.Finish-d.start)), d.longest()...)
	d.result(&takes, finish)
	d.result(&atLeast, least)
	gap := d.Step("Longer than that by", "g = t - b", unit.Minute, source.Definition, finish.V-least.V, finish, least)
	end := say("{clock}", "clock", show(d.plan.Finish))
	end.Args = append(end.Args, finish.As("t"))
	d.tell(&doneAt, end)
	good := say("No plan can end before {bound}; this one ends {g} after that", "bound", show(d.start+int(least.V)))
	switch {
	case gap.V >= 60 && !d.solver.Proven():
		good = say("No plan can end before {bound}; this one ends {h} h {m} min after that", "bound", show(d.start+int(least.V)), "h", itoa(int(gap.V)/60), "m", itoa(int(gap.V)%60))
	case d.solver.Proven() && gap.V == 0:
		good = say("Proven: no plan is better, and none ends sooner")
	case d.solver.Proven():
		good = say("Proven: no plan is better by what counts most")
	case gap.V == 0:
		good = say("No plan can end sooner; one with fewer rinses, cups or late minutes is not ruled out")
	}
	good.Args = append(good.Args, gap.To(0, "g"))
	d.tell(&howGood, good)
	d.steps(d.Working)
}

// steps tells how many steps were tried for this plan, and how many to try next where that may gain something.
func (d *day) steps(w *calc.Working) {
	w.Result(triedNow, calc.N(float64(d.tried), unit.One))
	if next := d.tried + moreTries; !d.solver.Settled() && float64(next) <= field.Tried.Limits.Max {
		w.Result(triedNext, calc.N(float64(next), unit.One))
	}
}

// longest works out two sums that anybody can check and that no plan gets under: the longest job by itself, and all
// spraying shared out among the painters. Where work has begun they say little, and are left out.
func (d *day) longest() []calc.Arg {
	if len(d.model.Done) > 0 {
		return nil
	}
	var parts [5]int // of the longest: ready, prep, spraying, flash-off, bake
	var which, most, all int
	for j := range d.model.Jobs {
		x := &d.model.Jobs[j]
		p := [5]int{max(0, x.Ready-d.start), x.Prep.Minutes, 0, 0, x.Bake.Minutes}
		for i := range x.Coats {
			p[2] += x.Coats[i].Spray
			p[3] += x.Coats[i].Flash
		}
		all += p[2]
		if t := p[0] + p[1] + p[2] + p[3] + p[4]; t > most {
			which, most, parts = j, t, p
		}
	}
	minutes := func(n int, label calc.Phrase) calc.Num { return calc.N(float64(n), unit.Minute).Called(label) }
	job := d.Step(d.Named("Longest job by itself: {job}", args("job", d.jobs[which].name)...), "t_1 = r + p + S + F + B", unit.Minute, source.Definition, float64(most),
		minutes(parts[0], "Ready after the start"), minutes(parts[1], "Prep"), minutes(parts[2], "Spraying its coats"), minutes(parts[3], "Its flash-off"), minutes(parts[4], "Bake"))
	n := calc.N(float64(d.model.Painters), unit.One).Called("Painters")
	share := d.Step("All spraying, shared out", "t_2 = S / n", unit.Minute, source.Definition, float64(all)/n.V, minutes(all, "Spraying all coats"), n)
	return []calc.Arg{job.As("t_1"), share.As("t_2")}
}

// sums adds up late minutes, rinses, walks, cups and what is mixed.
func (d *day) sums() {
	p := &d.plan
	late, cups, amount := 0, 0, 0
	for _, j := range p.Jobs {
		late += j.Late
	}
	for i := range p.Cups {
		if !p.Cups[i].Done {
			cups, amount = cups+1, amount+p.Cups[i].Amount
		}
	}
	var n calc.Num
	for _, f := range []struct {
		out *calc.Output
		n   int
	}{{&lateAll, late}, {&rinses, p.Rinses}, {&rinsing, p.Rinsing}, {&trips, p.Trips}, {&cupsAll, cups}} {
		n = d.Model(f.out.Label, "counted in the plan", f.out.Unit, source.Definition, float64(f.n))
		d.result(f.out, n)
	}
	lost := given(d.Entry, &field.Losses)
	left := d.Step("Left in cups and guns", "L = n * H", unit.Millilitre, source.Definition, n.V*lost.V, n, lost)
	d.result(&leftAll, left)
	if amount > 0 {
		v := calc.N(float64(amount), unit.Millilitre).Called("Sprayed in all")
		d.result(&mixAll, d.Step("Mix in all", "V = V_s + L", unit.Millilitre, source.Definition, v.V+left.V, v, left))
	}
}
