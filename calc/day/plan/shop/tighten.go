package shop

// tighten draws what conclusions it can from asking for less than the best; false where there is no such plan.
func (b *branch) tighten(f *frame) bool {
	n := b.size
	if !b.add(f.long, b.n+1, b.n, -(b.best - 1)) {
		return false
	}
	for {
		again, ok := b.fix(f)
		if !ok {
			return false
		}
		if again {
			continue
		}
		for _, ops := range b.g.onMachine {
			b.edge.load(b, f.long, ops)
			for side := 0; side < 2; side++ {
				if !b.edge.find(b.best-1, side == 1) {
					return false
				}
				for i, x := range ops {
					later, from, to := b.edge.later[i], b.n, int(x)
					if side == 1 {
						from, to, later = int(x), b.n+1, later+b.g.minutes[x]
					}
					if f.long[from*n+to] < later {
						again = true
						if !b.add(f.long, from, to, later) {
							return false
						}
					}
				}
			}
		}
		if !again {
			return true
		}
	}
}

// fix decides the pairs of which one order leaves no time.
func (b *branch) fix(f *frame) (again, ok bool) {
	n := b.size
	for k, p := range b.pairs {
		if f.fixed[k] {
			continue
		}
		x, y := int(p[0]), int(p[1])
		noXY := f.long[y*n+x]+b.g.minutes[x] > 0
		noYX := f.long[x*n+y]+b.g.minutes[y] > 0
		if noXY && noYX {
			return false, false
		}
		if noXY {
			x, y = y, x
		}
		if noXY || noYX {
			f.fixed[k] = true
			if f.long[x*n+y] < b.g.minutes[x] {
				again = true
				if !b.add(f.long, x, y, b.g.minutes[x]) {
					return false, false
				}
			}
		}
	}
	return again, true
}
