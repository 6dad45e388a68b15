package plan

// part is the day with some of its jobs only.
func part(d *Day, jobs []int) *Day {
	some := *d
	some.Jobs, some.Done, some.Pins = nil, nil, nil
	for to, j := range jobs {
		some.Jobs = append(some.Jobs, d.Jobs[j])
		for _, x := range d.Done {
			if x.Job == j {
				x.Job = to
				some.Done = append(some.Done, x)
			}
		}
		for _, x := range d.Pins {
			if x.Job == j {
				x.Job = to
				some.Pins = append(some.Pins, x)
			}
		}
	}
	return &some
}

// alone is the day with one job only.
func alone(d *Day, j int) *Day { return part(d, []int{j}) }

// bound lists the jobs that have begun or that a pin holds. Each of the others can begin when all else is over, if it can
// be done at all.
func bound(d *Day) []int {
	var jobs []int
	for j := range d.Jobs {
		held := false
		for i := range d.Done {
			held = held || d.Done[i].Job == j
		}
		for i := range d.Pins {
			held = held || d.Pins[i].Job == j
		}
		if held {
			jobs = append(jobs, j)
		}
	}
	return jobs
}
