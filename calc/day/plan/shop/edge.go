package shop

// edges looks at the operations of one machine with their heads, minutes and tails.
type edges struct {
	head, work, tail []int32
	later            []int32 // heads after edge finding (tails, when it looks from the end)
	order            []int
	release, due     []int32
	left             []int32
	from, before     []int32
}

func (e *edges) load(b *branch, long []int32, ops []int32) {
	n := b.size
	e.head, e.work, e.tail = e.head[:0], e.work[:0], e.tail[:0]
	for _, x := range ops {
		p := b.g.minutes[x]
		e.head = append(e.head, long[b.n*n+int(x)])
		e.work = append(e.work, p)
		e.tail = append(e.tail, long[int(x)*n+b.n+1]-p)
	}
}

// sort orders the operations by a time, the latest first.
func (e *edges) sort(by []int32) {
	e.order = e.order[:0]
	for i := range by {
		e.order = append(e.order, i)
		for k := i; k > 0 && by[e.order[k-1]] < by[e.order[k]]; k-- {
			e.order[k-1], e.order[k] = e.order[k], e.order[k-1]
		}
	}
}

// preemptive is the least end of the machine's work with its tails if work may be interrupted (Jackson 1955): always
// the operation with the longest tail.
func (e *edges) preemptive() int32 {
	e.sort(e.head)
	e.left = append(e.left[:0], e.work...)
	now, end := int32(0), int32(0)
	for todo := len(e.order); todo > 0; {
		best, until := -1, int32(1)<<30
		for i := range e.left {
			switch {
			case e.left[i] == 0:
			case e.head[i] > now:
				until = min(until, e.head[i])
			case best < 0 || e.tail[i] > e.tail[best]:
				best = i
			}
		}
		if best < 0 {
			now = until
			continue
		}
		run := min(e.left[best], until-now)
		now += run
		if e.left[best] -= run; e.left[best] == 0 {
			todo--
			end = max(end, now+e.tail[best])
		}
	}
	return end
}

// find raises heads that leave no time for the others before an end; from the end it raises tails. False where the
// machine cannot do its work in time.
//
// For each deadline D it takes the operations due by D as a set. One that is due later must come after all of the set if
// there is no time for it and for them up to D, and then cannot start before they are done.
func (e *edges) find(end int32, fromEnd bool) bool {
	e.release, e.due = append(e.release[:0], e.head...), e.due[:0]
	tails := e.tail
	if fromEnd {
		e.release, tails = append(e.release[:0], e.tail...), e.head
	}
	for _, q := range tails {
		e.due = append(e.due, end-q)
	}
	e.later = append(e.later[:0], e.release...)
	e.sort(e.release)
	for _, due := range e.due {
		if !e.sets(due) {
			return false
		}
	}
	return true
}

// sets goes through the operations due by a deadline, the latest release first.
func (e *edges) sets(deadline int32) bool {
	sum, done := int32(0), int32(far)
	e.before = e.before[:0] // the end of the set so far, as each operation is passed
	for _, i := range e.order {
		if e.due[i] <= deadline {
			sum += e.work[i]
			done = max(done, e.release[i]+sum)
			if done > deadline {
				return false
			}
		}
		e.before = append(e.before, done)
	}
	rest := int32(far) // the end of the set's later part with the operation put in front
	for k := len(e.order) - 1; k >= 0; k-- {
		i := e.order[k]
		if e.due[i] <= deadline {
			rest = max(rest, e.release[i]+sum)
			sum -= e.work[i]
			continue
		}
		if sum > 0 && e.release[i]+sum+e.work[i] > deadline {
			e.later[i] = max(e.later[i], e.before[k])
		}
		if rest > far && rest+e.work[i] > deadline {
			e.later[i] = max(e.later[i], done)
		}
	}
	return true
}
