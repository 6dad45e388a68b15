package settings

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A reason not to spray in this air. do is blank where only better air helps.
type reason struct {
	level    calc.Level
	says, do calc.Text
}

// object gives a reason; the gravest lead.
func (d *day) object(level calc.Level, do calc.Text, template calc.Phrase, args ...calc.Arg) {
	d.against = append(d.against, reason{level, calc.Say(template, args...), do})
	for i := len(d.against) - 1; i > 0 && level == calc.Stop && d.against[i-1].level != calc.Stop; i-- {
		d.against[i-1], d.against[i] = d.against[i], d.against[i-1]
	}
}

// Bounds of how fast the air dries water, times 23 °C and 50 %, and a film, times its sheet, between which painters
// change little.
const driesSlowly, driesFast = 0.5, 2

var changesLittle = source.OurChoice.At("between half and twice as fast painters are taken to change little, as start pressures in ordinary weather suggest")

func (d *day) mindDew() {
	over := calc.N(d.now.Panel.V-climate.DewPoint(d.now.Air.V, d.now.Humidity.V), unit.DiffC)
	switch {
	case over.V < 1e-6: // none but for rounding
		over.V = -over.V
		d.object(calc.Stop, calc.Text{}, "The panel is {m} below the dew point: water settles on it", over.To(1, "m"))
	case over.V < d.needed.V:
		d.object(calc.Wait, calc.Text{}, "The panel is {m} above the dew point, where {needed} are wanted", over.To(1, "m"), d.needed.To(1, "needed"))
	}
}

// mindAir holds the air to the data sheet, and to what painters can follow.
func (d *day) mindAir() {
	for _, t := range [...]calc.Num{d.now.Air, d.now.Panel} {
		const is = "{what} of {t} is "
		what := calc.Term(t.Label, "what")
		if d.tooCold(t.V) {
			d.object(calc.Stop, calc.Text{}, is+"under the {low} that this paint needs", what, t.To(1, "t"), d.lowest.To(0, "low"))
		} else if d.tooHot(t.V) {
			d.object(calc.Stop, calc.Text{}, is+"over the {high} that this paint allows", what, t.To(1, "t"), d.highest.To(0, "high"))
		}
	}
	if d.now.Humidity.V > d.most.V {
		d.object(calc.Wait, calc.Text{}, "Humidity of {rh} is over the {most} that this paint allows", d.now.Humidity.To(0, "rh"), d.most.To(0, "most"))
	}
	limit := func(x float64) calc.Arg {
		return d.Constant("Air that needs more than the gun", unit.One, changesLittle, x).As("limit")
	}
	const dries = "This air dries water {ratio} times as fast as {t} and {rh}: "
	if !d.water() {
		if takes := drying.FlashRatio(d.sheet, d.now, d.liquid); takes < driesSlowly || takes > driesFast {
			d.object(calc.Wait, calc.Say("Choose the reducer before you mix: {what}", d.reducer().Within("what")),
				"This film dries in {x} of the sheet's time", calc.N(100*takes, unit.Percent).To(0, "x"), limit(driesFast))
		}
	} else if d.ratio.V > driesFast {
		d.object(calc.Wait, calc.Text{}, dries+"spray lands dry and grainy", d.compared(d.ratio.To(1, "ratio"), limit(driesFast))...)
	} else if d.ratio.V < driesSlowly {
		d.object(calc.Wait, calc.Text{}, dries+"coats stay wet, sag and turn blotchy", d.compared(d.ratio.To(1, "ratio"), limit(driesSlowly))...)
	}
}

func (d *day) tooCold(t float64) bool { return d.lowest.Given() && t < d.lowest.V }
func (d *day) tooHot(t float64) bool  { return d.highest.Given() && t > d.highest.V }

// judge rules on the air, the way out first and then each reason, and lists what to do.
func (d *day) judge(paint bool) {
	if len(d.against) == 0 {
		over, dew := climate.JudgeCondensation(d.Working, d.now.Panel, d.now.Air, d.now.Humidity, d.needed)
		d.result(&margin, over)
		d.result(&dewPoint, dew)
		if paint {
			d.judgeGood()
			d.advise(calc.Text{}, calc.Text{})
		}
		return
	}
	dew := climate.DewPointOf(d.Working, d.now.Air, d.now.Humidity)
	d.result(&margin, climate.Margin(d.Working, d.now.Panel, dew))
	d.result(&dewPoint, dew)
	way, why := d.waysOut()
	for i, r := range d.against {
		if i > 0 && r.do.Template == "" {
			r.do = calc.Say("The same settles this")
		} else if i == 0 && way.Template != "" {
			r.do = calc.Say("{way}. {why}", way.As("way"), why.As("why"))
		}
		d.Judge(r.level, r.says, r.do)
	}
	if paint {
		d.advise(way, why)
	}
}

func (d *day) judgeGood() {
	if d.water() {
		d.Judge(calc.Go, calc.Say("This air dries water {ratio} times as fast as {t} and {rh}: your usual settings need little", d.compared(d.ratio.To(1, "ratio"))...),
			calc.Say(testPanel))
		return
	}
	d.Judge(calc.Go, calc.Say("Humidity does not slow solvent: go by {t} in the booth and on the panel", d.now.Air.To(0, "t")),
		calc.Say("Choose reducer and hardener for this before you mix, then spray a test panel"))
}

const testPanel = "Spray a test panel and correct from there"
