package sequence

// useCup notes what the painter has in the gun now, and what is left in the cup. It drops cups that nothing needs.
func (s *search) useCup(key []byte) {
	t := &s.step
	op, c := t.op, int(t.a.chain)
	if t.a.fresh && t.a.cup >= 0 {
		s.drop(key, int(t.a.cup))
	}
	k := key[s.at.painter+4*int(t.a.painter):]
	k[0], k[1], k[2], k[3] = byte(op.Product+1), byte(t.a.cup+1), 0, byte(t.a.slot)
	if op.Product != Clean {
		k[2] = byte(t.a.unit + 1)
	}
	if t.a.cup < 0 {
		return
	}
	cup := key[s.at.cups+5*int(t.a.cup):]
	switch {
	case t.a.fresh:
		left := max(0, s.p.Holds-op.Amount)
		cup[0], cup[1], cup[2] = byte(op.Product+1), byte(t.a.painter), byte(op.Batch-1)
		cup[3], cup[4] = byte(left>>8), byte(left)
	case op.First:
		left := max(0, cupLeft(cup)-op.Amount)
		cup[2] += byte(op.Batch - 1)
		cup[3], cup[4] = byte(left>>8), byte(left)
	default:
		cup[2]--
	}
	key[s.at.cup+c] = 0
	if !s.lastOut[c][key[c]-1] {
		key[s.at.cup+c] = byte(t.a.cup + 1)
	}
	for i := 0; i < s.cups; i++ {
		if key[s.at.cups+5*i] > 0 && key[s.at.cups+5*i+2] == 0 && !s.wanted(key, i) {
			s.drop(key, i)
		}
	}
}

// wanted tells whether a batch that is still to come fits what is left in a cup.
func (s *search) wanted(key []byte, slot int) bool {
	cup := key[s.at.cups+5*slot:]
	return s.fits(key, int(cup[0])-1, cupLeft(cup))
}

func (s *search) fits(key []byte, product int, left int32) bool {
	for _, b := range s.batches[product] {
		if b.amount <= left && int(key[b.chain]) <= b.op {
			return true
		}
	}
	return false
}

func (s *search) drop(key []byte, slot int) {
	clear(key[s.at.cups+5*slot : s.at.cups+5*slot+5])
	for u := 0; u < s.p.Painters; u++ {
		if key[s.at.painter+4*u+1] == byte(slot+1) {
			key[s.at.painter+4*u+1] = 0
		}
	}
}

// shared is what batches of one product that may share cups ask for.
type shared struct {
	batches []batch
	mix     int32 // minutes of mixing and walking for each cup
	cost    int64 // of each cup and the walk with it
}

// sharing gathers the batches of each product that could share a cup; those that cannot are in bounds.cups.
func (s *search) sharing() []shared {
	var all []shared
	for _, list := range s.batches {
		x := shared{mix: Never, cost: s.p.Weigh.Cup + s.p.Weigh.Trip}
		trip := s.p.Trip
		for _, b := range list {
			if !s.couldShare(b.chain, b.op) {
				continue
			}
			op := &s.p.Chains[b.chain].Ops[b.op]
			if op.Place < 0 {
				trip, x.cost = 0, s.p.Weigh.Cup
			}
			x.batches, x.mix = append(x.batches, b), min(x.mix, op.Mix)
		}
		x.mix += trip
		all = append(all, x)
	}
	return all
}

// toMix is the least cost, and the least minutes, of mixing cups for batches that may share them: all that they take has
// to come out of cups that are open, or new ones.
func (s *search) toMix(key []byte) (cost int64, minutes int32) {
	for g := range s.bounds.sharing {
		x := &s.bounds.sharing[g]
		amount, any, cups := int32(0), false, int32(1)
		for _, b := range x.batches {
			if int(key[b.chain]) <= b.op {
				amount += b.amount
				any = true
			}
		}
		if !any {
			continue
		}
		for i := 0; i < s.cups; i++ {
			if cup := key[s.at.cups+5*i:]; int(cup[0])-1 == g {
				amount -= cupLeft(cup)
				cups = 0
			}
		}
		cups = max(cups, (amount+s.p.Holds-1)/s.p.Holds)
		cost += int64(cups) * x.cost
		minutes += cups * x.mix
	}
	return cost, minutes
}
