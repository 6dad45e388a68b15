package gun

import "math"

// A Profile is how the film of one stroke falls off from the fan's middle, x = 0, to its edges, x = ±1. Each is 1
// in the middle.
type Profile struct {
	Key  string
	at   func(x float64) float64
	area float64 // under the whole profile
}

// Profiles are those that a stroke's film is known to take, by the keys of the form's choice. The round spot is a
// gun whose still pattern is a round paraboloid, moved in a line: (1 - x²)^(3/2).
var Profiles = []Profile{
	{"parabola", func(x float64) float64 { return inside(x) }, 4. / 3},
	{"ellipse", func(x float64) float64 { return math.Sqrt(inside(x)) }, math.Pi / 2},
	{"spot", func(x float64) float64 { y := inside(x); return y * math.Sqrt(y) }, 3 * math.Pi / 8},
	{"soft", func(x float64) float64 { y := inside(x); return y * y }, 16. / 15},
	{"triangle", func(x float64) float64 { return math.Max(0, 1-math.Abs(x)) }, 1},
}

func inside(x float64) float64 { return math.Max(0, 1-x*x) }

// ProfileByKey finds a profile.
func ProfileByKey(key string) (Profile, bool) {
	for _, p := range Profiles {
		if p.Key == key {
			return p, true
		}
	}
	return Profile{}, false
}

// spacing is the distance of neighbouring strokes in half fans, for an overlap in percent below 100.
func spacing(overlap float64) float64 { return 2 * (1 - overlap/100) }

// film is the film at x of strokes at every multiple of s, both in half fans.
func (p Profile) film(s, x float64) float64 {
	sum := 0.0
	for k := math.Ceil((x - 1) / s); k*s < x+1; k++ {
		sum += p.at(x - k*s)
	}
	return sum
}

// An Evenness says how far a film strays from its average, each in percent of the average.
type Evenness struct {
	Ripple    float64 // thickest less thinnest
	Thinnest  float64 // 100 is the average
	Thickest  float64
	Deviation float64 // standard deviation across the panel
}

const evennessPoints = 1000

// Evenness is that of strokes at an overlap in percent, from 0 up to 90, far from the panel's edges.
func (p Profile) Evenness(overlap float64) Evenness { return p.evenness(overlap, evennessPoints) }

// evenness looks at half a spacing, which mirrors into the rest, and at each stroke's edge, where the film has
// its corners.
func (p Profile) evenness(overlap float64, points int) Evenness {
	s := spacing(overlap)
	mean := p.area / s
	low, high, squares := math.Inf(1), 0.0, 0.0
	for i := range points {
		x := (float64(i) + 0.5) / float64(points) * s / 2
		h := p.film(s, x)
		low, high = min(low, h), max(high, h)
		squares += (h - mean) * (h - mean)
	}
	edge := math.Mod(1, s)
	for _, x := range []float64{0, s / 2, edge, s - edge} {
		h := p.film(s, x)
		low, high = min(low, h), max(high, h)
	}
	pct := 100 / mean
	return Evenness{(high - low) * pct, low * pct, high * pct, math.Sqrt(squares/float64(points)) * pct}
}

// Ripple is the difference between the thickest and the thinnest film across a panel in percent of the average,
// for an overlap in percent from 0 up to 90.
func Ripple(p Profile, overlap float64) float64 { return p.Evenness(overlap).Ripple }

// LeastRipple is the overlap in percent, up to 50, with the smallest [Ripple].
func (p Profile) LeastRipple() float64 {
	return least(func(o float64) float64 { return p.evenness(o, searchPoints).Ripple })
}

// LeastDeviation is the overlap in percent, up to 50, with the smallest standard deviation.
func (p Profile) LeastDeviation() float64 {
	return least(func(o float64) float64 { return p.evenness(o, searchPoints).Deviation })
}

const (
	searchPoints = 400
	searchStep   = 0.5 // percent; the curves have no narrower dip
	searchMost   = 50  // percent; more overlap always evens out in the end, at the price of strokes
)

// least finds where f is smallest from 0 to 50: on a grid, then by the golden section about the best point.
func least(f func(float64) float64) float64 {
	best, lowest := 0.0, f(0)
	for o := searchStep; o <= searchMost; o += searchStep {
		if x := f(o); x < lowest {
			best, lowest = o, x
		}
	}
	golden := (math.Sqrt(5) - 1) / 2
	a, b := max(0, best-searchStep), min(searchMost, best+searchStep)
	for range 25 {
		if c, d := b-golden*(b-a), a+golden*(b-a); f(c) < f(d) {
			b = d
		} else {
			a = c
		}
	}
	return (a + b) / 2
}
