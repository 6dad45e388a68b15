// Package sound says what holds of every report, whatever the form: it comes soon, it is an answer or problems in words,
// no number in it is NaN or infinite, and the form stands as it was typed. It is for fuzz tests alone.
package sound

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"runtime"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"spraywright/calc"
)

// The longest that a form may take, and what is taken for a program that hangs. A machine that does other work besides
// may be slow once; it is not slow three times running.
const (
	soon  = time.Second
	tries = 3
	hangs = 20 * time.Second
)

// measured is whether time is: as WASM a test runs beside others in one thread, and says nothing about a page's worker.
const measured = runtime.GOARCH != "wasm"

// Within fails the test where work takes longer than a second in each of three runs. Where it does not end, the program
// does, so that the input is kept.
func Within(t testing.TB, what string, work func()) {
	t.Helper()
	least := time.Duration(math.MaxInt64)
	for range tries {
		stop := time.AfterFunc(hangs, func() { panic(fmt.Sprintf("no end after %v: %.2000q", hangs, what)) })
		start := time.Now()
		work()
		took := time.Since(start)
		stop.Stop()
		if least = min(least, took); least <= soon || !measured {
			return
		}
	}
	t.Fatalf("takes %v: %.2000q", least, what)
}

// Run puts the text of a form through a calculator and holds the report to what every report keeps.
func Run(t testing.TB, c *calc.Calculator, l calc.Language, text string) (r calc.Report) {
	t.Helper()
	form := calc.ParseForm(text)
	typed := maps.Clone(form)
	Within(t, c.ID+"?"+text, func() { r = c.RunIn(l, form) })
	if !maps.Equal(form, typed) {
		t.Fatalf("%s: running changes the form %q", c.ID, text)
	}
	if wrong := Wrong(c, r); wrong != "" {
		t.Fatalf("%s: %s\non %q", c.ID, wrong, text)
	}
	return r
}

// Wrong says in what a report fails, or nothing.
func Wrong(c *calc.Calculator, r calc.Report) string {
	if text := r.JSON(); !json.Valid([]byte(text)) || !utf8.ValidString(text) {
		return "the report is no JSON: " + text
	}
	for _, p := range r.Problems {
		switch {
		case strings.TrimSpace(p.Message) == "" || strings.TrimSpace(p.Fix) == "":
			return fmt.Sprintf("a problem with %q is not in words", p.Field)
		case p.Field != "" && c.Input(column(p.Field)) == nil:
			return fmt.Sprintf("a problem names %q, which the form does not have", p.Field)
		}
	}
	if len(r.Problems) == 0 && len(r.Figures)+len(r.Lists)+len(r.Verdict) == 0 {
		return "neither an answer nor a problem"
	}
	if at := odd(r); at != "" {
		return at + " is no finite number"
	}
	return ""
}

// odd is where a report has a number that is NaN or infinite, or blank.
func odd(r calc.Report) string {
	for _, f := range r.Figures {
		if !finite(f.Value) {
			return f.Key
		}
	}
	for _, l := range r.Lists {
		for _, row := range l.Rows {
			for _, f := range row {
				if !finite(f.Value) {
					return l.Key + "." + f.Key
				}
			}
		}
	}
	for _, p := range r.Pictures {
		if !finite(p.Width, p.Height) {
			return "picture " + p.Key
		}
		for _, s := range p.Shapes {
			if !finite(s.X, s.Y, s.W, s.H) || !finite(s.Points...) {
				return "picture " + p.Key + ", " + string(s.Kind)
			}
		}
	}
	return ""
}

func finite(xs ...float64) bool {
	for _, x := range xs {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

// column takes "part.2.length" to "part.length".
func column(field string) string {
	if parts := strings.SplitN(field, ".", 3); len(parts) == 3 {
		return parts[0] + "." + parts[2]
	}
	return field
}
