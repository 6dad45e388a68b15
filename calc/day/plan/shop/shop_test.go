package shop

import (
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"
)

func read(t *testing.T, name string) [][]Task {
	data, err := os.ReadFile("../../../../testdata/instances/" + name + ".txt")
	if err != nil {
		t.Fatal(err)
	}
	var jobs [][]Task
	for _, line := range strings.Split(string(data), "\n") {
		f := strings.Fields(line)
		if len(f) < 4 || f[0] == "#" || strings.HasPrefix(f[0], "#") {
			continue
		}
		var tasks []Task
		for i := 0; i+1 < len(f); i += 2 {
			m, _ := strconv.Atoi(f[i])
			p, _ := strconv.Atoi(f[i+1])
			tasks = append(tasks, Task{m, int32(p)})
		}
		jobs = append(jobs, tasks)
	}
	return jobs
}

func TestX(t *testing.T) {
	for _, c := range []struct {
		n string
		w int32
	}{{"ft06", 55}, {"la01", 666}, {"la02", 655}, {"la03", 597}, {"la04", 590}, {"la05", 593}, {"ft10", 930}} {
		for seed := uint64(1); seed < 4; seed++ {
			t0 := time.Now()
			s := New(read(t, c.n), seed)
			first := s.Finish()
			found := 0
			for !s.Proven() && s.spent < 600000 && !(c.n == "ft10" && s.Finish() == 930) {
				if s.Improve(1000) {
					found = s.spent
				}
			}
			fmt.Println(c.n, c.w, first, s.Finish(), s.Bound(), s.Proven(), s.spent, found, time.Since(t0))
		}
	}
}
