package menu_test

import (
	"io/fs"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/menu"
)

func TestPublishedValues(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, row := range rows(t, c) {
			r := c.Run(row.Form)
			if len(r.Problems) > 0 {
				t.Errorf("%s.csv, line %d, %s:\n%v", c.ID, row.Line, row.Source, r.Problems)
				continue
			}
			for _, w := range row.Wants {
				if err := w.Met(r); err != nil {
					t.Errorf("%s.csv, line %d, %s (%s):\n%v", c.ID, row.Line, row.Source, row.KnownBy, err)
				}
			}
		}
	})
}

// A calculator held only to numbers that its own authors worked out would prove nothing but that it agrees with
// itself. Proportion alone is the exception.
func TestEveryCalculatorIsHeldToSomethingOutside(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		outside, all := 0, rows(t, c)
		for _, row := range all {
			if row.Outside() {
				outside++
			}
		}
		switch {
		case len(all) == 0:
			t.Errorf("%s.csv has no rows", c.ID)
		case outside == 0 && !c.Arithmetic:
			t.Errorf("%s.csv has %d rows, all worked by hand; at least one must come from outside", c.ID, len(all))
		}
	})
}

// unchecked lists answers that no published row expects, each with the reason why.
var unchecked = map[string]string{"day-look plan_is": "tells whether the plan is another one, and nothing else"}

func TestEveryAnswerIsExpectedSomewhere(t *testing.T) {
	used := map[string]bool{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		wanted := map[string]bool{}
		for _, row := range rows(t, c) {
			for _, w := range row.Wants {
				wanted[w.Key], wanted[w.Key+"."+w.Column] = true, true
			}
		}
		for _, key := range outputKeys(c) {
			full := c.ID + " " + key
			switch used[full] = true; {
			case wanted[key] && unchecked[full] != "":
				t.Errorf("%s.csv expects %s; take it off the list of unchecked answers", c.ID, key)
			case !wanted[key] && unchecked[full] == "":
				t.Errorf("%s.csv expects no %s", c.ID, key)
			}
		}
	})
	for full := range unchecked {
		if !used[full] {
			t.Errorf("%q is on the list of unchecked answers, but there is no such answer", full)
		}
	}
}

// outputKeys lists the answers, those of a list by list and column.
func outputKeys(c *calc.Calculator) []string {
	var keys []string
	for _, out := range c.Outputs {
		if out.Columns == nil {
			keys = append(keys, out.Key)
		}
		for _, col := range out.Columns {
			keys = append(keys, out.Key+"."+col.Key)
		}
	}
	return keys
}

func TestEveryFileBelongsToACalculator(t *testing.T) {
	files, err := fs.Glob(published, "*")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if id, ok := strings.CutSuffix(f, ".csv"); !ok || menu.Find(id) == nil {
			t.Errorf("testdata/published/%s belongs to no calculator", f)
		}
	}
}
