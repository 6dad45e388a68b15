package sequence

// bounds holds what is worked out once for the least cost of completing a state.
type bounds struct {
	pinned bool
	span   [][]int32 // from the start of the chain's i-th operation until the chain is done, at least
	rest   [][]int32 // from the end of the operation before the i-th until the chain is done, at least
	least  [][]int32 // the chain is not done sooner, whatever came before the i-th: later earliest starts
	lead   [][]int32 // mixing and walking that the i-th operation surely needs
	batch  [][]int32 // from the end of the operation before the i-th to the end of its batch's last, at least

	work   [][]int32  // painter's minutes from the i-th operation on
	tail   [][]int32  // from the end of the chain's last painter's operation until it is done
	colour [][]uint64 // products from the i-th operation on
	cups   [][]int64  // cost of cups and walks from the i-th operation on

	place     [][][]int32 // of each kind: minutes from the i-th operation on, bakes of whole units apart
	placeTail [][][]int32 // of each kind: from the end of the last operation there until the chain is done
	needs     [][][]bool  // of each kind: an operation from the i-th on needs it
	load      [][]uint64  // kinds of whole-unit bakes from the i-th operation on, as bits
	loads     []loadKind
	enter     []int32  // of each product: least rinse from another one
	rinses    bool     // the least rinses can be added up
	spread    int32    // the longest of what a painter can do during a bake
	joint     joint    // what one painter and one place bound together
	sharing   []shared // of each product; see toMix
}

type loadKind struct {
	load, minutes int32
	place         int
}

func (b *bounds) prepare(s *search) {
	p := s.p
	b.rinses = p.Painters == 1 && p.Products <= 64
	b.enter = make([]int32, p.Products)
	for g := range b.enter {
		b.enter[g] = Never
		for h := 0; h < p.Products; h++ {
			if h != g {
				b.enter[g] = min(b.enter[g], p.Rinse[h][g])
			}
		}
		if b.enter[g] == Never {
			b.enter[g] = 0
		}
	}
	for c := range p.Chains {
		b.chain(s, c)
	}
	for c := range p.Chains {
		b.places(s, c)
	}
	b.joint.prepare(s)
	if p.Holds > 0 {
		b.sharing = s.sharing()
	}
}

// chain works out the sums over a chain from each operation on.
func (b *bounds) chain(s *search, c int) {
	ops := s.p.Chains[c].Ops
	n := len(ops)
	span, rest, least, lead := make([]int32, n+1), make([]int32, n+1), make([]int32, n+1), make([]int32, n+1)
	work, tail, batch := make([]int32, n+1), make([]int32, n+1), make([]int32, n+1)
	colour, cups := make([]uint64, n+1), make([]int64, n+1)
	rest[n], span[n] = s.p.Chains[c].Done, s.p.Chains[c].Done
	for i := n - 1; i >= 0; i-- {
		op := &ops[i]
		if op.Painter >= 0 || op.Unit >= 0 {
			b.pinned = true
		}
		work[i], tail[i], colour[i], cups[i] = work[i+1], tail[i+1], colour[i+1], cups[i+1]
		gap := op.After
		if op.Painted {
			lead[i], cups[i] = b.sure(s, c, i, cups[i])
			if work[i+1] == 0 {
				tail[i] = rest[i+1]
			}
			work[i] += lead[i] + op.Minutes
			if op.Product == Clean {
				b.rinses = false
			} else if s.p.Products <= 64 {
				colour[i] |= 1 << uint(op.Product)
			}
			if i > 0 && ops[i-1].Painted && s.p.Painters == 1 {
				gap = max(gap, lead[i])
			}
		}
		span[i] = op.Minutes + rest[i+1]
		rest[i] = gap + span[i]
		least[i] = max(least[i+1], op.Earliest+span[i])
		if op.Product != Clean {
			batch[i] = gap + op.Minutes
			if !s.lastOut[c][i] {
				batch[i] += batch[i+1]
			}
		}
	}
	b.span, b.rest, b.least, b.lead = append(b.span, span), append(b.rest, rest), append(b.least, least), append(b.lead, lead)
	b.work, b.tail, b.batch = append(b.work, work), append(b.tail, tail), append(b.batch, batch)
	b.colour, b.cups = append(b.colour, colour), append(b.cups, cups)
}

// sure is the mixing and walking before an operation that nothing can spare, and adds what its cup and walk cost.
func (b *bounds) sure(s *search, c, i int, cost int64) (lead int32, with int64) {
	op := &s.p.Chains[c].Ops[i]
	if !op.First || s.couldShare(c, i) {
		return 0, cost
	}
	if op.Place < 0 {
		return op.Mix, cost + s.p.Weigh.Cup
	}
	return op.Mix + s.p.Trip, cost + s.p.Weigh.Cup + s.p.Weigh.Trip
}

// couldShare tells whether a batch could come out of another one's cup, at best.
func (s *search) couldShare(c, i int) bool {
	op := &s.p.Chains[c].Ops[i]
	for j := range s.p.Chains {
		for k := range s.p.Chains[j].Ops {
			o := &s.p.Chains[j].Ops[k]
			if (j != c || k != i) && o.First && o.Product == op.Product && o.Amount+op.Amount <= s.p.Holds {
				return true
			}
		}
	}
	for _, f := range s.p.Facts {
		if f.Cup > 0 && s.p.Holds > 0 && s.p.Chains[f.Chain].Ops[f.Op].Product == op.Product {
			return true
		}
	}
	return false
}

// places works out the minutes in each kind of place, and the kinds of bakes.
func (b *bounds) places(s *search, c int) {
	ops := s.p.Chains[c].Ops
	n, kinds := len(ops), len(s.p.Places)
	place, tail, needs := make([][]int32, kinds), make([][]int32, kinds), make([][]bool, kinds)
	for k := range place {
		needs[k] = make([]bool, n+1)
		place[k], tail[k] = make([]int32, n+1), make([]int32, n+1)
	}
	load := make([]uint64, n+1)
	for i := n - 1; i >= 0; i-- {
		op := &ops[i]
		load[i] = load[i+1]
		for k := range place {
			place[k][i], tail[k][i], needs[k][i] = place[k][i+1], tail[k][i+1], needs[k][i+1] || op.Place == k
			if op.Place != k {
				continue
			}
			if place[k][i+1] == 0 && load[i+1] == 0 {
				tail[k][i] = b.rest[c][i+1]
			}
			if op.Load > 0 {
				if bit := b.loadBit(op); bit < 64 {
					load[i] |= 1 << uint(bit)
				}
			} else {
				place[k][i] += op.Minutes
			}
		}
		if op.Painted {
			b.spread = max(b.spread, op.Mix+s.p.Trip+s.longestRinse(op.Product))
			if op.Place < 0 || op.Product == Clean {
				b.spread = Never
			}
		}
	}
	b.place, b.placeTail = append(b.place, place), append(b.placeTail, tail)
	b.needs, b.load = append(b.needs, needs), append(b.load, load)
}

func (b *bounds) loadBit(op *Op) int {
	for i, k := range b.loads {
		if k == (loadKind{op.Load, op.Minutes, op.Place}) {
			return i
		}
	}
	b.loads = append(b.loads, loadKind{op.Load, op.Minutes, op.Place})
	return len(b.loads) - 1
}

func (s *search) longestRinse(product int) int32 {
	w := int32(0)
	for h := Clean; h < s.p.Products && product != Clean; h++ {
		w = max(w, s.p.rinse(h, product))
	}
	return w
}
