package settings

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/cure"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// dampest is the relative humidity in percent taken where a data sheet sets none.
const dampest = 85

// readPaint turns the data sheet's times into today's, and says which reducer and hardener suit the air.
func (d *day) readPaint() bool {
	d.liquid = drying.Water
	if d.Picked(field.Carrier) != "water" {
		d.liquid = d.Picked(field.Solvent)
	}
	d.most = d.given(&field.HumidityHighest)
	if !d.most.Given() {
		d.most = d.Constant("Dampest allowed where the sheet is silent", unit.Percent, source.CommonPractice, dampest)
	}
	d.lowest, d.highest = d.given(&field.AirLowest), d.given(&field.AirHighest)
	if d.lowest.Given() && d.highest.Given() && d.lowest.V > d.highest.V {
		d.Reject(field.AirLowest, calc.Impossible, "is above the hottest allowed", "Check both on the sheet")
		return false
	}
	d.sheet = drying.DataSheet(d.Working, d.given(&field.FlashAt), d.given(&field.FlashHumidity), d.given(&field.FlashAirSpeed))
	stated := d.given(&field.Flash)
	low, high, refused := drying.FlashTime(d.Working, stated, d.sheet, d.now, d.liquid)
	if refused != nil {
		d.tell(&flashWhy, byTheSheet, calc.Term("Flash-off", "what"), calc.Say(refused.Message, refused.Args...).As("why"))
	} else {
		d.result(&flashLow, low)
		d.result(&flashHigh, high)
		d.Timed(flashHigh, d.Timer(calc.FlashOff, "", calc.Num{}, low, high))
	}
	d.Tell(reducer, d.reducer())
	return d.Picked(field.Pack) != "two" || d.readPotLife()
}

const byTheSheet = "Go by the data sheet. {what} {why}"

func (d *day) readPotLife() bool {
	stated, at := d.given(&field.PotLife), d.given(&field.PotLifeAt)
	second, secondAt := d.given(&field.PotLifeSecond), d.given(&field.PotLifeSecondAt)
	if f := cure.CheckSecond(stated, at, second, secondAt); f != nil {
		d.Reject(field.PotLifeSecond, calc.Impossible, f.Message, f.Fix)
		return false
	}
	low, high, refused := cure.PotLife(d.Working, stated, at, second, secondAt, d.now.Air)
	if refused != nil {
		d.tell(&potWhy, byTheSheet, calc.Term("The air", "what"), calc.Say(refused.Message, refused.Args...).As("why"))
	} else {
		d.result(&potLow, low)
		d.result(&potHigh, high)
		d.Timed(potLow, d.Timer(calc.PotLife, "", calc.Num{}, calc.Num{}, low))
	}
	says := calc.Phrase("Standard")
	switch warmer := d.now.Air.V - at.V; {
	case warmer > 7:
		says = "Slow"
	case warmer < -7:
		says = "Fast"
	}
	d.tell(&hardener, says)
	return true
}

// reducer goes by how long the film takes against the sheet's own air. Painters choose so; where one reducer ends and
// the next begins only the sheet can say.
func (d *day) reducer() calc.Text {
	takes := drying.FlashRatio(d.sheet, d.now, d.liquid)
	says := calc.Phrase("")
	switch {
	case d.water() && takes < driesSlowly:
		says = "Slow, as much as the sheet allows"
	case d.water() && takes > 1.3:
		says = "Standard: none makes water leave damp air"
	case takes < 0.5:
		says = "The slowest the sheet allows"
	case takes < 0.8:
		says = "Slower than for {t}"
	case takes > 1.3:
		says = "Faster than for {t}"
	default:
		says = "The one for {t}"
	}
	return calc.Say(says, d.sheet.Air.To(0, "t"))
}

// mindBlush minds a film that cools itself below the dew point. Water that evaporates cannot.
func (d *day) mindBlush() {
	steel, plastic := drying.FilmTemperature(d.Working, d.now, d.liquid)
	d.result(&filmTemperature, steel)
	d.result(&filmColdest, plastic)
	dew := calc.N(climate.DewPoint(d.now.Air.V, d.now.Humidity.V), unit.DegC)
	const blushes = "below the dew point of {dew}: "
	do := calc.Say("Warm the panel, dry the air, or use a slower reducer that the sheet allows")
	switch {
	case d.water() || d.now.Panel.V <= dew.V:
	case steel.V < dew.V:
		d.object(calc.Wait, do, "The film cools itself to {t}, "+blushes+"water settles on it and it blushes", steel.To(0, "t"), dew.To(0, "dew"))
	case plastic.V < dew.V:
		d.object(calc.Wait, do, "A wet coat on thin plastic cools itself to {t}, "+blushes+"it may blush", plastic.To(0, "t"), dew.To(0, "dew"))
	}
}
