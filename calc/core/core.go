// Package core says what a compiled core holds. It knows no topic, so that a core which puts its own together holds no
// other's.
package core

import "spraywright/calc"

// A Topic is a group of calculators. One without a title is not listed: pages ask its calculators themselves, and they
// have no page of their own.
type Topic struct {
	ID     string
	Title  calc.Phrase
	Makers []calc.Maker
}

// Listed reports whether the topic stands in the menu.
func (t Topic) Listed() bool { return t.Title != "" }

// Calculators makes the calculators of the topic.
func (t Topic) Calculators() []*calc.Calculator {
	all := make([]*calc.Calculator, len(t.Makers))
	for i, m := range t.Makers {
		all[i] = m.Make()
	}
	return all
}

// A Core is what is compiled into one WebAssembly file. There are several so that a page downloads little more than
// what it uses; each carries Go's runtime, so that many would be worse.
type Core struct {
	Name   string
	Topics []Topic
}

// Find makes the calculator with an ID, or returns nil.
func (c Core) Find(id string) *calc.Calculator {
	for _, t := range c.Topics {
		for _, m := range t.Makers {
			if m.ID == id {
				return m.Make()
			}
		}
	}
	return nil
}
