package menu_test

import (
	"regexp"
	"testing"

	"spraywright/calc"
)

// program finds what only a program writes in a formula.
var program = regexp.MustCompile(`[*/#]|\d[eE][-+\d]|[^\d\s]-|\b(pow|sqrt|pi|log10|floor|ceil|alpha|beta|gamma|delta|epsilon|eta|theta|lambda|mu|nu|rho|sigma|tau|phi)(\b|_)`)

// A person who reads the working need not know how a program writes a power.
func TestFormulasAreNotShownAsProgramText(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		wrong := map[string]bool{} // one complaint for each formula will do
		for _, r := range runs(t, c) {
			for i, line := range r.report.Steps {
				formula := r.steps[i].Formula
				if line.Kind == calc.Modelled || wrong[formula] {
					continue
				}
				if odd := program.FindString(line.Formula + " " + line.Numbers); odd != "" {
					wrong[formula] = true
					t.Errorf("%s: %q is left in %s = %s", line.Label, odd, line.Formula, line.Numbers)
				}
			}
		}
	})
}
