package main

import (
	"fmt"
	"os"
	"strconv"
	"strings"
	"time"

	"spraywright/calc/day/plan"
)

// instances are published job shops with their optima, which are known from the literature (Fisher and Thompson 1963;
// Lawrence 1984; ft10: Carlier and Pinson 1989).
var instances = []struct {
	name    string
	optimum int
	within  time.Duration
	found   bool // to be found, not proven
}{
	{"ft06", 55, 2 * time.Second, false},
	{"la01", 666, 2 * time.Second, false},
	{"la02", 655, 2 * time.Second, false},
	{"la03", 597, 2 * time.Second, false},
	{"la04", 590, 2 * time.Second, false},
	{"la05", 593, 2 * time.Second, false},
	{"ft10", 930, 30 * time.Second, true},
}

// shops times the proofs of the job shops' optima. Each run has a seed of its own.
func shops() error {
	for _, x := range instances {
		jobs, err := read(x.name)
		if err != nil {
			return err
		}
		met := true
		took := median(func(i int) time.Duration {
			start := processor()
			s := plan.NewShop(jobs, uint64(i+1))
			for !s.Proven() && processor()-start < x.within && !(x.found && s.Best().Finish == x.optimum) {
				s.Improve(500)
			}
			met = met && s.Best().Finish == x.optimum && (x.found || s.Proven())
			return processor() - start
		})
		what := "proven"
		if x.found {
			what = "found"
		}
		row(fmt.Sprintf("%s: %d %s within %v", x.name, x.optimum, what, x.within), ms(took), met && took < x.within)
	}
	return nil
}

// read reads an instance: comments, a line of counts, then machine and minutes in turn, a line a job.
func read(name string) ([][]plan.Task, error) {
	text, err := os.ReadFile("testdata/instances/" + name + ".txt")
	if err != nil {
		return nil, err
	}
	var all [][]plan.Task
	for _, line := range strings.Split(string(text), "\n") {
		f := strings.Fields(line)
		if len(f) < 4 || f[0] == "#" {
			continue
		}
		var tasks []plan.Task
		for i := 0; i+1 < len(f); i += 2 {
			machine, _ := strconv.Atoi(f[i])
			minutes, _ := strconv.Atoi(f[i+1])
			tasks = append(tasks, plan.Task{Machine: machine, Minutes: int32(minutes)})
		}
		all = append(all, tasks)
	}
	return all, nil
}
