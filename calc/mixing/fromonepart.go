package mixing

import (
	"strconv"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FromOnePart tells what an amount of one part makes.
func FromOnePart() *calc.Calculator {
	return &calc.Calculator{
		ID:       "from-one-part",
		Title:    "From what I have of one part",
		Question: "How much mix does what I have of one part make?",
		Range:    "Two to six parts. In the measure the ratio is stated by; in both where you fill in the density of every part.",
		Inputs: append([]calc.Input{mixRatio, field.RatioBy, field.WhichPart, field.HaveVolume, field.HaveMass},
			mayBe(densities(func(in calc.Input) calc.Input { return in }))...),
		Outputs:    []calc.Output{components, totalVolume, totalMass},
		Mistakes:   asWater,
		Work:       fromOnePart,
		Cautions:   []calc.Phrase{caution.HardenerRatio, caution.Isocyanate, caution.Skin, caution.PotLife},
		Arithmetic: true,
	}
}

var totalVolume = calc.Output{Key: "total_volume", Label: "Volume of the mix", Unit: unit.Millilitre, Main: true, Optional: true}

func mayBe(ins []calc.Input) []calc.Input {
	for i := range ins {
		ins[i].Optional = true
	}
	return ins
}

func fromOnePart(w *calc.Working) {
	parts, ok := several(w)
	if !ok {
		return
	}
	k := int(w.Given(field.WhichPart).V) - 1
	if k >= len(parts) || parts[k] == 0 {
		w.Reject(field.WhichPart, calc.Impossible, "names no part of this ratio", "The ratio has {n} parts", calc.Words(strconv.Itoa(len(parts)), "n"))
		return
	}
	byWeight, rho := w.Picked(field.RatioBy) == "weight", known(w, len(parts))
	cs, have := make([]Component, len(parts)), w.Given(field.HaveVolume)
	if byWeight {
		have = w.Given(field.HaveMass)
	}
	for i := range cs {
		cs[i].Volume = scaled(w, "Volume of the {nth} part", "V", unit.PartsByVolume, parts, i, k, have)
		if byWeight {
			cs[i].Volume, cs[i].Mass = calc.Num{}, scaled(w, "Weight of the {nth} part", "m", unit.PartsByMass, parts, i, k, have)
		}
		if rho != nil {
			cs[i].convert(w, i, rho[i])
		}
	}
	total(w, cs, byWeight || rho != nil, !byWeight || rho != nil)
}

// known is the density of each of n parts, or nil where one is blank.
func known(w *calc.Working, n int) (rho []calc.Num) {
	for _, in := range densities(func(in calc.Input) calc.Input { return in })[:n] {
		x := w.Given(in)
		if !x.Given() {
			return nil
		}
		rho = append(rho, x)
	}
	return rho
}

// scaled is how much of part i goes with an amount of part k.
func scaled(w *calc.Working, label calc.Phrase, symbol string, by unit.Unit, parts []float64, i, k int, have calc.Num) calc.Num {
	if i == k {
		return have
	}
	r, first := part(w, parts, i, by), part(w, parts, k, by)
	return w.Step(nth(w, label, i), each(symbol+"_# = "+symbol+" * r_# / r", i), have.Unit, source.Definition,
		have.V*r.V/first.V, have, r, first)
}

// convert fills in the measure that is missing.
func (c *Component) convert(w *calc.Working, i int, rho calc.Num) {
	if c.Mass.Given() {
		c.Volume = w.Step(nth(w, "Volume of the {nth} part", i), each("V_# = m_# / rho_#", i), unit.Millilitre, source.Definition, c.Mass.V/rho.V, c.Mass, rho)
		return
	}
	c.Mass = w.Step(nth(w, "Weight of the {nth} part", i), each("m_# = V_# * rho_#", i), unit.Gram, source.Definition, c.Volume.V*rho.V, c.Volume, rho)
}

// total lists the parts and adds up the measures that are known.
func total(w *calc.Working, cs []Component, weighed, measured bool) {
	var ms, vs []calc.Num
	for i, c := range cs {
		reading := calc.Num{}
		ms, vs = append(ms, c.Mass), append(vs, c.Volume)
		if weighed {
			reading = summed(w, nth(w, "Scale reading after the {nth} part", i), "G", "m", ms)
		}
		w.List(components, name(i), calc.Of(c.Volume), calc.Of(c.Mass), calc.Of(reading))
		if weighed {
			w.Result(totalMass, reading)
		}
	}
	if measured {
		sum := 0.0
		for _, v := range vs {
			sum += v.V
		}
		w.Result(totalVolume, w.Step(totalVolume.Label, adding("V_all", "V_#", len(vs)), unit.Millilitre, source.AdditiveVolumes, sum, vs...))
	}
}
