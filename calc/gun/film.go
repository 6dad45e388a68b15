package gun

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FilmFromGun tells how much film one pass lays, and how many passes at which speed make the coat.
func FilmFromGun() *calc.Calculator {
	return &calc.Calculator{
		ID:       "film-per-pass",
		Title:    "Film per pass and gun speed",
		Question: "How fast do I move the gun, or how much must it deliver, and in how many passes, for the film I want?",
		Range: "A flat panel, the gun square to it and at one distance. Transfer efficiency is the least known figure here: " +
			"check the first panel with a wet-film comb and correct it.",
		Inputs: []calc.Input{
			field.DryFilm, field.VolumeSolids, field.Coats,
			field.Delivery, field.TransferEfficiency, field.FanWidth, field.Overlap, field.GunSpeed,
		},
		Outputs:    []calc.Output{perPass, wetFilm, passes, wholePasses, speedFor, deliveryFor},
		Work:       filmFromGun,
		Cautions:   []calc.Phrase{caution.Isocyanate, caution.Flammable},
		Arithmetic: true,
	}
}

var (
	perPass     = calc.Output{Key: "film_per_pass", Label: "Wet film of one pass", Unit: unit.Micrometre, Decimals: 1, Main: true}
	wetFilm     = calc.Output{Key: "wet_film", Label: "Wet film of one coat", Unit: unit.Micrometre}
	passes      = calc.Output{Key: "passes", Label: "Passes at your speed", Unit: unit.One, Decimals: 1}
	wholePasses = calc.Output{Key: "whole_passes", Label: "Make it this many", Unit: unit.One}
	speedFor    = calc.Output{Key: "speed_for", Label: "Gun speed for them", Unit: unit.MetrePerSecond, Decimals: 2}
	deliveryFor = calc.Output{Key: "delivery_for", Label: "Delivery for them at your speed", Unit: unit.MillilitrePerMinute}
)

func filmFromGun(w *calc.Working) {
	q, te, fan := w.Given(field.Delivery), w.Given(field.TransferEfficiency), w.Given(field.FanWidth)
	overlap, speed := w.Given(field.Overlap), w.Given(field.GunSpeed)
	wet := film.Wet(w, w.Given(field.DryFilm), w.Given(field.VolumeSolids), w.Given(field.Coats))
	one := FilmPerPass(w, q, te, fan, overlap, speed)
	exact, whole := Passes(w, wet, one)
	v := SpeedFor(w, q, te, fan, overlap, wet, whole)
	w.Result(perPass, one)
	w.Result(wetFilm, wet)
	w.Result(passes, exact)
	w.Result(wholePasses, whole)
	w.Result(speedFor, v)
	w.Result(deliveryFor, w.Step("Delivery for whole passes at your speed", "Q_N = Q * n / N", unit.MillilitrePerMinute, source.Definition,
		q.V*exact.V/whole.V, q, exact, whole))
	judgeSpeed(w, v)
}

// Speeds that textbooks teach, 1 and 1.5 ft/s, with room on either side.
const slowHand, fastHand = 0.2, 0.7

// judgeSpeed warns where a steady hand cannot keep the speed.
func judgeSpeed(w *calc.Working, v calc.Num) {
	if v.V >= slowHand && v.V <= fastHand {
		return
	}
	teach := source.Refinishing22.At("pp. 686–687: 1 ft/s for conventional guns, 1½ ft/s for HVLP").By(source.Seen)
	usual, brisk := w.Constant("Usual speed, conventional gun", unit.MetrePerSecond, teach, 0.3), w.Constant("Usual speed, HVLP gun", unit.MetrePerSecond, teach, 0.46)
	do := calc.Phrase("Turn the delivery down, or spray more and thinner coats")
	if v.V < slowHand {
		do = "Turn the delivery up, or overlap more"
	}
	w.Judge(calc.Wait, calc.Say("{v} is far from the usual {usual} to {brisk}, and hard to keep steady", v.To(2, "v"), usual.To(2, "usual"), brisk.To(2, "brisk")), calc.Say(do))
}
