package sequence

// layer holds the states that have done the same number of operations.
type layer struct {
	states []state
	heads  []int32 // a hash table of the first of each key, chained by state.next
	same   []int32 // the next state of the same key, -1 for none
	bytes  []byte  // room for keys
	ints   []int32 // room for matrices
}

func (y *layer) clear() {
	y.states, y.heads, y.same, y.bytes, y.ints = y.states[:0], y.heads[:0], y.same[:0], y.bytes[:0], y.ints[:0]
}

// keep puts s.made into a layer, unless a state there is as good; states that are no better than it go.
func (ps *pass) keep(y *layer, before int32) bool {
	m := &ps.s.made
	if y.heads == nil && len(ps.spare) > 0 {
		last := len(ps.spare) - 1
		*y, ps.spare = ps.spare[last], ps.spare[:last]
	}
	if len(y.states) > 2*ps.width+crowd {
		ps.thin(y)
	}
	if len(y.heads) < 2*len(y.states)+16 {
		y.grow()
	}
	first := y.find(m)
	if first >= 0 && ps.covered(y, first) {
		return false
	}
	st := *m
	y.store(&st)
	st.past = before
	st.dead, st.waits = false, uint8(ps.s.child.rows)
	y.add(st, first)
	return true
}

// crowd is how many more than twice the states that are carried on a layer holds before it is thinned out.
const crowd = 4096

// thin drops states that another one is as good as, and of the others those that would not be carried on.
func (ps *pass) thin(y *layer) {
	ps.order, ps.other = ps.other, ps.order
	ps.pick(y)
	next := layer{}
	if last := len(ps.spare) - 1; last >= 0 {
		next, ps.spare = ps.spare[last], ps.spare[:last]
	}
	for _, i := range ps.order {
		st := y.states[i]
		if len(next.heads) < 2*len(next.states)+16 {
			next.grow()
		}
		first := next.find(&st)
		next.store(&st)
		next.add(st, first)
	}
	ps.order, ps.other = ps.other, ps.order
	ps.drop(y)
	*y = next
}

// drop keeps a layer's room for another one.
func (ps *pass) drop(y *layer) {
	if y.heads != nil {
		y.clear()
		ps.spare = append(ps.spare, *y)
		*y = layer{}
	}
}

// store copies what a state refers to into the layer.
func (y *layer) store(st *state) {
	from := len(y.bytes)
	y.bytes = append(append(y.bytes, st.key...), st.late...)
	at := from + len(st.key)
	st.key, st.late = y.bytes[from:at:at], y.bytes[at:]
	y.ints = append(y.ints, st.d...)
	st.d = y.ints[len(y.ints)-len(st.d):]
}

// find is the first state of the same key, -1 for none.
func (y *layer) find(m *state) int32 {
	i := y.heads[m.hash&uint32(len(y.heads)-1)]
	for i >= 0 && (y.states[i].hash != m.hash || string(y.states[i].key) != string(m.key)) {
		i = y.states[i].next
	}
	return i
}

// covered tells whether a state of a key covers s.made. It takes out those that s.made covers.
func (ps *pass) covered(y *layer, first int32) bool {
	s, m := ps.s, &ps.s.made
	before := first
	for i := first; i >= 0; i = y.same[i] {
		o := &y.states[i]
		if !o.dead && s.covers(o, m, &s.child) {
			return true
		}
		if !o.dead && s.covers(m, o, &s.child) {
			o.dead = true
		}
		if o.dead && i != first { // the first stays, to be found
			y.same[before] = y.same[i]
		} else {
			before = i
		}
	}
	return false
}

// add enters a state, right after the first of its key.
func (y *layer) add(st state, first int32) {
	at := int32(len(y.states))
	if first >= 0 {
		y.same = append(y.same, y.same[first])
		y.same[first] = at
	} else {
		slot := st.hash & uint32(len(y.heads)-1)
		st.next, y.heads[slot] = y.heads[slot], at
		y.same = append(y.same, -1)
	}
	st.chained = first < 0
	y.states = append(y.states, st)
}

// grow makes the hash table twice as large and enters the states anew.
func (y *layer) grow() {
	size := max(64, 2*len(y.heads))
	for size < 2*len(y.states)+16 {
		size *= 2
	}
	if cap(y.heads) < size {
		y.heads = make([]int32, size)
	}
	y.heads = y.heads[:size]
	for i := range y.heads {
		y.heads[i] = -1
	}
	for i := range y.states {
		st := &y.states[i]
		if !st.chained {
			continue
		}
		slot := st.hash & uint32(size-1)
		st.next, y.heads[slot] = y.heads[slot], int32(i)
	}
}
