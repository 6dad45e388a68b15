package sequence

// batch is the first operation of a batch.
type batch struct {
	chain, op int
	amount    int32
}

// search holds a problem with what is worked out about it once, and the room in which steps are tried.
type search struct {
	p         *Problem
	at        keys
	units     int   // of all kinds of place
	firstUnit []int // of each kind
	cups      int   // slots in use
	loads     []bool
	promised  []bool
	pot       [][]int32 // of each operation out of a cup, from the cup's mixing to the operation's end
	lastOut   [][]bool  // the operation is the last of its batch
	batches   [][]batch // of each product, those that may share a cup
	bounds    bounds
	commutes  bool // the key tells the last step

	step        step
	made        state
	child       layout
	copy        []int32
	col, row    []int
	lateFrom    []int
	options     []action
	frozen      []int16 // see pass
	isFree      []bool
	reached     []int32
	need        []bool   // of each kind of place, see needed
	limits      []limits // of each kind of place, and of the painter
	stretch     int32    // see guess
	freeFrom    []int32  // see served
	Evaluations int
	lost        int64 // the least bound of a state of which a next step was left out
	narrow      bool  // the facts leave more cups open than there are slots: nothing can be proven
}

func newSearch(p *Problem) *search {
	s := &search{p: p, stretch: 130}
	s.firstUnit = make([]int, len(p.Places))
	s.loads = make([]bool, len(p.Places))
	for k, n := range p.Places {
		s.firstUnit[k] = s.units
		s.units += n
	}
	s.batches = make([][]batch, p.Products)
	batches := 0
	for c := range p.Chains {
		ch := &p.Chains[c]
		s.promised = append(s.promised, ch.Due < Never && ch.Priority > 0 && p.Weigh.Late > 0)
		pot, last := make([]int32, len(ch.Ops)), make([]bool, len(ch.Ops))
		ends, left := int32(Never), int32(0)
		for i := range ch.Ops {
			op := &ch.Ops[i]
			if op.Load > 0 {
				s.loads[op.Place] = true
			}
			if op.First {
				ends, left = op.Pot, op.Batch
				batches++
				if p.Holds > 0 {
					s.batches[op.Product] = append(s.batches[op.Product], batch{c, i, op.Amount})
				}
			}
			if op.Product != Clean {
				left--
				last[i], pot[i] = left == 0, ends
			}
		}
		s.pot, s.lastOut = append(s.pot, pot), append(s.lastOut, last)
	}
	s.cups = min(slots, batches)
	if len(p.Chains) > manyChains {
		s.cups = min(s.cups, max(slots/2, 2+underWay(p)))
	}

	s.at = keysFor(len(p.Chains), p.Painters, s.cups)
	s.child.make(len(p.Chains))
	s.limits, s.need = make([]limits, len(p.Places)+1), make([]bool, len(p.Places))
	s.freeFrom = make([]int32, 0, 16)
	s.bounds.prepare(s)
	return s
}

// underWay counts the chains that the facts leave amid their operations.
func underWay(p *Problem) int {
	n, last := 0, make([]int, len(p.Chains))
	for _, f := range p.Facts {
		last[f.Chain] = max(last[f.Chain], f.Op+1)
	}
	for c, at := range last {
		if at > 0 && at < len(p.Chains[c].Ops) {
			n++
		}
	}
	return n
}
