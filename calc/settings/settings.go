// Package settings turns today's air into what to change: pressure, distance, overlap, reducer, times, or the booth.
//
// Which air dries faster is physics; how far painters follow it with the pressure is practice, one number that a shop
// can fit to its own settings. The rest compares one setup with another and never claims a measured figure.
package settings

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "settings", Make: Settings},
}

// Settings is the page a painter opens with the thermometer in hand.
func Settings() *calc.Calculator {
	return &calc.Calculator{
		ID:       "settings",
		Title:    "Today’s settings",
		Question: "What do I change in today's air?",
		Range: "A start pressure only for waterborne paint in HVLP and reduced-pressure guns, in air of 5 to 45 °C (41 to 113 °F). " +
			"The rest compares this air with 23 °C (73 °F) and 50 % by a model that no measured spray has tested: it tells which change does most, not how much paint you lose.",
		Inputs:   inputs,
		Outputs:  outputs,
		Work:     work,
		Cautions: []calc.Phrase{caution.CompressedAir, leftOut},
		InStages: true,
	}
}

const leftOut = "Drops and films are worked as if they were thinner alone. Left out are the dry air from the gun, the finest and the coarsest drops, flake, " +
	"and paint that thickens as it rests."

// A day is one run: what has been read and worked out so far.
type day struct {
	*calc.Working
	now, ordinary   drying.Climate
	needed          calc.Num // degrees over the dew point
	lowest, highest calc.Num // air and panel, as the sheet allows
	most            calc.Num // the dampest the sheet allows
	against         []reason // not to spray in this air
	strength, usual calc.Num // how hard the air dries water, now and in ordinary air
	ratio           calc.Num // of the two
	liquid          string
	sheet           drying.Climate
	ref, rated      calc.Num // the gun's pressures as it is set up
	own             setup
	start           calc.Num // today's pressure; ref where there is no figure
	wetNow          calc.Num // wet time of the film as you are, in percent of the usual
	moves           []move   // at the gun, the one that does most first
}

func work(w *calc.Working) {
	d := &day{Working: w}
	if !w.Ready(placeAir) || !d.readAir() {
		return
	}
	d.mindDew()
	paint := w.Ready(placePaint) && d.readPaint()
	if paint {
		d.mindAir()
		d.mindBlush()
		d.drawAir()
		if w.Ready(placeGun, placePairs) && d.readGun() {
			d.pressureToday()
			d.levers()
			d.drawDrops()
		}
		d.moveAir()
	}
	d.judge(paint)
	if paint {
		d.cautions()
	}
}

// water reports whether the paint is waterborne.
func (d *day) water() bool { return d.liquid == drying.Water }

func (d *day) cautions() {
	if d.Picked(field.Pack) == "two" {
		d.Caution(caution.Isocyanate)
		d.Caution(caution.PotLife)
		d.Caution(caution.HardenerRatio)
	}
	if !d.water() {
		d.Caution(caution.Flammable)
	}
	d.Caution("The data sheet comes first: use only reducers, additives and hardeners it names. Spray a test panel before the part.")
}

var ordinaryDay = source.CommonPractice.At("conditions that coatings are tried out in")
