package calc

import "strings"

// A Code says what kind of problem it is, for tests and for styling.
type Code string

// The kinds of problem.
const (
	Missing    Code = "missing"
	NotNumber  Code = "not-a-number"
	TooLow     Code = "too-low"
	TooHigh    Code = "too-high"
	NotOffered Code = "not-offered" // a unit or choice that the form does not have
	Unclear    Code = "unclear"     // words that cannot be read, or can be read two ways
	TooLong    Code = "too-long"
	TooMany    Code = "too-many"   // rows
	Impossible Code = "impossible" // fields that cannot be true together
	Beyond     Code = "beyond"     // no trustworthy answer outside this range
)

// A Problem is one thing the person has to put right. Message and Fix are shown as they stand.
type Problem struct {
	Field   string // a key of the form; blank when it belongs to none
	Place   string // the part of the form it stands in
	Row     string // the row of a table it stands in, as people count: "part 2"; blank for none
	Code    Code
	Message string // what is wrong, starting with the field's label
	Fix     string // what to do about it
}

func (p Problem) Error() string { return p.Message + ". " + p.Fix + "." }

// Problems is every problem found in one reading of a form.
type Problems []Problem

func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// at reports whether any problem stands in a place of the form.
func (ps Problems) at(place string) bool {
	for _, p := range ps {
		if p.Place == place {
			return true
		}
	}
	return false
}

// wrong counts the problems with what was entered, without what is still missing.
func (ps Problems) wrong() int {
	n := 0
	for _, p := range ps {
		if p.Code != Missing {
			n++
		}
	}
	return n
}
