package main

import (
	"cmp"
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/source"
)

// A cited is a place in a published work that some working rests on.
type cited struct{ source.Work }

// Source is the place as working cites it.
func (c cited) Source() source.Source { return &c.Work }

// A bibliography is what the page of sources shows.
type bibliography struct {
	Works  []*work
	Checks []checked
}

// A work is one published work with the places cited.
type work struct {
	Title  string
	ID     string
	Places []citedPlace
}

type citedPlace struct {
	cited
	Used []*calc.Calculator
}

// A checked says how many published values a calculator is held to.
type checked struct {
	Calculator *calc.Calculator
	Rows       int
	Outside    int // rows that come from outside rather than being worked by hand
	Sources    []string
}

func (b *bibliography) add(p calculatorPage) {
	for _, c := range p.Sources {
		b.cite(c, p.Calculator)
	}
	ch := checked{Calculator: p.Calculator, Rows: len(p.Checks)}
	for _, row := range p.Checks {
		if row.Outside() {
			ch.Outside++
		}
		if !slices.Contains(ch.Sources, row.Source) {
			ch.Sources = append(ch.Sources, row.Source)
		}
	}
	if ch.Rows > 0 {
		b.Checks = append(b.Checks, ch)
	}
}

func (b *bibliography) cite(c cited, user *calc.Calculator) {
	i := slices.IndexFunc(b.Works, func(w *work) bool { return w.ID == c.ID })
	if i < 0 {
		i, b.Works = len(b.Works), append(b.Works, &work{Title: c.Name(), ID: c.ID})
		slices.SortFunc(b.Works, func(a, b *work) int {
			return cmp.Or(strings.Compare(strings.ToLower(a.Title), strings.ToLower(b.Title)), strings.Compare(a.ID, b.ID))
		})
		i = slices.IndexFunc(b.Works, func(w *work) bool { return w.ID == c.ID })
	}
	w := b.Works[i]
	k := slices.IndexFunc(w.Places, func(p citedPlace) bool { return p.cited == c })
	if k < 0 {
		k, w.Places = len(w.Places), append(w.Places, citedPlace{cited: c})
	}
	w.Places[k].Used = append(w.Places[k].Used, user)
}

// Total is how many published values there are in all.
func (b *bibliography) Total() (n int) {
	for _, c := range b.Checks {
		n += c.Rows
	}
	return n
}

// Outside is how many of them come from outside.
func (b *bibliography) Outside() (n int) {
	for _, c := range b.Checks {
		n += c.Outside
	}
	return n
}

// basisWords say how the project knows what a source says.
var basisWords = map[source.Basis]calc.Phrase{
	source.Seen:       "read in the work itself",
	source.SecondHand: "as another work quotes it",
	source.Memory:     "from memory, not yet checked against the work",
	source.Practice:   "common practice of the trade, no source",
	source.Derived:    "follows by calculation",
}

// cite words a source for the working.
func (t tongue) cite(s source.Source) string {
	if s == nil {
		return ""
	}
	text := t.say(s.Name())
	if s.Place != "" {
		text += ", " + t.say(s.Place)
	}
	// These two say in their title how they are known.
	if s.ID == source.Definition.ID || s.ID == source.CommonPractice.ID || s.ID == source.OurChoice.ID {
		return text
	}
	return text + " — " + t.how(s.Basis)
}

// how says how the project knows what a source says.
func (t tongue) how(b source.Basis) string { return t.say(basisWords[b]) }

// basis is how, for every basis.
func (t tongue) basis() map[source.Basis]string {
	all := map[source.Basis]string{}
	for b := range basisWords {
		all[b] = t.how(b)
	}
	return all
}
