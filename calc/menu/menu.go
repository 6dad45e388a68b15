// Package menu is the ordered list of topics and calculators: what the site offers, and which compiled core holds what.
package menu

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/area"
	"spraywright/calc/climate"
	"spraywright/calc/code"
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

// A Topic is a group of calculators. One without a title is not listed: pages ask its calculators themselves, and they
// have no page of their own.
type Topic struct {
	ID     string
	Title  calc.Phrase
	Makers []calc.Maker
}

// Listed reports whether the topic stands in the menu.
func (t Topic) Listed() bool { return t.Title != "" }

// Calculators makes the calculators of the topic.
func (t Topic) Calculators() []*calc.Calculator {
	all := make([]*calc.Calculator, len(t.Makers))
	for i, m := range t.Makers {
		all[i] = m.Make()
	}
	return all
}

// A Core is what is compiled into one WebAssembly file. There are several so that a page downloads little more than
// what it uses; each carries Go's runtime, so that many would be worse.
type Core struct {
	Name   string
	Topics []Topic
}

// Job is the core of the page that the site opens on. Each core is a function, so that a program which calls one does
// not hold the others.
func Job() Core {
	return Core{"job", []Topic{
		{"job", "The job", job.Calculators},
		{"settings", "Today’s settings", settings.Calculators},
	}}
}

// Bench is the core of the questions at the mixing bench.
func Bench() Core {
	return Core{"bench", []Topic{
		{"mixing", "At the scale", mixing.Calculators},
		{"film", "Film and coverage", film.Calculators},
		{"area", "Areas", area.Calculators},
		{"viscosity", "Viscosity", viscosity.Calculators},
		{"voc", "VOC", voc.Calculators},
		{"money", "Money", money.Calculators},
	}}
}

// Booth is the core of the questions at the booth.
func Booth() Core {
	return Core{"booth", []Topic{
		{"climate", "Air and moisture", climate.Calculators},
		{"drying", "Flash-off", drying.Calculators},
		{"gun", "Gun", gun.Calculators},
		{"supply", "Air supply", supply.Calculators},
		{"cure", "Pot life and cure", cure.Calculators},
		{"vent", "Booth and safety", vent.Calculators},
	}}
}

// Shelf is the core of what is kept.
func Shelf() Core {
	return Core{"shelf", []Topic{
		{"shelf", "Shelf", shelf.Calculators},
		{"record", "Records", record.Calculators},
		{"log-file", "", record.Files},
		{"timing", "Timers", timing.Calculators},
		{"code", "", code.Calculators},
	}}
}

// Day is the core of the booth day. Its calculators remember the last day that was planned, so that a core that is made
// once goes on from there.
func Day() Core {
	listed, tools := day.Calculators()
	return Core{"day", []Topic{
		{"day", "The booth day", listed},
		{"day-form", "", tools},
	}}
}

// Cores lists every core. What calls it holds every calculator.
func Cores() []Core { return []Core{Job(), Bench(), Booth(), Shelf(), Day()} }

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

// Find makes the calculator with an ID, or returns nil.
func (c Core) Find(id string) *calc.Calculator {
	for _, t := range c.Topics {
		for _, m := range t.Makers {
			if m.ID == id {
				return m.Make()
			}
		}
	}
	return nil
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
