package drying

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/climate"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// FlashOff scales a data sheet's flash-off time to the air in the booth. Drying slows down at 74 % solids by volume
// (Kiil 2006, Progress in Organic Coatings 57, 236; abstract). That humidity then hardly matters up to 80 % was measured
// on a polymer in water (Huisman et al. 2023, Physical Review Letters 131, 248102; abstract).
func FlashOff() *calc.Calculator {
	return &calc.Calculator{
		ID:       "flash-time",
		Title:    "Flash-off in this air",
		Question: "How long do I wait between coats in today's air?",
		Range: "Air and panel from 5 to 45 °C; for waterborne paint under 90 % humidity, with the panel 3 °C above the dew point; up to five times the stated time. " +
			"The range comes from a model of a pure liquid on a panel that no measured flash-off times have tested. " +
			"It holds while the film is wet through: not for cure, and not for high solids. At 40 % volume solids nearly a quarter of the thinner is still in the film when drying slows down, " +
			"at 50 % a third, and the last of the water leaves a drying film at a pace that humidity hardly changes.",
		Inputs: []calc.Input{
			field.Flash, field.FlashAt, field.FlashHumidity, field.FlashAirSpeed, field.Carrier, field.Solvent.If("carrier", "solvent"),
			field.Air, field.Humidity, field.Panel, field.AirSpeed, field.Altitude,
		},
		Outputs: []calc.Output{flashLow, flashHigh, flashRatio},
		Work:    workFlashOff,
		Cautions: []calc.Phrase{
			"The data sheet's own test decides: wait until the film looks and feels as it says, however long that takes.",
			caution.Flammable,
		},
	}
}

var (
	flashLow   = calc.Output{Key: "flash_low", Label: "Flash-off, shortest", Unit: unit.Minute, Main: true}
	flashHigh  = calc.Output{Key: "flash_high", Label: "Flash-off, longest", Unit: unit.Minute, Main: true}
	flashRatio = calc.Output{Key: "flash_ratio", Label: "Against the stated time, on thin sheet", Unit: unit.One, Decimals: 2}
)

func workFlashOff(w *calc.Working) {
	key := Water
	if w.Picked(field.Carrier) != "water" {
		key = w.Picked(field.Solvent)
	}
	stated := w.Given(field.Flash)
	ref := DataSheet(w, w.Given(field.FlashAt), w.Given(field.FlashHumidity), w.Given(field.FlashAirSpeed))
	now := Climate{
		Air: w.Given(field.Air), Humidity: w.Given(field.Humidity), Panel: w.Given(field.Panel), AirSpeed: w.Given(field.AirSpeed),
		Pressure: climate.Pressure(w, w.Given(field.Altitude)),
	}
	if r := Refuse(ref, now, key); r != nil {
		w.Reject(r.Input, calc.Beyond, r.Message, r.Fix)
		return
	}
	low, high, ratio := flash(w, stated, ref, now, key)
	w.Result(flashLow, low)
	w.Result(flashHigh, high)
	w.Timed(flashHigh, w.Timer(calc.FlashOff, "", calc.Num{}, low, high))
	w.Result(flashRatio, ratio)
}
