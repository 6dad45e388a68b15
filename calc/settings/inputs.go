package settings

import (
	"strings"

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

const (
	twoPack      = "pack two"
	solventborne = "carrier solvent"
)

// inputs are put together from pointers: an input is large, and copying each in code of its own costs the download.
var inputs = append(stand([]asked{
	{&field.Air, placeAir, ""},
	{&field.AirReading, placeAir, ""},
	{&field.Humidity, placeAir, "air_reading humidity"},
	{&field.WetBulb, placeAir, "air_reading wet-bulb"},
	{&field.Panel, placeAir, ""},
	{&field.AirSpeed, placeAir, ""},
	{&field.Altitude, placeAir, ""},
	{&field.MarginNeeded, placeAir, ""},
	{&field.Carrier, placePaint, ""},
	{&field.Pack, placePaint, ""},
	{&field.Role, placePaint, ""},
	{&field.Solvent, placePaint, solventborne},
	{&field.Flash, placePaint, ""},
	{&field.FlashAt, placePaint, ""},
	{&field.FlashHumidity, placePaint, ""},
	{&field.FlashAirSpeed, placePaint, ""},
	{&field.PotLife, placePaint, twoPack},
	{&field.PotLifeAt, placePaint, twoPack},
	{&field.PotLifeSecond, placePaint, twoPack},
	{&field.PotLifeSecondAt, placePaint, twoPack},
	{&field.AirLowest, placePaint, ""},
	{&field.AirHighest, placePaint, ""},
	{&field.HumidityHighest, placePaint, ""},
	{&field.Gun, placeGun, ""},
	{&field.Pressure, placeGun, ""},
	{&field.PressureMost, placeGun, ""},
	{&field.PressureExponent, placeGun, ""},
	{&field.GunDistance, placeGun, ""},
	{&field.Overlap, placeGun, ""},
	{&field.GunSpeed, placeGun, ""},
}), pairs)

// An asked is an input, where it stands, and the choice it is asked under: "pack two".
type asked struct {
	input *calc.Input
	place calc.Phrase
	when  string
}

func stand(list []asked) []calc.Input {
	all := make([]calc.Input, len(list))
	for i, a := range list {
		in := *a.input
		in.Place = a.place
		if key, choice, ok := strings.Cut(a.when, " "); ok {
			in.When = &calc.When{Key: key, In: []string{choice}}
		}
		c := in.Choices
		switch a.input {
		case &field.Carrier, &field.Pack: // waterborne and one-pack first: they change most with the weather
			in.Choices = []calc.Choice{c[1], c[0]}
		case &field.Role: // base, clear, topcoat, surfacer
			in.Choices, in.Help = append(c[3:6:6], c[0]), "Decides how dry spray shows"
		}
		all[i] = in
	}
	return all
}

var pairs = calc.Input{
	Key: "pair", Place: placePairs, Label: "Your own pairs", RowName: "pair", Most: 20, Optional: true,
	Help: "Other air, and the pressure that worked in it: your own figures instead of ours. None is fine; three also tell how far to trust them",
	Rows: stand([]asked{{&field.Air, "", ""}, {&field.Humidity, "", ""}, {&field.PressureWorked, "", ""}}),
}
