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

// Text words it as the working does.
func (c cited) Text() string { return cite(&c.Work) }

// How says how the project knows what the source says.
func (c cited) How() string { return basisWords[c.Basis] }

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
		i, b.Works = len(b.Works), append(b.Works, &work{Title: c.Title, ID: c.ID})
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
var basisWords = map[source.Basis]string{
	source.Seen:       "read in the work itself",
	source.SecondHand: "as another work quotes it",
	source.Memory:     "from memory, not yet checked against the work",
	source.Practice:   "common practice of the trade, no source",
	source.Derived:    "follows by calculation",
}

// cite words a source for the working.
func cite(s source.Source) string {
	if s == nil {
		return ""
	}
	text := s.Title
	if s.Place != "" {
		text += ", " + s.Place
	}
	// These two say in their title how they are known.
	if s.ID == source.Definition.ID || s.ID == source.CommonPractice.ID || s.ID == source.OurChoice.ID {
		return text
	}
	return text + " — " + basisWords[s.Basis]
}
