package settings

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/unit"
)

// A move is a change at the gun and the wet time of the film after it, in percent of the usual one.
type move struct {
	says calc.Text
	wet  calc.Num
}

// advise lists what to do, what does most first: the booth, the reducer, the gun.
func (d *day) advise(way, why calc.Text) {
	n := 0
	add := func(what, why calc.Text) {
		n++
		d.List(todo, calc.Told(calc.Say("{n}. {what}", calc.Words(strconv.Itoa(n), "n"), what.As("what"))), calc.Told(why))
	}
	if way.Template != "" {
		add(way, why)
	}
	if !d.allowed(&d.now) {
		add(calc.Say("Measure again, and read this page for that air"), calc.Say("What follows is for the air as it is"))
		return
	}
	reduced := false
	for _, r := range d.against {
		if r.do.Template != "" {
			add(r.do, r.says)
			reduced = true
		}
	}
	takes := drying.FlashRatio(d.sheet, d.now, d.liquid)
	if !reduced && (takes < driesSlowly || !d.water() && (takes < 0.8 || takes > 1.3)) {
		add(calc.Say("Choose the reducer before you mix: {what}", d.reducer().Within("what")),
			calc.Say("This film dries in {x} of the sheet's time", calc.N(100*takes, unit.Percent).To(0, "x")))
	}
	for _, m := range d.moves {
		add(m.says, calc.Say("The film stays wet {a} as long as at {t} and {rh}; now {b}", d.compared(m.wet.To(0, "a"), d.wetNow.To(0, "b"))...))
	}
	if n == 0 {
		add(calc.Say("Keep your settings"), calc.Say("This air is like {t} and {rh} to your paint", d.compared()...))
	}
	add(calc.Say(testPanel), calc.Say("Every figure here is a first setting"))
}

// allowed is whether the sheet allows spraying in a climate, and its panel stays dry.
func (d *day) allowed(c *drying.Climate) bool {
	for _, t := range [...]float64{c.Air.V, c.Panel.V} {
		if d.tooCold(t) || d.tooHot(t) {
			return false
		}
	}
	return !(d.most.Given() && c.Humidity.V > d.most.V) && c.Panel.V-climate.DewPoint(c.Air.V, c.Humidity.V) >= d.needed.V
}
