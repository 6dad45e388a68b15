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
		Range: "Against ordinary air, 23 °C and 50 %. A start pressure only for waterborne paint, HVLP and reduced-pressure guns, 5 to 45 °C, good to 1 psi either way. " +
			"Drops and films are worked as the thinner alone, drops at 10 m/s: they tell which change does most, not how much paint you lose. " +
			"Left out: dry air from the gun and vapour in the fan, the smallest and the largest drops, flake, and paint that thickens as it rests.",
		Inputs:   inputs,
		Outputs:  outputs,
		Work:     work,
		Cautions: []string{caution.CompressedAir},
		InStages: true,
	}
}

// A day is one run: what has been read and worked out so far.
type day struct {
	*calc.Working
	now, ordinary     drying.Climate
	dew, needed, most calc.Num // most: the dampest the sheet allows
	strength, usual   calc.Num // how hard the air dries water, now and in ordinary air
	ratio             calc.Num // of the two
	liquid            string
	sheet             drying.Climate
	ref, rated        calc.Num // the gun's pressures as it is set up
	own               setup
	start             calc.Num // today's pressure; ref where there is no figure
}

func work(w *calc.Working) {
	d := &day{Working: w}
	if !w.Ready(placeAir) || !d.readAir() {
		return
	}
	if !w.Ready(placePaint) {
		return
	}
	d.readPaint()
	d.drawAir()
	if w.Ready(placeGun, placePairs) && d.readGun() {
		d.pressureToday()
		d.levers()
		d.drawDrops()
	}
	d.judgeAir()
	d.cautions()
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

// bounds of the drying ratio within which painters change little, as start pressure in ordinary weather shows.
const driesSlowly, driesFast = 0.5, 2

var ordinaryDay = source.CommonPractice.At("conditions that coatings are tried out in")
