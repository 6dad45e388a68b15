// Package job works a whole job out: from parts, data sheets, today's booth and the gun to a job card.
package job

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "job", Make: Job},
}

// Job is the page that the site opens on.
func Job() *calc.Calculator {
	return &calc.Calculator{
		ID:       "job",
		Title:    "The job",
		Question: "What do I mix, how do I spray it, and when is it done?",
		Range: "One gun, one booth, one painter; products are sprayed in the order you list them. " +
			"Each answer refuses outside its own range and says why.",
		Inputs:   inputs(),
		Outputs:  outputs(),
		Work:     work,
		InStages: true,
	}
}

// A job is one run of the card: what has been read and worked out so far.
type job struct {
	*calc.Working
	parts []part
	whole calc.Num // area of all parts, m²
	coats []*coat
	air   today
	gun   tools
}

// tools is what the gun's part of the form says.
type tools struct {
	delivery, fan, distance, speed, overlap, transfer, trigger calc.Num
	pressure, most                                             calc.Num
	cupSize, scaleStep, losses, combStep                       calc.Num
	confidence, filmSpread, transferSpread                     calc.Num
	mixTime, rinseTime                                         calc.Num
}

// work goes through the card stage by stage. Each stage runs as soon as the places it needs are in order, so
// that a painter who has only read the thermometer already gets the verdict on condensation.
func work(w *calc.Working) {
	j := &job{Working: w}
	j.readParts()
	j.readCoats()
	if w.Ready(placeAir) {
		j.readAir()
	}
	if w.Ready(placeGun) {
		j.readGun()
	}
	if w.Ready(placeAir, placeCoats) {
		j.judgeProducts()
		j.todaysTimes()
	}
	if w.Ready(placeGun) {
		j.filmOfCoats() // of the products that are complete
	}
	if w.Ready(placeCoats, placeGun, placeAir) {
		j.startPressures()
	}
	// How many cups a product takes, and so what is lost in them, hangs on today's pot life and flash-off.
	if w.Ready(placeParts, placeCoats, placeGun, placeAir) {
		j.amounts()
	}
	// Asked again, because there may be a product that no cups can hold.
	if w.Ready(placeParts, placeCoats, placeGun, placeAir) {
		j.vocAndCost()
		j.callSheet()
		j.handOverDay()
	}
	j.cautions()
}

func (j *job) readGun() {
	g := j.Given
	j.gun = tools{
		delivery: g(field.Delivery), fan: g(field.FanWidth), distance: g(field.GunDistance), speed: g(field.GunSpeed),
		overlap: g(field.Overlap), transfer: g(field.TransferEfficiency), trigger: g(field.TriggerShare),
		pressure: g(field.Pressure), most: g(field.PressureMost),
		cupSize: g(field.CupSize), scaleStep: g(field.ScaleStep), losses: g(field.Losses), combStep: g(field.CombStep),
		confidence: g(field.Confidence), filmSpread: g(field.FilmSpread), transferSpread: g(field.TransferSpread),
		mixTime: g(field.MixTime), rinseTime: g(field.RinseTime),
	}
	if j.gun.pressure.V > j.gun.most.V {
		j.Reject(field.Pressure, calc.Impossible, "is above the gun's rated highest pressure, {most}", "Never run a gun above its rating; check both",
			j.gun.most.As("most"))
	}
	if j.gun.losses.V >= j.gun.cupSize.V {
		j.Reject(field.Losses, calc.Impossible, "is as much as the cup holds, {cup}", "Check both", j.gun.cupSize.As("cup"))
	}
}

// cautions are shown for what the job really has in it.
func (j *job) cautions() {
	solventborne := false
	for _, c := range j.coats {
		if c.twoPack {
			j.Caution(caution.Isocyanate)
			j.Caution(caution.PotLife)
		}
		solventborne = solventborne || !c.waterborne
		if c.Picked(field.Drying) == "bake" {
			j.Caution(caution.Bake)
		}
	}
	if solventborne {
		j.Caution(caution.Flammable)
	}
	j.Caution(caution.CompressedAir)
}
