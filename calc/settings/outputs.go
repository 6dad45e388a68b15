package settings

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The places of the card.
const (
	cardGun   = "Gun"
	cardPaint = "Paint"
	cardAir   = "Air"
)

func told(key, place, label string) calc.Output {
	return calc.Output{Key: key, Place: place, Label: label, Words: true, Optional: true}
}

func number(key, place, label string, u unit.Unit, decimals int) calc.Output {
	return calc.Output{Key: key, Place: place, Label: label, Unit: u, Decimals: decimals, Optional: true}
}

func leading(out calc.Output) calc.Output { out.Main = true; return out }

var (
	startPressure  = leading(number("start_pressure", cardGun, "Start at, give or take 1 psi", unit.PSI, 1))
	pressureWhy    = told("pressure_why", cardGun, "Why")
	exponentUsed   = number("exponent", cardGun, "How far pressure follows the air", unit.One, 2)
	exponentFrom   = told("exponent_from", cardGun, "which comes from")
	exponentSpread = number("exponent_spread", cardGun, "Give or take", unit.One, 2)

	lever      = calc.Output{Key: "lever", Label: "Change", Words: true}
	flightLoss = calc.Output{Key: "flight_loss", Label: "A 30 µm drop loses in flight", Unit: unit.Percent, Decimals: 1}
	staysWet   = calc.Output{Key: "stays_wet", Label: "Film stays wet, of ordinary air", Unit: unit.Percent}
	levers     = calc.Output{Key: "levers", Place: cardGun, Label: "What each change does", Columns: []calc.Output{lever, flightLoss, staysWet}, Optional: true}
	strongest  = told("strongest", cardGun, "Does most")
	blend      = told("blend", cardGun, "Blending")

	reducer         = told("reducer", cardPaint, "Reducer")
	hardener        = told("hardener", cardPaint, "Hardener")
	flashLow        = number("flash_low", cardPaint, "Flash-off, from", unit.Minute, 0)
	flashHigh       = leading(number("flash_high", cardPaint, "Flash-off, up to", unit.Minute, 0))
	potLow          = number("pot_life_low", cardPaint, "Use it up within", unit.Minute, 0)
	potHigh         = number("pot_life_high", cardPaint, "It may last up to", unit.Minute, 0)
	filmTemperature = number("film_temperature", cardPaint, "Film cools to, on 0.8 mm steel", unit.DegC, 1)
	filmColdest     = number("film_coldest", cardPaint, "A wet coat on thin plastic, to", unit.DegC, 1)

	dryingRatio = leading(number("drying_ratio", cardAir, "Air dries water, against 23 °C and 50 %", unit.One, 2))
	dryingWhy   = told("drying_why", cardAir, "because")
	dewPoint    = number("dew_point", cardAir, "Dew point", unit.DegC, 1)
	margin      = number("margin", cardAir, "Panel above dew point", unit.DiffC, 1)
	humidityNow = number("humidity_now", cardAir, "Relative humidity", unit.Percent, 0)

	change     = calc.Output{Key: "change", Label: "Change", Words: true}
	atAir      = calc.Output{Key: "at_air", Label: "Air", Unit: unit.DegC, Decimals: 1}
	atHumidity = calc.Output{Key: "at_humidity", Label: "Humidity", Unit: unit.Percent}
	atMargin   = calc.Output{Key: "at_margin", Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1}
	atRatio    = calc.Output{Key: "at_ratio", Label: "Dries water", Unit: unit.One, Decimals: 2}
	ways       = calc.Output{Key: "ways", Place: cardAir, Label: "What would clear this booth", Columns: []calc.Output{change, atAir, atHumidity, atMargin, atRatio}, Optional: true}
)

var outputs = []calc.Output{
	startPressure, pressureWhy, levers, strongest, blend, exponentUsed, exponentFrom, exponentSpread,
	reducer, hardener, flashLow, flashHigh, potLow, potHigh, filmTemperature, filmColdest,
	dryingRatio, dryingWhy, dewPoint, margin, humidityNow, ways,
}
