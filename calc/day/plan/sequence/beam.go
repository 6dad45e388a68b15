package sequence

// choose picks the states of the layer to carry on, and notes them in the history.
func (ps *pass) choose() {
	ps.order, ps.i = ps.order[:0], 0
	if ps.at == len(ps.layers)-1 {
		ps.done = true
		return
	}
	y := &ps.layers[ps.at]
	ps.pick(y)
	for _, i := range ps.order {
		if st := &y.states[i]; st.last.chain >= 0 {
			ps.history = append(ps.history, link{st.past, st.last})
			st.past = int32(len(ps.history) - 1)
		}
	}
}

// pick puts the states of a layer that are to be carried on into the order, and notes the bound of the others.
func (ps *pass) pick(y *layer) {
	ps.order = ps.order[:0]
	for i := range y.states {
		if st := &y.states[i]; !st.dead && st.bound < ps.limit {
			ps.order = append(ps.order, int32(i))
		}
	}
	if len(ps.order) <= ps.width {
		return
	}
	ps.smallest(y)
	ps.keepCalm(y)
	for _, i := range ps.order[ps.width:] {
		ps.let = min(ps.let, y.states[i].bound)
	}
	ps.order = ps.order[:ps.width]
}

// keepCalm puts the states with the fewest waits that can run out among those to carry on, an eighth of them. A beam
// that keeps none of these may find that nothing it has kept can be completed.
func (ps *pass) keepCalm(y *layer) {
	least := uint8(255)
	for _, i := range ps.order {
		least = min(least, y.states[i].waits)
	}
	calm := 0
	for _, i := range ps.order[:ps.width] {
		if y.states[i].waits == least {
			calm++
		}
	}
	for at := ps.width - 1; calm < (ps.width+7)/8 && at >= 0; calm++ {
		best := -1
		for k, i := range ps.order[ps.width:] {
			if o := &y.states[i]; o.waits == least && (best < 0 || o.guide < y.states[ps.order[best]].guide) {
				best = ps.width + k
			}
		}
		for at >= 0 && y.states[ps.order[at]].waits == least {
			at--
		}
		if best < 0 || at < 0 {
			return
		}
		ps.order[at], ps.order[best] = ps.order[best], ps.order[at]
		at--
	}
}

// smallest moves the width states of the least guide to the front of the order (heap selection).
func (ps *pass) smallest(y *layer) {
	less := func(a, b int32) bool { // ties by age, so that the choice does not hang on the method
		x, z := y.states[a].guide, y.states[b].guide
		return x < z || x == z && a < b
	}
	h := ps.order[:ps.width]
	sift := func(i int) { // the largest at the root
		for {
			c := 2*i + 1
			if c >= len(h) {
				return
			}
			if c+1 < len(h) && less(h[c], h[c+1]) {
				c++
			}
			if !less(h[i], h[c]) {
				return
			}
			h[i], h[c] = h[c], h[i]
			i = c
		}
	}
	for i := len(h)/2 - 1; i >= 0; i-- {
		sift(i)
	}
	for i := ps.width; i < len(ps.order); i++ {
		if less(ps.order[i], h[0]) {
			ps.order[i], h[0] = h[0], ps.order[i]
			sift(0)
		}
	}
}
