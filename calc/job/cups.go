package job

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A cup is one mixing of a product.
type cup struct {
	spray  float64  // mL that leave the gun
	sprays []spray  // where it goes, in order
	volume calc.Num // mL mixed, with what stays in cup and gun
}

// A spray is what one cup puts on in one coat.
type spray struct {
	coat   int     // counted from 1
	volume float64 // mL
}

// mostCups is how many cups of one product a card can hold.
const mostCups = 60

// A recipe is what cup planning needs to know of a product. Volumes are in mL, times in minutes.
type recipe struct {
	coats     int
	perCoat   float64 // sprayed in each coat
	rate      float64 // mL sprayed a minute, turning and walking included
	cup, lost float64 // what a cup holds, and what of it never leaves the gun
	mixing    float64
	potLife   float64 // from the start of mixing; +Inf for a one-pack product
	flash     float64 // between coats
}

// plan splits the product into cups, each small enough for the cup and sprayed out within its pot life, flash-off
// between coats included. Where a cup holds a coat, cups hold whole coats: nobody stops at a wet edge to mix. Where it
// does not, cups are evened out, so that the last is not a dribble, unless that needs more of them. plan returns nil
// when no paint could be sprayed before its pot life ends, or mostCups are not enough.
func (r recipe) plan() []cup {
	holds := r.cup - r.lost
	if coats := math.Floor(holds / r.perCoat * (1 + 1e-12)); coats >= 1 {
		// As many coats to a cup as fit; fewer where the pot life would end within one.
		for n := math.Min(coats, float64(r.coats)); n >= 1; n-- {
			cups := r.fill(n * r.perCoat)
			if cups == nil || !wholeCoats(cups) {
				continue // its pot life would end within a coat
			}
			return cups
		}
	}
	cups := r.fill(holds)
	if len(cups) < 2 {
		return cups
	}
	even := r.perCoat * float64(r.coats) / float64(len(cups))
	if evened := r.fill(even * (1 + 1e-12)); len(evened) == len(cups) {
		return evened
	}
	return cups
}

// wholeCoats reports whether no coat is sprayed from two cups.
func wholeCoats(cups []cup) bool {
	for i := 1; i < len(cups); i++ {
		before := cups[i-1].sprays
		if cups[i].sprays[0].coat == before[len(before)-1].coat {
			return false
		}
	}
	return true
}

// fill mixes cups of at most so much sprayable paint until all coats are on.
func (r recipe) fill(most float64) []cup {
	var cups []cup
	for coat, left := 1, r.perCoat; coat <= r.coats; {
		if len(cups) == mostCups {
			return nil
		}
		var c cup
		c, coat, left = r.one(most, coat, left)
		if c.spray == 0 {
			return nil
		}
		cups = append(cups, c)
	}
	return cups
}

// one mixes one cup, from a coat of which so much is left on. It returns where the next cup goes on.
func (r recipe) one(most float64, coat int, left float64) (cup, int, float64) {
	little := 1e-6 * r.perCoat
	c, t := cup{}, r.mixing
	for coat <= r.coats {
		v := min(left, most-c.spray, (r.potLife-t)*r.rate)
		if v <= little {
			break
		}
		c.sprays = append(c.sprays, spray{coat, v})
		c.spray += v
		t += v / r.rate
		if left -= v; left > little {
			break // full, or the pot life is up
		}
		coat, left = coat+1, r.perCoat
		t += r.flash
	}
	return c, coat, left
}

// amounts says how much of each product to mix, with what is lost in every cup that it takes.
func (j *job) amounts() {
	fits := true
	for _, c := range j.coats {
		if c.area = j.whole; c.colour != "" {
			c.area = j.areaOf(c.colour)
		}
		c.demand = film.Demand(j.Working, c.area, c.dryFilm, c.solids, j.gun.transfer)
		fits = c.amount(j) && fits
	}
	if !fits {
		return
	}
	var all, spare calc.Num
	for _, c := range j.coats {
		all, spare = j.sum("Mixed so far", unit.Millilitre, all, c.mix), j.sum("Left over so far", unit.Millilitre, spare, c.left)
		n := j.Model("Cups", "as many as fill no cup over and leave none past its pot life", unit.One, source.Definition, float64(len(c.cups)), c.mix.As("V"))
		j.List(amounts, c.told(), calc.Of(c.area), calc.Of(c.demand), calc.Of(c.mix), calc.Of(c.left), calc.Of(n))
	}
	j.Result(toMixAll, all)
	j.Result(leftOver, spare)
	for _, c := range j.coats {
		j.pour(c)
	}
}

// amount finds the smallest number of cups that holds the product together with what those cups lose.
func (c *coat) amount(j *job) bool {
	g := j.gun
	r := recipe{
		coats: int(c.coats.V), rate: g.delivery.V * g.trigger.V / 100, cup: g.cupSize.V, lost: g.losses.V,
		mixing: g.mixTime.V, potLife: math.Inf(1), flash: c.flashMost.V,
	}
	if c.pot.Given() {
		r.potLife = c.pot.V
	}
	// More cups lose more, which never needs fewer cups: counting up ends at the least number that is enough.
	for n := 1; n <= mostCups; {
		lost := calc.N(g.losses.V*float64(n), unit.Millilitre)
		mix, _ := film.ToMix(nil, c.demand, lost, g.filmSpread, g.transferSpread, g.confidence)
		r.perCoat = (mix.V - lost.V) / c.coats.V
		cups := r.plan()
		if cups == nil {
			break
		}
		if len(cups) == n {
			c.cups = cups
			c.record(j, n)
			return true
		}
		n = max(n+1, len(cups))
	}
	c.tooMany(j, r)
	return false
}

// record writes the amount down once the number of cups is known.
func (c *coat) record(j *job, n int) {
	g := j.gun
	count := calc.N(float64(n), unit.One).Called("Cups")
	lost := j.Step("Lost in all cups", "H = H_1 * n", unit.Millilitre, source.Definition, g.losses.V*count.V, g.losses, count)
	c.mix, c.left = film.ToMix(j.Working, c.demand, lost, g.filmSpread, g.transferSpread, g.confidence)
	for i := range c.cups {
		v := calc.N(c.cups[i].spray, unit.Millilitre).Called("Sprayed from this cup")
		c.cups[i].volume = j.Step("Mix in this cup", "V = V_s + H", unit.Millilitre, source.Definition, v.V+g.losses.V, v, g.losses)
	}
}

// tooMany says which limit stands in the way.
func (c *coat) tooMany(j *job, r recipe) {
	switch {
	case r.potLife <= r.mixing:
		c.Reject(potLife, calc.Impossible, "is over before the cup is mixed: {pot} today, and mixing takes {mix}", "Use a slower hardener, or wait for a cooler hour",
			c.pot.To(0, "pot"), j.gun.mixTime.To(0, "mix"))
	case r.potLife < r.mixing+(r.cup-r.lost)/r.rate:
		c.Reject(potLife, calc.Impossible, "is too short today, {pot}: more than {most} cups would be needed", "Use a slower hardener, a larger delivery, or wait for a cooler hour",
			c.pot.To(0, "pot"), calc.N(mostCups, unit.One).To(0, "most"))
	default:
		j.Reject(field.CupSize, calc.Impossible, "would need more than {most} cups of {name}", "Check the parts, or use a larger cup",
			calc.N(mostCups, unit.One).To(0, "most"), calc.Words(c.name, "name"))
	}
}
