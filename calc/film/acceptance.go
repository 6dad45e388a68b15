package film

import (
	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// The three rules. They differ, so that each goes by its own name.
var (
	iso19840    = source.ISO19840.By(source.SecondHand)
	iso19840Few = source.ISO19840.At("readings between 80 % and 100 %, as R. A. Francis compares the standards").By(source.SecondHand)
	iso19840Off = source.ISO19840.At("correction by ISO 8503 grade").By(source.SecondHand)
	pa2         = source.SSPCPA2.At("spots 80 % and 120 %, its third restriction level").By(source.SecondHand)
	pa2Single   = source.SSPCPA2.At("a single value is taken as ±20 %, since 2012").By(source.SecondHand)
	msc215      = source.MSC215.At("90/10 rule").By(source.SecondHand)
)

// iso19840From is the thinnest nominal film, in µm, that ISO 19840 is for: its scope, as its catalogue states it.
const iso19840From = 40

// A readings is a set of gauge readings on one film, in µm, the profile taken off.
type readings struct {
	film      calc.Num  // nominal
	x         []float64 // in the order taken
	mean, low calc.Num
	below     calc.Num // share below the nominal film, percent
}

// under allows for the last bit of a conversion: 4 mil is 80 % of 5 mil.
func under(x, limit float64) bool { return x < limit*(1-1e-9) }

// survey takes the mean, the lowest and the share below the nominal film.
func survey(w *calc.Working, film calc.Num, x []float64) readings {
	sum, low, few, n := 0.0, x[0], 0.0, float64(len(x))
	for _, v := range x {
		sum, low = sum+v, min(low, v)
		if under(v, film.V) {
			few++
		}
	}
	count := calc.N(n, unit.One).As("n")
	return readings{film, x,
		w.Model(filmMean.Label, "all n readings added, less the profile, divided by n", unit.Micrometre, source.Definition, sum/n, count),
		w.Model(filmLowest.Label, "the lowest reading, less the profile", unit.Micrometre, source.Definition, low, count),
		w.Model(shareBelow.Label, "how many of the n readings are below DFT", unit.Percent, source.Definition, 100*few/n, count, film.As("DFT")),
	}
}

// A ruling is what one rule says: blank where it cannot be applied.
type ruling struct {
	result calc.Phrase
	why    calc.Text
}

const pass, fail, notJudged = "Pass", "Fail", "Not judged"

func (r readings) byISO19840(w *calc.Working) ruling {
	limit := w.Step("ISO 19840: no reading below", "x_80 = 0.8 * DFT", unit.Micrometre, iso19840, 0.8*r.film.V, r.film)
	most := w.Constant("ISO 19840: readings that may lie between 80 % and 100 %", unit.Percent, iso19840Few, 20)
	switch {
	case r.film.V < iso19840From:
		return ruling{notJudged, calc.Say("It is for films of {from} and more", calc.N(iso19840From, unit.Micrometre).To(0, "from"))}
	case under(r.low.V, limit.V):
		return ruling{fail, calc.Say("The lowest reading, {low}, is below 80 % of the film, {limit}", r.low.As("low"), limit.As("limit"))}
	case under(r.mean.V, r.film.V):
		return ruling{fail, calc.Say("The mean, {mean}, is below {film}", r.mean.As("mean"), r.film.As("film"))}
	case r.below.V > most.V:
		return ruling{fail, calc.Say("{below} of the readings are below {film}; {most} may be", r.below.As("below"), r.film.As("film"), most.As("most"))}
	}
	return ruling{pass, calc.Say("Mean {mean}, lowest {low}, {below} of the readings below {film}", r.mean.As("mean"), r.low.As("low"), r.below.As("below"), r.film.As("film"))}
}

func (r readings) byMSC215(w *calc.Working) ruling {
	limit := w.Step("IMO MSC.215(82): no reading below", "x_90 = 0.9 * DFT", unit.Micrometre, msc215, 0.9*r.film.V, r.film)
	most := w.Constant("IMO MSC.215(82): readings that may lie between 90 % and 100 %", unit.Percent, msc215, 10)
	switch {
	case under(r.low.V, limit.V):
		return ruling{fail, calc.Say("The lowest reading, {low}, is below 90 % of the film, {limit}", r.low.As("low"), limit.As("limit"))}
	case r.below.V > most.V:
		return ruling{fail, calc.Say("{below} of the readings are below {film}; {most} may be", r.below.As("below"), r.film.As("film"), most.As("most"))}
	}
	return ruling{pass, calc.Say("Lowest {low}, {below} of the readings below {film}", r.low.As("low"), r.below.As("below"), r.film.As("film"))}
}

// byPA2 judges spots of three readings against 80 % of least and 120 % of most, and areas of five spots against
// least and most, all in µm. Single readings do not count in this rule.
func (r readings) byPA2(w *calc.Working, least, most calc.Num) ruling {
	low := w.Step(spotLow.Label, "s_1 = 0.8 * least", unit.Micrometre, pa2, 0.8*least.V, least)
	high := w.Step(spotHigh.Label, "s_2 = 1.2 * most", unit.Micrometre, pa2, 1.2*most.V, most)
	w.Result(spotLow, low)
	w.Result(spotHigh, high)
	if len(r.x)%perArea != 0 {
		return ruling{notJudged, calc.Say("It wants three readings on each of five spots in every area: 15, 30 or 45 readings")}
	}
	a, b := extremes(r.x, perSpot)
	c, d := extremes(r.x, perArea)
	spots := []calc.Arg{a.As("a"), b.As("b"), low.As("low"), high.As("high")}
	areas := []calc.Arg{c.As("c"), d.As("d"), least.As("low"), most.As("high")}
	switch {
	case under(a.V, low.V), under(high.V, b.V):
		return ruling{fail, calc.Say("Spots run from {a} to {b}, outside {low} to {high}", spots...)}
	case under(c.V, least.V), under(most.V, d.V):
		return ruling{fail, calc.Say("Area means run from {c} to {d}, outside {low} to {high}", areas...)}
	}
	return ruling{pass, calc.Say("Spots from {a} to {b}, area means from {c} to {d}", append(spots, areas[:2]...)...)}
}

// How many readings SSPC-PA 2 takes on a spot, and on an area of five spots.
const perSpot, perArea = 3, 15

// extremes are the lowest and the highest mean of each n readings in turn.
func extremes(x []float64, n int) (low, high calc.Num) {
	for i := 0; i+n <= len(x); i += n {
		sum := 0.0
		for _, v := range x[i : i+n] {
			sum += v
		}
		m := calc.N(sum/float64(n), unit.Micrometre)
		if i == 0 || m.V < low.V {
			low = m
		}
		if i == 0 || m.V > high.V {
			high = m
		}
	}
	return low, high
}
