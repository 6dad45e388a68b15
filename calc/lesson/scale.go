package lesson

import (
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A scale is the numbers that a slider goes through: round ones, and the one that the form has.
type scale struct {
	typed []string // as a form takes them
	shown []string // as a person reads them, with the unit
	at    int      // the form's own
}

// marks is about how many numbers a scale has: between this and two and a half times as many.
const marks = 24

// newScale makes one from
//
//	text=60  unit=um        the number in the form, and its unit
//	own=um  min=1  max=500  the unit and the limits of the input
//	whole=1                 whole numbers alone
//	wide=1                  from limit to limit; otherwise from half to twice the number, or 15 °C either way
//
// ok is false where there is nothing to slide.
func newScale(l calc.Language, form calc.Form) (s scale, ok bool) {
	x, ok := calc.ReadNumber(form["text"])
	u, ok1 := unit.ByID(form["unit"])
	own, ok2 := unit.ByID(form["own"])
	low, err1 := strconv.ParseFloat(form["min"], 64)
	high, err2 := strconv.ParseFloat(form["max"], 64)
	if !ok || !ok1 || !ok2 || err1 != nil || err2 != nil || u.Quantity() != own.Quantity() || !(low < high) {
		return s, false
	}
	if form["wide"] == "" {
		low, high = near(unit.Convert(x, u, own), own, low, high)
	}
	low, high = unit.Convert(low, own, u), unit.Convert(high, own, u)
	low, high = min(low, high), max(low, high)
	step := round((high - low) / marks)
	if form["whole"] != "" {
		step = max(1, math.Round(step))
	}
	d := max(0, -int(math.Floor(math.Log10(step)+1e-9)))
	s.at = -1
	for k := math.Ceil(low/step - 1e-9); k <= math.Floor(high/step+1e-9); k++ {
		y := k*step + 0 // never minus zero
		if s.at < 0 && y >= x-1e-9*math.Abs(x) {
			s.at = len(s.typed)
			s.add(l, form["text"], x, decimals(form["text"], d), u)
			if math.Abs(y-x) <= 1e-9*math.Abs(x) {
				continue
			}
		}
		s.add(l, strconv.FormatFloat(y, 'f', d, 64), y, d, u)
	}
	if s.at < 0 {
		s.at = len(s.typed)
		s.add(l, form["text"], x, decimals(form["text"], d), u)
	}
	return s, len(s.typed) > 2
}

func (s *scale) add(l calc.Language, typed string, x float64, d int, u unit.Unit) {
	s.typed, s.shown = append(s.typed, typed), append(s.shown, l.Quantity(x, d, u))
}

// decimals is how many decimals a text has, at least d and at most 6.
func decimals(text string, d int) int {
	for i := range len(text) {
		if text[i] == '.' || text[i] == ',' {
			return min(6, max(d, len(text)-i-1))
		}
	}
	return d
}

// near is what lies about x, and within the limits.
func near(x float64, own unit.Unit, low, high float64) (float64, float64) {
	a, b := x/2, 2*x
	if own.Quantity() == unit.Temperature {
		far := unit.Convert(15, unit.DegC, own) - unit.Convert(0, unit.DegC, own)
		a, b = x-far, x+far
	}
	if x == 0 {
		a, b = low/10, high/10
	}
	return max(low, min(a, b)), min(high, max(a, b))
}

// round is the largest of 1, 2 and 5 times a power of ten that is not above x.
func round(x float64) float64 {
	power := math.Pow10(int(math.Floor(math.Log10(x) + 1e-9)))
	switch f := x/power + 1e-9; {
	case f >= 5:
		return 5 * power
	case f >= 2:
		return 2 * power
	}
	return power
}

func (s *scale) write(w calc.JSON) {
	w.List("steps", len(s.typed), func(i int) {
		w.Text("typed", s.typed[i])
		w.Text("shown", s.shown[i])
	})
	w.Ints("at", []int{s.at})
}
