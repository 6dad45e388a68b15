// Package lesson makes what stands beneath an opened working: its formulas as MathML, its symbols one by one, the numbers
// that a slider goes through with the graph of the answer against them, and a sketch where one explains it.
//
// It knows no calculator and gets texts alone, as reports and forms have them, so that one core can serve every page. The
// page asks the calculator's own core for each number of the slider and hands the answers on.
package lesson

import (
	"strings"

	"spraywright/calc"
)

// Answer answers "lesson/formula", "lesson/scale", "lesson/graph" and "lesson/sketch".
func Answer(l calc.Language, what string, form calc.Form) string {
	return calc.WriteJSON(func(w calc.JSON) {
		switch what {
		case "formula":
			writeFormula(l, w, form)
		case "scale":
			if s, ok := newScale(l, form); ok {
				s.write(w)
			}
		case "graph":
			newGraph(l, form).write(w)
		case "sketch":
			if p, ok := sketch(l, form["of"]); ok {
				w.Picture("picture", p)
			}
		}
	})
}

// writeFormula takes a step of a report: formula, numbers and legend. Each is left out where the step has none.
func writeFormula(l calc.Language, w calc.JSON, form calc.Form) {
	for _, part := range []string{"formula", "numbers"} {
		if form[part] != "" {
			mathML(form[part], l.Comma).write(w, part)
		}
	}
	symbols := legend(form["legend"])
	w.List("symbols", len(symbols), func(i int) {
		symbol(symbols[i].sign).write(w, "symbol")
		w.Text("name", symbols[i].name)
		w.Text("value", symbols[i].value)
	})
}

// A meaning is what a sign of a formula stands for.
type meaning struct{ sign, name, value string }

// legend takes apart what a report says under a formula: "DFT: dry film wanted, 60 µm; n: coats, 2".
func legend(text string) []meaning {
	var all []meaning
	for entry := range strings.SplitSeq(text, "; ") {
		sign, rest, ok := strings.Cut(entry, ": ")
		at := strings.LastIndex(rest, ", ")
		if ok && at >= 0 && !strings.Contains(sign, " ") {
			all = append(all, meaning{sign, rest[:at], rest[at+2:]})
		} else if n := len(all); n > 0 { // a semicolon within a name
			all[n-1] = rejoin(all[n-1], entry)
		}
	}
	return all
}

// rejoin is a meaning whose name was cut in two.
func rejoin(m meaning, rest string) meaning {
	whole := m.name + ", " + m.value + "; " + rest
	at := strings.LastIndex(whole, ", ")
	return meaning{m.sign, whole[:at], whole[at+2:]}
}
