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

// hand finds the painter's event before event i; the minutes of the rinse in between; and whether the painter has left
// the booth for event i, breaks apart.
func (l *lister) hand(i int) (k, rinse int, out bool) {
	e := &l.list[i]
	for k = i - 1; k >= 0 && l.list[k].painter != e.painter; k-- {
	}
	if e.kind == plan.PrepStep {
		if k >= 0 && l.list[k].kind == plan.Spray {
			rinse = l.d.Clean
		}
		return k, rinse, false
	}
	out = e.cup == i || k < 0 || l.list[k].kind != plan.Spray || l.list[k].place != e.place
	if k >= 0 && l.list[k].kind == plan.Spray && l.list[k].cup != e.cup {
		from := l.d.Jobs[l.list[k].jobs[0]].Coats[l.list[k].coat].Product
		rinse = l.d.Rinse[from][l.d.Jobs[e.jobs[0]].Coats[e.coat].Product]
	}
	for m := k + 1; m < i; m++ {
		out = out || l.list[m].kind == plan.Heat && l.where(&l.list[m]) == e.place
	}
	return k, rinse, out || rinse > 0 && !l.d.RinseInBooth
}

// hasTime tells whether the painter can be ready for event i at a start: rinsed, mixed, walked in, with no work in a
// break.
func (l *lister) hasTime(i, start int) bool {
	e := &l.list[i]
	k, rinse, out := l.hand(i)
	free := l.d.Now
	if k >= 0 {
		free = max(free, l.end(k))
	}
	lead := 0
	if e.kind == plan.Spray {
		if e.cup == i {
			lead = l.d.Products[l.d.Jobs[e.jobs[0]].Coats[e.coat].Product].Mix
		}
		if out || l.breakIn(e.painter, free, start) {
			lead += l.d.Walk + l.d.Door
		}
	}
	if start-lead < free || l.breakMeets(e.painter, start-lead, start+l.minutes(e)) {
		return false
	}
	for from := free; from+rinse <= start-lead; from++ {
		if !l.breakMeets(e.painter, from, from+rinse) {
			return true
		}
	}
	return false
}

func (l *lister) breakIn(painter, from, to int) bool {
	for _, b := range l.d.Breaks {
		if (b.Painter == 0 || b.Painter == painter) && b.From >= from && b.To <= to && b.To > b.From {
			return true
		}
	}
	return false
}

func (l *lister) breakMeets(painter, from, to int) bool {
	for _, b := range l.d.Breaks {
		if (b.Painter == 0 || b.Painter == painter) && from < b.To && b.From < to {
			return true
		}
	}
	return false
}

// pushBack starts what comes before event i later where a longest wait or a pot life asks for it.
func (l *lister) pushBack(i int) bool {
	e, changed := &l.list[i], false
	raise := func(k, start int) {
		if l.list[k].start < start {
			l.list[k].start, changed = start, true
		}
	}
	for _, j := range e.jobs {
		if k := l.before(i, j); k >= 0 && l.list[k].kind == plan.Spray {
			if latest := l.d.Jobs[j].Coats[l.list[k].coat].Latest; latest > 0 {
				raise(k, e.start-latest-l.minutes(&l.list[k]))
			}
		}
	}
	if e.kind == plan.Spray {
		product := l.d.Products[l.d.Jobs[e.jobs[0]].Coats[e.coat].Product]
		if product.PotLife > 0 {
			raise(e.cup, l.end(i)-product.PotLife+product.Mix+l.d.Walk+l.d.Door)
		}
	}
	return changed
}

// dryInTime checks by the times that nothing dries in a booth during a bake there, nor takes up room.
func (l *lister) dryInTime() bool {
	for i := range l.list {
		e := &l.list[i]
		if e.kind == plan.Spray && l.d.Room > 0 && !l.inside(i, e.jobs[0], e.place) && l.wetAt(i) >= l.d.Room {
			return false
		}
		for k := range l.list {
			o := &l.list[k]
			if e.kind == plan.Heat && l.where(e) < 100 && o.kind == plan.Spray && o.place == e.place && l.closes(o.jobs[0], o.coat) &&
				o.start < l.end(i) && l.end(k)+l.d.Jobs[o.jobs[0]].Coats[o.coat].Flash > e.start {
				return false
			}
		}
	}
	return true
}

// wetAt counts the jobs that stand wet in the booth of event i when it starts.
func (l *lister) wetAt(i int) int {
	e, n := &l.list[i], 0
	for j := range l.d.Jobs {
		wet := l.inside(i, j, e.place)
		for k := 0; k < i; k++ {
			o := &l.list[k]
			wet = wet || o.kind == plan.Spray && o.jobs[0] == j && o.place == e.place && l.closes(j, o.coat) &&
				l.end(k)+l.d.Jobs[j].Coats[o.coat].Flash > e.start
		}
		if wet {
			n++
		}
	}
	return n
}

// cost adds up by the day's aim.
func (l *lister) cost() int {
	aim := l.d.Aim
	if aim == (plan.Aim{}) {
		aim = plan.PromisesFirst()
	}
	done := make([]int, len(l.d.Jobs))
	cost := 0
	for i := range l.list {
		e := &l.list[i]
		for _, j := range e.jobs {
			done[j] = l.end(i)
			if e.kind == plan.Spray {
				done[j] += l.d.Jobs[j].Coats[e.coat].Flash
			}
		}
		if e.painter == 0 {
			continue
		}
		k, rinse, out := l.hand(i)
		free := l.d.Now
		if k >= 0 {
			free = max(free, l.end(k))
		}
		if rinse > 0 {
			cost += aim.Rinse
		}
		if e.kind == plan.Spray && (out || l.breakIn(e.painter, free, e.start)) {
			cost += aim.Trip
		}
		if e.kind == plan.Spray && e.cup == i {
			cost += aim.Cup + aim.LeftOver*l.d.CupLoses/100
		}
	}
	finish := 0
	for j, end := range done {
		finish = max(finish, end)
		if p := l.d.Jobs[j].Promised; p > 0 && end > p {
			cost += aim.Late * (end - p) * max(1, l.d.Jobs[j].Priority)
		}
	}
	return cost + aim.Finish*finish
}
