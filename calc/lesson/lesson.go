// Package lesson makes what a slider beneath an opened working needs: the numbers that it goes through and the graph of the
// answer against them, and sketches of what formulas are about.
//
// It knows no calculator and gets texts alone, as reports and forms have them, so that one core can serve every page. The
// page asks the calculator's own core for each number of the slider and hands the answers on.
package lesson

import "spraywright/calc"

// Answer answers "scale" and "graph".
func Answer(l calc.Language, what string, form calc.Form) string {
	return calc.WriteJSON(func(w calc.JSON) {
		switch what {
		case "scale":
			if s, ok := newScale(l, form); ok {
				s.write(w)
			}
		case "graph":
			newGraph(l, form).write(w)
		}
	})
}
