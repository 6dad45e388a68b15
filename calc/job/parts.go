package job

import (
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/area"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A part is one row of the parts table.
type part struct {
	name, colour string   // colour as compared: lower case, trimmed
	area         calc.Num // of all pieces, m²
}

// readParts works out each row's area. Rows are described as soon as they can be, so that a closed row reads
// as a sentence while others are still being filled in.
func (j *job) readParts() {
	for _, row := range j.Rows(parts) {
		if !row.Clean() {
			continue
		}
		one, ok := area.OfPart(j.Working, row)
		if !ok {
			continue
		}
		n := row.Given(field.Count)
		all := j.Step(j.Named("Area of all {part}", calc.Words(row.Words(field.PartName), "part")), "A_all = A * N", unit.SquareMetre, source.Definition, one.V*n.V, one, n)
		row.Describe(area.Describe(row, one))
		j.parts = append(j.parts, part{row.Words(field.PartName), fold(row.Words(field.Colour)), all})
	}
	if j.Ready(placeParts) {
		j.whole = j.areaOf("")
		j.Result(areaAll, j.whole)
	}
}

// fold makes "Ivory " and "ivory" one colour.
func fold(s string) string { return strings.ToLower(strings.TrimSpace(s)) }

// areaOf adds up the parts of a colour, or all parts where it is blank.
func (j *job) areaOf(colour string) calc.Num {
	var sum calc.Num
	for _, p := range j.parts {
		if colour == "" || p.colour == colour {
			sum = j.sum("Area so far", unit.SquareMetre, sum, p.area)
		}
	}
	return sum
}

// hasColour reports whether any part has a colour.
func (j *job) hasColour(colour string) bool {
	return slices.ContainsFunc(j.parts, func(p part) bool { return p.colour == colour })
}

// colours lists the {colours} that parts have, in the order of the table.
func (j *job) colours() calc.Arg {
	var names []string
	seen := map[string]bool{"": true}
	for _, row := range j.Rows(parts) {
		if c := strings.TrimSpace(row.Words(field.Colour)); !seen[fold(c)] {
			seen[fold(c)] = true
			names = append(names, c)
		}
	}
	if names == nil {
		return calc.Term("without a colour", "colours")
	}
	return calc.Words(strings.Join(names, ", "), "colours")
}
