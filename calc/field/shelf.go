package field

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// What things on the shelf are called, and how a shop likes to read its answers.
var (
	SheetDated = named("sheet_dated", "Edition of the sheet", "2024-05", "Date or number at its foot; sheets change").Maybe()
	GunName    = named("gun_name", "Gun", "Gravity gun, 1.3 mm", "As you call it in the shop, with its tip")
	Shop       = named("shop", "Shop", "Trike workshop", "As you call it")
)

func named(key string, label calc.Phrase, words string, help calc.Phrase) calc.Input {
	return calc.Input{Key: key, Label: label, Words: words, Help: help}
}

// A UnitChoice is the question in which unit a shop wants one quantity.
type UnitChoice struct {
	Quantity unit.Quantity
	Input    calc.Input
}

// UnitChoices asks for the unit of every quantity that people differ about.
func UnitChoices() []UnitChoice {
	return []UnitChoice{
		unitOf("unit_temperature", unit.Temperature, "Temperatures"), unitOf("unit_film", unit.Film, "Film"),
		unitOf("unit_volume", unit.Volume, "Volumes"), unitOf("unit_mass", unit.Mass, "Weights"), unitOf("unit_density", unit.Density, "Densities"),
		unitOf("unit_pressure", unit.GaugePressure, "Pressures"), unitOf("unit_length", unit.Length, "Lengths"), unitOf("unit_area", unit.Area, "Areas"),
		unitOf("unit_air_speed", unit.AirSpeed, "Air speed"), unitOf("unit_gun_speed", unit.Speed, "Gun speed"), unitOf("unit_delivery", unit.Delivery, "Delivery"),
		unitOf("unit_coverage", unit.Coverage, "Spreading rate"), unitOf("unit_voc", unit.Concentration, "VOC"), unitOf("unit_price", unit.VolumePrice, "Price of paint"),
	}
}

func unitOf(key string, q unit.Quantity, label calc.Phrase) UnitChoice {
	in := calc.Input{Key: key, Label: label, Help: "Blank follows the choice between SI and US", Optional: true}
	for _, u := range unit.Of(q) {
		in.Choices = append(in.Choices, calc.Choice{Key: unitKey(u), Label: u.Label()})
	}
	return UnitChoice{q, in}
}

// Unit is the unit that a choice names.
func (c UnitChoice) Unit(key string) unit.Unit {
	for _, u := range unit.Of(c.Quantity) {
		if unitKey(u) == key {
			return u
		}
	}
	return 0
}

// unitKey is a unit's ID in the letters that the key of a choice may have: "m2-l", "per-gal".
func unitKey(u unit.Unit) string {
	key := []byte(strings.ToLower(u.ID()))
	for i, c := range key {
		if c == '/' || c == '_' {
			key[i] = '-'
		}
	}
	if key[0] == '-' {
		return "per" + string(key)
	}
	return string(key)
}
