package plan

import "spraywright/calc/day/plan/sequence"

// The kinds of place, as package sequence numbers them.
const (
	booth = iota
	bay
	oven
)

// problem puts a day into the terms of package sequence. The day has been checked.
func problem(d *Day) *sequence.Problem {
	p := &sequence.Problem{
		Painters: count(d.Painters), Places: []int{count(d.Booths), count(d.PrepBays), count(d.Ovens)}, Room: []int{d.Room, 0, 0},
		Products: len(d.Products), RinseInside: d.RinseInBooth, Trip: int32(d.Walk + d.Door), Now: int32(d.Now), Weigh: weights(d),
	}
	if d.ShareCups {
		p.Holds = holds(d)
	}
	for g := 0; g <= len(d.Products); g++ {
		row := make([]int32, len(d.Products)+1)
		if g < len(d.Products) {
			for h, minutes := range d.Rinse[g] {
				row[h] = int32(minutes)
			}
			row[len(row)-1] = int32(d.Clean)
		}
		p.Rinse = append(p.Rinse, row)
	}
	for j := range d.Jobs {
		p.Chains = append(p.Chains, chain(d, j))
	}
	for i := range d.Pins {
		pin(p, d, &d.Pins[i])
	}
	if len(d.Breaks) > 0 {
		p.Breaks = breaks(d)
	}
	p.Facts = facts(d)
	return p
}

// most is a cup that holds any amount, in mL.
const most = 1<<16 - 1

func holds(d *Day) int32 {
	if d.CupHolds == 0 {
		return most
	}
	return int32(min(most, d.CupHolds))
}

func weights(d *Day) sequence.Weights {
	a := d.Aim
	if a == (Aim{}) {
		a = PromisesFirst()
	}
	return sequence.Weights{
		Late: int64(a.Late), Finish: int64(a.Finish), Rinse: int64(a.Rinse), Trip: int64(a.Trip),
		Cup: int64(a.Cup) + int64(a.LeftOver)*int64(d.CupLoses)/100,
	}
}

// chain puts a job's steps in a row.
func chain(d *Day, j int) sequence.Chain {
	job := &d.Jobs[j]
	ch := sequence.Chain{Due: sequence.Never, Priority: int64(count(job.Priority))}
	if job.Promised > 0 {
		ch.Due = int32(job.Promised)
	}
	plain := sequence.Op{Product: sequence.Clean, Within: sequence.Never, Latest: sequence.Never, Earliest: int32(job.Ready), Painter: -1, Unit: -1}
	if job.Prep.Minutes > 0 {
		op := plain
		op.Minutes, op.Place, op.Painted = int32(job.Prep.Minutes), bay, job.Prep.ByPainter
		ch.Ops = append(ch.Ops, op)
	}
	wait := plain // the waits of the next step
	for i := range job.Coats {
		c := &job.Coats[i]
		op := wait
		op.Minutes, op.Place, op.Painted, op.Product, op.Opens = int32(c.Spray), booth, true, c.Product, true
		op.Dry = int32(c.Flash)
		op.Closes = c.Movable || i+1 == len(job.Coats) && (job.Bake.Minutes == 0 || job.Bake.InOven)
		if n, amount := batch(d, j, i); n > 0 {
			op.First, op.Batch, op.Amount = true, int32(n), int32(amount)
			op.Mix, op.Pot = int32(d.Products[c.Product].Mix), potLife(d, c.Product)
		}
		ch.Ops = append(ch.Ops, op)
		ch.Done = int32(c.Flash)
		wait.After, wait.Within = int32(c.Flash), sequence.Never
		if c.Latest > 0 {
			wait.Within = int32(c.Latest)
		}
	}
	if job.Bake.Minutes > 0 {
		op := wait
		op.Minutes, op.Place, op.Load = int32(job.Bake.Minutes), booth, int32(job.Bake.Heat)+1
		if job.Bake.InOven {
			op.Place, op.Load = oven, 0
		}
		ch.Ops = append(ch.Ops, op)
		ch.Done = 0
	}
	return ch
}

