// Package forms makes random forms for calculators. It is for tests alone.
package forms

import (
	"hash/fnv"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/unit"
)

// A Sampler makes random forms within a calculator's limits: half of them at random throughout, half by changing
// some answers of a form that is known to make sense. The same seed makes the same forms on every machine.
type Sampler struct {
	*rand.Rand
	c     *calc.Calculator
	known []calc.Form
}

// New makes a sampler from forms that are known to make sense; there has to be one.
func New(c *calc.Calculator, seed uint64, known []calc.Form) *Sampler {
	h := fnv.New64()
	h.Write([]byte(c.ID))
	return &Sampler{rand.New(rand.NewPCG(seed, h.Sum64())), c, known}
}

// Known are the forms of a calculator that make sense for certain: its example, and the published rows.
func Known(c *calc.Calculator, rows []check.Row) []calc.Form {
	known := []calc.Form{c.ExampleForm()}
	for _, row := range rows {
		known = append(known, row.Form)
	}
	return known
}

// Next is another form. What the choices made in it ask for may be blank in it; [check.Complete] fills that in.
func (s *Sampler) Next() calc.Form {
	form := calc.Form{}
	s.fill(form, "", s.c.Inputs)
	if s.IntN(2) == 0 {
		base := maps.Clone(s.known[s.IntN(len(s.known))])
		for _, key := range slices.Sorted(maps.Keys(form)) {
			if s.IntN(4) == 0 && !strings.HasSuffix(key, ".unit") {
				base[key], base[key+".unit"] = form[key], form[key+".unit"]
			}
		}
		form = base
	}
	return form
}

func (s *Sampler) fill(form calc.Form, prefix string, ins []calc.Input) {
	for i := range ins {
		in, key := &ins[i], prefix+ins[i].Key
		switch {
		case in.Rows != nil:
			for n := range min(1+s.IntN(3), in.Most) {
				s.fill(form, key+"."+strconv.Itoa(n+1)+".", in.Rows)
			}
		case (in.Optional || in.Prefill) && s.IntN(3) == 0:
		case in.Choices != nil:
			form[key] = in.Choices[s.IntN(len(in.Choices))].Key
		case in.Unit == 0:
			form[key] = s.words(in, key)
		default:
			form[key], form[key+".unit"] = s.Number(in)
		}
	}
}

// words are the example, or what a published row or the known forms say in that place.
func (s *Sampler) words(in *calc.Input, key string) string {
	if said := s.known[s.IntN(len(s.known))][key]; said != "" {
		return said
	}
	return in.Words
}

// Number is a number within the limits: near the example, anywhere, or at an end; sometimes in another unit.
func (s *Sampler) Number(in *calc.Input) (text, unitID string) {
	lo, hi := in.Limits.Min, in.Limits.Max
	x := lo + s.Float64()*(hi-lo)
	switch s.IntN(10) {
	case 0:
		x = lo
	case 1:
		x = hi
	case 2, 3, 4, 5:
		x = in.Example + (s.Float64()-0.5)*max(math.Abs(in.Example), 0.02*(hi-lo))
	}
	if in.Whole {
		x = math.Round(x)
	}
	u := in.Unit
	if us := in.Units(); !in.Whole && s.IntN(4) == 0 {
		u = us[s.IntN(len(us))]
	}
	return strconv.FormatFloat(unit.Convert(min(max(x, lo), hi), in.Unit, u), 'f', -1, 64), u.ID()
}
