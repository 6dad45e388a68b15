package mixing

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// OverPour tells what to add to the other parts when too much of one was poured.
func OverPour() *calc.Calculator {
	return &calc.Calculator{
		ID:       "over-pour",
		Title:    "Poured too much",
		Question: "I poured too much: what do I add of the other parts?",
		Range: "Any mix poured by weight, up to six parts, however many of them went over. It only ever adds. " +
			"Additions are to 0.1 g. Whether the cup holds it is told where cup and density are filled in; past its pot life nothing is worked out.",
		Inputs:  []calc.Input{overPoured, reworded(field.CupSize, "Cup holds", "To be told whether it overflows; with the density of the mix").Maybe(), field.MixDensity.Maybe(), field.PotLife.Maybe(), sinceMixed()},
		Outputs: []calc.Output{additions, newTotal, growth, newVolume, timeLeft},
		Work:    overPour,
		Cautions: []calc.Phrase{
			caution.HardenerRatio, caution.Isocyanate, caution.Skin,
			"The pot life runs from when paint and hardener first met, not from when you put the mix right.",
		},
		Arithmetic: true,
	}
}

var (
	overPoured = calc.Input{
		Key: "component", Label: "Parts of the mix", Help: "In the order you pour them", RowName: "part", Most: ratio.Most,
		Rows: []calc.Input{field.PartTarget, field.PartPoured},
	}
	additions = calc.Output{Key: "addition", Label: "Put it right", Columns: []calc.Output{
		{Key: "part", Label: "Part", Words: true},
		{Key: "add", Label: "Add", Unit: unit.Gram, Decimals: 1},
		{Key: "reading", Label: "Scale then reads", Unit: unit.Gram, Decimals: 1},
		{Key: "mass", Label: "Of this part in all", Unit: unit.Gram, Decimals: 1},
	}}
	newTotal  = calc.Output{Key: "total_mass", Label: "Scale reads in the end", Unit: unit.Gram, Decimals: 1, Main: true}
	newVolume = calc.Output{Key: "new_volume", Label: "Volume of the mix in the end", Unit: unit.Millilitre, Optional: true}
	growth    = calc.Output{Key: "growth", Label: "Times the first mix", Unit: unit.One, Decimals: 3}
)

// sinceMixed is asked whatever the pack: a mix of two parts has begun to cure where it has a pot life.
func sinceMixed() calc.Input {
	in := field.MixedAgo.Maybe()
	in.When, in.Help = nil, "Since hardener and paint first met; not counted while only the first part is in"
	return in
}

func overPour(w *calc.Working) {
	var targets, poured []calc.Num
	begun := false // to cure
	for i, row := range w.Rows(overPoured) {
		targets, poured = append(targets, row.Given(field.PartTarget)), append(poured, row.Given(field.PartPoured))
		begun = begun || i > 0 && poured[i].V > 0
	}
	q, masses, adds := Corrected(w, targets, poured)
	reading := summed(w, "Weight in the cup before", "P", "p", poured)
	var next []calc.Arg // the first part to add
	for i, a := range adds {
		add := calc.Told(calc.Say("nothing"))
		if a = tenths(w, i, a); a.V > 0 {
			add = calc.Of(a)
			reading = w.Step(nth(w, "Scale reading after the {nth} part", i), "G = G_before + b", unit.Gram, source.Definition,
				reading.V+a.V, reading, a)
			if next == nil {
				next = []calc.Arg{a.To(1, "add"), calc.Term(ordinals[i], "part"), reading.To(1, "reading")}
			}
		}
		w.List(additions, name(i), add, calc.Of(reading), calc.Of(masses[i]))
	}
	w.Result(newTotal, reading)
	w.Result(growth, q)
	judgeOverPour(w, q, reading, next)
	checkPotLife(w, begun)
}

