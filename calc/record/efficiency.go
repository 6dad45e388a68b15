package record

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

var (
	combined = source.JCGM100.At("5.1.2, standard uncertainties combined").By(source.Memory)
	expanded = source.JCGM100.At("6.2.1, coverage factor 2, about 95 in 100").By(source.Memory)
)

// efficiency works out what share of the solids sprayed has stayed on the part, from the weight left in the cup (g)
// and the density of the mix (kg/L).
func (m *mix) efficiency(w *calc.Working, left, rho calc.Num) {
	if m.mass.Given() && left.V >= m.mass.V {
		w.Reject(field.LeftMass, calc.Impossible, "must be less than was mixed, {m}", "Weigh the cup again, and take off its empty weight", m.mass.As("m"))
		return
	}
	a, dft, vs := w.Given(area), w.Given(film), w.Given(solids)
	if !m.mass.Given() || !rho.Given() || !a.Given() || !dft.Given() || !vs.Given() {
		w.Judge(calc.Wait, calc.Say("The transfer efficiency of this mix is not known yet"),
			calc.Say("Enter volume and weight of the mix, the area, its film and the volume solids"))
		return
	}
	h := w.Given(inGun).Or(0).Called(inGun.Label)
	v := w.Step(sprayedVolume.Label, "V_s = (m - m_0) / rho - H", unit.Millilitre, source.Definition, (m.mass.V-left.V)/rho.V-h.V, m.mass, left, rho, h)
	if v.V <= 0 {
		w.Reject(inGun, calc.Impossible, "is all that was sprayed, or more", "Check it against the weight left")
		return
	}
	te := w.Step(transferFound.Label, "TE = 100 * A * DFT / (V_s * VS / 100)", unit.Percent, source.Definition, 100*a.V*dft.V/(v.V*vs.V/100), a, dft, v, vs)
	if te.V > 100*(1+1e-9) {
		w.Reject(film, calc.Impossible, "takes more solids than were sprayed: {te}", "Check area, film, solids and what was left", te.To(0, "te"))
		return
	}
	w.Result(sprayedVolume, v)
	w.Result(transferFound, te)
	m.spread(w, te, v, h)
}

// spread is the range that the transfer efficiency (percent) lies in 95 times of 100: the film varies as stated, and
// what stays in the gun (h, mL, of v mL sprayed) by a quarter.
func (m *mix) spread(w *calc.Working, te, v, h calc.Num) {
	uf := w.Given(field.FilmSpread)
	uh := w.Constant("What stays in the gun varies by", unit.Percent, source.CommonPractice, 25)
	u := w.Step("Spread of the figure", "u = sqrt(pow(u_f, 2) + pow(u_H * H / V_s, 2))", unit.Percent, combined,
		math.Sqrt(math.Pow(uf.V, 2)+math.Pow(uh.V*h.V/v.V, 2)), uf, uh, h, v)
	low := w.Step(transferLow.Label, "TE_1 = max(0, TE * (1 - 2 * u / 100))", unit.Percent, expanded, max(0, te.V*(1-2*u.V/100)), te, u)
	high := w.Step(transferHigh.Label, "TE_2 = min(100, TE * (1 + 2 * u / 100))", unit.Percent, expanded, min(100, te.V*(1+2*u.V/100)), te, u)
	w.Result(transferLow, low)
	w.Result(transferHigh, high)
	says := []calc.Arg{te.To(0, "te"), low.To(0, "low"), high.To(0, "high")}
	if w.Picked(field.FilmBy) == "measured" {
		w.Judge(calc.Go, calc.Say("{te} of the solids stayed on the part; {low} to {high} is what the film's spread leaves open", says...),
			calc.Say("Use it for parts of this kind, with this gun and this hand"))
		return
	}
	w.Judge(calc.Wait, calc.Say("{te} of the solids stayed on the part, if the film came out as planned: {low} to {high}", says...),
		calc.Say("Measure the film to be surer, and use the figure for parts of this kind only"))
}
