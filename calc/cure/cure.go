// Package cure works out what temperature does to pot life, drying, recoat time and bakes.
//
// Everything rests on one law, Arrhenius': a reaction's speed goes with exp(-E/RT). What no book gives is E for
// the product in the can. Two times on its data sheet give it; without them the answer is a band between a mix
// that heat hardly hurries and one that it hurries much, and the cautious end of it leads. Nothing is answered
// further than [Reach] from a stated temperature, and nothing depends on humidity, for which no trustworthy
// figure exists.
package cure

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "pot-life", Make: PotLifeToday},
	{ID: "cup-age", Make: CupAge},
	{ID: "recoat-window", Make: RecoatWindow},
	{ID: "bake-equivalent", Make: BakeEquivalent},
}

var (
	arrhenius = source.GoldBook.At("Arrhenius equation; R from CODATA 2018").By(source.Memory)
	weakest   = source.Sekkar1997.At("abstract: 20 to 40 kJ/mol; 20 is taken").By(source.SecondHand)
	strongest = source.Cheng1994.At("abstract: 72 and 83 kJ/mol; 83 is taken").By(source.SecondHand)
	lumped    = source.Incropera.At("lumped capacitance method, equation 5.6").By(source.Memory)
)

const (
	bigBatch  = "A big batch warms itself, goes off sooner than the sheet says and may get hot enough to hurt: mix what one cup holds."
	noRelease = "An estimate from time and temperature, not a release test: judge the cure by the test your data sheet names."
)
