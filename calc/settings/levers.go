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

// How far each change is taken: ours, but for what textbooks teach of the distance.
const (
	dropSize  = 30   // µm: the middle of what refinish sprays measure
	nearest   = 100  // mm, HVLP and reduced pressure; a conventional gun 200
	leastNear = 0.75 // of the distance
	mostFilm  = 1.2  // of your own; more may run
	leastFilm = 0.8
	leastLap  = 50  // %
	slowest   = 0.2 // m/s
	fastest   = 0.7 // m/s
	enoughWet = 75  // % of the usual wet time: from here to tooWet nothing but the pressure is touched
	tooWet    = 140
)

var (
	middleDrop = source.Brosseau1992.At("abstract: geometric mean 20 to 40 µm for basecoats").By(source.SecondHand)
	paintSpent = source.Definition.At("the same paint on less panel; the fan widens with distance")
	ourSteps   = source.OurChoice.At("nearer by a quarter at most; a film from 0.8 to 1.2 times your own")
	wetEdge    = source.OurChoice.At("half of the liquid gone stands for the lost wet edge")
	ourBlends  = source.OurChoice.At("to be tried on a card")
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
	_, lost, wet := c.wet(&d.own, &d.ordinary)
	if c.usually = wet; wet.V <= 0 {
		d.tell(&strongest, "Not worked out: drops of this solvent alone never land wet")
		return
	}
	c.list(calc.Say("As you are, at {t} and {rh}", c.compared()...), calc.N(1, unit.One), lost, c.share(wet))
	c.rate = drying.DropRate(d.Working, d.now, d.liquid)
	d.wetNow = c.try(calc.Say("As you are, in this air"), &d.own)
	best := c.atSameFilm(d.wetNow)
	if !suits(d.wetNow.V) {
		if other := c.otherFilm(d.wetNow); d.wetNow.V > 100 {
			best = other
		}
	}
	switch {
	case suits(d.wetNow.V):
		d.tell(&strongest, "Nothing needs it: your hand suits this air")
	case len(d.moves) > 0:
		d.Tell(strongest, d.moves[0].says)
	case d.wetNow.V == 0:
		d.tell(&strongest, "Nothing: in this air drops of this liquid alone land dry")
	default:
		d.tell(&strongest, "Nothing, at the same film: it is for the reducer and the booth to do")
	}
	well, badly := d.Constant("Wet time that a blend needs", unit.Percent, ourBlends, blendsWell), d.Constant("Wet time below which it fails", unit.Percent, ourBlends, blendsBadly)
	d.tell(&blend, d.blends(best.V), best.As("s"), well.As("w"), badly.As("b"))
}

// suits is whether a film that stays wet for this percentage of ordinary air's time needs no change of hand.
func suits(share float64) bool { return share > enoughWet && share < tooWet }

// apart is how many times two shares differ, as a logarithm.
func apart(a, b float64) float64 { return math.Abs(math.Log((a + 1e-9) / (b + 1e-9))) }

// wet is the film laid, what a drop loses in flight and how many minutes a film stays wet, from the gun, in a climate.
func (c *comparison) wet(s *setup, in *drying.Climate) (film, lost, minutes calc.Num) {
	size, own := c.size, &c.own
	if s[pressure].V != own[pressure].V {
		size = gun.DropSize(c.Working, size, own[pressure], s[pressure])
	}
	lost = drying.FlightLoss(c.Working, c.rate, size, s[distance], c.Sc)
	film = c.Step("Film of a coat, times your own", "f = L_0 / L * (100 - o_0) / (100 - o) * v_0 / v", unit.One, paintSpent,
		own[distance].V/s[distance].V*(100-own[overlap].V)/(100-s[overlap].V)*own[speed].V/s[speed].V, own[distance], s[distance], own[overlap], s[overlap], own[speed], s[speed])
	return film, lost, c.Model("Half of the liquid is gone after", "what the drop lost, and the film by its heat balance on 0.8 mm steel: 12 g/m² times f", unit.Minute, wetEdge,
		drying.WetTime(*in, c.liquid, film.V, lost.V/100)/60, lost.As("x"), film.As("f"), in.Air.As("t"), in.Humidity.As("RH"), in.Panel.As("t_s"), in.AirSpeed.As("u"))
}

func (c *comparison) share(wet calc.Num) calc.Num {
	return c.Step("Wet time, against your own setup in the air to compare with", "s = 100 * t / t_ord", unit.Percent, source.Definition, 100*wet.V/c.usually.V, wet, c.usually)
}

// try lists a setup in today's air and returns how long its film stays wet, in percent of your own in ordinary air.
func (c *comparison) try(says calc.Text, s *setup) calc.Num {
	film, lost, wet := c.wet(s, &c.now)
	share := c.share(wet)
	c.list(says, film, lost, share)
	return share
}

func (c *comparison) list(says calc.Text, film, lost, share calc.Num) {
	c.List(levers, calc.Told(says), calc.Of(film), calc.Of(lost), calc.Of(share))
}

// Shares of the usual wet time, in percent, that a blend's wet edge can do with: ours, to be tried on a card.
const blendsWell, blendsBadly = 60, 35

// blends says what becomes of a blended edge at the best setup.
func (d *day) blends(best float64) calc.Phrase {
	switch {
	case best < blendsBadly && d.Picked(field.Role) == "base":
		return "No: the edge dries as it lands, grainy and blotchy"
	case best < blendsBadly:
		return "No: the edge dries as it lands and stays grainy"
	case best < blendsWell:
		return "Risky: without slow reducer and a wet bed it goes grainy"
	case best > 100*driesFast:
		return "No dry edge; but over a coat still wet it turns blotchy"
	}
	return "Safe with these settings; try a card first"
}
