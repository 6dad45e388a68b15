package settings

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/gun"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// How far each change is taken. The limits are what textbooks teach and what a film bears; the rest is ours.
const (
	dropSize   = 30     // µm: the middle of what refinish sprays measure
	nearest    = 100    // mm, HVLP and reduced pressure; a conventional gun 200
	leastNear  = 0.75   // of the distance
	mostFilm   = 5. / 3 // of your own: what 70 % overlap lays where 50 % was; more may run
	leastLap   = 50     // %
	slowest    = 0.2    // m/s
	fastest    = 0.7    // m/s
	mostSlower = 0.8    // of the speed
	enoughWet  = 75     // % of ordinary air: from here to tooWet nothing but the pressure is touched
	tooWet     = 140
)

var (
	middleDrop = source.Brosseau1992.At("abstract: geometric mean 20 to 40 µm for basecoats").By(source.Seen)
	paintSpent = source.Definition.At("the same paint on less panel; the fan widens with distance")
)

// A setup is how the gun is held, and at what pressure.
type setup struct{ pressure, distance, overlap, speed calc.Num }

// A comparison works setups out against your own in ordinary air.
type comparison struct {
	*day
	own            setup
	size, Sc, rate calc.Num // of the drop
	usually        calc.Num // minutes that your own setup stays wet in ordinary air
}

// levers lists what each change does to a drop in flight and to the film, and tells which does most.
func (d *day) levers() {
	if drying.Refuse(d.ordinary, d.now, d.liquid) != nil {
		return
	}
	c := &comparison{day: d, own: setup{d.ref, d.distance, d.overlap, d.speed}}
	c.size = d.Constant("Drop that is looked at", unit.Micrometre, middleDrop, dropSize)
	c.Sc = drying.Schmidt(d.Working, d.now, d.liquid)
	c.rate = drying.DropRate(d.Working, d.ordinary, d.liquid)
	lost, wet := c.wet(c.own, d.ordinary)
	if wet.V <= 0 {
		d.Tell(strongest, calc.Say("Not worked out: drops of this solvent alone would not arrive wet even in ordinary air"))
		return
	}
	c.usually = wet
	c.list(calc.Say("As you are, in ordinary air"), lost, c.share(wet))
	c.rate = drying.DropRate(d.Working, d.now, d.liquid)
	_, now := c.try(calc.Say("As you are, in today's air"), c.own)
	best, all, tried := now, c.own, 0
	for _, s := range c.steps(now.V / 100) {
		_, share := c.try(s.says, s.setup)
		tried++
		all = s.into(all)
		if math.Abs(math.Log((share.V+1e-9)/(now.V+1e-9))) > math.Abs(math.Log((best.V+1e-9)/(now.V+1e-9))) {
			best, d.strongest = share, s.says
		}
	}
	if tried > 1 && !suits(best.V) {
		all.speed = c.heldSpeed(all)
		_, best = c.try(calc.Say("All of these together, at {v}", all.speed.To(2, "v")), all)
	}
	if suits(now.V) || tried == 0 {
		d.strongest = calc.Say("Nothing needs it: how you hold the gun suits this air")
	}
	d.Tell(strongest, d.strongest)
	d.Tell(blend, d.blends(best))
}

// suits is whether a film that stays wet for this percentage of ordinary air's time needs no change of hand.
func suits(share float64) bool { return share > enoughWet && share < tooWet }

// wet is what a drop loses in flight and how many minutes a film stays wet, from the gun, in a climate.
func (c *comparison) wet(s setup, in drying.Climate) (lost, minutes calc.Num) {
	size := c.size
	if s.pressure.V != c.own.pressure.V {
		size = gun.DropSize(c.Working, size, c.own.pressure, s.pressure)
	}
	lost = drying.FlightLoss(c.Working, c.rate, size, s.distance, c.Sc)
	film := c.Step("Film of a coat, against your own", "f = L_0 / L * (100 - o_0) / (100 - o) * v_0 / v", unit.One, paintSpent,
		c.film(s), c.own.distance, s.distance, c.own.overlap, s.overlap, c.own.speed, s.speed)
	return lost, c.Model("Half of the liquid is gone after", "what the drop lost, and the film by its heat balance on 0.8 mm steel: 12 g/m² times f", unit.Minute, source.Definition,
		drying.WetTime(in, c.liquid, film.V, lost.V/100)/60, lost.As("x"), film.As("f"), in.Air.As("t"), in.Humidity.As("RH"), in.Panel.As("t_s"), in.AirSpeed.As("u"))
}

