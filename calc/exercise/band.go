package exercise

import (
	"math"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A Band is the numbers that one input may be given: those of a list, or every step from low on.
type Band struct {
	list      []string
	low, step float64
	n         int // how many numbers there are
	decimals  int
}

// most is how many numbers a band may have.
const most = 1e6

// readBand reads "60", "40..95 by 5", "40..95" or "40; 60; 80", in any unit.
func readBand(text string) (b Band, ok bool) {
	from, rest, ranged := strings.Cut(text, "..")
	if !ranged {
		b.list = split(text)
		for _, s := range b.list {
			if _, ok := calc.ReadNumber(s); !ok {
				return b, false
			}
		}
		b.n = len(b.list)
		return b, true
	}
	to, by, stepped := strings.Cut(rest, "by")
	low, ok1 := calc.ReadNumber(from)
	high, ok2 := calc.ReadNumber(to)
	step, ok3 := nice((high-low)/8), true
	if stepped {
		step, ok3 = calc.ReadNumber(by)
	}
	return steps(low, high, step), ok1 && ok2 && ok3 && (high == low || high > low && step > 0 && (high-low)/step < most)
}

// steps is the band from low to high; low alone where step is 0.
//
//go:noinline
func steps(low, high, step float64) Band {
	b := Band{low: low, step: step, n: 1, decimals: max(decimals(low), decimals(step))}
	if step > 0 && high > low {
		b.n += int(min((high-low)/step+1e-6, most))
	}
	return b
}

// Around is the band of round numbers about an input's example, in a unit: between its 1.6th part and 1.6 times it, or
// within 6 °C of a temperature, and within the input's limits and what can be believed of it; three times as far where it may
// be wide. It is the example alone where the form starts with it.
func Around(in *calc.Input, u unit.Unit, wide bool) Band {
	x, k := in.Example, 1.
	if wide {
		k = 3
	}
	low, high := x/(1+0.6*k), x*(1+0.6*k)
	if in.Unit.Quantity() == unit.Temperature {
		low, high = x-6*k, x+6*k
	}
	if in.Prefill {
		low, high = x, x
	}
	low, high = min(low, high), max(low, high)
	if in.Unit == unit.KilogramPerLitre && !in.Prefill {
		lightest, heaviest := believable(in.Key)
		low, high = max(low, lightest), min(high, heaviest)
	}
	low, high = unit.Convert(max(low, in.Limits.Min), in.Unit, u), unit.Convert(min(high, in.Limits.Max), in.Unit, u)
	step := nice((high - low) / 8)
	if in.Whole {
		step = max(step, 1)
	}
	if in.Prefill || step == 0 {
		return steps(low, low, 0)
	}
	first, last := math.Ceil(low/step-1e-6), math.Floor(high/step+1e-6)
	return steps(min(first, last)*step, last*step, step)
}

// believable is the range of a density in kg/L that a learner has ever seen on a sheet: a task with thinner heavier than
// water teaches not to look at the numbers. Common practice, no source.
func believable(key string) (low, high float64) {
	switch key {
	case "density_a", "part_density", "mix_density": // paint
		return 0.9, 1.6
	case "density_b": // hardener
		return 0.95, 1.15
	}
	return 0.78, 0.95 // thinners and solvents
}

// text is the k-th number.
//
//go:noinline
func (b *Band) text(k int) string {
	if b.list != nil {
		return b.list[k]
	}
	return strconv.FormatFloat(b.low+float64(k)*b.step, 'f', b.decimals, 64)
}

// String writes the band as readBand reads it.
func (b Band) String() string {
	switch {
	case b.list != nil:
		return strings.Join(b.list, "; ")
	case b.n == 1:
		return b.text(0)
	}
	return b.text(0) + ".." + b.text(b.n-1) + " by " + strconv.FormatFloat(b.step, 'f', b.decimals, 64)
}

// nice is the largest of 1, 2 and 5 times a power of ten, from a millionth on, that is not above x; 0 where there is none.
//
//go:noinline
func nice(x float64) float64 {
	step := 0.
	for e := -6; e < 9; e++ {
		for _, m := range "125" {
			if s := float64(m-'0') * math.Pow10(e); s <= x*(1+1e-9) {
				step = s
			}
		}
	}
	return step
}

// decimals is how many decimals it takes to write x, up to six.
//
//go:noinline
func decimals(x float64) int {
	_, after, _ := strings.Cut(strconv.FormatFloat(x, 'f', 6, 64), ".")
	return len(strings.TrimRight(after, "0"))
}

// split parts what stands between semicolons.
//
//go:noinline
func split(spec string) []string {
	list := strings.Split(spec, ";")
	for i := range list {
		list[i] = strings.TrimSpace(list[i])
	}
	return list
}
