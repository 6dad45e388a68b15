// Package record keeps the books on what was mixed and sprayed: one mix, the sums of many, and the file of them.
package record

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
	"spraywright/calc/voc"
)

// Calculators lists the questions about the log of mixes.
var Calculators = []calc.Maker{
	{ID: "mix-record", Make: MixRecord},
	{ID: "mix-log", Make: MixLog},
}

// Files lists what is asked by the log's page alone.
var Files = []calc.Maker{
	{ID: "mix-csv", Make: MixCSV},
}

// keep is what a permit asks of a record; only its text knows.
const keep = "Your permit or local rule says what a record must hold, over which months it adds up, and how long to keep it. " +
	"A browser can lose what it keeps: take a copy of the log each month."

// A mix is one line of a log: one mix, or all mixes of a product in a month. What is not known is not given.
type mix struct {
	*calc.Entry
	month, day int // as field.ReadDay counts them
	product    string
	count      calc.Num
	volume     calc.Num // mL
	mass       calc.Num // g
	voc        calc.Num // g
	unknown    float64  // mixes without VOC
}

// complete fills volume (mL) and mass (g) in from each other and the density (kg/L) of the form or row, where it is
// known, and works out the VOC (g) in the mix from its content.
func (m *mix) complete(w *calc.Working) {
	rho := m.Given(field.MixDensity)
	switch {
	case !rho.Given():
	case m.volume.Given() && !m.mass.Given():
		m.mass = w.Step("Weight of the mix", "m = V * rho", unit.Gram, source.Definition, m.volume.V*rho.V, m.volume, rho)
	case m.mass.Given() && !m.volume.Given():
		m.volume = w.Step("Volume of the mix", "V = m / rho", unit.Millilitre, source.Definition, m.mass.V/rho.V, m.mass, rho)
	}
	if content := m.Given(field.VOC); content.Given() && m.volume.Given() {
		m.voc = voc.Emitted(w, m.volume, m.content(w, content))
	}
}

// content is the VOC in g/L of the mix as it is, water counted in.
func (m *mix) content(w *calc.Working, regulatory calc.Num) calc.Num {
	if water := m.Given(field.WaterShare); water.Given() {
		return voc.Actual(w, regulatory, water)
	}
	return regulatory
}

// fewTerms is how many numbers a sum is still written out with.
const fewTerms = 30

// sum adds up those of the numbers that are given; none are given where none of them is.
func sum(w *calc.Working, label calc.Phrase, symbol string, u unit.Unit, src source.Source, ns []calc.Num) calc.Num {
	total := 0.0
	var given []calc.Num
	var names []string
	for _, n := range ns {
		if n.Given() {
			total += n.V
			given, names = append(given, n), append(names, symbol+"_"+strconv.Itoa(len(given)+1))
		}
	}
	switch {
	case given == nil:
		return calc.Num{Unit: u}
	case len(given) > fewTerms:
		return w.Model(label, "all n of them added up", u, src, total, calc.N(float64(len(given)), unit.One).As("n"))
	}
	return w.Step(label, symbol+" = "+strings.Join(names, " + "), u, src, total, given...)
}
