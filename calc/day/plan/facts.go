package plan

import "spraywright/calc/day/plan/sequence"

func pin(p *sequence.Problem, d *Day, x *Pin) {
	op := &p.Chains[x.Job].Ops[index(d, x.Ref)]
	if x.Start > 0 {
		op.Earliest, op.Latest = max(op.Earliest, int32(x.Start)), int32(x.Start)
	}
	if x.Painter > 0 && op.Painted {
		op.Painter = x.Painter - 1
	}
	if x.Place > 0 {
		op.Unit = x.Place - 1
	}
}

// breaks gives each painter his breaks in order, those that meet joined.
func breaks(d *Day) [][]sequence.Span {
	all := make([][]sequence.Span, count(d.Painters))
	for u := range all {
		var list []sequence.Span
		for _, b := range d.Breaks {
			if (b.Painter == 0 || b.Painter == u+1) && b.To > b.From {
				list = append(list, sequence.Span{From: int32(b.From), To: int32(b.To)})
				for i := len(list) - 1; i > 0 && list[i].From < list[i-1].From; i-- {
					list[i], list[i-1] = list[i-1], list[i]
				}
			}
		}
		for _, b := range list {
			if n := len(all[u]); n > 0 && b.From <= all[u][n-1].To {
				all[u][n-1].To = max(all[u][n-1].To, b.To)
			} else {
				all[u] = append(all[u], b)
			}
		}
	}
	return all
}

// facts puts what is done in the order of starts.
func facts(d *Day) []sequence.Fact {
	var all []sequence.Fact
	for i := range d.Done {
		x := &d.Done[i]
		f := sequence.Fact{
			Chain: x.Job, Op: index(d, x.Ref), Start: int32(x.Start), End: int32(x.End),
			Painter: count(x.Painter) - 1, Place: count(x.Place) - 1, Cup: x.Cup, Mixed: int32(x.Mixed),
		}
		if x.Kind == Spray && x.Mixed == 0 {
			f.Mixed = int32(x.Start - d.Products[d.Jobs[x.Job].Coats[x.Coat].Product].Mix - d.Walk - d.Door)
		}
		f.Gone = x.Kind == Spray && d.Lost(x)
		all = append(all, f)
		for k := len(all) - 1; k > 0 && sooner(&all[k], &all[k-1]); k-- {
			all[k], all[k-1] = all[k-1], all[k]
		}
	}
	for i := range all {
		for k := range all[:i] {
			all[k].Gone = all[k].Gone && (all[k].Cup == 0 || all[k].Cup != all[i].Cup)
		}
	}
	return all
}

func sooner(a, b *sequence.Fact) bool {
	return a.Start < b.Start || a.Start == b.Start && a.Chain == b.Chain && a.Op < b.Op
}
