package job

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/mixing"
	"spraywright/calc/ratio"
)

// A coat is one row of the coats table: a product, the film wanted of it, and what follows from them.
type coat struct {
	*calc.Entry
	name, colour string
	ratio        []float64
	byWeight     bool
	densities    []calc.Num
	twoPack      bool
	waterborne   bool

	coats, solids, dryFilm calc.Num
	area                   calc.Num // it goes on, m²
	demand, mix, left      calc.Num // mL
	wet, comb              calc.Num // µm, of one coat; the comb's last wetted tooth
	flash, flashMost       calc.Num // min, shortest and longest
	pot, potMost           calc.Num // min; not given for a one-pack product, or where noPotLife
	noPotLife              bool     // two-pack, in more heat than its sheet knows
	recoat                 calc.Num // h, latest; not given where the sheet sets none
	dry                    calc.Num // min after its last coat, longest
	cups                   []cup
}

// readCoats reads the rows that are complete and checks what only the whole row can show.
func (j *job) readCoats() {
	for _, row := range j.Rows(coats) {
		c := &coat{Entry: row, name: row.Words(field.Product), colour: fold(row.Words(field.OnColour))}
		if row.Sound(field.Ratio) && row.Words(field.Ratio) != "" {
			c.ratio, _ = ratio.Parse(row.Words(field.Ratio))
		}
		complete := c.hasDensities()
		if !row.Clean() || !complete {
			continue
		}
		c.byWeight = row.Picked(field.RatioBy) == "weight"
		c.twoPack = row.Picked(field.Pack) == "two"
		c.waterborne = row.Picked(field.Carrier) == "water"
		if !c.check(j) {
			continue
		}
		c.coats, c.dryFilm = row.Given(field.Coats), row.Given(field.DryFilm)
		for i := range c.ratio {
			c.densities = append(c.densities, row.Given(densities[i]))
		}
		c.solids = c.sprayedSolids(j)
		row.Describe(c.describe(row))
		j.coats = append(j.coats, c)
	}
}

// sprayedSolids is the volume solids of the mix as it is sprayed. The share of a thinner is one of volumes, so that a
// ratio by weight is turned first.
func (c *coat) sprayedSolids(j *job) calc.Num {
	vs := c.Given(field.VolumeSolids)
	if c.Picked(field.SolidsFor) != "unthinned" {
		return vs
	}
	parts := c.ratio
	if c.byWeight {
		parts = nil
		for _, v := range mixing.VolumeRatio(j.Working, c.ratio, c.densities) {
			parts = append(parts, v.V)
		}
	}
	return film.SprayedSolids(j.Working, vs, parts, true)
}

// told is the cell that names the product in a list.
func (c *coat) told() calc.Cell { return calc.Told(calc.Say("{name}", calc.Words(c.name, "name"))) }

// describe puts the row into a sentence.
func (c *coat) describe(row *calc.Entry) calc.Text {
	by, coats := calc.Phrase("by volume"), calc.Phrase("{n} coats")
	if c.byWeight {
		by = "by weight"
	}
	if c.coats.V == 1 {
		coats = "1 coat"
	}
	return calc.Say("{name}, {ratio} {by}, {solids} solids, {film} in {coats}", calc.Words(c.name, "name"), calc.Words(row.Words(field.Ratio), "ratio"),
		calc.Term(by, "by"), row.Given(field.VolumeSolids).As("solids"), c.dryFilm.As("film"), calc.Say(coats, c.coats.To(0, "n")).As("coats"))
}

// hasDensities asks for the density of every part of the ratio, as soon as the ratio can be read.
func (c *coat) hasDensities() bool {
	ok := true
	n := calc.Term(countInWords(len(c.ratio)), "n")
	if len(c.ratio) > len(densities) {
		c.Reject(field.Ratio, calc.Beyond, "has {n} parts; a job takes four at most", "Mix the others beforehand and enter them as one", n)
		ok = false
	}
	for i, in := range densities {
		if i > 0 && i < len(c.ratio) && c.Sound(in) && !c.Given(in).Given() {
			c.Reject(in, calc.Missing, "is blank", "Enter it: the ratio has {n} parts", n)
			ok = false
		}
	}
	return ok
}

// check rejects what cannot be true together, every fault at once.
func (c *coat) check(j *job) bool {
	ok := true
	reject := func(in calc.Input, code calc.Code, message, fix calc.Phrase, args ...calc.Arg) {
		c.Reject(in, code, message, fix, args...)
		ok = false
	}
	if second, at := c.Given(potLifeSecond).Given(), c.Given(potLifeSecondAt).Given(); second != at {
		missing := potLifeSecondAt
		if at {
			missing = potLifeSecond
		}
		reject(missing, calc.Missing, "is blank", "Enter it, or clear its partner")
	}
	if c.Given(field.LatestRecoat).Given() && !c.Given(recoatAt).Given() {
		reject(recoatAt, calc.Missing, "is blank", "Enter it: heat shortens the latest recoat")
	}
	if low, high := c.Given(field.AirLowest), c.Given(field.AirHighest); low.Given() && high.Given() && low.V >= high.V {
		reject(field.AirHighest, calc.Impossible, "is not above the coldest allowed", "Check both on the data sheet")
	}
	if recoat, flash := c.Given(field.LatestRecoat), c.Given(field.Flash); recoat.Given() && recoat.V*60 <= flash.V {
		reject(field.LatestRecoat, calc.Impossible, "comes before the flash-off of {flash} is over", "Check both on the data sheet", flash.As("flash"))
	}
	if c.colour != "" && j.Ready(placeParts) && !j.hasColour(c.colour) {
		reject(field.OnColour, calc.Impossible, "fits no part; the parts are {colours}", "Write it as in the parts table, or leave it blank",
			j.colours())
	}
	return ok
}

func countInWords(n int) calc.Phrase {
	return [...]calc.Phrase{"no", "one", "two", "three", "four", "five", "six"}[n]
}
