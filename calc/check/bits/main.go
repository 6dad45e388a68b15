// Bits asks whether the page works the same numbers out as the tests do: it puts random forms of every calculator through
// the core natively and compiled to WASM, and compares every number in the reports and in the working by its bits, and every text.
// It runs in the repository's root and needs node:
//
//	go run ./calc/check/bits [-forms 2000] [-seed 1] [-only wet-film]
//	GOARCH=386 go run ./calc/check/bits -exact
//
// The two may differ in last bits: on amd64 the standard library works out exp and log in assembly, in WASM in Go, and what is
// worked out from them can lie further apart. How far is printed, and bounded. No text may differ: what a person reads is the
// same. On 386 the library has no assembly for these, and there with -exact every bit is the same.
package main

import (
	"flag"
	"fmt"
	"os"
	"runtime"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/check/forms"
	"spraywright/calc/menu"
)

var (
	count = flag.Int("forms", 2000, "how many forms in all")
	seed  = flag.Uint64("seed", 1, "seed of the forms")
	exact = flag.Bool("exact", false, "let no bit differ")
	only  = flag.String("only", "", "one calculator alone, by its ID")
)

func main() {
	flag.Parse()
	work := compare
	if runtime.GOARCH == "wasm" {
		work = answer
	}
	if err := work(); err != nil {
		fmt.Fprintln(os.Stderr, "bits:", err)
		os.Exit(1)
	}
}

// An asked is one form of a calculator.
type asked struct {
	c    *calc.Calculator
	n    int
	form calc.Form
}

// all goes through the forms, the same number for each calculator, and the same ones wherever it runs.
func all(each func(asked) error) error {
	var calculators []*calc.Calculator
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			if *only == "" || c.ID == *only {
				calculators = append(calculators, c)
			}
		}
	}
	published := os.DirFS("testdata/published")
	for _, c := range calculators {
		rows, err := check.Read(published, c)
		if err != nil {
			return err
		}
		s := forms.New(c, *seed, forms.Known(c, rows))
		for n := range (*count + len(calculators) - 1) / len(calculators) {
			form := s.Next()
			if form["tried"] != "" {
				form["tried"] = "1000" // a plan looked for no longer than that
			}
			check.Complete(c, form)
			if err := each(asked{c, n, form}); err != nil {
				return err
			}
		}
	}
	return nil
}
