package menu_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
)

// A timer counts down what the answer says: a known kind, marks in order, and a data sheet where it says.
func TestTimersCountWhatTheAnswerSays(t *testing.T) {
	kinds := []calc.Timing{calc.FlashOff, calc.PotLife, calc.Recoat, calc.Bake}
	seen := map[string]bool{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			for _, f := range figures(r.report) {
				if f.Timer == nil {
					continue
				}
				seen[c.ID+" "+string(f.Timer.Kind)] = true
				if !slices.Contains(kinds, f.Timer.Kind) || !inOrder(f.Timer.Marks) || f.Timer.Ago < 0 {
					t.Fatalf("%s starts %+v\non %v", f.Key, f.Timer, r)
				}
				if row := f.Timer.Row; row != "" && (strings.Count(row, ".") != 2 || c.Input(strings.Split(row, ".")[0]) == nil) {
					t.Fatalf("%s has its data sheet in %q\non %v", f.Key, row, r)
				}
			}
		}
	})
	for _, want := range []string{"pot-life pot", "cup-age pot", "part-used-cup pot", "flash-time flash", "recoat-window recoat", "bake-equivalent bake",
		"settings flash", "settings pot", "job flash", "job pot", "job recoat", "time-left flash", "time-left pot", "time-left recoat", "time-left bake",
		"day flash", "day pot", "day recoat", "day bake"} {
		assert.True(t, seen[want], "no answer starts "+want)
	}
}

// inOrder reports whether there is a mark, none twice, and the soonest no later than the latest.
func inOrder(marks []calc.Mark) bool {
	if len(marks) == 2 {
		return marks[0].Is == "soonest" && marks[1].Is == "latest" && marks[0].Minutes <= marks[1].Minutes
	}
	return len(marks) == 1 && (marks[0].Is == "soonest" || marks[0].Is == "latest")
}