func potLife(d *Day, product int) int32 {
	if d.Products[product].PotLife == 0 {
		return sequence.Never
	}
	return int32(d.Products[product].PotLife)
}

// batch is how many coats of a job come out of one cup from coat i on, and how much that is in mL; 0 where i is not the
// first of its cup. A cup serves coats of one product as long as it holds enough and its pot life can last for them.
func batch(d *Day, j, i int) (coats, amount int) {
	all := d.Jobs[j].Coats
	for at := 0; at <= i; at += coats {
		first := &all[at]
		minutes := d.Products[first.Product].Mix + d.Walk + d.Door + first.Spray
		coats, amount = 1, first.Amount
		for k := at + 1; k < len(all) && all[k].Product == first.Product && !all[k].NewCup; k++ {
			minutes += all[k-1].Flash + all[k].Spray
			more := amount + all[k].Amount
			if minutes > int(potLife(d, first.Product)) || d.CupHolds > 0 && more > d.CupHolds || gone(d, j, k) {
				break
			}
			coats, amount = coats+1, more
		}
		if at == i {
			return coats, amount
		}
	}
	return 0, 0
}

// gone tells that coat k cannot come, or did not, out of the cup of the coat before: that cup is past its pot life before
// coat k, still to be done, can be sprayed, or it is lost.
func gone(d *Day, j, k int) bool {
	x, y := d.sprayed(j, k-1), d.sprayed(j, k)
	switch {
	case x == nil:
		return false
	case y != nil:
		return x.Cup != y.Cup || x.Cup == 0 && x.Gone
	case d.Lost(x):
		return true
	}
	c := &d.Jobs[j].Coats[k]
	p, mixed := &d.Products[c.Product], x.Mixed
	if mixed == 0 {
		mixed = x.Start - p.Mix - d.Walk - d.Door
	}
	return p.PotLife > 0 && max(d.Now, x.End+d.Jobs[j].Coats[k-1].Flash)+c.Spray > mixed+p.PotLife
}

// sprayed is what is known of a coat that is done; nil where it is not.
func (d *Day) sprayed(j, coat int) *Done {
	for i := range d.Done {
		if x := &d.Done[i]; x.Ref == (Ref{j, Spray, coat}) {
			return x
		}
	}
	return nil
}

// Lost tells that nothing more can come out of the cup of a coat that is done, by what is said of any coat out of it.
func (d *Day) Lost(x *Done) bool {
	for i := range d.Done {
		if y := &d.Done[i]; y.Gone && (y == x || x.Cup > 0 && y.Cup == x.Cup) {
			return true
		}
	}
	return false
}

// index is the place of a step in its job's chain, or -1 where the job has no such step.
func index(d *Day, r Ref) int {
	job, prep := &d.Jobs[r.Job], 0
	if job.Prep.Minutes > 0 {
		prep = 1
	}
	switch {
	case r.Kind == PrepStep && prep > 0:
		return 0
	case r.Kind == Spray && r.Coat >= 0 && r.Coat < len(job.Coats):
		return prep + r.Coat
	case r.Kind == Heat && job.Bake.Minutes > 0:
		return prep + len(job.Coats)
	}
	return -1
}

// ref is the step at a place in a job's chain.
func ref(d *Day, j, op int) Ref {
	job := &d.Jobs[j]
	if job.Prep.Minutes > 0 {
		if op == 0 {
			return Ref{Job: j, Kind: PrepStep}
		}
		op--
	}
	if op < len(job.Coats) {
		return Ref{Job: j, Kind: Spray, Coat: op}
	}
	return Ref{Job: j, Kind: Heat}
}

// same tells whether two references are to one step.
func same(a, b Ref) bool {
	return a.Job == b.Job && a.Kind == b.Kind && (a.Kind != Spray || a.Coat == b.Coat)
}
