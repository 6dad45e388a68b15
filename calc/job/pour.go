package job

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/mixing"
)

// partNames are what data sheets usually list in this order; the reader's tins say which is which.
var (
	twoPackParts = [...]calc.Phrase{"Paint", "Hardener", "Thinner", "Fourth part"}
	onePackParts = [...]calc.Phrase{"Paint", "Thinner", "Third part", "Fourth part"}
)

// pour writes every cup down as readings on a scale that is never set back to zero. Cups that are alike are
// written once.
func (j *job) pour(c *coat) {
	for i := 0; i < len(c.cups); {
		n := i + 1
		for n < len(c.cups) && c.cups[n].alike(c.cups[i]) {
			n++
		}
		names := onePackParts
		if c.twoPack {
			names = twoPackParts
		}
		scale := j.UnitOf(field.ScaleStep)
		components, _ := mixing.Components(j.Working, c.ratio, c.byWeight, c.densities, c.cups[i].volume)
		added, readings := mixing.Shown(j.Working, components, j.gun.scaleStep)
		for k, comp := range components {
			j.List(cups, calc.Told(cupsNamed(c, i, n)), calc.Told(calc.Say(names[k])), calc.Of(comp.Volume), calc.Of(added[k]).In(scale),
				calc.Of(readings[k]).In(scale))
		}
		j.label(c, i, n)
		i = n
	}
}

// alike reports whether two cups hold the same to less than any scale shows.
func (c cup) alike(d cup) bool { return math.Abs(c.spray-d.spray) < 1e-3 }

// cupsNamed is "Primer, cups 1 to 3 of 4, each" for the cups from i up to n, counted from 0.
func cupsNamed(c *coat, i, n int) calc.Text {
	if n == i+1 {
		return cupNamed(c, i)
	}
	return calc.Say("{name}, cups {i} to {k} of {n}, each", calc.Words(c.name, "name"), whole(i+1, "i"), whole(n, "k"), whole(len(c.cups), "n"))
}

// cupNamed is "Primer, cup 2 of 3".
func cupNamed(c *coat, i int) calc.Text {
	if len(c.cups) == 1 {
		return calc.Say("{name}, one cup", calc.Words(c.name, "name"))
	}
	return calc.Say("{name}, cup {i} of {n}", calc.Words(c.name, "name"), whole(i+1, "i"), whole(len(c.cups), "n"))
}

// cupFirst is "Cup 2 of 3: Primer", for where there is little room and cups must be told apart.
func cupFirst(c *coat, i int) calc.Text {
	if len(c.cups) == 1 {
		return cupNamed(c, i)
	}
	return calc.Say("Cup {i} of {n}: {name}", whole(i+1, "i"), whole(len(c.cups), "n"), calc.Words(c.name, "name"))
}
