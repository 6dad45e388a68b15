package shelf

import (
	"math"
	"slices"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/climate"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/gun"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Gun keeps what is known of a gun and of the hand that holds it.
func Gun() *calc.Calculator {
	return &calc.Calculator{
		ID:       "gun",
		Title:    "Gun",
		Question: "What does this gun lay, and what is not measured on it yet?",
		Range: "One gun with one tip, as you hold it. The film of a pass is that of a flat panel. Your own pairs of air and pressure count for waterborne paint, " +
			"from 5 to 45 °C (41 to 113 °F).",
		Inputs:     gunInputs(),
		Outputs:    []calc.Output{complete, lacking, perPass, sprayedArea, exponent, exponentSpread},
		Work:       keptGun,
		Cautions:   []calc.Phrase{caution.CompressedAir},
		Arithmetic: true,
	}
}

func gunInputs() []calc.Input {
	return slices.Concat(
		[]calc.Input{field.GunName.Under("What it is")},
		maybe("", field.Gun, field.TipNow, field.AirDemand),
		maybe("Pressure", field.Pressure, field.PressureMost, field.PressureExponent, field.PaintPressure),
		maybe("What it delivers", field.Delivery, field.FanWidth, field.FanProfile, field.TransferEfficiency, field.TransferSpread),
		maybe("How you hold it", field.GunDistance, field.GunSpeed, field.Overlap, field.TriggerShare),
		[]calc.Input{pairs()},
	)
}

// pairs are the pressures that worked in other air, as the settings of the day ask for them.
func pairs() calc.Input {
	in := pairTable
	in.Rows = []calc.Input{field.Air, field.Humidity, field.PressureWorked}
	return in
}

var pairTable = calc.Input{
	Key: "pair", Label: "Your own pairs", RowName: "pair", Most: 20, Optional: true,
	Help: "Other air, and the pressure that worked in it; three also tell how far to trust them",
}

var gunWorks = []work{
	{"Job card", "gun pressure pressure_most delivery fan_width gun_distance gun_speed overlap transfer_efficiency"},
	{"Today’s settings", "gun pressure pressure_most gun_distance overlap gun_speed"},
	{"Start pressure today", "gun pressure pressure_most"},
	{"Film per pass", "delivery transfer_efficiency fan_width overlap gun_speed"},
	{"Overlap", "fan_width fan_profile overlap"},
	{"Hose and compressor", "air_demand trigger_share"},
	{"Another tip", "tip_now delivery"},
}

var (
	perPass        = calc.Output{Key: "film_per_pass", Label: "Wet film of one pass", Unit: unit.Micrometre, Decimals: 1, Main: true, Optional: true}
	sprayedArea    = calc.Output{Key: "area_minute", Label: "Panel gone over in a minute of trigger", Unit: unit.SquareMetre, Decimals: 2, Optional: true}
	exponent       = calc.Output{Key: "exponent", Label: "How far pressure follows the air, 0 for not at all", Unit: unit.One, Decimals: 2, Optional: true}
	exponentSpread = calc.Output{Key: "exponent_spread", Label: "That number, give or take", Unit: unit.One, Decimals: 2, Optional: true}
)

func keptGun(w *calc.Working) {
	if !seen(w.Entry, field.GunName) {
		return
	}
	p, most := w.Given(field.Pressure), w.Given(field.PressureMost)
	if p.Given() && most.Given() && p.V > most.V {
		w.Reject(field.Pressure, calc.Impossible, "is above the gun's rated highest pressure, {most}", "Never run a gun above its rating; check both", most.As("most"))
		return
	}
	blanks(w, gunInputs(), gunWorks)
	q, te, fan, o, v := w.Given(field.Delivery), w.Given(field.TransferEfficiency), w.Given(field.FanWidth), w.Given(field.Overlap), w.Given(field.GunSpeed)
	if fan.Given() && o.Given() && v.Given() {
		w.Result(sprayedArea, w.Step("Panel gone over in a minute", "A = 60 * w / 1000 * (1 - o / 100) * v", unit.SquareMetre, source.Definition,
			60*fan.V/1000*(1-o.V/100)*v.V, fan, o, v))
		if q.Given() && te.Given() {
			w.Result(perPass, gun.FilmPerPass(w, q, te, fan, o, v))
		}
	}
	if p.Given() {
		ownExponent(w, p)
	}
}

// usualAir is the air in which the start pressure holds: 23 °C and 50 %, at sea level.
var usualAir = source.CommonPractice.At("23 °C and 50 %, as data sheets test")

// ownExponent fits how far pressure follows the air to the shop's own pairs.
func ownExponent(w *calc.Working, p calc.Num) {
	rows := w.Rows(pairTable)
	if len(rows) == 0 {
		return
	}
	sea := climate.Pressure(w, calc.N(0, unit.MetreUp).Called("Sea level"))
	t, h := w.Constant("Air to compare with", unit.DegC, usualAir, 23), w.Constant("and its humidity", unit.Percent, usualAir, 50)
	usual := drying.Strength(w, t, h, sea)
	var own []gun.Pair
	for _, row := range rows {
		air, rh, worked := row.Given(field.Air), row.Given(field.Humidity), row.Given(field.PressureWorked)
		E := drying.Strength(nil, air, rh, sea)
		r := w.Model("This pair's air dries water, times as fast as the air to compare with", "drying strength as for the air to compare with", unit.One, source.Definition,
			math.Max(0, E.V/usual.V), air.As("t"), rh.As("RH"))
		own = append(own, gun.Pair{Ratio: r, Pressure: worked})
		row.Describe(calc.Say("{p} in {t} and {rh}", worked.To(1, "p"), air.To(0, "t"), rh.To(0, "rh")))
	}
	m, spread, ok := gun.RefitExponent(w, p, own)
	switch {
	case !ok:
		w.Caution("Your pairs are from air too much like 23 °C (73 °F) and 50 % to tell anything: note one in a heat wave, or in damp cold.")
		return
	case m.V < 0 || m.V > field.PressureExponent.Limits.Max:
		w.Caution("Your pairs do not fit: pressure falls as air gets drier, and by less than they say. Check them; they are left out.")
		return
	case spread.Given():
		w.Result(exponentSpread, spread)
	}
	w.Result(exponent, m)
	w.Judge(calc.Wait, calc.Say("Worked from your own pairs, {n} so far, as at sea level", calc.Words(strconv.Itoa(len(own)), "n")), calc.Say("Spray a test panel before you trust it"))
}
