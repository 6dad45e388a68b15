package checkplan

import "spraywright/calc/day/plan"

// sums adds up what the plan says of itself.
func (c *checker) sums() {
	finish, late := 0, 0
	for j, job := range c.d.Jobs {
		end := 0
		for _, s := range c.steps(j, plan.PrepStep, plan.Spray, plan.Heat) {
			end = max(end, s.End)
			if s.Kind == plan.Spray && s.Coat == len(job.Coats)-1 && job.Bake.Minutes == 0 {
				end = max(end, s.End+job.Coats[s.Coat].Flash)
			}
		}
		over := 0
		if job.Promised > 0 && end > job.Promised {
			over = end - job.Promised
		}
		if c.p.Jobs[j].Done != end || c.p.Jobs[j].Late != over {
			c.fault("end of job", j, c.p.Jobs[j].Done, end)
		}
		finish = max(finish, end)
		late += over * units(job.Priority)
	}
	if finish != c.p.Finish || late != c.p.Late {
		c.fault("finish or lateness", c.p.Finish, finish, c.p.Late, late)
	}
	c.cost(late, finish)
}

// cost adds up rinses and cups, and weighs all by the aim. painters has counted the walks.
func (c *checker) cost(late, finish int) {
	rinses, rinsing, cups := 0, 0, 0
	for _, s := range c.p.Steps {
		if s.Kind == plan.Rinse {
			rinses++
			rinsing += s.End - s.Start
		}
		if s.Latest >= 0 && s.Latest < s.Start {
			c.fault("latest before start", s.Job, s.Coat, s.Start, s.Latest)
		}
	}
	for i := range c.p.Cups {
		if !c.p.Cups[i].Done {
			cups++
		}
	}
	aim := c.d.Aim
	if aim == (plan.Aim{}) {
		aim = plan.PromisesFirst()
	}
	cost := aim.Late*late + aim.Finish*finish + aim.Rinse*rinses + aim.Trip*c.p.Trips + cups*(aim.Cup+aim.LeftOver*c.d.CupLoses/100)
	if rinses != c.p.Rinses || rinsing != c.p.Rinsing || c.p.LeftOver != cups*c.d.CupLoses || cost != c.p.Cost {
		c.fault("sums", rinses, c.p.Rinses, rinsing, c.p.Rinsing, c.p.LeftOver, cost, c.p.Cost)
	}
}
