package drying

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Shortest is the share of a data sheet's flash-off time that no air shortens it below.
const Shortest = 0.5

// SkinsOver is the caution where the air would dry a film faster than that.
const SkinsOver = "In this air the film may flash off in less than half the stated time. Wait half of it all the same: a skin can close over wet paint, " +
	"and spray can dry before it lands. Ask the data sheet for a slower thinner or additive."

// DataSheet is the climate that a data sheet's time holds in: its air and humidity, a panel as warm as the air, sea level.
func DataSheet(w *calc.Working, air, humidity, speed calc.Num) Climate {
	p := w.Constant("Standard air pressure", unit.Pascal, climate.StandardPressure, standardAir)
	return Climate{Air: air, Humidity: humidity, Panel: air, AirSpeed: speed, Pressure: p}
}

// FlashTime scales the flash-off time that a data sheet states, from the sheet's climate ref to the climate now.
// low and high are in minutes. They are the least and the most that the model gives over thin sheet and heavy
// castings, thin and thick films, shiny and dull parts, one face or two, and air that sweeps by or blows; never less
// than [Shortest] of the stated time. key is [Water] or a key of field.Solvent. Outside the range given at
// [Refuse] the times are not Given and refused says why, to follow the word "Flash-off".
func FlashTime(w *calc.Working, stated calc.Num, ref, now Climate, key string) (low, high calc.Num, refused *calc.Fault) {
	if r := Refuse(ref, now, key); r != nil {
		none := calc.Num{Unit: unit.Minute}
		return none, none, r.fault()
	}
	low, high, _ = flash(w, stated, ref, now, key)
	return low, high, nil
}

func flash(w *calc.Working, stated calc.Num, ref, now Climate, key string) (low, high, ratio calc.Num) {
	ratio, least, most := scale(w, ref, now, key)
	low = w.Step("Flash-off, shortest", "t_low = t_ref*max(0.5, r_low)", unit.Minute, halfAtLeast,
		stated.V*max(Shortest, least.V), stated, least)
	high = w.Step("Flash-off, longest", "t_high = t_ref*max(0.5, r_high)", unit.Minute, halfAtLeast,
		stated.V*max(Shortest, most.V), stated, most)
	if w == nil {
		return low, high, ratio
	}
	if least.V < Shortest {
		w.Caution(SkinsOver)
	}
	if key == Water && now.Humidity.V >= 85 {
		w.Caution("So near saturation a hygrometer that is 3 % out changes this time by a fifth or more.")
	}
	return low, high, ratio
}

// scale is how the time changes: for the ordinary setup, and the least and most over all of them.
func scale(w *calc.Working, ref, now Climate, key string) (ratio, least, most calc.Num) {
	sheet, today := central(ref, now, key)
	with := volatility(w, key)
	before := w.Model("Model film in the data sheet's air", modelled, unit.Minute, balance, sheet/60, append(ref.args(key), with...)...)
	after := w.Model("Model film in this air", modelled, unit.Minute, balance, today/60, append(now.args(key), with...)...)
	ratio = w.Step("Change of the time", "r = t_now/t_sheet", unit.One, source.Definition, after.V/before.V, after, before)
	r, n := ref.place(key), now.place(key)
	smallest, largest := ratio.V, ratio.V
	try := func(l liquid, s setup) {
		x := l.seconds(s, n) / l.seconds(s, r)
		smallest, largest = min(smallest, x), max(largest, x)
	}
	for _, s := range variants(r.speed) {
		try(liquids[key], s)
	}
	how := calc.Phrase(spreadWords)
	if key != Water {
		how = spreadWords + blendWords
		for _, l := range blend(key) {
			try(l, ordinaryAt(r.speed))
		}
	}
	least = w.Model("Smallest change", how, unit.One, spread, smallest, ratio.As("r"))
	most = w.Model("Largest change", how, unit.One, spread, largest, ratio.As("r"))
	return ratio, least, most
}

