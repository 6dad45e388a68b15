package shop

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// read reads a published instance: comments, a line of counts, then machine and minutes in turn, a line a job.
func read(t *testing.T, name string) [][]Task {
	text, err := os.ReadFile("../../../../testdata/instances/" + name + ".txt")
	require.NoError(t, err)
	var jobs [][]Task
	for _, line := range strings.Split(string(text), "\n") {
		f := strings.Fields(line)
		if len(f) < 4 || f[0] == "#" {
			continue
		}
		var tasks []Task
		for i := 0; i+1 < len(f); i += 2 {
			machine, err := strconv.Atoi(f[i])
			require.NoError(t, err)
			minutes, err := strconv.Atoi(f[i+1])
			require.NoError(t, err)
			tasks = append(tasks, Task{machine, int32(minutes)})
		}
		jobs = append(jobs, tasks)
	}
	return jobs
}

// Optima: Fisher and Thompson 1963 (ft06), Lawrence 1984 (la01 to la05), proven since; as the OR-Library's copies are
// quoted, from memory.
func TestPublishedOptima(t *testing.T) {
	for name, want := range map[string]int32{"ft06": 55, "la01": 666, "la02": 655, "la03": 597, "la04": 590, "la05": 593} {
		jobs := read(t, name)
		s := New(jobs, 1)
		s.Improve(200000)
		assert.Equal(t, want, s.Finish(), name)
		assert.True(t, s.Proven(), name)
		sound(t, jobs, s)
	}
}

// The optimum of ft10 is 930 (Carlier and Pinson 1989). It is found, not proven.
func TestTenByTen(t *testing.T) {
	jobs := read(t, "ft10")
	s := New(jobs, 1)
	for s.Finish() > 930 && s.Evaluations() < 1500000 {
		s.Improve(10000)
		assert.LessOrEqual(t, s.Bound(), int32(930))
	}
	assert.EqualValues(t, 930, s.Finish())
	sound(t, jobs, s)
}

// sound checks a plan by its starts alone.
func sound(t *testing.T, jobs [][]Task, s *Solver) {
	starts, end := s.Starts(), int32(0)
	for j, tasks := range jobs {
		for i, a := range tasks {
			start := starts[j][i]
			end = max(end, start+a.Minutes)
			assert.GreaterOrEqual(t, start, int32(0))
			if i > 0 {
				assert.GreaterOrEqual(t, start, starts[j][i-1]+tasks[i-1].Minutes)
			}
			for k := range jobs {
				for l, b := range jobs[k] {
					if a.Machine == b.Machine && (j != k || i != l) {
						assert.True(t, start >= starts[k][l]+b.Minutes || starts[k][l] >= start+a.Minutes)
					}
				}
			}
		}
	}
	assert.Equal(t, end, s.Finish())
}

// Small job shops: both orders of every pair tried.
func TestSmallShops(t *testing.T) {
	for seed := uint64(1); seed <= 300; seed++ {
		jobs := randomShop(2+int(seed%2), 2+int(seed%3), seed)
		s := New(jobs, seed)
		s.Improve(20000)
		require.True(t, s.Proven(), "seed %d", seed)
		assert.Equal(t, every(jobs), s.Finish(), "seed %d", seed)
		sound(t, jobs, s)
	}
}

func randomShop(jobs, machines int, seed uint64) [][]Task {
	r := random(seed)
	var all [][]Task
	for range jobs {
		var tasks []Task
		for m := range machines {
			tasks = append(tasks, Task{m, int32(1 + r.below(20))})
		}
		for i := range tasks {
			k := r.below(i + 1)
			tasks[i].Machine, tasks[k].Machine = tasks[k].Machine, tasks[i].Machine
		}
		all = append(all, tasks)
	}
	return all
}

// every tries all orders in which the jobs can take turns, and starts each task as soon as it can.
func every(jobs [][]Task) int32 {
	at, ready, free := make([]int, len(jobs)), make([]int32, len(jobs)), make([]int32, 16)
	best := int32(1) << 30
	var extend func(end int32)
	extend = func(end int32) {
		whole := true
		for j, tasks := range jobs {
			if at[j] == len(tasks) {
				continue
			}
			whole = false
			t := tasks[at[j]]
			oldReady, oldFree := ready[j], free[t.Machine]
			ready[j] = max(oldReady, oldFree) + t.Minutes
			free[t.Machine] = ready[j]
			at[j]++
			extend(max(end, ready[j]))
			at[j]--
			ready[j], free[t.Machine] = oldReady, oldFree
		}
		if whole {
			best = min(best, end)
		}
	}
	extend(0)
	return best
}
