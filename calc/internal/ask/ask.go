// Package ask helps the topics' tests to put numbers into a form and to take one figure out of the report. It is for
// tests alone.
package ask

import (
	"strconv"
	"testing"

	"spraywright/calc"
)

// Show writes a number as a person would type it, with every digit that it has.
func Show(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Value is the figure with a key, in the unit it is shown in. A report without it ends the test and says what the problems are.
func Value(t testing.TB, r calc.Report, key string) float64 {
	t.Helper()
	for _, f := range r.Figures {
		if f.Key == key {
			return f.Value
		}
	}
	t.Fatalf("no %s: %v", key, r.Problems)
	return 0
}
