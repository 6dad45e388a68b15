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

// A setup is how the gun is held, by the things that can be changed.
type setup [4]calc.Num

// The places in a setup.
const (
	pressure = iota
	distance
	overlap
	speed
)

// A comparison works setups out against your own in ordinary air.
type comparison struct {
	*day
	size, Sc, rate calc.Num // of the drop
	usually        calc.Num // minutes that your own setup stays wet in ordinary air
}

// levers lists what each change does to a drop in flight and to the film, and tells which does most.
func (d *day) levers() {
	if drying.Refuse(d.ordinary, d.now, d.liquid) != nil {
		return
	}
	c := &comparison{day: d}
	c.size = d.Constant("Drop that is looked at", unit.Micrometre, middleDrop, dropSize)
	c.Sc = drying.Schmidt(d.Working, d.now, d.liquid)
	c.rate = drying.DropRate(d.Working, d.ordinary, d.liquid)
	lost, wet := c.wet(&d.own, &d.ordinary)
	if c.usually = wet; wet.V <= 0 {
		d.tell(&strongest, "Not worked out: drops of this solvent alone never land wet")
		return
	}
	c.list(calc.Say("As you are, in ordinary air"), lost, c.share(wet))
	c.rate = drying.DropRate(d.Working, d.now, d.liquid)
	now := c.try(calc.Say("As you are, in today's air"), &d.own)
	most := calc.Say("None of these: in this air drops of this liquid alone land dry")
	best, all, tried := now, d.own, 0
	for i, to := range c.changed(now / 100) {
		from := d.own[i]
		if to.V == from.V {
			continue
		}
		one := d.own
		one[i], all[i] = to, to
		says := calc.Say(changes[i], from.To(places[i], "a"), to.To(places[i], "b"))
		share := c.try(says, &one)
		if tried++; apart(share, now) > apart(best, now) {
			best, most = share, says
		}
	}
	if tried > 1 && !suits(best) {
		all[speed] = c.heldSpeed(&all)
		best = c.try(calc.Say("All of these together, at {v}", all[speed].To(2, "v")), &all)
	}
	if suits(now) || tried == 0 {
		most = calc.Say("Nothing needs it: your hand suits this air")
	}
	d.Tell(strongest, most)
	d.tell(&blend, d.blends(best))
}

var (
	changes = [...]string{"Pressure from {a} to {b}", "Distance from {a} to {b}", "Overlap from {a} to {b}", "Gun speed from {a} to {b}"}
	places  = [...]int{1, 0, 0, 2}         // decimals
	rounds  = [...]float64{1, 10, 5, 0.05} // what a hand can keep to
)

// suits is whether a film that stays wet for this percentage of ordinary air's time needs no change of hand.
func suits(share float64) bool { return share > enoughWet && share < tooWet }

// apart is how many times two shares differ, as a logarithm.
func apart(a, b float64) float64 { return math.Abs(math.Log((a + 1e-9) / (b + 1e-9))) }

// wet is what a drop loses in flight and how many minutes a film stays wet, from the gun, in a climate.
func (c *comparison) wet(s *setup, in *drying.Climate) (lost, minutes calc.Num) {
	size, own := c.size, &c.own
	if s[pressure].V != own[pressure].V {
		size = gun.DropSize(c.Working, size, own[pressure], s[pressure])
	}
	lost = drying.FlightLoss(c.Working, c.rate, size, s[distance], c.Sc)
	film := c.Step("Film of a coat, against your own", "f = L_0 / L * (100 - o_0) / (100 - o) * v_0 / v", unit.One, paintSpent,
		c.film(s), own[distance], s[distance], own[overlap], s[overlap], own[speed], s[speed])
	return lost, c.Model("Half of the liquid is gone after", "what the drop lost, and the film by its heat balance on 0.8 mm steel: 12 g/m² times f", unit.Minute, source.Definition,
		drying.WetTime(*in, c.liquid, film.V, lost.V/100)/60, lost.As("x"), film.As("f"), in.Air.As("t"), in.Humidity.As("RH"), in.Panel.As("t_s"), in.AirSpeed.As("u"))
}

// film is how thick a setup lays a coat, against your own.
func (c *comparison) film(s *setup) float64 {
	return c.own[distance].V / s[distance].V * (100 - c.own[overlap].V) / (100 - s[overlap].V) * c.own[speed].V / s[speed].V
}

// heldSpeed is the gun speed at which all changes together lay no more than a film bears.
func (c *comparison) heldSpeed(s *setup) calc.Num {
	return c.Model("Gun speed for all of them", "so that the film is at most 5/3 of your own", unit.MetrePerSecond, paintSpent,
		s[speed].V*math.Max(1, c.film(s)/mostFilm), s[distance].As("L"), s[overlap].As("o"), s[speed].As("v"))
}

func (c *comparison) share(wet calc.Num) calc.Num {
	return c.Step("Stays wet, against your own setup in ordinary air", "s = 100 * t / t_ord", unit.Percent, source.Definition, 100*wet.V/c.usually.V, wet, c.usually)
}

// try lists a setup in today's air and returns how long its film stays wet, in percent of your own in ordinary air.
func (c *comparison) try(says calc.Text, s *setup) float64 {
	lost, wet := c.wet(s, &c.now)
	share := c.share(wet)
	c.list(says, lost, share)
	return share.V
}

func (c *comparison) list(says calc.Text, lost, share calc.Num) {
	c.List(levers, calc.Told(says), calc.Of(lost), calc.Of(share))
}

// changed is the setup that brings a film which stays wet for a share of what it should nearer to that, each change no
// further than needed, nor than its own limit.
func (c *comparison) changed(share float64) setup {
	s := c.own
	s[pressure] = c.start
	if suits(100 * share) {
		return s
	}
	L, o, v := s[distance].V, s[overlap].V, s[speed].V
	if share < 1 {
		near := 1.0
		if c.Picked(field.Gun) == "conventional" {
			near = 2
		}
		L = math.Min(L, math.Max(near*nearest, L*math.Max(leastNear, share)))
		o = math.Max(o, 100-(100-o)*math.Max(1/mostFilm, share))
		v = math.Min(v, math.Max(slowest, v*math.Max(mostSlower, share)))
	} else {
		o = math.Min(o, math.Max(leastLap, 100-(100-o)*share))
		v = math.Max(v, math.Min(fastest, v*math.Min(1/mostSlower, share)))
	}
	for i, x := range [...]float64{s[pressure].V, L, o, v} {
		n := s[i]
		if r := math.Round(x/rounds[i]) * rounds[i]; i != pressure && (r-n.V)*(x-n.V) > 0 { // where rounding does not undo it
			s[i] = c.Constant(n.Label+", changed", n.Unit, paintSpent, r)
		}
	}
	return s
}

// Shares of ordinary air, in percent, that a blend's wet edge can do with: ours, to be tried on a card.
const blendsWell, blendsBadly = 60, 35

// blends says what becomes of a blended edge at the best setup.
func (d *day) blends(best float64) string {
	switch {
	case best < blendsBadly && d.Picked(field.Role) == "base":
		return "No: the edge dries as it lands, grainy and blotchy"
	case best < blendsBadly:
		return "No: the edge dries as it lands and stays grainy"
	case best < blendsWell:
		return "Risky: without slow reducer and a wet bed it goes grainy"
	case best > 100/driesSlowly:
		return "No dry edge; but over a coat still wet it turns blotchy"
	}
	return "Safe with these settings; try a card first"
}
