package plan

// limit is a number of the day that may have to give.
type limit struct {
	fault Fault
	most  int
	set   func(d *Day, to int)
}

// leastChange finds the least that the first limit has to be, with the others out of the way; false where that does not
// help, or is not known to.
func (left *purse) leastChange(d *Day, list []limit) (int, bool) {
	x := loosened(d)
	for i := range list {
		list[i].set(x, list[i].most)
	}
	known := true
	with := func(to int) bool {
		list[0].set(x, to)
		can, _ := left.possible(x)
		known = known && can != unknown
		return can == yes
	}
	has := list[0].fault.Has
	if !with(list[0].most) {
		return 0, false
	}
	if with(has) {
		return has, true
	}
	low, high := has, list[0].most // low does not do, high does
	for step := 1; low+step < high; step *= 2 {
		if with(low + step) {
			high = low + step
			break
		}
		low += step
	}
	for high-low > 1 && known {
		if mid := (low + high) / 2; with(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	return high, known
}

// limits lists what may have to give: latest recoats, pot lives and pins.
func limits(d *Day) []limit {
	var all []limit
	seen := make([]bool, len(d.Products))
	for j := range d.Jobs {
		for i := range d.Jobs[j].Coats {
			c := &d.Jobs[j].Coats[i]
			r := Ref{Job: j, Kind: Spray, Coat: i}
			if c.Latest > 0 {
				all = append(all, limit{Fault{Rule: LatestRecoat, Ref: r, Product: -1, Has: c.Latest}, longest,
					func(x *Day, to int) { x.Jobs[j].Coats[i].Latest = to }})
			}
			if life := d.Products[c.Product].PotLife; life > 0 && !seen[c.Product] {
				seen[c.Product] = true
				all = append(all, limit{Fault{Rule: PotLife, Ref: r, Product: c.Product, Has: life}, longest,
					func(x *Day, to int) { x.Products[c.Product].PotLife = to }})
			}
		}
	}
	for i := range d.Pins {
		if d.Pins[i].Start > 0 {
			all = append(all, limit{Fault{Rule: PinTime, Ref: d.Pins[i].Ref, Product: -1, Has: d.Pins[i].Start}, d.Pins[i].Start + 1440,
				func(x *Day, to int) { x.Pins[i].Start = to }})
		}
	}
	return all
}

// loosened is a copy of a day whose coats, products and pins may be changed.
func loosened(d *Day) *Day {
	x := *d
	x.Products = append([]Product(nil), d.Products...)
	x.Pins = append([]Pin(nil), d.Pins...)
	x.Jobs = append([]Job(nil), d.Jobs...)
	for j := range x.Jobs {
		x.Jobs[j].Coats = append([]Coat(nil), d.Jobs[j].Coats...)
	}
	return &x
}
