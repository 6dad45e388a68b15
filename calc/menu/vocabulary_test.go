package menu_test

import (
	"slices"
	"testing"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A meaning is what a key stands for, as far as a program can tell.
type meaning struct {
	quantity unit.Quantity // of a number
	kind     string        // "number", "choice", "words" or "table"
	choices  []string      // of the description that has the most
	first    string        // the calculator where it was found
}

// A key filled in once serves every form, so it must mean one thing in all of them.
func TestOneVocabulary(t *testing.T) {
	asked, answered := map[string]meaning{}, map[string]meaning{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		var inputs func(ins []calc.Input)
		inputs = func(ins []calc.Input) {
			for _, in := range ins {
				agree(t, asked, in.Key, meaningOf(c, in))
				inputs(in.Rows)
			}
		}
		inputs(c.Inputs)
		for _, out := range c.Outputs {
			m := meaning{kind: "words", first: c.ID}
			switch {
			case out.Columns != nil:
				m.kind = "table"
			case out.Unit != 0:
				m.kind, m.quantity = "number", out.Unit.Quantity()
			}
			agree(t, answered, out.Key, m)
		}
	})
	for key, m := range answered {
		if in, both := asked[key]; both && in.quantity != m.quantity {
			t.Errorf("%s is asked for as %s %s in %s and answered as %s %s in %s", key, in.kind, in.quantity, in.first, m.kind, m.quantity, m.first)
		}
	}
}

func meaningOf(c *calc.Calculator, in calc.Input) meaning {
	m := meaning{kind: "words", first: c.ID}
	switch {
	case in.Rows != nil:
		m.kind = "table"
	case in.Choices != nil:
		m.kind, m.choices = "choice", choiceKeys(&in)
	case in.Unit != 0:
		m.kind, m.quantity = "number", in.Unit.Quantity()
	}
	return m
}

// agree holds a key to what it meant before. One calculator may offer fewer choices than another, none others.
func agree(t *testing.T, known map[string]meaning, key string, m meaning) {
	t.Helper()
	was, found := known[key]
	switch {
	case !found:
		known[key] = m
	case was.kind != m.kind || was.quantity != m.quantity:
		t.Errorf("%s is a %s %s here and a %s %s in %s", key, m.kind, m.quantity, was.kind, was.quantity, was.first)
	case !within(m.choices, was.choices) && !within(was.choices, m.choices):
		t.Errorf("%s offers %v here and %v in %s", key, m.choices, was.choices, was.first)
	case len(m.choices) > len(was.choices):
		known[key] = m
	}
}

func within(some, all []string) bool {
	return !slices.ContainsFunc(some, func(s string) bool { return !slices.Contains(all, s) })
}
