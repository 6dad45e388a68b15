package plan_test

import "spraywright/calc/day/plan"

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
