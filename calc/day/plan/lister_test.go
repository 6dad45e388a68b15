package plan_test

import "spraywright/calc/day/plan"

// event is a job's step, or a bake of several jobs, in a list that tells the order on every painter and place.
type event struct {
	jobs                 []int
	kind                 plan.Kind
	coat, place, painter int
	cup                  int // the event whose coat is the first out of the same cup; its own index where it is that
	start                int
}

// lister tries every list there is.
type lister struct {
	d    *plan.Day
	list []event
	at   []int   // steps done of each job
	home []int   // booth in which the job stands wet, 0 for none
	need [][]int // mL and coats of each batch, by job and coat; 0 where a coat is not the first of its batch
	best int     // least cost, -1 for none
	seen int
}

// mostLists is how many lists of one day are tried; days with more are left to other tests.
const mostLists = 1000

// extend tries every next event.
func (l *lister) extend() {
	if l.seen > mostLists {
		return
	}
	whole := true
	for j := range l.d.Jobs {
		if l.at[j] == l.length(j) {
			continue
		}
		whole = false
		kind, coat := l.step(j, l.at[j])
		job := &l.d.Jobs[j]
		e := event{jobs: []int{j}, kind: kind, coat: coat}
		switch {
		case kind == plan.PrepStep:
			l.everywhere(e, l.d.PrepBays, job.Prep.ByPainter)
		case kind == plan.Spray:
			l.spray(e)
		case job.Bake.InOven:
			l.everywhere(e, l.d.Ovens, false)
		default:
			l.bake(e)
		}
	}
	if whole {
		l.evaluate()
	}
}

func units(n int) int { return max(1, n) }

func (l *lister) everywhere(e event, n int, painted bool) {
	for e.place = 1; e.place <= units(n); e.place++ {
		if !painted {
			l.push(e)
			continue
		}
		for e.painter = 1; e.painter <= units(l.d.Painters); e.painter++ {
			l.push(e)
		}
	}
}

func (l *lister) spray(e event) {
	j := e.jobs[0]
	for e.place = 1; e.place <= units(l.d.Booths); e.place++ {
		if l.home[j] > 0 && l.home[j] != e.place || l.home[j] == 0 && l.d.Room > 0 && l.open(e.place) >= l.d.Room {
			continue
		}
		if l.need[j][e.coat] == 0 { // out of the cup of the coat before
			for _, o := range l.list {
				if o.kind == plan.Spray && o.jobs[0] == j && o.coat == e.coat-1 {
					e.cup, e.painter = o.cup, o.painter
				}
			}
			l.push(e)
			continue
		}
		for e.painter = 1; e.painter <= units(l.d.Painters); e.painter++ {
			e.cup = len(l.list)
			l.push(e)
			for i := range l.list {
				if l.d.ShareCups && l.canJoin(i, e) {
					e.cup = i
					l.push(e)
				}
			}
		}
	}
}

func (l *lister) open(booth int) int {
	n := 0
	for _, h := range l.home {
		if h == booth {
			n++
		}
	}
	return n
}

// canJoin tells whether the batch that begins with a coat fits the cup that an event began.
func (l *lister) canJoin(first int, e event) bool {
	f := &l.list[first]
	coat := l.d.Jobs[e.jobs[0]].Coats[e.coat]
	if f.kind != plan.Spray || f.cup != first || f.painter != e.painter || l.d.Jobs[f.jobs[0]].Coats[f.coat].Product != coat.Product {
		return false
	}
	used := l.need[e.jobs[0]][e.coat] - 1
	for _, o := range l.list {
		if o.kind == plan.Spray && o.cup == first && l.need[o.jobs[0]][o.coat] > 0 {
			used += l.need[o.jobs[0]][o.coat] - 1
		}
	}
	return l.d.CupHolds == 0 || used <= l.d.CupHolds
}

// bake tries every set of jobs that could be baked with the first; all that stand wet there have to be in it.
func (l *lister) bake(e event) {
	j := e.jobs[0]
	for e.place = 1; e.place <= units(l.d.Booths); e.place++ {
		if l.home[j] > 0 && l.home[j] != e.place {
			continue
		}
		with, fits := []int{j}, true
		for k := range l.d.Jobs {
			if k == j || l.home[k] != e.place {
				continue
			}
			kind := plan.Spray
			if l.at[k] < l.length(k) {
				kind, _ = l.step(k, l.at[k])
			}
			a, b := l.d.Jobs[j].Bake, l.d.Jobs[k].Bake
			fits = fits && kind == plan.Heat && !b.InOven && a.Minutes == b.Minutes && a.Heat == b.Heat
			with = append(with, k)
		}
		if fits {
			joint := e
			joint.jobs = with
			l.push(joint)
		}
	}
}

// push appends an event, goes on, and takes it back.
func (l *lister) push(e event) {
	old := append([]int(nil), l.home...)
	for _, j := range e.jobs {
		l.at[j]++
		if e.kind == plan.Heat {
			l.home[j] = 0
		}
		if e.kind == plan.Spray {
			l.home[j] = e.place
			if l.closes(j, e.coat) {
				l.home[j] = 0
			}
		}
	}
	l.list = append(l.list, e)
	l.extend()
	l.list = l.list[:len(l.list)-1]
	copy(l.home, old)
	for _, j := range e.jobs {
		l.at[j]--
	}
}

// closes tells whether after the flash of a coat the job no longer stands wet in the booth.
func (l *lister) closes(j, coat int) bool {
	job := &l.d.Jobs[j]
	return job.Coats[coat].Movable || coat == len(job.Coats)-1 && (job.Bake.Minutes == 0 || job.Bake.InOven)
}
