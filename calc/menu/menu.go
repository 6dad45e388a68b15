// Package menu is the ordered list of topics and calculators: what the site offers, and which compiled core holds what.
package menu

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/area"
	"spraywright/calc/climate"
	"spraywright/calc/code"
	"spraywright/calc/core"
	"spraywright/calc/cure"
	"spraywright/calc/day"
	"spraywright/calc/drying"
	"spraywright/calc/film"
	"spraywright/calc/gun"
	"spraywright/calc/job"
	"spraywright/calc/mixing"
	"spraywright/calc/money"
	"spraywright/calc/record"
	"spraywright/calc/settings"
	"spraywright/calc/shelf"
	"spraywright/calc/supply"
	"spraywright/calc/timing"
	"spraywright/calc/vent"
	"spraywright/calc/viscosity"
	"spraywright/calc/voc"
)

// What a core holds is described where no topic is known; see package core.
type (
	Topic = core.Topic
	Core  = core.Core
)

// Job is the core of the page that the site opens on. Each core is a function, so that a program which calls one does
// not hold the others.
func Job() Core {
	return Core{Name: "job", Topics: []Topic{
		{ID: "job", Title: "The job", Makers: job.Calculators},
		{ID: "settings", Title: "Today’s settings", Makers: settings.Calculators},
	}}
}

// Bench is the core of the questions at the mixing bench.
func Bench() Core {
	return Core{Name: "bench", Topics: []Topic{
		{ID: "mixing", Title: "At the scale", Makers: mixing.Calculators},
		{ID: "film", Title: "Film and coverage", Makers: film.Calculators},
		{ID: "area", Title: "Areas", Makers: area.Calculators},
		{ID: "viscosity", Title: "Viscosity", Makers: viscosity.Calculators},
		{ID: "voc", Title: "VOC", Makers: voc.Calculators},
	}}
}

// Booth is the core of the questions at the booth.
func Booth() Core {
	return Core{Name: "booth", Topics: []Topic{
		{ID: "climate", Title: "Air and moisture", Makers: climate.Calculators},
		{ID: "drying", Title: "Flash-off", Makers: drying.Calculators},
		{ID: "gun", Title: "Gun", Makers: gun.Calculators},
		{ID: "supply", Title: "Air supply", Makers: supply.Calculators},
		{ID: "cure", Title: "Pot life and cure", Makers: cure.Calculators},
		{ID: "vent", Title: "Booth and safety", Makers: vent.Calculators},
		{ID: "money", Title: "Money", Makers: money.Calculators},
	}}
}

// Shelf is the core of what is kept.
func Shelf() Core {
	return Core{Name: "shelf", Topics: []Topic{
		{ID: "shelf", Title: "Shelf", Makers: shelf.Calculators},
		{ID: "customer", Title: "For your customers", Makers: shelf.Customer},
		{ID: "record", Title: "Records", Makers: record.Calculators},
		{ID: "log-file", Makers: record.Files},
		{ID: "timing", Title: "Timers", Makers: timing.Calculators},
		{ID: "code", Makers: code.Calculators},
	}}
}

// Day is the core of the booth day.
func Day() Core { return day.Core() }

// Cores lists every core. What calls it holds every calculator.
func Cores() []Core { return []Core{Job(), Bench(), Booth(), Shelf(), Day()} }

// Exercised lists the cores that exercises can be drawn from. A whole job or day is no exercise, and their cores have to
// stay small.
func Exercised() []Core { return []Core{Bench(), Booth(), Shelf()} }

// Listed is the menu.
func Listed() []Topic {
	return slices.DeleteFunc(Topics(), func(t Topic) bool { return !t.Listed() })
}

// Topics is every topic, listed or not.
func Topics() []Topic {
	var all []Topic
	for _, c := range Cores() {
		all = append(all, c.Topics...)
	}
	return all
}

// Find makes the calculator with an ID, whichever core holds it, or returns nil.
func Find(id string) *calc.Calculator {
	for _, c := range Cores() {
		if found := c.Find(id); found != nil {
			return found
		}
	}
	return nil
}
