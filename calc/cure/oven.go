package cure

import "math"

// An oven heats a part from T0 towards Air, both °C, by a time constant Tau in minutes: the part's temperature is
// one throughout, which holds for sheet and thin castings (Biot number below 0.1).
type Oven struct{ T0, Air, Tau float64 }

// Metal is the part's temperature in °C after some minutes.
func (o Oven) Metal(minutes float64) float64 { return o.Air + (o.T0-o.Air)*math.Exp(-minutes/o.Tau) }

// Reaches is how many minutes the metal takes to a temperature in °C: 0 where it starts there, +Inf where it
// never gets there.
func (o Oven) Reaches(t float64) float64 {
	switch {
	case o.T0 >= t:
		return 0
	case o.Air <= t:
		return math.Inf(1)
	}
	return o.Tau * math.Log((o.Air-o.T0)/(o.Air-t))
}

// A Pace is how many minutes at the stated temperature one minute at t °C is worth.
type Pace func(t float64) float64

// Paces are the least and the most that a minute can be worth, for activation energies in kJ/mol between weak and
// strong and a bake stated at ref °C. Each is taken at every temperature for itself, so that the least is a bound
// even where the metal passes through ref.
func Paces(weak, strong, ref float64) (least, most Pace) {
	at := func(t float64) (float64, float64) { return 1 / Stretch(weak, ref, t), 1 / Stretch(strong, ref, t) }
	return func(t float64) float64 { a, b := at(t); return min(a, b) }, func(t float64) float64 { a, b := at(t); return max(a, b) }
}

const (
	ovenStep    = 0.1   // minutes; on smooth heating Simpson's rule is then right to 1e-8
	ovenLongest = 10080 // minutes; a bake of more than a week is no bake
)

// simpson integrates a pace over one stretch of the heating.
func (o Oven) simpson(pace Pace, from, to float64) float64 {
	return (to - from) / 6 * (pace(o.Metal(from)) + 4*pace(o.Metal((from+to)/2)) + pace(o.Metal(to)))
}

// Equivalent is what some minutes in the oven are worth in minutes at the stated temperature. Nothing counts
// while the metal is colder than lowest, in °C.
func (o Oven) Equivalent(pace Pace, lowest, minutes float64) float64 {
	sum, from := 0.0, o.Reaches(lowest)
	for from < minutes {
		to := math.Min(from+ovenStep, minutes)
		sum += o.simpson(pace, from, to)
		from = to
	}
	return sum
}

// TimeFor is how many minutes in the oven are worth a number of minutes at the stated temperature. It is +Inf
// where that takes more than a week.
func (o Oven) TimeFor(pace Pace, lowest, worth float64) float64 {
	sum, from := 0.0, o.Reaches(lowest)
	for from < ovenLongest {
		next := sum + o.simpson(pace, from, from+ovenStep)
		if next >= worth {
			return from + o.within(pace, from, worth-sum)
		}
		sum, from = next, from+ovenStep
	}
	return math.Inf(1)
}

// within finds by halving how far into one step the rest is reached.
func (o Oven) within(pace Pace, from, rest float64) float64 {
	low, high := 0.0, ovenStep
	for range 50 {
		if mid := (low + high) / 2; o.simpson(pace, from, from+mid) < rest {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}
