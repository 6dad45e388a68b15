package main

import (
	"slices"
	"strings"

	"spraywright/calc"
	vocabulary "spraywright/calc/field"
	"spraywright/calc/menu"
	"spraywright/calc/shelf"
)

// A target is a calculator that data sheets from a link open in, and what it takes from them.
type target struct {
	ID, Page string
	Title    calc.Phrase
	Rows     string // its table of products; blank where it takes one
	Keys     string // parted by spaces
}

// targets lists the calculators that a supplier can choose.
func targets() []target {
	var all []target
	for _, choice := range vocabulary.Opens.Choices {
		c := menu.Find(choice.Key)
		to := target{ID: c.ID, Page: pageFile(c), Title: choice.Label}
		ins := c.Inputs
		for _, in := range c.Inputs {
			if slices.ContainsFunc(in.Rows, func(column calc.Input) bool { return column.Key == vocabulary.Product.Key }) {
				to.Rows, ins = in.Key, in.Rows
			}
		}
		to.Keys = strings.Join(takenBy(ins), " ")
		all = append(all, to)
	}
	return all
}

// takenBy lists the keys of a data sheet that a form asks for and can take whatever the sheet says.
func takenBy(ins []calc.Input) []string {
	var keys []string
	for _, in := range shelf.DataSheet().Inputs {
		i := slices.IndexFunc(ins, func(other calc.Input) bool { return other.Key == in.Key })
		if i < 0 {
			continue
		}
		choices := func(c calc.Choice) bool {
			return slices.ContainsFunc(ins[i].Choices, func(other calc.Choice) bool { return other.Key == c.Key })
		}
		if !slices.ContainsFunc(in.Choices, func(c calc.Choice) bool { return !choices(c) }) {
			keys = append(keys, in.Key)
		}
	}
	return keys
}

// sheetFields are the fields of a data sheet, by which the customer's page reads one out.
func sheetFields() []field {
	var fields []field
	for _, in := range shelf.DataSheet().Inputs {
		fields = append(fields, newField(in, "", ""))
	}
	return fields
}
