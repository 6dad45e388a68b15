//go:build js

// Command inpage lets a page drive the plan solver bit by bit, so that whoever drives the page can take its processor time
// in between. The page has two functions of it: solve(kind, what, seed) makes a solver with its first plan, and
// improve(evaluations) goes on. Both return the cost of the best plan, or -1, and whether it is proven.
package main

import (
	"strconv"
	"strings"
	"syscall/js"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

func main() {
	var s *plan.Solver
	state := func() any {
		if s == nil {
			return []any{-1, true}
		}
		return []any{s.Best().Cost, s.Proven()}
	}
	js.Global().Set("solve", js.FuncOf(func(_ js.Value, args []js.Value) any {
		s = solver(args[0].String(), args[1].String(), uint64(args[2].Int()))
		return state()
	}))
	js.Global().Set("improve", js.FuncOf(func(_ js.Value, args []js.Value) any {
		if s != nil {
			s.Improve(args[0].Int())
		}
		return state()
	}))
	select {}
}

// solver makes a solver of a kind of problem: of a day in a file or of a job shop by its text, of an invented day by its
// number of jobs and its seed. It is nil where there is no plan.
func solver(kind, what string, seed uint64) *plan.Solver {
	var d *plan.Day
	switch kind {
	case "shop":
		return plan.NewShop(tasks(what), seed)
	case "file":
		d, _ = checkplan.Parse(what)
	default:
		jobs, number, _ := strings.Cut(what, " ")
		n, _ := strconv.Atoi(jobs)
		of, _ := strconv.ParseUint(number, 10, 64)
		d = checkplan.Day(n, of)
		if kind == "odd" {
			d = checkplan.Odd(n, of)
		} else if kind == "plain" {
			d.Aim = plan.Aim{Late: 1, Finish: 1}
		}
	}
	s, _ := plan.New(d, seed)
	return s
}

// tasks reads a job shop: comments, a line of counts, then machine and minutes in turn, a line a job.
func tasks(text string) (all [][]plan.Task) {
	for _, line := range strings.Split(text, "\n") {
		f := strings.Fields(line)
		if len(f) < 4 || f[0] == "#" {
			continue
		}
		var job []plan.Task
		for i := 0; i+1 < len(f); i += 2 {
			machine, _ := strconv.Atoi(f[i])
			minutes, _ := strconv.Atoi(f[i+1])
			job = append(job, plan.Task{Machine: machine, Minutes: int32(minutes)})
		}
		all = append(all, job)
	}
	return all
}