// tenths rounds what to add of a part to what a scale shows, so that the readings add up.
func tenths(w *calc.Working, i int, a calc.Num) calc.Num {
	return w.Step(nth(w, "Add of the {nth} part, to 0.1 g", i), each("b_# = round(10 * a_#) / 10", i), unit.Gram, source.Definition,
		math.Round(10*a.V)/10, a)
}

// checkPotLife rejects a cup past its pot life, once more than the first part is in.
func checkPotLife(w *calc.Working, begun bool) {
	life, age := w.Given(field.PotLife), w.Given(field.MixedAgo)
	switch {
	case !begun:
	case life.Given() && age.Given():
		lifeLeft(w, life, age)
	case life.Given():
		w.Reject(field.MixedAgo, calc.Missing, "is blank", "Enter pot life and age, or leave both blank")
	case age.Given():
		w.Reject(field.PotLife, calc.Missing, "is blank", "Enter pot life and age, or leave both blank")
	}
}

// judgeOverPour says what to add next, unless the cup is too small for it all.
func judgeOverPour(w *calc.Working, q, total calc.Num, next []calc.Arg) {
	cup, rho := w.Given(field.CupSize), w.Given(field.MixDensity)
	if cup.Given() && !rho.Given() {
		w.Reject(field.MixDensity, calc.Missing, "is blank", "Enter it, or leave the cup blank")
		return
	}
	if cup.Given() {
		v := w.Step(newVolume.Label, "V = G / rho", unit.Millilitre, source.Definition, total.V/rho.V, total, rho)
		w.Result(newVolume, v)
		if v.V > cup.V {
			w.Judge(calc.Stop, calc.Say("The mix comes to {v} and the cup holds {cup}", v.To(0, "v"), cup.As("cup")), calc.Say("Stir it, pour it into a larger cup and scrape the first one clean before you add anything"))
		}
	}
	add := calc.Say("Add {add} of the {part} part, the scale then reads {reading}", next...)
	switch {
	case next == nil:
		w.Judge(calc.Go, calc.Say("Add nothing: the ratio is right"), calc.Say("Stir it and go on"))
	case q.V <= 1:
		w.Judge(calc.Go, add, calc.Say("Nothing is over: pour on to the first figures"))
	default:
		w.Judge(calc.Wait, add, calc.Say("The mix grows to {m}, {q} times the first. Go on down the list if the cup holds that and you can spray it all inside the pot life; mix again from new if not", total.To(1, "m"), q.To(2, "q")))
	}
}

// Corrected is what a mix must weigh, part by part in g, once poured has gone over target (g, above 0): everything
// grows by q, the largest poured/target, so that the ratio holds. It also returns what to add of each. q is 1
// where nothing was poured over.
func Corrected(w *calc.Working, targets, poured []calc.Num) (q calc.Num, masses, adds []calc.Num) {
	var nums []calc.Num
	worst := 1.0
	for i, m := range targets {
		nums = append(nums, poured[i], m)
		worst = max(worst, poured[i].V/m.V)
	}
	formula := "q = max(1, " + terms("p_# / m_#", len(targets), ", ") + ")"
	q = w.Step("Factor by which the mix grows", formula, unit.One, source.Definition, worst, nums...)
	for i, m := range targets {
		p := poured[i]
		grown := w.Step(nth(w, "The {nth} part must weigh", i), each("M_# = q * m_#", i), unit.Gram, source.Definition, q.V*m.V, q, m)
		masses = append(masses, grown)
		adds = append(adds, w.Step(nth(w, "Add of the {nth} part", i), each("a_# = max(0, M_# - p_#)", i), unit.Gram, source.Definition,
			max(0, grown.V-p.V), grown, p))
	}
	return q, masses, adds
}

// summed adds masses up.
func summed(w *calc.Working, label calc.Phrase, symbol, term string, ms []calc.Num) calc.Num {
	total := 0.0
	for _, m := range ms {
		total += m.V
	}
	return w.Step(label, adding(symbol, term+"_#", len(ms)), unit.Gram, source.Definition, total, ms...)
}
