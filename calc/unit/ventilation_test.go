package unit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// NIST SP 811 (2008), appendix B.8, from memory: cubic foot 2.831 685 E-02 m3, cubic foot per minute 4.719 474 E-04
// m3/s, gallon (US) 3.785 412 E-03 m3.
func TestRoomAndBoothAirAgainstNISTSP811(t *testing.T) {
	assert.InDelta(t, 2.831685e-2, convert(t, 1, "ft3", "m3"), 5e-9)
	assert.InDelta(t, 4.719474e-4, convert(t, 1, "ft3/min", "m3/s"), 5e-11)
	assert.InDelta(t, 3600, convert(t, 1, "m3/s", "m3/h"), 1e-9)
	assert.InDelta(t, 2.831685e-2/3.785412, convert(t, 1, "ft3/gal", "m3/L"), 3e-9)
}
