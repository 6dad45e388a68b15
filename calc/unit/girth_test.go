package unit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// ft²/ft is a foot of girth: 0.3048 m exactly (NIST SP 811, appendix B.8, foot to metre).
func TestAreaToALength(t *testing.T) {
	assert.InDelta(t, 0.3048, convert(t, 1, "ft2/ft", "m2/m"), 1e-15)
}
