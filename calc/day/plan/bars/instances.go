package main

import (
	"os"
	"strconv"
	"strings"

	"spraywright/calc/day/plan"
)

// instances are published job shops with their optima, which are known from the literature (Fisher and Thompson 1963;
// Lawrence 1984; ft10: Carlier and Pinson 1989).
var instances = []struct {
	name    string
	optimum int
}{{"ft06", 55}, {"la01", 666}, {"la02", 655}, {"la03", 597}, {"la04", 590}, {"la05", 593}, {"ft10", 930}}

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
