package menu_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"spraywright/calc"
)

// Whatever is within the limits has an answer, or a problem that says which numbers do not go together.
func TestAnyNumbersWithinTheLimitsHaveAnAnswer(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		answered, random := 0, 0
		for _, r := range runs(t, c) {
			if r.random {
				random++
				if len(r.report.Problems) == 0 {
					answered++
				}
			}
			for _, p := range r.report.Problems {
				if p.Code != calc.Impossible && p.Code != calc.Beyond || !names(c, p.Field) {
					t.Fatalf("problem %q with %q, code %s\non %v", p.Error(), p.Field, p.Code, r)
				}
			}
			for _, f := range figures(r.report) {
				if math.IsNaN(f.Value) || math.IsInf(f.Value, 0) || f.Text == "" {
					t.Fatalf("%s is %q, %v\non %v", f.Key, f.Text, f.Value, r)
				}
			}
		}
		if answered*10 < random && seldom[c.ID] == "" {
			t.Errorf("only %d of %d random forms are answered; are the limits wider than the formulas hold?", answered, random)
		}
	})
}

// seldom lists calculators whose random forms hardly ever go together, each with the reason why.
var seldom = map[string]string{"day": "its rows name each other, as random ones do not; the tests of calc/day draw days that do"}

// names reports whether a field is an input of the calculator.
func names(c *calc.Calculator, field string) bool { return c.Input(withoutRow(field)) != nil }

// withoutRow takes "part.2.length" to "part.length".
func withoutRow(field string) string {
	if parts := strings.SplitN(field, ".", 3); len(parts) == 3 {
		return parts[0] + "." + parts[2]
	}
	return field
}

// figures are all a report has, those in lists too.
func figures(r calc.Report) []calc.Figure {
	fs := append([]calc.Figure{}, r.Figures...)
	for _, l := range r.Lists {
		for _, row := range l.Rows {
			fs = append(fs, row...)
		}
	}
	return fs
}

func TestSentencesAreWhole(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			for where, s := range sentences(r.report) {
				switch {
				case strings.ContainsAny(s, "{}"):
					t.Fatalf("%s has a hole left open: %q\non %v", where, s, r)
				case strings.Contains(s, "NaN"), strings.Contains(s, "Inf"):
					t.Fatalf("%s has no number: %q\non %v", where, s, r)
				case strings.Contains(s, "  "), strings.TrimSpace(s) != s, s == "":
					t.Fatalf("%s has stray spaces or nothing: %q\non %v", where, s, r)
				}
			}
		}
	})
}

// sentences are the words of a report, each under where it stands.
func sentences(r calc.Report) map[string]string {
	said := map[string]string{}
	for _, p := range r.Problems {
		said["message of "+p.Field], said["fix of "+p.Field] = p.Message, p.Fix
	}
	for _, v := range r.Verdict {
		said["why of "+v.Why], said["do of "+v.Why] = v.Why, v.Do
	}
	for _, f := range figures(r) {
		said["figure "+f.Key] = f.Text
	}
	for _, row := range r.Rows {
		said["row "+row.Row] = row.Text
	}
	for _, s := range r.Cautions {
		said["caution "+s] = s
	}
	for _, p := range r.Pictures {
		said["picture "+p.Key] = p.Says
	}
	for _, s := range r.Steps {
		said["label of step "+s.Label], said["result of "+s.Label] = s.Label, s.Result
	}
	return said
}

func TestEveryStepHasItsSource(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		bare := map[calc.Phrase]bool{}
		for _, r := range runs(t, c) {
			for _, s := range r.steps {
				if s.Kind != calc.Entered && (s.Source == nil || s.Source.Basis == "" || s.Source.Name() == "") && !bare[s.Label] {
					bare[s.Label] = true
					t.Errorf("step %q says not where it comes from, or not how that is known: %+v", s.Label, s.Source)
				}
			}
		}
	})
}

func TestAWorkIsCitedUnderOneTitle(t *testing.T) {
	title := map[string]string{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			for _, s := range r.steps {
				if s.Source == nil {
					continue
				}
				if known := title[s.Source.ID]; known != "" && known != s.Source.Name() {
					t.Fatalf("%s is “%s” and “%s”", s.Source.ID, known, s.Source.Name())
				}
				title[s.Source.ID] = s.Source.Name()
			}
		}
	})
}

// The page reads the report with the browser's JSON parser; encoding/json stands in for it.
func TestEveryReportReachesThePage(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			text := r.report.JSON()
			var page struct {
				ID       string
				Problems []struct{ Field, Message, Fix string }
				Figures  []struct {
					Key, Text string
					Value     float64
				}
				Steps []struct{ Label, Result string }
			}
			if err := json.Unmarshal([]byte(text), &page); err != nil || !utf8.ValidString(text) {
				t.Fatalf("%v\n%s\non %v", err, text, r)
			}
			if page.ID != c.ID || len(page.Problems) != len(r.report.Problems) || len(page.Figures) != len(r.report.Figures) || len(page.Steps) != len(r.report.Steps) {
				t.Fatalf("the page gets another report than was sent\non %v", r)
			}
			for i, f := range r.report.Figures {
				if page.Figures[i].Text != f.Text || page.Figures[i].Value != f.Value {
					t.Fatalf("the page reads %+v for %+v", page.Figures[i], f)
				}
			}
		}
	})
}
