package sequence

// Turn says that it is an operation's turn.
type Turn struct{ Chain, Op int }

// Follow tries to make a plan in which the operations named come in their order, and then the chains that are not named,
// one after the other. It tells whether there is a plan now.
func (v *Solver) Follow(turns []Turn) bool {
	named := make([]bool, len(v.p.Chains))
	v.free(nil)
	for _, t := range turns {
		named[t.Chain] = true
		if t.Op >= int(v.root.key[t.Chain]) {
			v.ps.frozen = append(v.ps.frozen, turn(t.Chain, t.Op))
		}
	}
	for _, c := range v.list(0) {
		for i := range v.p.Chains[c].Ops {
			if !named[c] {
				v.ps.frozen = append(v.ps.frozen, turn(c, i))
			}
		}
	}
	v.ps.reset(v.root, 64, huge)
	v.ps.run(1 << 30)
	v.take()
	return v.Found()
}

// free begins a frozen order, with the chains that are not in it; nil for none.
func (v *Solver) free(chains []bool) {
	if chains == nil {
		chains = make([]bool, len(v.p.Chains))
	}
	v.ps.free, v.ps.strict, v.ps.frozen = chains, false, v.ps.frozen[:0]
}
