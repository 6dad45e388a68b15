package browser

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/menu"
)

// A laid is a formula as a lesson lays it out, and the line and step that it comes from.
type laid struct {
	formula, numbers any // [tag, text] or [tag, element, …]
	legend           [][]string
	line             calc.Line
	step             calc.Step
}

// formulas are the lines of working that every calculator's example and check values make, one for each formula.
func formulas(t *testing.T) []laid {
	t.Helper()
	published := os.DirFS("../../testdata/published")
	found := map[string]laid{}
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			forms := []calc.Form{c.ExampleForm()}
			rows, err := check.Read(published, c)
			if err != nil {
				require.ErrorIs(t, err, fs.ErrNotExist)
			}
			for _, row := range rows {
				forms = append(forms, row.Form)
			}
			for _, form := range forms {
				report, steps := c.Steps(form)
				for i, s := range steps {
					if s.Kind == calc.Worked || s.Kind == calc.Solved {
						found[s.Formula] = laid{line: report.Steps[i], step: s}
					}
				}
			}
		}
	}
	var all []laid
	for _, formula := range slices.Sorted(maps.Keys(found)) {
		all = append(all, found[formula])
	}
	return all
}

// Every formula is laid out as MathML that still means the same: worked out from the elements it gives the value that the
// Go code got, and so do the numbers put in, as far as they are written.
func TestFormulasLaidOutMeanTheSame(t *testing.T) {
	all := formulas(t)
	require.Greater(t, len(all), 200)
	var texts [][]string
	for _, l := range all {
		texts = append(texts, []string{l.line.Formula, l.line.Numbers, l.line.Legend})
	}
	list, err := json.Marshal(texts)
	require.NoError(t, err)
	p := open(t, serve(t), "about.html", phone)
	got := evaluate[[][]any](p, `import("./scripts/lesson-formula.js").then(({ layout, legend }) => `+string(list)+`.map(([f, n, l]) => [layout(f, "."), layout(n, "."), legend(l)]))`)
	for i, l := range all {
		l.formula, l.numbers = got[i][0], got[i][1]
		for _, entry := range got[i][2].([]any) {
			var texts []string
			for _, text := range entry.([]any) {
				texts = append(texts, fmt.Sprint(text))
			}
			l.legend = append(l.legend, texts)
		}
		assert.Empty(t, l.wrong(), "%s = %s; %s", l.line.Formula, l.line.Numbers, l.line.Legend)
	}
}

// wrong says what is, or nothing.
func (l laid) wrong() string {
	values := map[string]float64{"π": math.Pi}
	named := 0
	for _, a := range l.step.Args {
		if a.Num.Label == "" {
			return "" // the legend leaves it out
		}
		if named == len(l.legend) {
			return "a sign is missing"
		}
		entry := l.legend[named]
		values[entry[0]] = a.Num.V
		if label := string(a.Num.Label); !strings.EqualFold(entry[1], label) || !strings.HasSuffix(l.line.Legend[:strings.Index(l.line.Legend, entry[2])+len(entry[2])], entry[2]) {
			return fmt.Sprintf("%q is called %q", label, entry[1])
		}
		named++
	}
	e := evaluator{values: values}
	formula, numbers := e.worth(l.formula), e.worth(l.numbers)
	want := l.step.Value
	if l.step.Kind == calc.Solved {
		want = formula.left
	}
	within := func(x, share float64) bool { return math.Abs(x-want) <= share*max(1e-9, math.Abs(want)) }
	switch {
	case e.odd != "":
		return e.odd
	case l.step.Kind == calc.Solved && !within(formula.right, 1e-6), l.step.Kind == calc.Worked && !within(formula.right, 1e-9):
		return fmt.Sprintf("it gives %v, not %v", formula.right, want)
	case math.IsNaN(numbers.right):
		return "the numbers give nothing"
	}
	return ""
}

