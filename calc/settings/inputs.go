package settings

import (
	"spraywright/calc"
	"spraywright/calc/field"
)

// The places of the form.
const (
	placeAir   = "Air"
	placePaint = "Paint"
	placeGun   = "Gun"
	placePairs = "Your own pairs"
)

var (
	humidity = field.Humidity.If("air_reading", "humidity")
	wetBulb  = field.WetBulb.If("air_reading", "wet-bulb")

	// Waterborne and one-pack come first: they are what most changes with the weather.
	carrier = choices(field.Carrier, 1, 0)
	pack    = choices(field.Pack, 1, 0)
	role    = choices(field.Role, 3, 4, 0, 5)
	solvent = field.Solvent.If("carrier", "solvent")

	potLife         = field.PotLife.If("pack", "two")
	potLifeAt       = field.PotLifeAt.If("pack", "two")
	potLifeSecond   = field.PotLifeSecond.If("pack", "two")
	potLifeSecondAt = field.PotLifeSecondAt.If("pack", "two")
)

// choices offers some of an input's choices, in another order.
func choices(in calc.Input, order ...int) calc.Input {
	var some []calc.Choice
	for _, i := range order {
		some = append(some, in.Choices[i])
	}
	in.Choices = some
	return in
}

var inputs = []calc.Input{
	field.Air.In(placeAir), field.AirReading.In(placeAir), humidity.In(placeAir), wetBulb.In(placeAir), field.Panel.In(placeAir), field.AirSpeed.In(placeAir),
	field.Altitude.In(placeAir), field.MarginNeeded.In(placeAir),
	carrier.In(placePaint), pack.In(placePaint), rolled(role).In(placePaint), solvent.In(placePaint),
	field.Flash.In(placePaint), field.FlashAt.In(placePaint), field.FlashHumidity.In(placePaint), field.FlashAirSpeed.In(placePaint),
	potLife.In(placePaint), potLifeAt.In(placePaint), potLifeSecond.In(placePaint), potLifeSecondAt.In(placePaint), field.HumidityHighest.In(placePaint),
	field.Gun.In(placeGun), field.Pressure.In(placeGun), field.PressureMost.In(placeGun), field.PressureExponent.In(placeGun),
	field.GunDistance.In(placeGun), field.Overlap.In(placeGun), field.GunSpeed.In(placeGun),
	pairs,
}

func rolled(in calc.Input) calc.Input {
	in.Help = "Decides how dry spray shows"
	return in
}

var pairs = calc.Input{
	Key: "pair", Place: placePairs, Label: "Your own pairs", RowName: "pair", Most: 20, Optional: true,
	Help: "Other air, and the pressure that worked in it: your own figures instead of ours. None is fine; three also tell how far to trust them",
	Rows: []calc.Input{field.Air, field.Humidity, field.PressureWorked},
}
