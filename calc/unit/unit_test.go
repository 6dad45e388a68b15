package unit_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/unit"
)

// Factors printed in NIST Special Publication 811, Guide for the Use of the International System of Units, 2008
// edition, appendix B.8, from memory, or worked from the exact ones printed there, as noted. A printed value that is
// not exact there holds to half of its last digit.
func TestFactorsAgainstNISTSP811(t *testing.T) {
	for _, tt := range []struct {
		from, to  string
		factor    float64
		tolerance float64 // 0 for exact
	}{
		{"in", "mm", 25.4, 0},                                                                             // inch to metre 2.54 E-02, exact
		{"ft", "m", 0.3048, 0},                                                                            // foot to metre 3.048 E-01, exact
		{"ft_up", "m_up", 0.3048, 0},                                                                      // the same
		{"mil", "um", 25.4, 0},                                                                            // mil (0.001 in) to metre 2.54 E-05, exact
		{"ft2", "m2", 0.09290304, 0},                                                                      // square foot 9.290304 E-02, exact
		{"gal", "L", 3.785412, 5e-7},                                                                      // gallon (US) 3.785 412 E-03 m3
		{"qt", "L", 0.9463529, 5e-8},                                                                      // liquid quart (US) 9.463 529 E-04 m3
		{"pt", "L", 0.4731765, 5e-8},                                                                      // liquid pint (US) 4.731 765 E-04 m3
		{"floz", "mL", 29.57353, 5e-6},                                                                    // fluid ounce (US) 2.957 353 E-05 m3
		{"lb", "kg", 0.45359237, 0},                                                                       // pound avoirdupois 4.535 923 7 E-01, exact
		{"oz", "g", 28.34952, 5e-6},                                                                       // ounce avoirdupois 2.834 952 E-02 kg
		{"lb/gal", "kg/L", 0.1198264, 5e-8},                                                               // pound per gallon (US) 1.198 264 E+02 kg/m3
		{"lb/gal_voc", "g/L", 119.8264, 5e-5},                                                             // the same
		{"lb/ft3", "kg/m3", 16.01846, 5e-6},                                                               // pound per cubic foot 1.601 846 E+01
		{"psi", "kPa", 6.894757, 5e-7},                                                                    // pound-force per square inch 6.894 757 E+03 Pa
		{"bar", "kPa", 100, 0},                                                                            // bar 1.0 E+05 Pa, exact
		{"hPa", "Pa", 100, 0},                                                                             // millibar 1.0 E+02 Pa, exact
		{"inHg", "Pa", 3386.389, 5e-4},                                                                    // inch of mercury, conventional, 3.386 389 E+03 Pa
		{"ft/min", "m/s_air", 0.00508, 0},                                                                 // foot per minute 5.08 E-03, exact
		{"in/s", "m/s", 0.0254, 0},                                                                        // inch per second 2.54 E-02, exact
		{"gr/ft3", "g/m3", 2.288352, 5e-7},                                                                // from grain 64.798 91 mg and foot 0.3048 m, both exact there
		{"ft2/gal", "m2/L", 0.02454240, 1e-7},                                                             // from square foot and gallon above
		{"floz/min", "mL/min", 29.57353, 5e-6},                                                            // fluid ounce above
		{"h", "s", 3600, 0},                                                                               // hour 3.6 E+03 s, exact
		{"d", "s", 86400, 0},                                                                              // day 8.64 E+04 s, exact
		{"/gal", "/L", 1 / 3.785412, 5e-8},                                                                // gallon above
		{"/ft2", "/m2", 1 / 0.09290304, 0},                                                                // square foot above
		{"diffF", "diffC", 5. / 9, 0},                                                                     // degree Fahrenheit interval to kelvin 5.555 556 E-01
		{"cm2", "m2", 1e-4, 0}, {"cm", "mm", 10, 0}, {"cm/s", "m/s", 0.01, 0}, {"g/kg", "kg/kg", 1e-3, 0}, // SI prefixes
	} {
		slack := tt.tolerance + 1e-14*tt.factor
		assert.InDelta(t, tt.factor, convert(t, 1, tt.from, tt.to), slack, "%s to %s", tt.from, tt.to)
	}
}

