package plan

import "spraywright/calc/day/plan/sequence"

// tooSoon finds the promises that a job could not keep even with the shop to itself. A plan can still be made; of jobs
// that it has done in time there is nothing to find.
func tooSoon(d *Day, p *Plan) []Fault {
	var all []Fault
	for j := range d.Jobs {
		job := &d.Jobs[j]
		if p.Jobs[j].Late == 0 {
			continue
		}
		one := *alone(d, j)
		one.Aim = FinishOnly()
		p := problem(&one)
		v := sequence.New(p, 1)
		if cost, ok := v.Cost(); !ok || int(cost) > job.Promised {
			v.Improve(2000)
		}
		if b := int(v.Bound()); v.Found() && b > job.Promised {
			all = append(all, Fault{Rule: PromisedTooSoon, Ref: Ref{Job: j}, Product: -1, Has: job.Promised, Needs: b, Soft: true})
		}
	}
	return all
}
