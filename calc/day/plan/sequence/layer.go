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
	if len(y.heads) < 2*len(y.states)+16 {
		y.grow()
	}
	first := y.find(m)
	if first >= 0 && ps.covered(y, first) {
		return false
	}
	st := *m
	y.bytes = append(y.bytes, m.key...)
	y.bytes = append(y.bytes, m.late...)
	mine := y.bytes[len(y.bytes)-len(m.key)-len(m.late):]
	st.key, st.late = mine[:len(m.key):len(m.key)], mine[len(m.key):]
	y.ints = append(y.ints, m.d...)
	st.d = y.ints[len(y.ints)-len(m.d):]
	st.past = int32(len(ps.history))
	if m.last.chain < 0 {
		st.past = -1
	} else {
		ps.history = append(ps.history, link{before, m.last})
	}
	st.dead, st.waits = false, uint8(ps.s.child.rows)
	y.add(st, first)
	return true
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
