package checkplan

import "spraywright/calc/day/plan"

// Dice is a stream of numbers for tests (SplitMix64; Steele, Lea and Flood 2014, from memory).
type Dice uint64

// Roll is a number from 0 to n-1.
func (r *Dice) Roll(n int) int {
	*r += 0x9e3779b97f4a7c15
	z := uint64(*r)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return int((z ^ z>>31) >> 32 * uint64(n) >> 32)
}

// Rinses and Shades are those of [Day].
var (
	Rinses = plan.RinseTimes{Same: 2, LightToDark: 5, DarkToLight: 9, BaseToClear: 4}
	Shades = []int{0, 1, 2, 3, 4, 5, 0}
)

// Day is an invented day of a two-person workshop that refinishes delivery trikes: primer or not, two coats of a colour,
// one or two of clear, a bake in the booth. Products 0 is a primer, 1 to 5 colours from light to dark, 6 a clear.
func Day(jobs int, seed uint64) *plan.Day {
	r := Dice(seed*7919 + uint64(jobs))
	d := &plan.Day{Walk: 2, Door: 1, CupHolds: 900, CupLoses: 40, Clean: 8, Rinse: Rinses.Matrix(Shades)}
	d.Products = []plan.Product{{Mix: 5, PotLife: 60}, {Mix: 5, PotLife: 120}, {Mix: 5, PotLife: 120}, {Mix: 5, PotLife: 120}, {Mix: 5, PotLife: 120}, {Mix: 5, PotLife: 120}, {Mix: 5, PotLife: 60}}
	for j := 0; j < jobs; j++ {
		job := plan.Job{Bake: plan.Bake{Minutes: 30, Heat: 60}}
		if r.Roll(3) == 0 {
			job.Ready = 30 * r.Roll(7)
		}
		area := 3 + r.Roll(8)
		coat := func(product, flash, latest int, movable bool) {
			spray := area + r.Roll(3)
			job.Coats = append(job.Coats, plan.Coat{Product: product, Spray: spray, Amount: 25 * spray, Flash: flash, Latest: latest, Movable: movable})
		}
		colour := 1 + r.Roll(5)
		if r.Roll(2) == 0 {
			coat(0, 30, 0, true)
		}
		coat(colour, 10, 60, false)
		coat(colour, 15, 240, false)
		for n := 1 + r.Roll(2); n > 0; n-- {
			coat(6, 10, 30, false)
		}
		job.Coats[len(job.Coats)-1].Latest = 60
		minutes := 30
		for _, c := range job.Coats {
			minutes += c.Spray + 10
		}
		if r.Roll(2) == 0 {
			job.Promised = job.Ready + minutes + 30*r.Roll(4*jobs/3+2)
		}
		d.Jobs = append(d.Jobs, job)
	}
	return d
}

// Odd is a day with a little of everything: several painters and booths, prep, ovens, shared cups, breaks, pins, work
// that is done, narrow windows. It may have no plan.
func Odd(jobs int, seed uint64) *plan.Day {
	r := Dice(seed*104729 + uint64(jobs))
	d := &plan.Day{
		Painters: r.Roll(3), Booths: r.Roll(3), PrepBays: r.Roll(3), Ovens: r.Roll(3), Room: r.Roll(4),
		RinseInBooth: r.Roll(2) == 0, Walk: r.Roll(3), Door: r.Roll(3), ShareCups: r.Roll(2) == 0, CupHolds: 400 + 100*r.Roll(6), CupLoses: 10 * r.Roll(5),
		Clean: 3 + r.Roll(5),
	}
	if r.Roll(4) == 0 {
		d.CupHolds = 0
	}
	products := 2 + r.Roll(3)
	for g := 0; g < products; g++ {
		d.Products = append(d.Products, plan.Product{Mix: r.Roll(7), PotLife: r.Roll(3) * (30 + r.Roll(60))})
		row := make([]int, products)
		for h := range row {
			row[h] = 2 + r.Roll(7)
			if g == h {
				row[h] = r.Roll(3)
			}
		}
		d.Rinse = append(d.Rinse, row)
	}
	d.Aim = []plan.Aim{{}, plan.HomeEarly(), plan.LittleWaste(), plan.FinishOnly()}[r.Roll(4)]
	for j := 0; j < jobs; j++ {
		d.Jobs = append(d.Jobs, oddJob(&r, products))
	}
	for n := r.Roll(3); n > 0; n-- {
		from := r.Roll(150)
		d.Breaks = append(d.Breaks, plan.Break{From: from, To: from + 5 + r.Roll(40), Painter: r.Roll(max(1, d.Painters) + 1)})
	}
	if r.Roll(4) == 0 {
		d.Now = r.Roll(60)
	}
	return d
}

func oddJob(r *Dice, products int) plan.Job {
	job := plan.Job{Ready: max(0, r.Roll(80)-40), Priority: r.Roll(4)}
	if r.Roll(3) == 0 {
		job.Prep = plan.Prep{Minutes: 5 + r.Roll(20), ByPainter: r.Roll(2) == 0}
	}
	product := r.Roll(products)
	for n := 1 + r.Roll(3); n > 0; n-- {
		c := plan.Coat{Product: product, Spray: 2 + r.Roll(9), Amount: 50 * r.Roll(6), Flash: r.Roll(15), NewCup: r.Roll(4) == 0, Movable: r.Roll(4) == 0}
		if r.Roll(2) == 0 {
			c.Latest = c.Flash + 5 + r.Roll(60)
		}
		job.Coats = append(job.Coats, c)
		if r.Roll(2) == 0 {
			product = r.Roll(products)
		}
	}
	if r.Roll(3) > 0 {
		job.Bake = plan.Bake{Minutes: 10 + 10*r.Roll(2), InOven: r.Roll(3) == 0, Heat: r.Roll(2)}
	}
	if r.Roll(2) == 0 {
		job.Promised = 30 + r.Roll(200)
	}
	return job
}
