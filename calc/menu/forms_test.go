package menu_test

import (
	"flag"
	"fmt"
	"os"
	"runtime/debug"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/check/forms"
	"spraywright/calc/menu"
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
		s := forms.New(c, *seed, forms.Known(c, rs))
		n := randomForms
		if testing.Short() {
			n /= 4
		}
		for i := range n {
			tried = append(tried, run{from: fmt.Sprintf("random form %d of seed %d", i, *seed), random: true, form: s.Next()})
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
