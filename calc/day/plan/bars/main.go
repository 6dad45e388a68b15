// Bars measures the plan solver against what is asked of it, and prints a table: how soon it has a plan, how good the
// plan is after a second, how soon it has proven one. It runs in the repository's root, natively and compiled to WASM:
//
//	go run ./calc/day/plan/bars [part ...]
//	GOOS=js GOARCH=wasm go run -exec "$(go env GOROOT)/lib/wasm/go_js_wasm_exec" ./calc/day/plan/bars [part ...]
//
// The parts are first, shops, proofs, quality and long; without names all but long are measured. The part best looks
// longer for better plans of 8 jobs and enters them into testdata/days/best.csv. Times are processor time, of all of the
// program's threads, so that other work on the machine does not count.
package main

import (
	"fmt"
	"os"
	"slices"
	"time"
)

func main() {
	parts := map[string]func() error{
		"first": firstPlans, "shops": shops, "proofs": proofs, "quality": quality, "long": long, "best": best,
	}
	names := os.Args[1:]
	if len(names) == 0 {
		names = []string{"first", "shops", "proofs", "quality"}
	}
	fmt.Printf("%-58s %-52s %s\n", "bar", "measured, median of 3", "met")
	for _, name := range names {
		part := parts[name]
		if part == nil {
			fmt.Fprintln(os.Stderr, "bars: no part", name)
			os.Exit(1)
		}
		if err := part(); err != nil {
			fmt.Fprintln(os.Stderr, "bars: run it in the repository's root:", err)
			os.Exit(1)
		}
	}
}

// row prints a line of the table.
func row(bar, measured string, met bool) {
	word := "no"
	if met {
		word = "yes"
	}
	fmt.Printf("%-58s %-52s %s\n", bar, measured, word)
}

// median of three runs.
func median(run func(i int) time.Duration) time.Duration {
	all := []time.Duration{run(0), run(1), run(2)}
	slices.Sort(all)
	return all[1]
}

func ms(d time.Duration) string { return fmt.Sprintf("%.1f ms", float64(d.Microseconds())/1000) }

// timed is the processor time of a function.
func timed(f func()) time.Duration {
	start := processor()
	f()
	return processor() - start
}
