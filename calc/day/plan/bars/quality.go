package main

import (
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
	"time"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

const bestFile = "testdata/days/best.csv"

// eight is a day of 8 jobs with the best cost known for it.
type eight struct {
	make        string // ordinary, plain (an ordinary day judged by lateness and the end alone) or odd
	seed        uint64
	cost, bound int // the best that is known; cost is -1 for none
	runs        int // how many runs have looked for them
}

func (e *eight) day() *plan.Day {
	switch e.make {
	case "odd":
		return checkplan.Odd(8, e.seed)
	case "plain":
		d := checkplan.Day(8, e.seed)
		d.Aim = plan.Aim{Late: 1, Finish: 1}
		return d
	}
	return checkplan.Day(8, e.seed)
}

// eights reads the file of the best costs known.
func eights() ([]eight, error) {
	text, err := os.ReadFile(bestFile)
	if err != nil {
		return nil, err
	}
	var all []eight
	for _, line := range strings.Split(string(text), "\n") {
		f := strings.Split(line, ",")
		if len(f) != 5 || f[0][0] == '#' {
			continue
		}
		seed, _ := strconv.Atoi(f[1])
		cost, _ := strconv.Atoi(f[2])
		bound, _ := strconv.Atoi(f[3])
		runs, _ := strconv.Atoi(f[4])
		all = append(all, eight{f[0], uint64(seed), cost, bound, runs})
	}
	return all, nil
}

// quality compares the plan after a second with the best that is known: the median of three seeds.
func quality() error {
	all, err := eights()
	if err != nil {
		return err
	}
	for _, e := range all {
		d := e.day()
		gaps, evaluations := make([]float64, 0, 3), 0
		for seed := uint64(1); seed <= 3; seed++ {
			start := processor()
			s, _ := plan.New(d, seed)
			for processor()-start < time.Second && !s.Proven() {
				s.Improve(500)
			}
			gaps = append(gaps, 100*float64(s.Best().Cost-e.cost)/float64(e.cost))
			evaluations = max(evaluations, s.Evaluations())
		}
		slices.Sort(gaps)
		row(fmt.Sprintf("8 jobs, %s day %d: 2 %% from %d after 1 s", e.make, e.seed, e.cost),
			fmt.Sprintf("%.2f %% (worst %.2f %%), %d evaluations", gaps[1], gaps[2], evaluations), gaps[1] <= 2)
	}
	return nil
}

// head explains the file.
const head = `# The best costs known of invented days of 8 jobs, and the highest bounds proven: the make and seed of a day, cost,
# bound, runs. Each time "go run ./calc/day/plan/bars best" gives every day one more run of 8 s of processor time, with
# seeds from 101 on, which the bars do not use. Where cost and bound are equal the best is proven.
`

// best looks for better plans of the days in the file that are not proven, and writes it anew.
func best() error {
	all, err := eights()
	if err != nil {
		return err
	}
	text := head
	for _, e := range all {
		if e.cost < 0 || e.bound < e.cost {
			start := processor()
			s, _ := plan.New(e.day(), uint64(101+e.runs))
			for processor()-start < 8*time.Second && !s.Proven() {
				s.Improve(5000)
			}
			if cost := s.Best().Cost; e.cost < 0 || cost < e.cost {
				e.cost = cost
			}
			e.bound = max(e.bound, s.Bound().Cost)
			e.runs++
		}
		line := fmt.Sprintf("%s,%d,%d,%d,%d\n", e.make, e.seed, e.cost, e.bound, e.runs)
		fmt.Print(line)
		text += line
	}
	return os.WriteFile(bestFile, []byte(text), 0o644)
}