// film is how thick a setup lays a coat, against your own.
func (c *comparison) film(s setup) float64 {
	return c.own.distance.V / s.distance.V * (100 - c.own.overlap.V) / (100 - s.overlap.V) * c.own.speed.V / s.speed.V
}

// heldSpeed is the gun speed at which all changes together lay no more than a film bears.
func (c *comparison) heldSpeed(s setup) calc.Num {
	return c.Model("Gun speed for all of them", "so that the film is at most 5/3 of your own", unit.MetrePerSecond, paintSpent,
		s.speed.V*math.Max(1, c.film(s)/mostFilm), s.distance.As("L"), s.overlap.As("o"), s.speed.As("v"))
}

func (c *comparison) share(wet calc.Num) calc.Num {
	return c.Step("Stays wet, against your own setup in ordinary air", "s = 100 * t / t_ord", unit.Percent, source.Definition, 100*wet.V/c.usually.V, wet, c.usually)
}

// try lists a setup in today's air.
func (c *comparison) try(says calc.Text, s setup) (lost, share calc.Num) {
	lost, wet := c.wet(s, c.now)
	share = c.share(wet)
	c.list(says, lost, share)
	return lost, share
}

func (c *comparison) list(says calc.Text, lost, share calc.Num) {
	c.List(levers, calc.Told(says), calc.Of(lost), calc.Of(share))
}

// A step is one change, alone.
type step struct {
	says calc.Text
	setup
	into func(setup) setup // the change made to another setup
}

// steps are the changes that bring a film which stays wet for a share of what it should nearer to that: each no
// further than needed, nor than its own limit.
func (c *comparison) steps(share float64) []step {
	var all []step
	add := func(template string, from, to calc.Num, decimals int, into func(setup) setup) {
		if math.Abs(to.V-from.V) > 1e-9 {
			all = append(all, step{calc.Say(template, from.To(decimals, "a"), to.To(decimals, "b")), into(c.own), into})
		}
	}
	to := func(n calc.Num, x, round float64) calc.Num {
		return c.Constant(n.Label+", changed", n.Unit, paintSpent, math.Round(x/round)*round)
	}
	if c.start.V != c.ref.V {
		add("Pressure from {a} to {b}", c.ref, c.start, 1, func(s setup) setup { s.pressure = c.start; return s })
	}
	if suits(100 * share) {
		return all
	}
	d, o, v := c.distance.V, c.overlap.V, c.speed.V
	if share < 1 {
		near := nearest
		if c.Picked(field.Gun) == "conventional" {
			near = 2 * nearest
		}
		d = math.Min(d, math.Max(float64(near), d*math.Max(leastNear, share)))
		o = math.Max(o, 100-(100-o)*math.Max(1/mostFilm, share))
		v = math.Min(v, math.Max(slowest, v*math.Max(mostSlower, share)))
	} else {
		o = math.Min(o, math.Max(leastLap, 100-(100-o)*share))
		v = math.Max(v, math.Min(fastest, v*math.Min(1/mostSlower, share)))
	}
	distance, overlap, speed := to(c.distance, d, 10), to(c.overlap, o, 5), to(c.speed, v, 0.05)
	add("Distance from {a} to {b}", c.distance, distance, 0, func(s setup) setup { s.distance = distance; return s })
	add("Overlap from {a} to {b}", c.overlap, overlap, 0, func(s setup) setup { s.overlap = overlap; return s })
	add("Gun speed from {a} to {b}", c.speed, speed, 2, func(s setup) setup { s.speed = speed; return s })
	return all
}

// Shares of ordinary air, in percent, that a blend's wet edge can do with: ours, to be tried on a card.
const blendsWell, blendsBadly = 60, 35

// blends says what becomes of a blended edge at the best setup.
func (d *day) blends(best calc.Num) calc.Text {
	base := d.Picked(role) == "base"
	switch {
	case best.V < blendsBadly && base:
		return calc.Say("Not in this air: the edge dries as it lands, grainy and blotchy. Paint to a panel edge, or cool the booth first")
	case best.V < blendsBadly:
		return calc.Say("Not in this air: the edge dries as it lands and stays grainy. Paint to a panel edge, or cool the booth first")
	case best.V < blendsWell:
		return calc.Say("Only with the slow reducer and a wet bed under the edge; otherwise it goes grainy. Try it on a card")
	case best.V > 100/driesSlowly:
		return calc.Say("No dry edge to fear, but a coat over one that has not flashed off turns blotchy")
	}
	return calc.Say("Safe with these settings; try it on a card first")
}