func TestFormulasAreLaidOut(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	for text, want := range map[string]string{
		"WFT = DFT ÷ n ÷ (VS ÷ 100)": `["mrow",["mi","WFT"],["mo","="],["mfrac",["mi","DFT"],["mrow",["mi","n"],["mo","×"],["mfrac",["mi","VS"],["mn","100"]]]]]`,
		"a − (b − c) × 2":            `["mrow",["mi","a"],["mo","−"],["mrow",["mrow",["mo","("],["mrow",["mi","b"],["mo","−"],["mi","c"]],["mo",")"]],["mo","×"],["mn","2"]]]`,
		"(a + b)² ÷ 10⁻⁶":            `["mfrac",["msup",["mrow",["mo","("],["mrow",["mi","a"],["mo","+"],["mi","b"]],["mo",")"]],["mn","2"]],["msup",["mn","10"],["mn","−6"]]]`,
		"x^(1 ÷ 3) + √(ρ_2)":         `["mrow",["msup",["mi","x"],["mfrac",["mi","1"],["mn","3"]]],["mo","+"],["msqrt",["msub",["mi","ρ"],["mi","2"]]]]`,
		"max(0, 1.5)":                `["mrow",["mi","max"],["mo","("],["mn","0"],["mo",","],["mn","1.5"],["mo",")"]]`,
		"from wet to dry, by steps":  `["mtext","from wet to dry, by steps"]`,
		"a ÷ (b":                     `["mtext","a ÷ (b"]`,
		"(2.26×10⁷)×2":               `["mrow",["mrow",["mn","2.26"],["mo","×"],["msup",["mn","10"],["mn","7"]]],["mo","×"],["mn","2"]]`,
	} {
		want = strings.Replace(want, `["mi","1"]`, `["mn","1"]`, 1)
		assert.Equal(t, want, evaluate[string](p, `import("./scripts/lesson-formula.js").then(({ layout }) => JSON.stringify(layout(`+quoted(text)+`, ".")))`), text)
	}
	assert.Equal(t, `["mrow",["mrow",["mi","máx"],["mo","("],["mn","0"],["mo",";"],["mn","1,5"],["mo",")"]],["mo","×"],["mrow",["mi","redondear hacia arriba"],["mo","("],["mi","x"],["mo",")"]]]`,
		evaluate[string](p, `import("./scripts/lesson-formula.js").then(({ layout }) => JSON.stringify(layout("máx(0; 1,5) × redondear hacia arriba(x)", ",")))`))
	assert.Equal(t, `[["ρ_1","density, first part (base; wet)","1.2 kg/L"],["n","coats","2"]]`,
		evaluate[string](p, `import("./scripts/lesson-formula.js").then(({ legend }) => JSON.stringify(legend("ρ_1: density, first part (base; wet), 1.2 kg/L; n: coats, 2")))`))
}

// An evaluator works elements out, as a reader of the page would.
type evaluator struct {
	values map[string]float64
	odd    string
}

// A worth is what an element comes to: a number, what a name or sign is, or the two sides of an equation.
type worth struct {
	right, left float64
	is          string
}

func (e *evaluator) worth(x any) worth {
	list, ok := x.([]any)
	if !ok || len(list) < 2 {
		e.odd = fmt.Sprintf("%v is no element", x)
		return worth{}
	}
	name := list[0].(string)
	if text, leaf := list[1].(string); leaf {
		return e.leaf(name, text)
	}
	var parts []worth
	for _, part := range list[1:] {
		parts = append(parts, e.worth(part))
	}
	switch name {
	case "msub":
		low := parts[0].is + "_" + strings.ReplaceAll(parts[1].is, ",", "_")
		return worth{right: e.values[low], is: low}
	case "mfrac":
		return worth{right: parts[0].right / parts[1].right}
	case "msqrt":
		return worth{right: math.Sqrt(parts[0].right)}
	case "msup":
		return worth{right: math.Pow(parts[0].right, parts[1].right)}
	case "mrow":
		return e.row(parts)
	}
	e.odd = name
	return worth{}
}

func (e *evaluator) leaf(name, text string) worth {
	switch name {
	case "mn":
		x, err := strconv.ParseFloat(strings.Replace(text, "−", "-", 1), 64)
		if err != nil {
			e.odd = text + " is no number"
		}
		return worth{right: x, is: text}
	case "mo", "mi":
		return worth{right: e.values[text], is: text}
	}
	e.odd = name + " " + text
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
