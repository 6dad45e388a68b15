package main

import (
	"fmt"
	"os"
	"path/filepath"
	"time"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// firstPlans times the first plan of 30 jobs: the program's very first, and the slowest of ten days.
func firstPlans() error {
	cold := timed(func() { plan.New(checkplan.Day(30, 1), 1) })
	row("first plan of 30 jobs within 50 ms, before warming up", ms(cold)+" (one run)", cold < 50*time.Millisecond)
	for _, jobs := range []int{30, 100} {
		worst := time.Duration(0)
		for seed := uint64(1); seed <= 10; seed++ {
			d := checkplan.Day(jobs, seed)
			worst = max(worst, median(func(int) time.Duration {
				return timed(func() { plan.New(d, seed) })
			}))
		}
		within := map[int]time.Duration{30: 50 * time.Millisecond, 100: time.Second}[jobs]
		row(fmt.Sprintf("first plan of %d jobs within %v", jobs, within), ms(worst)+", slowest of 10 days", worst < within)
	}
	return nil
}

// proofs times the proofs for 4 jobs: of the days in files, of ordinary days, and of days with a little of everything.
func proofs() error {
	const within = 10 * time.Second
	files, err := filepath.Glob("testdata/days/4-*.csv")
	if err != nil || len(files) == 0 {
		return fmt.Errorf("no days in testdata/days")
	}
	var kept []*plan.Day
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		d, err := checkplan.Parse(string(text))
		if err != nil {
			return err
		}
		kept = append(kept, d)
	}
	proofsOf("4 jobs, days in testdata/days", kept, within)
	proofsOf("4 jobs, 100 ordinary days", days(checkplan.Day, 4, 100), within)
	proofsOf("4 jobs, 300 days of every make", days(checkplan.Odd, 4, 300), within)
	proofsOf("5 jobs, 10 ordinary days", days(checkplan.Day, 5, 10), within)
	return nil
}

func days(random func(int, uint64) *plan.Day, jobs, n int) []*plan.Day {
	var all []*plan.Day
	for seed := uint64(0); seed < uint64(n); seed++ {
		all = append(all, random(jobs, seed))
	}
	return all
}

// proofsOf prints the slowest proof. Days that take more than a second are timed three times.
func proofsOf(bar string, all []*plan.Day, within time.Duration) {
	proven, over, worst := 0, 0, time.Duration(0)
	for _, d := range all {
		s := (*plan.Solver)(nil)
		prove := func(int) time.Duration {
			start := processor()
			s, _ = plan.New(d, 1)
			for s != nil && !s.Proven() && processor()-start < within {
				s.Improve(5000)
			}
			return processor() - start
		}
		took := prove(0)
		if took > time.Second && took < within {
			took = median(prove)
		}
		if took > time.Second {
			over++
		}
		if s == nil || s.Proven() {
			proven++
		}
		worst = max(worst, took)
	}
	row(bar+" proven within "+within.String(),
		fmt.Sprintf("%d of %d, %d over 1 s, slowest %s", proven, len(all), over, ms(worst)), proven == len(all) && worst < within)
}

// long shows one run over many jobs.
func long() error {
	for _, jobs := range []int{20, 30} {
		s, _ := plan.New(checkplan.Day(jobs, 1), 1)
		start := processor()
		fmt.Printf("%d jobs: first %d", jobs, s.Best().Cost)
		for _, at := range []time.Duration{time.Second, 3 * time.Second, 10 * time.Second} {
			for processor()-start < at && !s.Proven() {
				s.Improve(1000)
			}
			best := s.Best()
			fmt.Printf("; after %v %d (late %d, finish %d; bound %d, %d)", at, best.Cost, best.Late, best.Finish, s.Bound().Cost, s.Bound().Finish)
		}
		fmt.Println()
	}
	return nil
}
