package settings

import (
	"spraywright/calc"
	"spraywright/calc/cure"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// dampest is the relative humidity in percent taken where a data sheet sets none.
const dampest = 85

// readPaint turns the data sheet's times into today's, and says which reducer and hardener suit the air.
func (d *day) readPaint() {
	d.liquid = drying.Water
	if d.Picked(carrier) != "water" {
		d.liquid = d.Picked(solvent)
	}
	d.most = d.Given(field.HumidityHighest)
	if !d.most.Given() {
		d.most = d.Constant("Dampest allowed where the sheet is silent", unit.Percent, source.CommonPractice, dampest)
	}
	d.sheet = drying.DataSheet(d.Working, d.Given(field.FlashAt), d.Given(field.FlashHumidity), d.Given(field.FlashAirSpeed))
	stated := d.Given(field.Flash)
	low, high, refused := drying.FlashTime(d.Working, stated, d.sheet, d.now, d.liquid)
	if refused != nil {
		d.notComputed("Flash-off", refused)
		low, high = stated, stated
	}
	d.Result(flashLow, low)
	d.Result(flashHigh, high)
	d.Tell(reducer, d.reducer())
	if d.Picked(pack) == "two" {
		d.readPotLife()
	}
	d.blush()
}

func (d *day) notComputed(what string, refused *calc.Fault) {
	d.Judge(calc.Wait, calc.Say("{what} is the data sheet's, not today's: {why}", calc.Words(what, "what"), calc.Words(refused.Message, "why")), calc.Say(refused.Fix))
}

func (d *day) readPotLife() {
	stated, at := d.Given(potLife), d.Given(potLifeAt)
	low, high, refused := cure.PotLife(d.Working, stated, at, d.Given(potLifeSecond), d.Given(potLifeSecondAt), d.now.Air)
	if refused != nil {
		d.notComputed("Pot life", refused)
		low, high = stated, stated
	}
	d.Result(potLow, low)
	d.Result(potHigh, high)
	says := "The standard one, at the sheet's ratio"
	switch warmer := d.now.Air.V - at.V; {
	case warmer > 7:
		says = "The slow one if the sheet has it, at the same ratio"
	case warmer < -7:
		says = "The fast one if the sheet has it, at the same ratio"
	}
	d.Tell(hardener, calc.Say(says))
}

// reducer goes by how long the film takes against the sheet's own air. Painters choose so; where one reducer ends and
// the next begins only the sheet can say.
func (d *day) reducer() calc.Text {
	takes := drying.FlashRatio(d.sheet, d.now, d.liquid)
	says := ""
	switch {
	case d.water() && takes < 0.8:
		says = "The slow reducer or additive, as much as the sheet allows: this film dries in {x} of the sheet's time"
	case d.water() && takes > 1.3:
		says = "The standard one: no reducer makes water leave damp air"
	case takes < 0.5:
		says = "The slowest the sheet allows: this film dries in {x} of the sheet's time"
	case takes < 0.8:
		says = "A slower one than for {t}: this film dries in {x} of the sheet's time"
	case takes > 1.3:
		says = "A faster one than for {t}, if the sheet has it"
	default:
		says = "The one the sheet names for {t}"
	}
	return calc.Say(says, d.sheet.Air.To(0, "t"), calc.N(100*takes, unit.Percent).To(0, "x"))
}

// blush warns where the film cools itself below the dew point. Water that evaporates cannot.
func (d *day) blush() {
	steel, plastic := drying.FilmTemperature(d.Working, d.now, d.liquid)
	d.Result(filmTemperature, steel)
	d.Result(filmColdest, plastic)
	const do = "Warm the panel, dry the air, or use a slower reducer that the sheet allows"
	dew := d.dew.To(1, "dew")
	switch {
	case d.water():
	case steel.V < d.dew.V && d.now.Panel.V > d.dew.V:
		d.Judge(calc.Wait, calc.Say("The film cools itself to {t}, below the dew point of {dew}: water settles on it and it blushes", steel.To(1, "t"), dew), calc.Say(do))
	case plastic.V < d.dew.V && d.now.Panel.V > d.dew.V:
		d.Judge(calc.Wait, calc.Say("A wet coat on thin plastic cools itself to {t}, below the dew point of {dew}: it may blush", plastic.To(1, "t"), dew), calc.Say(do+"; lay thinner coats"))
	}
}
