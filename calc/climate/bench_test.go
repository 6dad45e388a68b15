package climate

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// everything that is known of moist air of one temperature and humidity.
func everything(t, rh, p float64) float64 {
	pw := PartialPressure(t, rh)
	w := MoistureContent(pw, p)
	return w + DewPoint(t, rh) + WetBulb(t, rh, p) + AbsoluteHumidity(t, w, p) + AirDensity(t, w, p) + VapourPressureDeficit(t, pw)
}

// BenchmarkGrid works out a grid of moist air: -10 to 50 °C and 2 to 100 % at sea level, 1550 points.
func BenchmarkGrid(b *testing.B) {
	b.ReportAllocs()
	sum := 0.0
	for b.Loop() {
		for t := -10.; t <= 50; t += 2 {
			for rh := 2.; rh <= 100; rh += 2 {
				sum += everything(t, rh, 101325)
			}
		}
	}
	assert.NotZero(b, sum)
}

// What is worked out for every point of a grid must leave nothing behind to be cleared away.
func TestMoistAirNeedsNoMemory(t *testing.T) {
	assert.Zero(t, testing.AllocsPerRun(10, func() { everything(21, 55, 101325) }))
}
