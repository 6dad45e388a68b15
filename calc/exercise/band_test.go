package exercise

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// Thinners lie between 0.78 and 0.95 kg/L and paints between 0.9 and 1.6 (common practice), however far a draw goes.
func TestDensitiesAreOnesThatExist(t *testing.T) {
	for _, c := range []struct {
		in        calc.Input
		low, high float64
	}{{field.DensityA, 0.9, 1.6}, {field.DensityB, 0.95, 1.15}, {field.DensityC, 0.78, 0.95}, {field.MixDensity, 0.9, 1.6}, {field.LiquidDensity, 0.78, 0.95}} {
		for _, wide := range []bool{false, true} {
			band := Around(&c.in, unit.KilogramPerLitre, wide)
			for k := range band.n {
				x, err := strconv.ParseFloat(band.text(k), 64)
				assert.NoError(t, err)
				assert.True(t, x >= c.low && x <= c.high, "%s: %s", c.in.Key, strings.TrimSpace(band.String()))
			}
			assert.Greater(t, band.n, 2, c.in.Key)
		}
	}
}