// volatility shows a solvent's vapour pressure at 20 °C, which the model takes at the film's own temperature.
func volatility(w *calc.Working, key string) []calc.Arg {
	if key == Water {
		return nil
	}
	l := liquids[key]
	A := w.Constant("Antoine constant A", unit.One, l.from, l.antoine.A)
	B := w.Constant("Antoine constant B", unit.Kelvin, l.from, l.antoine.B)
	C := w.Constant("Antoine constant C", unit.Kelvin, l.from, l.antoine.C)
	p := w.Step("Vapour pressure of the solvent at 20 °C", "p_s = pow(10, A - B/(293.15 + C))", unit.Pascal, l.from,
		l.pressure(20+kelvin), A, B, C)
	return []calc.Arg{p.As("p_s")}
}

// central is how long in seconds the ordinary film takes in the data sheet's climate and now.
func central(ref, now Climate, key string) (sheet, today float64) {
	l, r := liquids[key], ref.place(key)
	s := ordinaryAt(r.speed)
	return l.seconds(s, r), l.seconds(s, now.place(key))
}

const (
	modelled = "heat balance of film and panel, step by step until nine tenths of 12 g/m² have left 0.8 mm steel: " +
		"air and radiation bring heat, evaporation takes it"
	spreadWords = "the same for panels of 1.5 to 25 kJ/(m² K), films with 6 to 30 g/m², one face or two, emissivity 0.2 to 0.9, " +
		"parts 0.5 to 1.5 m long, and drying that grows with the 0.5th to the 0.86th power of the air speed"
	blendWords = "; and for a blend's other solvents, from a third as volatile to three times"
)

// variants spreads what is not known. Light panels with thick films soon come to their wet bulb and heavy ones with
// thin films hardly cool: the two ends bracket what lies between. In laminar air drying goes with the 0.5th power of
// the speed; over a vessel in turbulent air 0.86 ± 0.03 has been measured.
func variants(pivot float64) []setup {
	var all []setup
	for _, panel := range []struct{ heatCapacity, film, leaves float64 }{{1500, 0.030, 0.9}, {3080, 0.012, 0.9}, {25000, 0.006, 0.7}} {
		for _, heat := range []struct{ faces, emissivity, length float64 }{{1, 0.9, 0.5}, {1, 0.2, 0.5}, {2, 0.9, 1.5}} {
			for _, exponent := range []float64{0.5, 0.86} {
				all = append(all, setup{panel.heatCapacity, panel.film, panel.leaves, heat.faces, heat.length, heat.emissivity, exponent, pivot})
			}
		}
	}
	return all
}

// ordinaryAt is the ordinary setup for a data sheet stated at an air speed.
func ordinaryAt(pivot float64) setup {
	s := ordinary
	s.pivot = pivot
	return s
}

// blend lists the solvents from a third as volatile at 20 °C as the main one to three times: what else a thinner holds.
func blend(key string) []liquid {
	p := liquids[key].pressure(20 + kelvin)
	var all []liquid
	for k, l := range liquids {
		if x := l.pressure(20+kelvin) / p; k != Water && x > 1./3 && x < 3 {
			all = append(all, l)
		}
	}
	return all
}

// place is the climate in plain numbers. The air holds water vapour, but none of a solvent.
func (c Climate) place(key string) place {
	at := place{air: c.Air.V + kelvin, panel: c.Panel.V + kelvin, pressure: c.Pressure.V, speed: c.AirSpeed.V}
	if key == Water {
		at.vapour = climate.PartialPressure(c.Air.V, c.Humidity.V)
	}
	return at
}

// args are the numbers that count: humidity does not slow a solvent.
func (c Climate) args(key string) []calc.Arg {
	args := []calc.Arg{c.Air.As("t"), c.Panel.As("t_s"), c.AirSpeed.As("u"), c.Pressure.As("p")}
	if key == Water {
		args = append(args, c.Humidity.As("RH"))
	}
	return args
}
