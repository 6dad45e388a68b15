package menu_test

import (
	"flag"
	"fmt"
	"hash/fnv"
	"maps"
	"math"
	"math/rand/v2"
	"os"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

var published = os.DirFS("../../testdata/published")

// seed makes the random forms. It is fixed so that a failure can be seen again; -seed tries others.
var seed = flag.Uint64("seed", 1, "seed of the random forms")

// randomForms is how many random forms each calculator is tried with.
const randomForms = 200

// each runs a test for every calculator in the menu.
func each(t *testing.T, test func(t *testing.T, c *calc.Calculator)) {
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			t.Run(c.ID, func(t *testing.T) { test(t, c) })
		}
	}
}

// rows are the published values for a calculator; a file that cannot be read fails the test that asked.
func rows(t *testing.T, c *calc.Calculator) []check.Row {
	t.Helper()
	rs, err := check.Read(published, c)
	if err != nil {
		t.Fatal(err)
	}
	return rs
}

// A run is one form put through a calculator.
type run struct {
	from   string // where the form comes from, for error messages
	random bool
	form   calc.Form
	report calc.Report
	steps  []calc.Step
}

func (r run) String() string { return r.from + "\n  " + r.form.String() }

var done = map[string][]run{}

// runs puts the example, every published row and random forms through a calculator, once for all tests.
func runs(t *testing.T, c *calc.Calculator) []run {
	t.Helper()
	if done[c.ID] == nil {
		tried := []run{{from: "the example", form: c.ExampleForm()}}
		rs, _ := check.Read(published, c) // the test of published values fails where this does
		for _, row := range rs {
			tried = append(tried, run{from: fmt.Sprintf("%s.csv, line %d", c.ID, row.Line), form: row.Form})
		}
		s := newSampler(c, tried)
		for i := range randomForms {
			tried = append(tried, run{from: fmt.Sprintf("random form %d of seed %d", i, *seed), random: true, form: s.next()})
		}
		for i := range tried {
			tried[i].try(t, c)
		}
		done[c.ID] = tried
	}
	return done[c.ID]
}

func (r *run) try(t *testing.T, c *calc.Calculator) {
	t.Helper()
	defer func() {
		if p := recover(); p != nil {
			t.Errorf("panics on %v: %v\n%s", r, p, debug.Stack())
		}
	}()
	if r.random {
		check.Complete(c, r.form) // what the choices made ask for
	}
	r.report, r.steps = c.Steps(r.form)
}

// A sampler makes random forms within a calculator's limits: half of them at random throughout, half by changing
// some answers of a form that is known to make sense.
type sampler struct {
	*rand.Rand
	c     *calc.Calculator
	known []run
}

func newSampler(c *calc.Calculator, known []run) *sampler {
	h := fnv.New64()
	h.Write([]byte(c.ID))
	return &sampler{rand.New(rand.NewPCG(*seed, h.Sum64())), c, slices.Clone(known)}
}

func (s *sampler) next() calc.Form {
	form := calc.Form{}
	s.fill(form, "", s.c.Inputs)
	if s.IntN(2) == 0 {
		base := maps.Clone(s.known[s.IntN(len(s.known))].form)
		for _, key := range slices.Sorted(maps.Keys(form)) {
			if s.IntN(4) == 0 && !strings.HasSuffix(key, ".unit") {
				base[key], base[key+".unit"] = form[key], form[key+".unit"]
			}
		}
		form = base
	}
	return form
}

func (s *sampler) fill(form calc.Form, prefix string, ins []calc.Input) {
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
			form[key], form[key+".unit"] = s.number(in)
		}
	}
}

// words are the example, or what a published row or the known forms say in that place.
func (s *sampler) words(in *calc.Input, key string) string {
	if said := s.known[s.IntN(len(s.known))].form[key]; said != "" {
		return said
	}
	return in.Words
}

// number is a number within the limits: near the example, anywhere, or at an end; sometimes in another unit.
func (s *sampler) number(in *calc.Input) (text, unitID string) {
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