// t/°C = (t/°F − 32)/1.8, NIST SP 811 (2008), appendix B.8, exact.
func TestTemperatures(t *testing.T) {
	for f, c := range map[float64]float64{32: 0, 212: 100, -40: -40, 98.6: 37, 68: 20} {
		assert.InDelta(t, c, convert(t, f, "degF", "degC"), 1e-12)
		assert.InDelta(t, f, convert(t, c, "degC", "degF"), 1e-12)
	}
	assert.InDelta(t, 9, convert(t, 5, "diffC", "diffF"), 1e-12, "a difference has no 32 degrees")
}

func convert(t *testing.T, x float64, from, to string) float64 {
	t.Helper()
	a, ok := unit.ByID(from)
	require.True(t, ok, from)
	b, ok := unit.ByID(to)
	require.True(t, ok, to)
	return unit.Convert(x, a, b)
}

func TestThereAndBack(t *testing.T) {
	for _, from := range unit.All() {
		for _, to := range unit.Of(from.Quantity()) {
			for _, x := range []float64{-273, -1, 0, 1e-6, 1, 27.5, 1e6} {
				back := unit.Convert(unit.Convert(x, from, to), to, from)
				assert.InDelta(t, x, back, 1e-12*(300+math.Abs(x)), "%v %s by way of %s", x, from.ID(), to.ID())
			}
		}
		assert.Equal(t, math.Pi, unit.Convert(math.Pi, from, from), "the same unit changes nothing")
	}
}

func TestTheTableIsSound(t *testing.T) {
	id := regexp.MustCompile(`^[A-Za-z0-9_/]+$`)
	seen := map[string]bool{}
	usual := map[unit.Quantity]string{}
	for _, u := range unit.All() {
		assert.Regexp(t, id, u.ID())
		assert.False(t, seen[u.ID()], "%s stands twice", u.ID())
		seen[u.ID()] = true
		assert.NotEmpty(t, u.Quantity(), u.ID())
		for _, a := range u.Aliases() {
			assert.Equal(t, strings.ToLower(a), a, "aliases are in lower case")
		}
		if u.US() {
			assert.Empty(t, usual[u.Quantity()], "%s and %s are both what a US shop expects", u.ID(), usual[u.Quantity()])
			usual[u.Quantity()] = u.ID()
		}
		back, ok := unit.ByID(u.ID())
		assert.True(t, ok && back == u)
	}
	_, ok := unit.ByID("furlong")
	assert.False(t, ok)
}

// Two units that people write alike would be taken for each other.
func TestNoTwoUnitsOfAQuantityAreWrittenAlike(t *testing.T) {
	for _, u := range unit.All() {
		for _, v := range unit.Of(u.Quantity()) {
			if u == v {
				continue
			}
			written := append([]string{strings.ToLower(v.Symbol()), v.ID()}, v.Aliases()...)
			for _, s := range append([]string{strings.ToLower(u.Symbol()), u.ID()}, u.Aliases()...) {
				assert.NotContains(t, written, s, "%s and %s", u.ID(), v.ID())
			}
		}
	}
}

func TestDifferentQuantitiesDoNotConvert(t *testing.T) {
	assert.Panics(t, func() { unit.Convert(1, unit.Gram, unit.Millilitre) })
	assert.Panics(t, func() { unit.Convert(1, unit.DegC, unit.DiffC) })
	assert.Panics(t, func() { unit.Convert(1, unit.PartsByVolume, unit.PartsByMass) })
}

func TestDecimalsFollowTheSizeOfTheUnit(t *testing.T) {
	assert.Equal(t, 1, unit.Decimals(1, unit.DegC, unit.DegC))
	assert.Equal(t, 1, unit.Decimals(0, unit.Micrometre, unit.Mil))
	assert.Equal(t, 2, unit.Decimals(0, unit.PSI, unit.Bar)-unit.Decimals(0, unit.PSI, unit.PSI)+1)
	assert.Equal(t, 3, unit.Decimals(0, unit.Gram, unit.Kilogram))
	assert.Equal(t, 0, unit.Decimals(1, unit.Litre, unit.Millilitre), "never less than none")
}
