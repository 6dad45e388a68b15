//go:build unix

// Compare sets the plan solver beside general-purpose exact solvers on the days in testdata/days. It writes each day as a
// mixed-integer program, lets glpsol and cbc have a minute each, and prints times and gaps. Run it in the repository's
// root:
//
//	go run ./calc/day/plan/compare [-seconds 60] [-write]
//
// A solver that is not installed is passed over with a line that says so (Debian: glpk-utils, coinor-cbc). Times are
// processor time. With -write it makes the days anew.
//
// For these days the program says the same as our model: one painter, one booth that is also baked in, cups that are not
// shared, no breaks, an aim of lateness and the end alone. It leaves out what they do not have, and counts a rinse
// between every two coats where our model counts it between neighbours; that comes to the same as long as no rinse takes
// longer than two others in its place. Each solver's plan is set against ours: where both are proven their costs must be
// equal, and no bound may pass the other's plan.
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"syscall"
	"time"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

const folder = "testdata/days"

func main() {
	seconds := flag.Int("seconds", 60, "how long each solver may take for a day")
	write := flag.Bool("write", false, "make the days anew")
	flag.Parse()
	if err := run(*seconds, *write); err != nil {
		fmt.Fprintln(os.Stderr, "compare:", err)
		os.Exit(1)
	}
}

func run(seconds int, write bool) error {
	if write {
		return makeDays()
	}
	files, err := filepath.Glob(folder + "/[45]-*.csv")
	if err != nil || len(files) == 0 {
		return fmt.Errorf("no days in %s: run it in the repository's root", folder)
	}
	var solvers []solver
	for _, s := range known {
		if s.installed() {
			solvers = append(solvers, s)
		} else {
			fmt.Printf("%s is not installed; skipped\n", s.name)
		}
	}
	fmt.Println("the same model for all: one painter, one booth and bakes in it, no breaks, no shared cups; lateness and end")
	fmt.Printf("%-10s %-12s %10s  %s\n", "day", "solver", "processor", "cost")
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		d, err := checkplan.Parse(string(text))
		if err != nil {
			return fmt.Errorf("%s: %w", file, err)
		}
		if err := compare(filepath.Base(file), d, solvers, seconds); err != nil {
			return err
		}
	}
	return nil
}

// compare prints what each solver makes of a day.
func compare(name string, d *plan.Day, solvers []solver, seconds int) error {
	start := processor()
	s, faults := plan.New(d, 1)
	if s == nil {
		return fmt.Errorf("%s: %v", name, faults)
	}
	for !s.Proven() && processor()-start < time.Duration(seconds)*time.Second {
		s.Improve(5000)
	}
	print(name, "spraywright", result{s.Best().Cost, float64(s.Bound().Cost), s.Proven(), true}, processor()-start)
	for _, x := range solvers {
		r, took, err := x.solve(program(d), seconds)
		if err != nil {
			return err
		}
		print(name, x.name, r, took)
		if r.found && r.cost < s.Bound().Cost || r.bound > float64(s.Best().Cost)+0.01 {
			return fmt.Errorf("%s: %s says %d, bound %.1f; spraywright %d, bound %d", name, x.name, r.cost, r.bound, s.Best().Cost, s.Bound().Cost)
		}
		if r.proven && s.Proven() && r.cost != s.Best().Cost {
			return fmt.Errorf("%s: %s proves %d, spraywright %d", name, x.name, r.cost, s.Best().Cost)
		}
	}
	return nil
}

// processor is the time that the program has had of processors so far.
func processor() time.Duration {
	var used syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &used) != nil {
		return 0
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}

func print(day, solver string, r result, took time.Duration) {
	if !r.found {
		fmt.Printf("%-10s %-12s %8.2f s  no plan; bound %.0f\n", day, solver, took.Seconds(), r.bound)
		return
	}
	gap := 100 * (float64(r.cost) - r.bound) / float64(r.cost)
	if r.proven {
		gap = 0
	}
	fmt.Printf("%-10s %-12s %8.2f s  %d  gap %.1f %%  proven %v\n", day, solver, took.Seconds(), r.cost, gap, r.proven)
}

// makeDays writes days of 4 and 5 jobs. Their aim is what the program below can say: lateness and the end.
func makeDays() error {
	for _, x := range []struct {
		jobs int
		seed uint64
	}{{4, 1}, {4, 2}, {4, 3}, {4, 4}, {5, 1}, {5, 2}} {
		d := checkplan.Day(x.jobs, x.seed)
		d.Aim = plan.Aim{Late: 1, Finish: 1}
		text := fmt.Sprintf("# An invented day of %d jobs; its records are explained in calc/day/plan/checkplan.\n", x.jobs) +
			checkplan.Format(d, checkplan.Rinses, checkplan.Shades)
		if err := os.WriteFile(fmt.Sprintf("%s/%d-%d.csv", folder, x.jobs, x.seed), []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}
