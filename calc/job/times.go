package job

import (
	"spraywright/calc"
	"spraywright/calc/cure"
	"spraywright/calc/drying"
	"spraywright/calc/field"
)

// todaysTimes turns the data sheets' pot life, flash-off and recoat times into today's. Where the model refuses,
// the data sheet's own time stands and the verdict says that it is not computed.
func (j *job) todaysTimes() {
	for _, c := range j.coats {
		c.readPotLife(j)
		c.readFlash(j)
		c.readDrying(j)
		if stated := c.Given(field.LatestRecoat); stated.Given() && c.Given(recoatAt).Given() {
			at := c.Given(recoatAt)
			if refused := cure.CheckReach(j.air.Panel, at); refused != nil {
				c.notComputed(j, "Latest recoat", "The panel", refused)
			}
			c.recoat = cure.LatestRecoat(j.Working, stated, at, j.air.Panel)
		}
		j.List(times, c.told(),
			calc.Of(c.pot).Timed(c.Timer(calc.PotLife, c.name, calc.Num{}, calc.Num{}, c.pot)), calc.Of(c.potMost),
			calc.Of(c.flash), calc.Of(c.flashMost).Timed(c.flashTimer()),
			calc.Of(c.recoat).Timed(c.Timer(calc.Recoat, c.name, calc.Num{}, calc.Num{}, c.recoat)))
	}
}

func (c *coat) readPotLife(j *job) {
	if !c.twoPack {
		return
	}
	stated := c.Given(potLife)
	low, high, refused := cure.PotLife(j.Working, stated, c.Given(potLifeAt), c.Given(potLifeSecond), c.Given(potLifeSecondAt), j.air.Air)
	if refused != nil {
		if now := j.air.Air; now.V > max(c.Given(potLifeAt).V, c.Given(potLifeSecondAt).V) {
			// Hotter than the sheet knows, the stated time would be too long.
			c.noPotLife = true
			j.Judge(calc.Stop, calc.Say("The pot life of {name} is not known at {t}", calc.Words(c.name, "name"), now.To(0, "t")),
				calc.Say("Do not mix it: cool the booth, or ask your supplier for the pot life at this temperature"))
			return
		}
		c.notComputed(j, "Pot life", "The air", refused)
		low, high = stated, stated
	}
	c.pot, c.potMost = low, high
}

func (c *coat) readFlash(j *job) {
	stated := c.Given(field.Flash)
	ref := drying.DataSheet(j.Working, c.Given(field.FlashAt), c.Given(flashHumidity), c.Given(field.FlashAirSpeed))
	liquid := "water"
	if !c.waterborne {
		liquid = c.Picked(solvent)
	}
	low, high, refused := drying.FlashTime(j.Working, stated, ref, j.air.Climate, liquid)
	if refused != nil {
		c.notComputed(j, "Flash-off", "Flash-off", refused)
		low, high = stated, stated
	}
	c.flash, c.flashMost = low, high
}

func (c *coat) flashTimer() *calc.Timer {
	return c.Timer(calc.FlashOff, c.name, calc.Num{}, c.flash, c.flashMost)
}

// readDrying is what follows the last coat: flash-off alone, air drying, or a bake.
func (c *coat) readDrying(j *job) {
	stated := c.Given(dryTime)
	switch c.Picked(field.Drying) {
	case "air":
		_, high, refused := cure.AirDry(j.Working, stated, c.Given(dryAt), j.air.Air)
		if refused != nil {
			c.notComputed(j, "Air drying", "The air", refused)
			high = stated
		}
		c.dry = high
	case "bake":
		c.dry = stated // with the metal at the temperature the sheet names
	}
}

// notComputed says that a time stands as the data sheet has it, and why: subject is what the refusal speaks of.
func (c *coat) notComputed(j *job, what, subject calc.Phrase, refused *calc.Fault) {
	j.Judge(calc.Wait, calc.Say("{what} of {name} is the data sheet’s own, not today’s. {subject} {why}", calc.Term(what, "what"), calc.Words(c.name, "name"),
		calc.Term(subject, "subject"), calc.Say(refused.Message, refused.Args...).As("why")), calc.Say(refused.Fix, refused.Args...))
}
