package day

import (
	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// report enters all that the plan says.
func (d *day) report(tried int) {
	d.judge()
	d.ends(tried)
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
		if d.model.Jobs[j].Promised == 0 {
			continue
		}
		promised++
		if d.plan.Jobs[j].Late == 0 {
			continue
		}
		if late++; late <= mostNamed {
			d.missed(j)
		}
	}
	if late > mostNamed {
		d.Judge(calc.Wait, calc.Say("{n} jobs in all miss their promise", whole(late, "n")), calc.Say("See the list of jobs"))
	}
	end := show(d.plan.Finish, "t")
	switch {
	case promised == 0:
		d.Judge(calc.Go, calc.Say("All is done at {t}", end), calc.Say("Follow the call sheet"))
	case late == 0:
		d.Judge(calc.Go, calc.Say("Every promise is kept, and all is done at {t}", end), calc.Say("Follow the call sheet"))
	}
	if promised > 0 {
		d.Tell(kept, calc.Say("{n} of {all}", whole(promised-late, "n"), whole(promised, "all")))
	}
}

// missed rules on a promise that the plan does not keep.
func (d *day) missed(j int) {
	name, t, late := calc.Words(d.jobs[j].name, "job"), show(d.plan.Jobs[j].Done, "t"), mins(d.plan.Jobs[j].Late, "late")
	if d.soonest[j] > 0 {
		d.Judge(calc.Wait, calc.Say("{job} is done at {t}, {late} after its promise; even with the shop to itself it cannot be done before {soonest}", name, t, late, show(d.soonest[j], "soonest")),
			calc.Say("Give {job} until {t}, or start it sooner", name, t))
		return
	}
	d.Judge(calc.Wait, calc.Say("{job} is done at {t}, {late} after its promise", name, t, late), calc.Say("Promise it for {t}, let it go before others, or look longer for a better plan", t))
}

// mostNamed is how many missed promises are ruled on one by one.
const mostNamed = 6

var (
	order    = source.RoySussmann.At("orders of steps as a graph of what follows what")
	searched = calc.Phrase("the end of the last job in the best order of steps found")
	ruledOut = calc.Phrase("the search has ruled out every order of steps that ends sooner")
)

// ends tells when all is done, and how much sooner it could be at the best.
func (d *day) ends(tried int) {
	alone := d.longest()
	finish := d.Model("From the start to the last job done", searched, unit.Minute, order, float64(d.plan.Finish-d.start))
	least := d.Model("No plan takes less than", ruledOut, unit.Minute, order, float64(max(0, d.bound.Finish-d.start)), alone...)
	d.Tell(doneAt, calc.Say("{clock}", show(d.plan.Finish, "clock"), finish.As("t")))
	d.Result(takes, finish)
	d.Result(atLeast, least)
	gap := d.Step("Longer than that by", "g = t - b", unit.Minute, source.Definition, finish.V-least.V, finish, least)
	bound := show(d.start+int(least.V), "bound")
	switch {
	case d.solver.Proven() && gap.V == 0:
		d.Tell(howGood, calc.Say("Proven: no plan is better, and none ends sooner", gap.As("g")))
	case d.solver.Proven():
		d.Tell(howGood, calc.Say("Proven: no plan is better by what counts most", gap.As("g")))
	case gap.V == 0:
		d.Tell(howGood, calc.Say("No plan can end sooner; one with fewer rinses, cups or late minutes is not ruled out", gap.As("g")))
	default:
		d.Tell(howGood, calc.Say("No plan can end before {bound}; this one ends {g} after that", bound, gap.To(0, "g")))
	}
	d.Result(triedNow, calc.N(float64(tried), unit.One))
	if next := tried + moreTries; !d.solver.Settled() && float64(next) <= field.Tried.Limits.Max {
		d.Result(triedNext, calc.N(float64(next), unit.One))
	}
}

