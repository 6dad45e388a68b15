package unit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// NIST SP 811 (2008), appendix B.8: cubic foot per minute 4.719 474 E-04 m3/s. Litre and hour are exact.
func TestFlowsOfCompressedAir(t *testing.T) {
	assert.InDelta(t, 4.719474e-4*60e3, convert(t, 1, "cfm", "L/min"), 5e-11*60e3)
	assert.InDelta(t, 1000./60, convert(t, 1, "m3/h_free", "L/min"), 1e-12)
}
