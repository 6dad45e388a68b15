package settings

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/gun"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// The air, in °C, in which the law of the pressure has been looked at.
const coldest, hottest = 5, 45

// maddest is an exponent beyond anything that pressure alone could mean.
const maddest = 0.5

func (d *day) readGun() bool {
	d.ref, d.rated = d.given(&field.Pressure), d.given(&field.PressureMost)
	d.own = setup{d.ref, d.given(&field.GunDistance), d.given(&field.Overlap), d.given(&field.GunSpeed)}
	if d.ref.V > d.rated.V {
		d.Reject(field.Pressure, calc.Impossible, "is above the gun's rated highest pressure, {most}", "Never run a gun above its rating; check both", d.rated.As("most"))
		return false
	}
	return true
}

// pressureToday gives the start pressure where there is a law for it.
func (d *day) pressureToday() {
	d.start = d.ref
	m, from, own, ok := d.exponent()
	why := calc.Phrase("")
	switch {
	case !d.water():
		why = "Keep your own: humidity hardly touches solvent"
	case !ok:
		why = "Keep your own: no figure is known for this kind of gun"
	case d.now.Air.V < coldest || d.now.Air.V > hottest:
		why = "Keep your own: no figure is known below 5 °C (41 °F) or above 45 °C (113 °F)"
	}
	if why != "" {
		d.tell(&pressureWhy, why)
		return
	}
	d.result(&exponentUsed, m)
	d.Tell(exponentFrom, from)
	var asked calc.Num
	asked, d.start = gun.FollowAir(d.Working, m, d.ref, d.rated, d.strength, d.usual, d.gaugeStep())
	guess := !own && d.start.V > d.ref.V // the one desert setting says nothing about damp air
	if guess {
		d.start = d.ref
	}
	d.result(&startPressure, d.start)
	switch {
	case guess && d.ratio.V < driesSlowly:
		d.start = d.rated
		why = "Your own pressure. Where coats lie too wet go up from it, to the rated highest of {most} at most: nobody has said how far"
	case asked.V > d.rated.V+0.5:
		why = "By that number it would be {asked}; the rating ends at {most}"
	case d.start.V < d.ref.V:
		why = "Larger drops land wetter, and more of them land"
	case d.start.V > d.ref.V:
		why = "This air dries drops slowly: finer ones do no harm"
	default:
		why = "Your own pressure: this air hardly asks for another"
	}
	d.tell(&pressureWhy, why, asked.To(1, "asked"), d.rated.To(1, "most"))
}

// gaugeStep is what the reader's gauge shows: 0.5 psi, or 0.05 bar.
func (d *day) gaugeStep() calc.Num {
	step := calc.N(0.5, unit.PSI)
	if d.UnitFor(unit.PSI) != unit.PSI {
		step.V = unit.Convert(0.05, unit.Bar, unit.PSI)
	}
	return d.Constant("Step of the gauge", unit.PSI, source.CommonPractice, step.V)
}

// exponent is the one typed, else the one fitted to the shop's own pairs, else what is known for the kind of gun.
// own is whether it is the shop's.
func (d *day) exponent() (m calc.Num, from calc.Text, own, ok bool) {
	if m = d.given(&field.PressureExponent); m.Given() {
		return m, calc.Say("The number you entered"), true, true
	}
	if m, from, ok = d.fitted(); ok {
		return m, from, true, true
	}
	m, ok = gun.Exponent(d.Working, d.Picked(field.Gun))
	return m, calc.Say("Painters' practice in one desert, not measured"), false, ok
}

func (d *day) fitted() (m calc.Num, from calc.Text, ok bool) {
	var own []gun.Pair
	for _, row := range d.Rows(pairs) {
		air, rh, p := row.Given(field.Air), row.Given(field.Humidity), row.Given(field.PressureWorked)
		E := drying.Strength(nil, air, rh, d.now.Pressure)
		r := d.Model("This pair's air dries water, times as fast as the air to compare with", "drying strength as for today's air", unit.One, source.Definition,
			max(0, E.V/d.usual.V), air.As("t"), rh.As("RH"))
		own = append(own, gun.Pair{Ratio: r, Pressure: p})
		row.Describe(calc.Say("{p} in {t} and {rh}", p.To(1, "p"), air.To(0, "t"), rh.To(0, "rh")))
	}
	if len(own) == 0 || !d.water() {
		return m, from, false
	}
	m, spread, ok := gun.RefitExponent(d.Working, d.ref, own)
	switch {
	case !ok:
		d.Caution("Your pairs are from air too much like 23 °C (73 °F) and 50 % to tell anything: note one in a heat wave, or in damp cold.")
		return m, from, false
	case m.V < 0 || m.V > maddest:
		d.Caution("Your pairs do not fit: pressure falls as air gets drier, and by less than they say. Check them; they are left out.")
		return m, from, false
	case spread.Given():
		d.result(&exponentSpread, spread)
	}
	n := calc.Words(strconv.Itoa(len(own)), "n")
	if len(own) == 1 {
		return m, calc.Say("Your own pair; three would show how far to trust it"), true
	}
	return m, calc.Say("Your own {n} pairs", n), true
}
