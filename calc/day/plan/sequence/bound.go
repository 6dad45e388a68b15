package sequence

import "math/bits"

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
	enter     []int32 // of each product: least rinse from another one
	rinses    bool    // the least rinses can be added up
	spread    int32   // the longest of what a painter can do during a bake
	joint     joint   // what one painter and one place bound together
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
			if op.First && !s.couldShare(c, i) {
				lead[i] = op.Mix
				cups[i] += s.p.Weigh.Cup
				if op.Place >= 0 {
					lead[i] += s.p.Trip
					cups[i] += s.p.Weigh.Trip
				}
			}
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

// judge fills in a state's bound, and is false where a wait can no longer be kept or no completion beats the limit.
func (s *search) judge(m *state, l *layout, limit int64) bool {
	b, p := &s.bounds, s.p
	if !s.inTime(m, l) {
		return false
	}
	finish, cost := m.d[l.end], m.cost
	var work, tail int32 = 0, Never
	var colours, loads uint64
	late := int64(0)
	for c := range p.Chains {
		at := int(m.key[c])
		if at == len(p.Chains[c].Ops) {
			continue
		}
		done := b.least[c][at]
		if at == 0 {
			done = max(done, p.Now+b.span[c][0])
		} else {
			done = max(done, m.d[l.last[c]]+p.Chains[c].Ops[at].After+b.span[c][at])
		}
		finish = max(finish, done)
		if s.promised[c] && done > p.Chains[c].Due {
			late += int64(done-p.Chains[c].Due) * p.Chains[c].Priority * p.Weigh.Late
		}
		cost += b.cups[c][at]
		colours |= b.colour[c][at]
		loads |= b.load[c][at]
		if w := b.work[c][at]; w > 0 {
			work += w
			tail = min(tail, b.tail[c][at])
		}
	}
	for i, c := range m.late {
		late += s.lateCost(int(c), m.d[l.end+1+i])
	}
	if work > 0 {
		free, more, rinses := s.painterFree(m, colours)
		cost += int64(rinses) * p.Weigh.Rinse
		finish = max(finish, s.across(free, (work+more+int32(p.Painters)-1)/int32(p.Painters))+tail)
		together, end := s.together(m, l, more)
		late, finish = max(late, together), max(finish, end)
	}
	finish = max(finish, s.placesFinish(m, l, loads))
	m.bound = cost + late + int64(finish)*p.Weigh.Finish
	return m.bound < limit
}

// painterFree is when painters are free, on average and rounded down; the least minutes of rinsing that the products to
// come need, and in how many rinses.
func (s *search) painterFree(m *state, colours uint64) (free, more int32, rinses int) {
	for u := 0; u < s.p.Painters; u++ {
		free += m.d[1+u]
	}
	free /= int32(s.p.Painters)
	if !s.bounds.rinses {
		return free, 0, 0
	}
	gun := int(m.key[s.at.painter]) - 1
	if gun >= 0 {
		colours &^= 1 << uint(gun)
	}
	longest := int32(0)
	for ; colours != 0; colours &= colours - 1 {
		w := s.bounds.enter[bits.TrailingZeros64(colours)]
		more += w
		longest = max(longest, w)
		if w > 0 {
			rinses++
		}
	}
	if gun < 0 && rinses > 0 {
		more -= longest
		rinses--
	}
	return free, more, rinses
}

// across is when a single painter has worked for some minutes from a time on, breaks taken.
func (s *search) across(from, minutes int32) int32 {
	end := from + minutes
	if s.p.Breaks == nil || s.p.Painters > 1 {
		return end
	}
	for _, b := range s.p.Breaks[0] {
		if b.To > from && b.From < end {
			end += b.To - max(b.From, from)
		}
	}
	return end
}

// placesFinish bounds the end by what each kind of place has still to take.
func (s *search) placesFinish(m *state, l *layout, loads uint64) int32 {
	b, finish := &s.bounds, int32(0)
	for k, units := range s.p.Places {
		var free, work, tail int32 = 0, 0, Never
		for v := 0; v < units; v++ {
			free += max(m.d[l.unit+s.firstUnit[k]+v], s.p.Now)
		}
		for c := range s.p.Chains {
			at := m.key[c]
			if w := b.place[c][k][at]; w > 0 || b.load[c][at] > 0 {
				work += w
				tail = min(tail, b.placeTail[c][k][at])
			}
		}
		for set := loads; set != 0; set &= set - 1 {
			if kind := b.loads[bits.TrailingZeros64(set)]; kind.place == k {
				work += kind.minutes
				tail = min(tail, 0)
			}
		}
		if work > 0 {
			finish = max(finish, (free+work+int32(units)-1)/int32(units)+tail)
		}
	}
	return finish
}
