package job

import (
	"spraywright/calc"
	"spraywright/calc/field"
)

var labels = calc.Output{
	Key: "labels", Place: cardMix, Label: "Cup labels", Look: "labels", Optional: true, Columns: []calc.Output{
		cupName, product,
		{Key: "number", Label: "Number", Words: true},
		{Key: "colour", Label: "Colour", Words: true},
		{Key: "life", Label: "Pot life today", Words: true},
	},
}

// label lists what stands on the label of each cup from i up to n, counted from 0. The first cell is the heading under
// which the scale column tells what to pour.
func (j *job) label(c *coat, i, n int) {
	colour, life := calc.Of(calc.Num{}), calc.Of(calc.Num{})
	if c.colour != "" {
		colour = calc.Told(calc.Say("{colour}", calc.Words(c.Words(field.OnColour), "colour")))
	}
	if c.pot.Given() {
		life = calc.Told(span(c.pot, c.potMost))
	}
	for k := i; k < n; k++ {
		j.List(labels, calc.Told(cupsNamed(c, i, n)), c.told(), calc.Told(calc.Say("Cup {i} of {n}", whole(k+1, "i"), whole(len(c.cups), "n"))), colour, life)
	}
}
