// Bars measures the plan solver: how soon it has a plan, how good it is after a second, how soon it has proven one.
// It runs natively and compiled to WASM:
//
//	go run ./calc/day/plan/bars
//	GOOS=js GOARCH=wasm go build -o /tmp/bars.wasm ./calc/day/plan/bars && node $(go env GOROOT)/lib/wasm/wasm_exec_node.js /tmp/bars.wasm
package main

import (
	"fmt"
	"os"
	"time"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// most is how long one case may take.
const most = 30 * time.Second

func main() {
	parts := map[string]func(){
		"first": firstPlans, "shops": shops, "proofs": func() { proofs(4, 12); proofs(5, 6) },
		"quality": func() { quality(8, 6) }, "long": func() { long(20); long(30) },
	}
	names := os.Args[1:]
	if len(names) == 0 {
		names = []string{"first", "shops", "proofs", "quality", "long"}
	}
	for _, name := range names {
		if part := parts[name]; part != nil {
			part()
		}
	}
}

func ms(d time.Duration) string { return fmt.Sprintf("%.1f ms", float64(d.Microseconds())/1000) }

// firstPlans times the first plan of 30 jobs.
func firstPlans() {
	var worst time.Duration
	for seed := uint64(1); seed <= 5; seed++ {
		d := checkplan.Day(30, seed)
		start := time.Now()
		plan.New(d, seed)
		worst = max(worst, time.Since(start))
	}
	fmt.Println("first plan of 30 jobs, slowest of 5 days:", ms(worst))
}

func shops() {
	for _, x := range instances {
		jobs, err := read(x.name)
		if err != nil {
			fmt.Println("bars: run it in the repository's root:", err)
			return
		}
		start := time.Now()
		s := plan.NewShop(jobs, 1)
		var found time.Duration
		for !s.Proven() && time.Since(start) < most && !(x.name == "ft10" && s.Best().Finish <= x.optimum) {
			if s.Improve(500) {
				found = time.Since(start)
			}
		}
		fmt.Printf("%s: %d (optimum %d), bound %d, proven %v; found after %s, all %s\n", x.name, s.Best().Finish, x.optimum, s.Bound().Finish, s.Proven(), ms(found), ms(time.Since(start)))
	}
}

// proofs times the proof that a plan is the best.
func proofs(jobs, days int) {
	var worst time.Duration
	proven := 0
	for seed := uint64(1); seed <= uint64(days); seed++ {
		s, _ := plan.New(checkplan.Day(jobs, seed), seed)
		start := time.Now()
		for !s.Proven() && time.Since(start) < most {
			s.Improve(5000)
		}
		if s.Proven() {
			proven++
		}
		worst = max(worst, time.Since(start))
	}
	fmt.Printf("%d jobs: %d of %d days proven, the slowest after %s\n", jobs, proven, days, ms(worst))
}

// quality compares the plan after a second with the best after several, from several seeds.
func quality(jobs, days int) {
	for day := uint64(1); day <= uint64(days); day++ {
		d := checkplan.Day(jobs, day)
		second, best, bound, proven := 0, 0, 0, false
		evaluations := 0
		for seed := uint64(1); seed <= 3; seed++ {
			s, _ := plan.New(d, seed)
			start, at := time.Now(), time.Second
			for time.Since(start) < 6*time.Second && !s.Proven() {
				s.Improve(1000)
				if cost := s.Best().Cost; at > 0 && time.Since(start) >= at {
					second, evaluations, at = max(second, cost), s.Evaluations(), 0
				}
			}
			if at > 0 {
				second = max(second, s.Best().Cost)
			}
			if best == 0 || s.Best().Cost < best {
				best = s.Best().Cost
			}
			bound, proven = max(bound, s.Bound().Cost), proven || s.Proven()
		}
		fmt.Printf("%d jobs, day %d: after 1 s %d (the worst of 3 seeds, %d evaluations), best known %d, so within %.2f %%; bound %d, proven %v\n",
			jobs, day, second, evaluations, best, 100*float64(second-best)/float64(best), bound, proven)
	}
}

// long shows one run over many jobs.
func long(jobs int) {
	d := checkplan.Day(jobs, 1)
	s, _ := plan.New(d, 1)
	start := time.Now()
	fmt.Printf("%d jobs: first %d", jobs, s.Best().Cost)
	for _, at := range []time.Duration{time.Second, 3 * time.Second, 10 * time.Second} {
		for time.Since(start) < at && !s.Proven() {
			s.Improve(1000)
		}
		best := s.Best()
		fmt.Printf("; after %v %d (late %d, finish %d; bound %d, %d)", at, best.Cost, best.Late, best.Finish, s.Bound().Cost, s.Bound().Finish)
	}
	fmt.Println()
}
