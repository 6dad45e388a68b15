package record

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// MixRecord is one entry of the log: what it holds, what goes into the air, and, once the rest of the cup has been
// weighed, how much of the paint stayed on the part.
func MixRecord() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mix-record",
		Title:    "A mix for the log",
		Question: "What goes into the log for this mix?",
		Range: "One mix of one product. All VOC in it counts as given off, whatever part of the paint stays on the work. " +
			"The transfer efficiency follows where you weigh what is left in the cup and know the area and its film; above 100 % it is refused.",
		Inputs: []calc.Input{
			field.MixedOn, mixedAt, product, poured, field.MixedVolume, field.MixedMass, density,
			cupAge.Under("Where and who"), field.Booth, field.Painter,
			vocContent.Under("VOC"), waterShare,
			field.LeftMass.Under("What was left"), inGun, area, film, field.FilmBy, solids, field.FilmSpread,
		},
		Outputs:    []calc.Output{mixVolume, mixMass, vocMass, sprayedVolume, transferFound, transferLow, transferHigh},
		Work:       mixRecord,
		Cautions:   []calc.Phrase{keep, caution.LocalRule},
		Arithmetic: true,
	}
}

// What other forms ask, as a log asks it.
var (
	mixedAt    = asked(field.Clock, "Mixed at", "Time of day, as 8:00; may stay blank")
	product    = asked(field.Product, field.Product.Label, "As you call it in the shop; blank counts as one without a name")
	density    = asked(field.MixDensity, "Density of the mix", "Only where volume or weight is not known")
	cupAge     = asked(field.MixedAgo, "Age of the cup when logged", "Since paint and hardener met; may stay blank")
	vocContent = asked(field.VOC, field.VOC.Label, field.VOC.Help)
	waterShare = asked(field.WaterShare, field.WaterShare.Label, "By volume; blank for none")
	inGun      = asked(field.Losses, "Stays in gun and filter", "What the weight left does not count; blank for nothing")
	area       = asked(field.PartArea, "Area this mix was sprayed on", "All the faces it went on")
	film       = asked(field.DryFilm, "Dry film it made", "By this mix alone, all its coats together")
	solids     = asked(field.VolumeSolids, field.VolumeSolids.Label, "Of the mix, ready to spray")

	poured = calc.Input{
		Key: "poured_part", Label: "Parts poured", Help: "In the order you poured them; may stay empty", RowName: "part", Most: 6, Optional: true,
		Rows: []calc.Input{field.PouredName, field.PouredMass, field.PouredVolume},
	}

	mixVolume     = calc.Output{Key: "mix_volume", Label: "Volume of the mix", Unit: unit.Millilitre, Optional: true, Main: true}
	mixMass       = calc.Output{Key: "mix_mass", Label: "Weight of the mix", Unit: unit.Gram, Decimals: 1, Optional: true}
	vocMass       = calc.Output{Key: "voc_mass", Label: "VOC given off", Unit: unit.Gram, Optional: true, Main: true}
	sprayedVolume = calc.Output{Key: "sprayed_volume", Label: "Sprayed", Unit: unit.Millilitre, Optional: true}
	transferFound = calc.Output{Key: "transfer_found", Label: "Transfer efficiency", Unit: unit.Percent, Optional: true, Main: true}
	transferLow   = calc.Output{Key: "transfer_low", Label: "Transfer efficiency, at least", Unit: unit.Percent, Optional: true}
	transferHigh  = calc.Output{Key: "transfer_high", Label: "Transfer efficiency, at most", Unit: unit.Percent, Optional: true}
)

// asked rewords an input that may here stay blank, whatever else is chosen.
func asked(in calc.Input, label, help calc.Phrase) calc.Input {
	in.Label, in.Help, in.Optional, in.Prefill, in.When = label, help, true, false, nil
	return in
}

func mixRecord(w *calc.Working) {
	m := mix{Entry: w.Entry}
	m.volume, m.mass = m.amounts(w)
	m.complete(w)
	if !m.volume.Given() && !m.mass.Given() {
		w.Reject(field.MixedVolume, calc.Missing, "is blank, and so is the weight", "Enter one of them, or the parts poured")
		return
	}
	rho := w.Given(field.MixDensity)
	if m.volume.Given() && m.mass.Given() {
		rho = w.Step("Density of the mix", "rho = m / V", unit.KilogramPerLitre, source.Definition, m.mass.V/m.volume.V, m.mass, m.volume)
		if rho.V < lightest || rho.V > heaviest {
			w.Reject(field.MixedMass, calc.Impossible, "and the volume come to {rho}, which no paint has", "Check both and their units", rho.As("rho"))
			return
		}
	}
	result(w, mixVolume, m.volume)
	result(w, mixMass, m.mass)
	result(w, vocMass, m.voc)
	if left := w.Given(field.LeftMass); left.Given() {
		m.efficiency(w, left, rho)
	}
}

// lightest and heaviest bound the density, in kg/L, of what may be paint: the limits of the form's densities.
const lightest, heaviest = 0.5, 4

// amounts are the volume (mL) and the mass (g) as given, or else of all parts poured.
func (m *mix) amounts(w *calc.Working) (volume, mass calc.Num) {
	var vs, ms []calc.Num
	rows := w.Rows(poured)
	for _, row := range rows {
		if v := row.Given(field.PouredVolume); v.Given() {
			vs = append(vs, v)
		}
		if g := row.Given(field.PouredMass); g.Given() {
			ms = append(ms, g)
		}
	}
	if volume = w.Given(field.MixedVolume); !volume.Given() && len(vs) == len(rows) {
		volume = nonzero(sum(w, "Volume of all parts", "V", unit.Millilitre, source.AdditiveVolumes, vs))
	}
	if mass = w.Given(field.MixedMass); !mass.Given() && len(ms) == len(rows) {
		mass = nonzero(sum(w, "Weight of all parts", "m", unit.Gram, source.Definition, ms))
	}
	return volume, mass
}

// nonzero takes a sum of nothing for no sum.
func nonzero(n calc.Num) calc.Num {
	if n.V == 0 {
		return calc.Num{Unit: n.Unit}
	}
	return n
}

// result enters a number that is known.
func result(w *calc.Working, out calc.Output, n calc.Num) {
	if n.Given() {
		w.Result(out, n)
	}
}
