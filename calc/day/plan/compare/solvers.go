//go:build unix

package main

import (
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"time"
)

// solver is a general-purpose exact solver.
type solver struct {
	name   string
	args   func(file, out string, seconds int) []string
	proven *regexp.Regexp // in its output or solution, where it has proven the best
	cost   *regexp.Regexp // the last match holds the cost
	bound  *regexp.Regexp // the last match holds the bound
}

// result is what a solver makes of a day.
type result struct {
	cost   int
	bound  float64
	proven bool
	found  bool
}

var known = []solver{
	{
		name: "glpsol",
		args: func(file, out string, seconds int) []string {
			return []string{"--lp", file, "--tmlim", strconv.Itoa(seconds), "--cuts", "-o", out}
		},
		proven: regexp.MustCompile(`Status: +INTEGER OPTIMAL`),
		cost:   regexp.MustCompile(`mip = +([-+0-9.e]+)`),
		bound:  regexp.MustCompile(`>= +([-+0-9.e]+)`),
	},
	{
		name: "cbc",
		args: func(file, out string, seconds int) []string {
			return []string{file, "-sec", strconv.Itoa(seconds), "-solve", "-solu", out}
		},
		proven: regexp.MustCompile(`Result - Optimal solution found`),
		cost:   regexp.MustCompile(`Objective value: +([-+0-9.e]+)`),
		bound:  regexp.MustCompile(`Lower bound: +([-+0-9.e]+)`),
	},
}

func (s solver) installed() bool {
	_, err := exec.LookPath(s.name)
	return err == nil
}

// solve runs the solver on a program, and tells the processor time it took.
func (s solver) solve(program string, seconds int) (result, time.Duration, error) {
	folder, err := os.MkdirTemp("", "compare")
	if err != nil {
		return result{}, 0, err
	}
	defer os.RemoveAll(folder)
	file, out := filepath.Join(folder, "day.lp"), filepath.Join(folder, "out.txt")
	if err := os.WriteFile(file, []byte(program), 0o644); err != nil {
		return result{}, 0, err
	}
	run := exec.Command(s.name, s.args(file, out, seconds)...)
	text, err := run.CombinedOutput()
	if err != nil {
		return result{}, 0, fmt.Errorf("%s: %w\n%s", s.name, err, text)
	}
	solution, _ := os.ReadFile(out)
	text = append(text, solution...)
	r := result{proven: s.proven.Match(text)}
	if cost, ok := last(s.cost, text); ok {
		r.cost, r.found = int(math.Round(cost)), true
	}
	if bound, ok := last(s.bound, text); ok {
		r.bound = bound
	}
	if r.proven {
		r.bound = float64(r.cost)
	}
	return r, run.ProcessState.UserTime() + run.ProcessState.SystemTime(), nil
}

func last(re *regexp.Regexp, text []byte) (float64, bool) {
	all := re.FindAllSubmatch(text, -1)
	if len(all) == 0 {
		return 0, false
	}
	x, err := strconv.ParseFloat(string(all[len(all)-1][1]), 64)
	return x, err == nil
}
