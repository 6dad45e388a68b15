package gun

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/drying"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PressureToday tells where to set the air for waterborne paint before the first test panel.
func PressureToday() *calc.Calculator {
	return &calc.Calculator{
		ID:       "start-pressure",
		Title:    "Start pressure in today’s air",
		Question: "What air pressure do I start from in this heat and humidity?",
		Range: "Waterborne paint, HVLP and reduced-pressure guns, 5 to 45 °C. A starting point good to 1 psi either way, from one desert setting that painters agree on: " +
			"which air dries faster is physics, how far to follow it is practice. Altitude and spraying distance are left out.",
		Inputs:   []calc.Input{carrier, field.Gun, field.Pressure, field.PressureMost, field.Air, field.Humidity},
		Outputs:  []calc.Output{startPressure, dryingRatio},
		Work:     pressureToday,
		Cautions: []calc.Phrase{caution.CompressedAir, caution.Isocyanate},
	}
}

var (
	carrier = calc.Input{
		Key: field.Carrier.Key, Label: field.Carrier.Label, Help: "Only waterborne paint can be answered for",
		Choices: []calc.Choice{field.Carrier.Choices[1], field.Carrier.Choices[0]},
	}

	startPressure = calc.Output{Key: "start_pressure", Label: "Start at, give or take 1 psi", Unit: unit.PSI, Decimals: 1, Main: true}
	dryingRatio   = calc.Output{Key: "drying_ratio", Label: "Air dries drops, against 23 °C and 50 %", Unit: unit.One, Decimals: 2}
)

// coldest and hottest, in °C, bound the air in which the law has been looked at.
const coldest, hottest = 5, 45

func pressureToday(w *calc.Working) {
	kind, ref, most := w.Picked(field.Gun), w.Given(field.Pressure), w.Given(field.PressureMost)
	air, humidity := w.Given(field.Air), w.Given(field.Humidity)
	if !fitsPressure(w, kind, ref, most, air) {
		return
	}
	day := source.CommonPractice.At("conditions that coatings are tried out in")
	refAir, refHumidity := w.Constant("Ordinary air", unit.DegC, day, 23), w.Constant("and its humidity", unit.Percent, day, 50)
	sea := w.Constant("Air pressure at sea level", unit.Pascal, source.Definition.At("standard atmosphere"), 101325)

	m, _ := exponent(w, kind)
	now, then := drying.Strength(w, air, humidity, sea), drying.Strength(w, refAir, refHumidity, sea)
	ratio := w.Step("Air dries drops, against ordinary air", "r = E / E_ref", unit.One, source.Definition, now.V/then.V, now, then)
	asked := follow(w, m, ref, now, then)
	start := clamp(w, ref, most, asked)
	w.Result(startPressure, start)
	w.Result(dryingRatio, ratio)
	judgeAir(w, ratio, asked, start)
}

// fitsPressure rejects what the law says nothing about.
func fitsPressure(w *calc.Working, kind string, ref, most, air calc.Num) bool {
	ok := true
	reject := func(in calc.Input, code calc.Code, message, fix calc.Phrase) {
		w.Reject(in, code, message, fix)
		ok = false
	}
	if w.Picked(carrier) != "water" {
		reject(carrier, calc.Beyond, "must be water: humidity hardly touches solvent, and no figure is known", "Keep your pressure and choose the thinner for today’s temperature")
	}
	if _, known := exponent(nil, kind); !known {
		reject(field.Gun, calc.Beyond, "must be HVLP or reduced pressure: nothing is known of others", "Keep the pressure that the gun’s and the paint’s sheets give")
	}
	if ref.V > most.V {
		reject(field.Pressure, calc.Impossible, "is above the gun’s rated highest pressure", "Check both; never spray above the rating")
	}
	if air.V < coldest || air.V > hottest {
		reject(field.Air, calc.Beyond, "must be between 5 and 45 °C (41 and 113 °F)", "Warm or cool the booth: waterborne paint will not behave")
	}
	return ok
}

// Bounds on the drying ratio outside which pressure alone no longer answers for the air.
const driesSlowly, driesFast = 0.5, 2

func judgeAir(w *calc.Working, ratio, asked, start calc.Num) {
	switch {
	case ratio.V > driesFast:
		w.Judge(calc.Wait, calc.Say("This air dries drops {ratio} times as fast as ordinary air; pressure makes up for only a part of it", ratio.To(1, "ratio")),
			calc.Say("Use the slow reducer the sheet allows, overlap more, and come as close as the gun’s sheet allows; then spray a test panel"))
	case ratio.V < driesSlowly:
		w.Judge(calc.Wait, calc.Say("This air dries drops {ratio} times as fast as ordinary air, so coats stay wet for long", ratio.To(2, "ratio")),
			calc.Say("Warm the booth or move more air, and lay thinner coats; then spray a test panel"))
	default:
		w.Judge(calc.Go, calc.Say("Start at {start}, with the trigger pulled", start.To(1, "start")), calc.Say("Spray a test panel and correct from there"))
	}
}