// longest works out two sums that anybody can check and that no plan gets under: the longest job by itself, and all
// spraying shared out among the painters. Where work has begun they say little, and are left out.
func (d *day) longest() []calc.Arg {
	if len(d.model.Done) > 0 {
		return nil
	}
	var which, most, spray int
	for j := range d.model.Jobs {
		x, t := &d.model.Jobs[j], max(0, d.model.Jobs[j].Ready-d.start)
		for i := range x.Coats {
			t += x.Coats[i].Spray + x.Coats[i].Flash
			spray += x.Coats[i].Spray
		}
		if t += x.Prep.Minutes + x.Bake.Minutes; t > most {
			which, most = j, t
		}
	}
	x := &d.model.Jobs[which]
	var coats, flash int
	for i := range x.Coats {
		coats, flash = coats+x.Coats[i].Spray, flash+x.Coats[i].Flash
	}
	ready := max(0, x.Ready-d.start)
	job := d.Step(d.Named("Longest job by itself: {job}", calc.Words(d.jobs[which].name, "job")), "t_1 = r + p + S + F + B", unit.Minute, source.Definition, float64(most),
		minutes(ready, "Ready after the start"), minutes(x.Prep.Minutes, "Prep"), minutes(coats, "Spraying its coats"), minutes(flash, "Its flash-off"), minutes(x.Bake.Minutes, "Bake"))
	all, n := minutes(spray, "Spraying all coats"), calc.N(float64(d.model.Painters), unit.One).Called("Painters")
	share := d.Step("All spraying, shared out", "t_2 = S / n", unit.Minute, source.Definition, all.V/n.V, all, n)
	return []calc.Arg{job.As("t_1"), share.As("t_2")}
}

// sums adds up late minutes, rinses, walks, cups and what is mixed.
func (d *day) sums() {
	p := &d.plan
	late, lost := 0, d.Given(field.Losses)
	for _, j := range p.Jobs {
		late += j.Late
	}
	count := func(out calc.Output, n int) calc.Num {
		x := d.Model(out.Label, "counted in the plan", out.Unit, source.Definition, float64(n))
		d.Result(out, x)
		return x
	}
	count(lateAll, late)
	count(rinses, p.Rinses)
	count(rinsing, p.Rinsing)
	count(trips, p.Trips)
	cups, amount := 0, 0
	for i := range p.Cups {
		if !p.Cups[i].Done {
			cups, amount = cups+1, amount+p.Cups[i].Amount
		}
	}
	n := count(cupsAll, cups)
	left := d.Step("Left in cups and guns", "L = n * H", unit.Millilitre, source.Definition, n.V*lost.V, n, lost)
	d.Result(leftAll, left)
	if amount > 0 {
		v := calc.N(float64(amount), unit.Millilitre).Called("Sprayed in all")
		d.Result(mixAll, d.Step("Mix in all", "V = V_s + L", unit.Millilitre, source.Definition, v.V+left.V, v, left))
	}
}

// jobList tells when each job is done.
func (d *day) jobList() {
	for j, x := range d.jobs {
		end, due, late, parts := d.plan.Jobs[j], blank(), calc.Num{}, blank()
		if t := d.model.Jobs[j].Promised; t > 0 {
			due, late = told(t), calc.N(float64(end.Late), unit.Minute)
		}
		if words := x.Words(field.JobParts); words != "" {
			parts = named(words)
		}
		d.List(jobsDone, named(x.name), parts, told(end.Done), due, calc.Of(late))
	}
}

// cupList tells what to mix when, for which jobs.
func (d *day) cupList() {
	lost := d.Given(field.Losses)
	for i := range d.plan.Cups {
		c := &d.plan.Cups[i]
		if c.Done {
			continue
		}
		use := blank()
		if c.UseBy >= 0 {
			use = told(c.UseBy)
		}
		why := calc.Say("Its own cup")
		if c.Jobs > 1 {
			why = calc.Say("Shared by {n} jobs, which saves {t} of mixing and walking", whole(c.Jobs, "n"), mins(c.Saves, "t"))
		}
		volume := blank()
		if c.Amount > 0 {
			v := calc.N(float64(c.Amount), unit.Millilitre).Called("Sprayed from this cup")
			volume = calc.Of(d.Step("Mix in this cup", "V = V_s + H", unit.Millilitre, source.Definition, v.V+lost.V, v, lost))
		}
		d.List(cupsMixed, calc.Told(calc.Say("Cup {n}", whole(i+1, "n"))), named(d.paints[c.Product].name), volume, told(c.Mixed), use, named(d.jobsOf(c)), calc.Told(why))
	}
}

// jobsOf lists the jobs that a cup is for.
func (d *day) jobsOf(c *plan.Cup) string {
	names, last := "", -1
	for _, r := range c.Coats {
		if r.Job != last && !seen(c, r.Job, r.Coat) {
			if names != "" {
				names += ", "
			}
			names += d.jobs[r.Job].name
		}
		last = r.Job
	}
	return names
}

// seen reports whether a coat of the job comes out of the cup before this one.
func seen(c *plan.Cup, job, coat int) bool {
	for _, r := range c.Coats {
		if r.Job == job {
			return r.Coat != coat
		}
	}
	return false
}
