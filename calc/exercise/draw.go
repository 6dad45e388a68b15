package exercise

import (
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// tries is how often a form is drawn at most. Where the first ones give no answer the later ones draw the choices that
// are not set, too, and then numbers further from the examples.
const (
	tries = 60
	freer = 10
	wider = 25
)

// draw fills in the form until the calculator gives the answer asked for, without a problem and without a stop. An answer
// of nothing is taken only where there is no other.
func (t *Task) draw() {
	message, why := calc.Phrase("None of the numbers drawn gives this answer"), ""
	for n := range tries {
		f := &filler{t: t, attempt: strconv.Itoa(n) + " ", free: n >= freer, wide: n >= wider}
		f.complete()
		r := f.report
		switch fig := t.find(r); {
		case len(t.Problems) > 0:
			return
		case len(r.Problems) > 0:
			message, why = "None of the numbers drawn gives an answer: {text}", r.Problems[0].Message
		case len(r.Verdict) > 0 && r.Verdict[0].Level == calc.Stop:
			message, why = "Every draw of these numbers ends in a stop: {text}", r.Verdict[0].Why
		case fig != nil && (n > wider || strings.Trim(fig.Typed, "-0.") != ""):
			t.Form, t.Report, t.Figure, t.right = f.form, r, fig, t.valueOf(fig)
			for _, g := range f.given {
				// A number that the form starts with is given only where the answer rests on it.
				if !g.in.Prefill || g.Unit == 0 || t.get(g.Field) != "" || t.behind(g) {
					t.Given = append(t.Given, g)
				}
			}
			return
		}
	}
	t.problem("", calc.Impossible, message, "Choose other ranges, other choices or another answer", why)
}

// complete fills in what the calculator misses: fields that may stay blank but not with these numbers, and then all of
// them where that is what the answer takes.
func (f *filler) complete() {
	f.run()
	for before := -1; before < len(f.need) && len(f.need) < 50; {
		before = len(f.need)
		for i := range f.report.Problems {
			if field := f.report.Problems[i].Field; field != "" && f.form[field] == "" && !slices.Contains(f.need, field) {
				f.need = append(f.need, field)
			}
		}
		if before < len(f.need) {
			f.run()
		}
	}
	if len(f.report.Problems) == 0 && f.t.find(f.report) == nil {
		f.all = true
		f.run()
	}
}

// find is the figure asked for, or nil.
func (t *Task) find(r *calc.Report) *calc.Figure {
	table, rest, cell := strings.Cut(t.Asked, ".")
	number, column, _ := strings.Cut(rest, ".")
	for i := range r.Figures {
		if f := &r.Figures[i]; !cell && f.Key == table && f.UnitID != "" {
			t.Label = f.Label
			return f
		}
	}
	for i := range r.Lists {
		l := &r.Lists[i]
		n, _ := strconv.Atoi(number)
		if !cell || l.Key != table || n < 1 || n > len(l.Rows) {
			continue
		}
		row := l.Rows[n-1]
		name := number
		if row[0].UnitID == "" {
			name = row[0].Text
		}
		for k := range row {
			if f := &row[k]; f.Key == column && f.UnitID != "" {
				t.Label = t.Say("{list}, {row}: {what}", "list", l.Label, "row", name, "what", f.Label)
				return f
			}
		}
	}
	return nil
}

// valueOf is a figure's number in the output's own unit.
//
//go:noinline
func (t *Task) valueOf(f *calc.Figure) float64 {
	u, _ := unit.ByID(f.UnitID)
	return unit.Convert(f.Value, u, t.out.Unit)
}

// behind reports whether a number is among the steps behind the answer.
//
//go:noinline
func (t *Task) behind(g *Given) bool {
	for _, n := range t.Figure.Steps {
		if s := &t.Report.Steps[n-1]; s.Kind == calc.Entered && s.Label == g.Label {
			return true
		}
	}
	return len(t.Figure.Steps) == 0
}
