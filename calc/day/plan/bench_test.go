package plan_test

import (
	"testing"

	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
)

// BenchmarkFirstPlan makes the first plan of 30 jobs.
func BenchmarkFirstPlan(b *testing.B) {
	d := checkplan.Day(30, 1)
	for b.Loop() {
		plan.New(d, 1)
	}
}

// BenchmarkImprove tries steps for 8 jobs; an operation is 1000 of them.
func BenchmarkImprove(b *testing.B) {
	s, _ := plan.New(checkplan.Day(8, 1), 1)
	for b.Loop() {
		s.Improve(1000)
	}
}
