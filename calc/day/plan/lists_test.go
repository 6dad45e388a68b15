package plan_test

import "spraywright/calc/day/plan"

func newLister(d *plan.Day) *lister {
	l := &lister{d: d, at: make([]int, len(d.Jobs)), home: make([]int, len(d.Jobs)), best: -1}
	for j := range d.Jobs {
		l.need = append(l.need, batches(d, j))
	}
	return l
}

// batches tells of each coat that is the first out of a cup the mL that all coats out of it take, and 1 more; 0 of the
// others. Coats stay together while they are of one product and the cup holds them and could be used up in time.
func batches(d *plan.Day, j int) []int {
	coats := d.Jobs[j].Coats
	need := make([]int, len(coats))
	first, minutes := 0, 0
	for i, c := range coats {
		life := d.Products[c.Product].PotLife
		minutes += c.Spray
		if i > 0 {
			minutes += coats[i-1].Flash
		}
		if i > 0 && c.Product == coats[first].Product && !c.NewCup && (life == 0 || minutes <= life) &&
			(d.CupHolds == 0 || need[first]-1+c.Amount <= d.CupHolds) {
			need[first] += c.Amount
			continue
		}
		first, minutes = i, d.Products[c.Product].Mix+d.Walk+d.Door+c.Spray
		need[i] = 1 + c.Amount
	}
	return need
}

const tooLate = 3000

// evaluate finds the earliest starts of a whole list minute by minute, and what the plan costs.
func (l *lister) evaluate() {
	l.seen++
	for i := range l.list {
		l.list[i].start = 0
	}
	for changed := true; changed; {
		changed = false
		for i := range l.list {
			e := &l.list[i]
			start := l.earliest(i)
			if start > tooLate {
				return
			}
			if start > e.start {
				e.start, changed = start, true
			}
			if l.pushBack(i) {
				changed = true
			}
		}
	}
	if !l.dryInTime() {
		return
	}
	if cost := l.cost(); l.best < 0 || cost < l.best {
		l.best = cost
	}
}

func (l *lister) end(i int) int { return l.list[i].start + l.minutes(&l.list[i]) }

// before finds the event of a job's step before event i.
func (l *lister) before(i, j int) int {
	for k := i - 1; k >= 0; k-- {
		for _, o := range l.list[k].jobs {
			if o == j {
				return k
			}
		}
	}
	return -1
}

// earliest is the soonest start at which an event keeps the waits for what stands before it in the list.
func (l *lister) earliest(i int) int {
	e := &l.list[i]
	start := max(e.start, l.d.Now)
	for _, j := range e.jobs {
		start = max(start, l.d.Jobs[j].Ready)
		if k := l.before(i, j); k >= 0 {
			flash := 0
			if l.list[k].kind == plan.Spray {
				flash = l.d.Jobs[j].Coats[l.list[k].coat].Flash
			}
			start = max(start, l.end(k)+flash)
		}
	}
	for k := 0; k < i; k++ {
		if l.where(&l.list[k]) == l.where(e) {
			start = max(start, l.end(k))
			start = max(start, l.wetUntil(k, i))
		}
	}
	if e.painter > 0 {
		for !l.hasTime(i, start) {
			if start++; start > tooLate {
				break
			}
		}
	}
	return start
}

// where numbers the places.
func (l *lister) where(e *event) int {
	kind := 0
	if e.kind == plan.PrepStep {
		kind = 1
	} else if e.kind == plan.Heat && l.d.Jobs[e.jobs[0]].Bake.InOven {
		kind = 2
	}
	return kind*100 + e.place
}

// wetUntil is when what event k left to dry in the booth of event i is dry, if i has to wait for that: a bake does, and a
// job that comes into a booth that is full with it.
func (l *lister) wetUntil(k, i int) int {
	o, e := &l.list[k], &l.list[i]
	if o.kind != plan.Spray || !l.closes(o.jobs[0], o.coat) {
		return 0
	}
	full := false
	if e.kind == plan.Spray && l.d.Room > 0 && !l.inside(i, e.jobs[0], e.place) {
		n := 0
		for j := range l.d.Jobs {
			if j != e.jobs[0] && (l.inside(i, j, e.place) || l.drying(i, j, e.place)) {
				n++
			}
		}
		full = n >= l.d.Room
	}
	if l.where(e) < 100 && (e.kind == plan.Heat || full) {
		return l.end(k) + l.d.Jobs[o.jobs[0]].Coats[o.coat].Flash
	}
	return 0
}

// inside tells whether a job stands wet in a booth just before event i.
func (l *lister) inside(i, j, booth int) bool {
	k := l.before(i, j)
	return k >= 0 && l.list[k].kind == plan.Spray && l.list[k].place == booth && !l.closes(j, l.list[k].coat)
}

// drying tells whether the job's last step before event i left it to dry in the booth, with no bake there since.
func (l *lister) drying(i, j, booth int) bool {
	k := l.before(i, j)
	if k < 0 || l.list[k].kind != plan.Spray || l.list[k].place != booth || !l.closes(j, l.list[k].coat) {
		return false
	}
	for m := k + 1; m < i; m++ {
		if l.list[m].kind == plan.Heat && l.where(&l.list[m]) == booth {
			return false
		}
	}
	return true
}

// steps of a job in order: prep, coats, bake.
func (l *lister) step(j, i int) (plan.Kind, int) {
	job := &l.d.Jobs[j]
	if job.Prep.Minutes > 0 {
		if i == 0 {
			return plan.PrepStep, 0
		}
		i--
	}
	if i < len(job.Coats) {
		return plan.Spray, i
	}
	return plan.Heat, 0
}

func (l *lister) length(j int) int {
	n := len(l.d.Jobs[j].Coats)
	if l.d.Jobs[j].Prep.Minutes > 0 {
		n++
	}
	if l.d.Jobs[j].Bake.Minutes > 0 {
		n++
	}
	return n
}

// steps are those of all jobs.
func (l *lister) steps() int {
	n := 0
	for j := range l.d.Jobs {
		n += l.length(j)
	}
	return n
}

func (l *lister) minutes(e *event) int {
	job := &l.d.Jobs[e.jobs[0]]
	switch e.kind {
	case plan.PrepStep:
		return job.Prep.Minutes
	case plan.Spray:
		return job.Coats[e.coat].Spray
	}
	return job.Bake.Minutes
}
