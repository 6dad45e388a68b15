package menu_test

import (
	"encoding/json"
	"testing"

	"spraywright/calc"
	"spraywright/calc/menu"
)

// Whatever a link holds, no calculator panics, and what it says can be read by the page.
func FuzzCalculators(f *testing.F) {
	var all []*calc.Calculator
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			f.Add(len(all), c.ExampleForm().String())
			all = append(all, c)
		}
	}
	f.Fuzz(func(t *testing.T, i int, link string) {
		c := all[uint(i)%uint(len(all))]
		r := c.Run(calc.ParseForm(link))
		if !json.Valid([]byte(r.JSON())) {
			t.Fatalf("%s answers %q with what is not JSON", c.ID, link)
		}
		for _, p := range r.Problems {
			if p.Message == "" || p.Fix == "" {
				t.Fatalf("%s: problem with %q is not in words", c.ID, p.Field)
			}
		}
	})
}
