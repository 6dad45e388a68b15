package main

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/exercise"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// An exerciseTopic is a topic of the menu with the calculators that exercises can be made of.
type exerciseTopic struct {
	Title       calc.Phrase
	Calculators []exerciseCalculator
}

// An exerciseCalculator is what a trainer can set of a calculator.
type exerciseCalculator struct {
	ID, Core, Page string
	Title          calc.Phrase
	Answers        []exerciseAnswer
	Inputs         []exerciseInput
}

// An exerciseAnswer is a number that can be asked for.
type exerciseAnswer struct {
	Key   string
	List  calc.Phrase // that it stands in, or blank
	Row   string
	Label calc.Phrase
}

// An exerciseInput is what can be set of an input, with the numbers that are drawn where nothing is, in SI and as in a US
// shop.
type exerciseInput struct {
	Field            field
	Key              string // as a setting names it: "part.length"
	Band, BandUS     string
	BandIn, BandInUS unit.Unit
	Rows             int
}

// listRows is how many rows of a list a trainer can choose from.
const listRows = 4

// exerciseTopics lists what exercises can be made of.
func exerciseTopics() []exerciseTopic {
	var all []exerciseTopic
	for _, core := range menu.Exercised() {
		for _, topic := range core.Topics {
			t := exerciseTopic{Title: topic.Title}
			for _, c := range topic.Calculators() {
				if topic.Listed() && exercise.Usual(c) != "" {
					t.Calculators = append(t.Calculators, exerciseCalculator{c.ID, coreFile(core.Name), pageFile(c), c.Title, exerciseAnswers(c), exerciseInputs(c)})
				}
			}
			if t.Calculators != nil {
				all = append(all, t)
			}
		}
	}
	return all
}

func exerciseAnswers(c *calc.Calculator) []exerciseAnswer {
	var all []exerciseAnswer
	for _, out := range c.Outputs {
		if out.Unit != 0 {
			all = append(all, exerciseAnswer{Key: out.Key, Label: out.Label})
		}
		for _, column := range out.Columns {
			if column.Unit == 0 {
				continue
			}
			for row := range listRows {
				n := strconv.Itoa(row + 1)
				all = append(all, exerciseAnswer{out.Key + "." + n + "." + column.Key, out.Label, n, column.Label})
			}
		}
	}
	return all
}

func exerciseInputs(c *calc.Calculator) []exerciseInput {
	var all []exerciseInput
	add := func(f field, key string) {
		e := exerciseInput{Field: f, Key: key}
		switch f.Kind {
		case "number":
			units := f.Units()
			e.BandIn, e.BandInUS = exercise.UnitFor(f.Unit, units, false), exercise.UnitFor(f.Unit, units, true)
			if f.Prefill {
				e.BandIn, e.BandInUS = f.Unit, f.Unit
			}
			e.Band, e.BandUS = exercise.Around(&f.Input, e.BandIn, false).String(), exercise.Around(&f.Input, e.BandInUS, false).String()
		case "table":
			e.Rows = exercise.UsualRows(c, &f.Input)
		}
		all = append(all, e)
	}
	for _, in := range c.Inputs {
		f := newField(in, "", "")
		add(f, in.Key)
		for _, column := range f.First {
			add(column, column.Column)
		}
	}
	return all
}
