package main

import (
	"bufio"
	"fmt"
	"io"
	"maps"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// bound is how far apart a number may lie natively and as WASM, as a share of the larger. Below least, which is a few times
// the last bit of a temperature in kelvin, a difference is the rounding of what was taken from each other.
const (
	bound = 1e-12
	least = 3e-13
)

// A tally counts what was found.
type tally struct {
	forms, numbers, differ, texts, wordedApart int
	ulps                                       uint64
	share                                      float64
	widest                                     map[string]difference // of each calculator
}

// A difference is one number that came out differently.
type difference struct {
	where       string
	here, there float64
	ulps        uint64
	share       float64
}

// compare runs the same program as WASM beside this one.
func compare() error {
	dir, err := os.MkdirTemp("", "bits")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	child, err := start(dir)
	if err != nil {
		return err
	}
	pipe, err := child.StdoutPipe()
	if err != nil {
		return err
	}
	if err := child.Start(); err != nil {
		return err
	}
	lines := bufio.NewReaderSize(pipe, 1<<20)
	t := &tally{widest: map[string]difference{}}
	err = all(func(q asked) error {
		line, err := lines.ReadString('\n')
		if err != nil {
			return fmt.Errorf("the core in node stops before %s %d: %w", q.c.ID, q.n, err)
		}
		return t.add(q, run(q), strings.TrimSuffix(line, "\n"))
	})
	if err != nil {
		child.Process.Kill()
		return err
	}
	if rest, _ := io.ReadAll(lines); len(rest) > 0 {
		return fmt.Errorf("the core in node answers more: %.100q", rest)
	}
	if err := child.Wait(); err != nil {
		return err
	}
	return t.tell()
}

// start compiles this program to WASM and gets node ready to run it.
func start(dir string) (*exec.Cmd, error) {
	file := filepath.Join(dir, "bits.wasm")
	build := exec.Command("go", "build", "-o", file, "./calc/check/bits")
	build.Env, build.Stderr = append(os.Environ(), "GOOS=js", "GOARCH=wasm"), os.Stderr
	if err := build.Run(); err != nil {
		return nil, err
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return nil, err
	}
	runner := filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec_node.js")
	child := exec.Command("node", "--stack-size=8192", runner, file, fmt.Sprint("-forms=", *count), fmt.Sprint("-seed=", *seed), "-only="+*only)
	child.Env, child.Stderr = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + os.Getenv("HOME")}, os.Stderr // a program has 8 kB for it
	return child, nil
}

// add compares one answer with the line that the other wrote.
func (t *tally) add(q asked, a *answered, line string) error {
	head, marks, xs, err := read(line)
	if err != nil {
		return err
	}
	at := q.c.ID + "?" + q.form.String()
	if want := fmt.Sprintf("%s %d %s", q.c.ID, q.n, mark(q.form.String())); head != want {
		return fmt.Errorf("not the same form: %s and %s", head, want)
	}
	if len(xs) != len(a.xs) || len(marks) != len(a.texts) {
		return fmt.Errorf("%s: %d numbers and %d texts here, %d and %d as WASM", at, len(a.xs), len(a.texts), len(xs), len(marks))
	}
	t.forms++
	t.numbers += len(xs)
	t.texts += len(marks)
	for i, x := range a.xs {
		if math.Float64bits(x) == math.Float64bits(xs[i]) {
			continue
		}
		t.differ++
		d := difference{a.names[i] + " of " + at, x, xs[i], ulps(x, xs[i]), apart(x, xs[i])}
		t.ulps = max(t.ulps, d.ulps)
		if w := t.widest[q.c.ID]; d.share > w.share || d.share == w.share && d.ulps > w.ulps {
			t.widest[q.c.ID] = d
		}
	}
	for i, text := range a.texts {
		if mark(text) != marks[i] {
			if t.wordedApart++; t.wordedApart <= 10 {
				fmt.Printf("worded otherwise as WASM: %s\n  %s\n", text, at)
			}
		}
	}
	return nil
}

// ulps counts the numbers between two.
func ulps(x, y float64) uint64 {
	order := func(x float64) int64 {
		n := int64(math.Float64bits(x))
		if n < 0 {
			return math.MinInt64 - n
		}
		return n
	}
	a, b := order(x), order(y)
	return uint64(max(a, b)) - uint64(min(a, b))
}

// apart is how far two numbers differ as a share of the larger; by how much they differ more than least.
func apart(x, y float64) float64 {
	return max(0, math.Abs(x-y)-least) / max(math.Abs(x), math.Abs(y))
}

// tell prints what was found; more than the bound is an error.
func (t *tally) tell() error {
	fmt.Printf("%d forms: %d numbers, %d differ, by at most %d ulp; %d texts, %d differ\n", t.forms, t.numbers, t.differ, t.ulps, t.texts, t.wordedApart)
	over := 0
	ids := slices.Sorted(maps.Keys(t.widest))
	slices.SortStableFunc(ids, func(a, b string) int { return int(math.Copysign(1, t.widest[b].share-t.widest[a].share)) })
	for i, id := range ids {
		d := t.widest[id]
		if d.share > bound {
			over++
		}
		if i < 10 || d.share > bound {
			fmt.Printf("%-16s %.2g (%d ulp): %v and %v, %.300s\n", id, d.share, d.ulps, d.here, d.there, d.where)
		}
	}
	if t.wordedApart > 0 {
		return fmt.Errorf("%d texts differ", t.wordedApart)
	}
	if *exact && t.differ > 0 {
		return fmt.Errorf("%d numbers differ", t.differ)
	}
	if over > 0 {
		return fmt.Errorf("%d calculators differ by more than %v", over, bound)
	}
	return nil
}
