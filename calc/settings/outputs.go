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
	startPressure  = calc.Output{Key: "start_pressure", Place: cardGun, Label: "Start at, give or take 1 psi", Unit: unit.PSI, Decimals: 1, Main: true, Optional: true}
	pressureWhy    = calc.Output{Key: "pressure_why", Place: cardGun, Label: "About the pressure", Words: true, Optional: true}
	exponentUsed   = calc.Output{Key: "exponent", Place: cardGun, Label: "How far pressure follows the air", Unit: unit.One, Decimals: 2, Optional: true}
	exponentFrom   = calc.Output{Key: "exponent_from", Place: cardGun, Label: "Where the exponent comes from", Words: true, Optional: true}
	exponentSpread = calc.Output{Key: "exponent_spread", Place: cardGun, Label: "Give or take", Unit: unit.One, Decimals: 2, Optional: true}

	levers = calc.Output{Key: "levers", Place: cardGun, Label: "What each change does", Columns: []calc.Output{
		{Key: "lever", Label: "Change", Words: true},
		{Key: "flight_loss", Label: "A 30 µm drop loses in flight", Unit: unit.Percent, Decimals: 1},
		{Key: "stays_wet", Label: "Film stays wet, of ordinary air", Unit: unit.Percent},
	}, Optional: true}
	strongest = calc.Output{Key: "strongest", Place: cardGun, Label: "Does most", Words: true, Optional: true}
	blend     = calc.Output{Key: "blend", Place: cardGun, Label: "Blending", Words: true, Optional: true}

	reducer         = calc.Output{Key: "reducer", Place: cardPaint, Label: "Reducer, if the sheet has it", Words: true, Optional: true}
	hardener        = calc.Output{Key: "hardener", Place: cardPaint, Label: "Hardener, at the sheet's ratio", Words: true, Optional: true}
	flashLow        = calc.Output{Key: "flash_low", Place: cardPaint, Label: "Flash-off, from", Unit: unit.Minute, Optional: true}
	flashHigh       = calc.Output{Key: "flash_high", Place: cardPaint, Label: "Flash-off, up to", Unit: unit.Minute, Main: true, Optional: true}
	potLow          = calc.Output{Key: "pot_life_low", Place: cardPaint, Label: "Use it up within", Unit: unit.Minute, Optional: true}
	potHigh         = calc.Output{Key: "pot_life_high", Place: cardPaint, Label: "It may last up to", Unit: unit.Minute, Optional: true}
	filmTemperature = calc.Output{Key: "film_temperature", Place: cardPaint, Label: "Film cools to, on 0.8 mm steel", Unit: unit.DegC, Decimals: 1, Optional: true}
	filmColdest     = calc.Output{Key: "film_coldest", Place: cardPaint, Label: "A wet coat on thin plastic, to", Unit: unit.DegC, Decimals: 1, Optional: true}

	dryingRatio = calc.Output{Key: "drying_ratio", Place: cardAir, Label: "Air dries water, against 23 °C and 50 %", Unit: unit.One, Decimals: 2, Main: true, Optional: true}
	dryingWhy   = calc.Output{Key: "drying_why", Place: cardAir, Label: "Why it dries so", Words: true, Optional: true}
	dewPoint    = calc.Output{Key: "dew_point", Place: cardAir, Label: "Dew point", Unit: unit.DegC, Decimals: 1, Optional: true}
	margin      = calc.Output{Key: "margin", Place: cardAir, Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1, Optional: true}
	humidityNow = calc.Output{Key: "humidity_now", Place: cardAir, Label: "Relative humidity", Unit: unit.Percent, Optional: true}

	ways = calc.Output{Key: "ways", Place: cardAir, Label: "What would clear this booth", Columns: []calc.Output{
		{Key: "change", Label: "Change", Words: true},
		{Key: "at_air", Label: "Air", Unit: unit.DegC, Decimals: 1},
		{Key: "at_humidity", Label: "Humidity", Unit: unit.Percent},
		{Key: "at_margin", Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1},
		{Key: "at_ratio", Label: "Dries water", Unit: unit.One, Decimals: 2},
	}, Optional: true}
)

// outputs are put together from pointers, as the inputs are.
var outputs = answers([]*calc.Output{
	&startPressure, &pressureWhy, &levers, &strongest, &blend, &exponentUsed, &exponentFrom, &exponentSpread,
	&reducer, &hardener, &flashLow, &flashHigh, &potLow, &potHigh, &filmTemperature, &filmColdest,
	&dryingRatio, &dryingWhy, &dewPoint, &margin, &humidityNow, &ways,
})

func answers(all []*calc.Output) []calc.Output {
	outs := make([]calc.Output, len(all))
	for i, out := range all {
		outs[i] = *out
	}
	return outs
}
