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

var (
	todo = calc.Output{Key: "todo", Label: "What to do, in order", Columns: []calc.Output{
		{Key: "step", Label: "Do this", Words: true},
		{Key: "because", Label: "Because", Words: true},
	}, Optional: true}

	startPressure  = calc.Output{Key: "start_pressure", Place: cardGun, Label: "Start at, untested: spray a test panel", Unit: unit.PSI, Decimals: 1, Main: true, Optional: true}
	pressureWhy    = calc.Output{Key: "pressure_why", Place: cardGun, Label: "About the pressure", Words: true, Optional: true}
	exponentUsed   = calc.Output{Key: "exponent", Place: cardGun, Label: "How far pressure follows the air, 0 for not at all", Unit: unit.One, Decimals: 2, Optional: true}
	exponentFrom   = calc.Output{Key: "exponent_from", Place: cardGun, Label: "Where that number comes from", Words: true, Optional: true}
	exponentSpread = calc.Output{Key: "exponent_spread", Place: cardGun, Label: "That number, give or take", Unit: unit.One, Decimals: 2, Optional: true}

	levers = calc.Output{Key: "levers", Place: cardGun, Label: "What each change at the gun does", Columns: []calc.Output{
		{Key: "lever", Label: "What you change", Words: true},
		{Key: "film", Label: "Film of a coat, times yours", Unit: unit.One, Decimals: 2},
		{Key: "flight_loss", Label: "Liquid a 30 µm drop loses on its way", Unit: unit.Percent},
		{Key: "stays_wet", Label: "Wet time of the film, against 23 °C (73 °F) and 50 %", Unit: unit.Percent},
	}, Optional: true}
	strongest = calc.Output{Key: "strongest", Place: cardGun, Label: "Does most at the gun", Words: true, Optional: true}
	blend     = calc.Output{Key: "blend", Place: cardGun, Label: "Blending", Words: true, Optional: true}

	flashWhy        = calc.Output{Key: "flash_why", Place: cardPaint, Label: "About flash-off", Words: true, Optional: true}
	potWhy          = calc.Output{Key: "pot_life_why", Place: cardPaint, Label: "About pot life", Words: true, Optional: true}
	reducer         = calc.Output{Key: "reducer", Place: cardPaint, Label: "Reducer, if the sheet has it", Words: true, Optional: true}
	hardener        = calc.Output{Key: "hardener", Place: cardPaint, Label: "Hardener, at the sheet's ratio", Words: true, Optional: true}
	flashLow        = calc.Output{Key: "flash_low", Place: cardPaint, Label: "Flash-off, from", Unit: unit.Minute, Optional: true}
	flashHigh       = calc.Output{Key: "flash_high", Place: cardPaint, Label: "Flash-off, up to", Unit: unit.Minute, Main: true, Optional: true}
	potLow          = calc.Output{Key: "pot_life_low", Place: cardPaint, Label: "Use it up within", Unit: unit.Minute, Optional: true}
	potHigh         = calc.Output{Key: "pot_life_high", Place: cardPaint, Label: "It may last up to", Unit: unit.Minute, Optional: true}
	filmTemperature = calc.Output{Key: "film_temperature", Place: cardPaint, Label: "Film cools to, on 0.8 mm steel", Unit: unit.DegC, Optional: true}
	filmColdest     = calc.Output{Key: "film_coldest", Place: cardPaint, Label: "A wet coat on thin plastic cools to", Unit: unit.DegC, Optional: true}

	dryingRatio = calc.Output{Key: "drying_ratio", Place: cardAir, Label: "Dries water, times as fast as 23 °C (73 °F) and 50 %", Unit: unit.One, Decimals: 1, Main: true, Optional: true}
	dryingWhy   = calc.Output{Key: "drying_why", Place: cardAir, Label: "Why it dries so", Words: true, Optional: true}
	dewPoint    = calc.Output{Key: "dew_point", Place: cardAir, Label: "Dew point", Unit: unit.DegC, Decimals: 1, Optional: true}
	margin      = calc.Output{Key: "margin", Place: cardAir, Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1, Optional: true}
	humidityNow = calc.Output{Key: "humidity_now", Place: cardAir, Label: "Relative humidity", Unit: unit.Percent, Optional: true}

	ways = calc.Output{Key: "ways", Place: cardAir, Label: "Ways to a better booth", Columns: []calc.Output{
		{Key: "change", Label: "Do this", Words: true},
		{Key: "at_air", Label: "Air", Unit: unit.DegC, Decimals: 1},
		{Key: "at_humidity", Label: "Humidity", Unit: unit.Percent},
		{Key: "at_margin", Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1},
		{Key: "at_ratio", Label: "Dries water, times as fast as 23 °C (73 °F) and 50 %", Unit: unit.One, Decimals: 1},
	}, Optional: true}
)

// outputs are put together from pointers, as the inputs are.
var outputs = answers([]*calc.Output{
	&todo, &startPressure, &pressureWhy, &levers, &strongest, &blend, &exponentUsed, &exponentFrom, &exponentSpread,
	&reducer, &hardener, &flashLow, &flashHigh, &flashWhy, &potLow, &potHigh, &potWhy, &filmTemperature, &filmColdest,
	&dryingRatio, &dryingWhy, &dewPoint, &margin, &humidityNow, &ways,
})

func answers(all []*calc.Output) []calc.Output {
	outs := make([]calc.Output, len(all))
	for i, out := range all {
		outs[i] = *out
	}
	return outs
}
