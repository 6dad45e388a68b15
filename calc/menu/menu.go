// Package menu is the ordered list of topics and calculators: what the site offers.
package menu

import (
	"spraywright/calc"
	"spraywright/calc/area"
	"spraywright/calc/climate"
	"spraywright/calc/cure"
	"spraywright/calc/drying"
	"spraywright/calc/film"
	"spraywright/calc/gun"
	"spraywright/calc/job"
	"spraywright/calc/mixing"
	"spraywright/calc/money"
	"spraywright/calc/settings"
	"spraywright/calc/supply"
	"spraywright/calc/vent"
	"spraywright/calc/viscosity"
	"spraywright/calc/voc"
)

// A Topic is a group of calculators.
type Topic struct {
	ID, Title   string
	Calculators []*calc.Calculator
}

// Topics is the menu.
var Topics = []Topic{
	{"job", "The job", job.Calculators},
	{"settings", "Today’s settings", settings.Calculators},
	{"mixing", "At the scale", mixing.Calculators},
	{"film", "Film and coverage", film.Calculators},
	{"area", "Areas", area.Calculators},
	{"climate", "Air and moisture", climate.Calculators},
	{"drying", "Flash-off", drying.Calculators},
	{"gun", "Gun", gun.Calculators},
	{"viscosity", "Viscosity and thinning", viscosity.Calculators},
	{"supply", "Air supply", supply.Calculators},
	{"cure", "Pot life and cure", cure.Calculators},
	{"voc", "VOC", voc.Calculators},
	{"vent", "Booth and safety", vent.Calculators},
	{"money", "Money", money.Calculators},
}

// Find returns the calculator with an ID, or nil.
func Find(id string) *calc.Calculator {
	for _, t := range Topics {
		for _, c := range t.Calculators {
			if c.ID == id {
				return c
			}
		}
	}
	return nil
}
