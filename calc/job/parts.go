package job

import (
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
		all := j.Step("Area of all "+row.Words(field.PartName), "A_all = A * N", unit.SquareMetre, source.Definition, one.V*n.V, one, n)
		row.Describe(area.Describe(row, one))
		j.parts = append(j.parts, part{row.Words(field.PartName), fold(row.Words(field.Colour)), all})
	}
	if j.Ready(placeParts) {
		j.Result(areaAll, j.areaOf(""))
	}
}

// fold makes "Ivory " and "ivory" one colour.
func fold(s string) string { return strings.ToLower(strings.TrimSpace(s)) }

// areaOf adds up the parts of a colour, or all parts where it is blank.
func (j *job) areaOf(colour string) calc.Num {
	var sum calc.Num
	for _, p := range j.parts {
		switch {
		case colour != "" && p.colour != colour:
		case !sum.Given():
			sum = p.area
		default:
			sum = j.Step("Area so far", "A = A_1 + A_2", unit.SquareMetre, source.Definition, sum.V+p.area.V, sum, p.area)
		}
	}
	return sum
}

// colours lists the colours that parts have, in the order of the table.
func (j *job) colours() string {
	var names []string
	seen := map[string]bool{"": true}
	for _, row := range j.Rows(parts) {
		if c := strings.TrimSpace(row.Words(field.Colour)); !seen[fold(c)] {
			seen[fold(c)] = true
			names = append(names, c)
		}
	}
	return strings.Join(names, ", ")
}
