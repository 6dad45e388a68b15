package menu_test

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/lesson"
)

// An element is one of MathML, as the page gets it: those that stand in it follow.
type element struct {
	Tag, Text string
	In        []int
}

type laidOut struct {
	Formula, Numbers []element
	Symbols          []struct {
		Symbol      []element
		Name, Value string
	}
}

// Every formula is laid out as MathML that still means the same: worked out from the elements it gives the value that the
// Go code got.
func TestFormulasLaidOutMeanTheSame(t *testing.T) {
	seen := map[string]bool{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			for i, line := range r.report.Steps {
				step := r.steps[i]
				if step.Kind != calc.Worked && step.Kind != calc.Solved || seen[step.Formula] {
					continue
				}
				seen[step.Formula] = true
				l := layOut(t, line)
				if says := checkLayout(l, step); says != "" {
					t.Errorf("%s: %s\non %v", line.Formula, says, r)
				}
			}
		}
	})
	if len(seen) < 200 {
		t.Errorf("only %d formulas", len(seen))
	}
}

func layOut(t *testing.T, line calc.Line) (l laidOut) {
	t.Helper()
	text := lesson.Answer(calc.Language{}, "formula", calc.Form{"formula": line.Formula, "numbers": line.Numbers, "legend": line.Legend})
	if err := json.Unmarshal([]byte(text), &l); err != nil {
		t.Fatal(err)
	}
	return l
}

func checkLayout(l laidOut, step calc.Step) string {
	values, named := map[string]float64{"π": math.Pi}, 0
	for _, a := range step.Args {
		if a.Num.Label == "" {
			return "" // the legend leaves it out
		}
		if named == len(l.Symbols) {
			return "a symbol is missing"
		}
		s := l.Symbols[named]
		values[textOf(s.Symbol)] = a.Num.V
		if !strings.EqualFold(s.Name, string(a.Num.Label)) && !strings.HasPrefix(strings.ToLower(string(a.Num.Label)), strings.ToLower(s.Name)) {
			return fmt.Sprintf("%q is called %q", a.Num.Label, s.Name)
		}
		named++
	}
	e := &evaluator{in: l.Formula, values: values}
	got := e.next()
	switch {
	case e.odd != "":
		return e.odd
	case len(e.in) > 0:
		return "elements are left over"
	case step.Kind == calc.Solved && math.Abs(got.left-got.right) > 1e-6*max(1, math.Abs(got.right)):
		return fmt.Sprintf("%v is not %v", got.left, got.right)
	case step.Kind == calc.Worked && math.Abs(got.right-step.Value) > 1e-9*max(1e-9, math.Abs(step.Value)):
		return fmt.Sprintf("it gives %v, not %v", got.right, step.Value)
	}
	return ""
}

func textOf(in []element) string {
	text := ""
	for _, e := range in {
		if text += e.Text; e.Tag == "msub" {
			text = "_"
		}
	}
	if base, ok := strings.CutPrefix(text, "_"); ok && len(in) == 3 {
		return in[1].Text + "_" + strings.TrimPrefix(base, in[1].Text)
	}
	return text
}

// An evaluator works elements out, as a reader of the page would.
type evaluator struct {
	in     []element
	values map[string]float64
	odd    string
}

// A worth is what an element comes to: a number, what a name or sign is, or the two sides of an equation.
type worth struct {
	right, left float64
	is          string
}

func (e *evaluator) next() worth {
	if len(e.in) == 0 {
		e.odd = "elements are missing"
		return worth{}
	}
	own := e.in[0]
	e.in = e.in[1:]
	var parts []worth
	for range own.In[0] {
		parts = append(parts, e.next())
	}
	switch own.Tag {
	case "mn":
		x, err := strconv.ParseFloat(strings.Replace(own.Text, "−", "-", 1), 64)
		if err != nil {
			e.odd = own.Text + " is no number"
		}
		return worth{right: x}
	case "mo":
		return worth{is: own.Text}
	case "mi":
		return worth{right: e.values[own.Text], is: own.Text}
	case "msub":
		name := parts[0].is + "_" + parts[1].is
		return worth{right: e.values[name], is: name}
	case "mfrac":
		return worth{right: parts[0].right / parts[1].right}
	case "msqrt":
		return worth{right: math.Sqrt(parts[0].right)}
	case "msup":
		return worth{right: math.Pow(parts[0].right, parts[1].right)}
	case "mrow":
		return e.row(parts)
	}
	e.odd = own.Tag + " " + own.Text
	return worth{}
}

var called = map[string]func(xs []float64) float64{
	"ln": func(x []float64) float64 { return math.Log(x[0]) }, "log_10": func(x []float64) float64 { return math.Log10(x[0]) },
	"exp": func(x []float64) float64 { return math.Exp(x[0]) }, "erf": func(x []float64) float64 { return math.Erf(x[0]) },
	"sin": func(x []float64) float64 { return math.Sin(x[0]) }, "cos": func(x []float64) float64 { return math.Cos(x[0]) },
	"tan": func(x []float64) float64 { return math.Tan(x[0]) }, "atan": func(x []float64) float64 { return math.Atan(x[0]) },
	"round up": func(x []float64) float64 { return math.Ceil(x[0]) }, "round down": func(x []float64) float64 { return math.Floor(x[0]) },
	"round": func(x []float64) float64 { return math.Round(x[0]) },
	"min": func(xs []float64) float64 {
		m := xs[0]
		for _, x := range xs {
			m = min(m, x)
		}
		return m
	},
	"max": func(xs []float64) float64 {
		m := xs[0]
		for _, x := range xs {
			m = max(m, x)
		}
		return m
	},
}

// row works out what stands side by side: an equation, a sum, a product, brackets or a function.
func (e *evaluator) row(parts []worth) worth {
	for i, p := range parts {
		if p.is == "=" {
			return worth{left: e.row(parts[:i]).right, right: e.row(parts[i+1:]).right}
		}
	}
	if len(parts) > 2 && parts[1].is == "(" && called[parts[0].is] != nil {
		var xs []float64
		for _, p := range parts[2 : len(parts)-1] {
			if p.is != "," {
				xs = append(xs, p.right)
			}
		}
		return worth{right: called[parts[0].is](xs)}
	}
	if len(parts) == 3 && parts[0].is == "(" {
		return worth{right: parts[1].right}
	}
	sum, product, sign, fresh := 0., 1., 1., true
	for _, p := range parts {
		switch p.is {
		case "+", "−":
			if !fresh {
				sum += sign * product
			}
			product, sign, fresh = 1, 1, true
			if p.is == "−" {
				sign = -1
			}
		case "×":
		case "(", ")", ",":
			e.odd = "a stray " + p.is
		default:
			product, fresh = product*p.right, false
		}
	}
	return worth{right: sum + sign*product}
}
