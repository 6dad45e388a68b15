package sequence

// products: 0 primer, 1 to 5 colours from light to dark, 6 clear
const products = 7

// machineDay is a day as an earlier program drew them: coats hold the one painter and the booth, a bake the booth
// (shared) or a bay of its own; wet parts may stay in the booth during a bake. Its mixing and rinses were one gap.
func machineDay(n int, seed uint64, ownBay bool) *Problem {
	r := random(seed*7919 + uint64(n))
	below := func(k int) int { return int(r.next() % uint64(k)) }
	p := &Problem{Painters: 1, Places: []int{1, 1}, Room: []int{0, 0}, Products: products, RinseInside: true}
	p.Weigh = Weights{Late: 1, Finish: 1}
	machineRinses(p)
	for j := 0; j < n; j++ {
		ch := Chain{Due: Never, Priority: 1}
		rel := int32(0)
		if below(3) == 0 {
			rel = int32(30 * below(7))
		}
		ch.Ops = machineCoats(below, rel)
		bake := Op{Minutes: 30, Product: Clean, After: 10, Within: 60, Earliest: rel, Latest: Never, Painter: -1, Unit: -1}
		if ownBay {
			bake.Place = 1
		}
		ch.Ops = append(ch.Ops, bake)
		total := int32(0)
		for _, op := range ch.Ops {
			total += op.Minutes + 10
		}
		if below(2) == 0 {
			ch.Due = rel + total + int32(30*below(4*n/3+2))
		}
		p.Chains = append(p.Chains, ch)
	}
	return p
}

// machineCoats are the coats of a job from some time on.
func machineCoats(below func(int) int, rel int32) []Op {
	var ops []Op
	area := int32(3 + below(8))
	stage := func(product, coats int, flash, within, pot, after, afterWithin int32) {
		for c := 0; c < coats; c++ {
			op := Op{Painted: true, Product: product, Earliest: rel, Latest: Never, Painter: -1, Unit: -1, After: flash, Within: within}
			if c == 0 {
				op.After, op.Within = after, afterWithin
				op.First, op.Batch, op.Mix, op.Pot = true, int32(coats), 5, pot
				if coats == 1 {
					op.Pot = Never
				}
			}
			if op.Within == 0 {
				op.Within = Never
			}
			op.Minutes = area + int32(below(3))
			ops = append(ops, op)
		}
	}
	if below(2) == 0 {
		stage(0, 1, 0, 0, 60, 0, 0)
		stage(1+below(5), 2, 10, 60, 120, 30, 0)
	} else {
		stage(1+below(5), 2, 10, 60, 120, 0, 0)
	}
	stage(6, 1+below(2), 10, 30, 60, 15, 240)
	return ops
}

func machineRinses(p *Problem) {
	for a := 0; a <= products; a++ {
		row := make([]int32, products+1)
		for b := range row {
			switch {
			case a == b || a == products || b == products:
			case a == 6 || b == 6:
				row[b] = 4
			case a == 0 || b == 0:
				row[b] = 6
			case a < b:
				row[b] = 5
			default:
				row[b] = 9
			}
		}
		p.Rinse = append(p.Rinse, row)
	}
}
