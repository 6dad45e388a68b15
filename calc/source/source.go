// Package source is the bibliography: every published work that a formula, a limit or a caution rests on,
// named once.
package source

import "spraywright/calc/phrase"

// A Source is a published work or a place in one; nil is none. It is held by pointer so that a step of a working
// costs little to write down.
type Source = *Work

// A Work is what is known of a source.
type Work struct {
	ID    string        // short name, for links to the sources page
	Title string        // as a library would list it
	Ours  phrase.Phrase // words of ours instead of a title, where no one work is meant
	Place phrase.Phrase // clause, table, page or section; blank for the work as a whole
	Basis Basis         // how the project knows what it says
}

// A Basis says how the project knows what a source says.
type Basis string

const (
	Seen       Basis = "seen"       // somebody on the project has read the place cited
	SecondHand Basis = "secondhand" // read in another work that quotes it
	Memory     Basis = "memory"     // from memory, still to be read
	Practice   Basis = "practice"   // common practice of the trade, no source
	Derived    Basis = "derived"    // follows from definitions or from another source
)

// Name is the title, or our own words, in English, where there is none.
func (s *Work) Name() string { return s.Title + string(s.Ours) }

// At points to a place within the work.
//
//go:noinline
func (s *Work) At(place phrase.Phrase) Source {
	at := *s
	at.Place = place
	return &at
}

// By says how the place is known.
//
//go:noinline
func (s *Work) By(b Basis) Source {
	by := *s
	by.Basis = b
	return &by
}
