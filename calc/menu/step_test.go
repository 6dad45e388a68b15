package menu

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
)

// A step is 1, 2 or 5 times a power of ten, as dials are marked, and fits into the limits many times.
func TestStepsAreMarksOfAScale(t *testing.T) {
	var check func(ins []calc.Input)
	check = func(ins []calc.Input) {
		for _, in := range ins {
			if in.Step != 0 {
				assert.Regexp(t, `^[125]e`, strconv.FormatFloat(in.Step, 'e', -1, 64), in.Key)
				assert.Greater(t, (in.Limits.Max-in.Limits.Min)/in.Step, 10.0, in.Key)
			}
			check(in.Rows)
		}
	}
	for _, topic := range Topics() {
		for _, c := range topic.Calculators() {
			check(c.Inputs)
		}
	}
}
