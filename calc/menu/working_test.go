package menu_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/internal/arith"
)

// The working that a person reads must be the working that was done.
func TestShownFormulasAgree(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		wrong := map[string]bool{} // one complaint for each formula will do
		for _, r := range runs(t, c) {
			for _, s := range r.steps {
				if says := disagreement(s); says != "" && !wrong[s.Formula] {
					wrong[s.Formula] = true
					t.Errorf("%s: %s\n%s\non %v", s.Label, s.Formula, says, r)
				}
			}
		}
	})
}

// disagreement says how a step's formula differs from what the code got, or nothing.
func disagreement(s calc.Step) string {
	if math.IsNaN(s.Value) || math.IsInf(s.Value, 0) {
		return "its value is " + strconv.FormatFloat(s.Value, 'g', -1, 64)
	}
	if s.Kind != calc.Worked && s.Kind != calc.Solved {
		return ""
	}
	f, err := arith.Parse(s.Formula)
	if err != nil {
		return err.Error()
	}
	values := map[string]float64{}
	for _, a := range s.Args {
		if _, twice := values[a.Name]; twice {
			return a.Name + " is given twice"
		}
		values[a.Name] = a.Num.V
	}
	for name := range values {
		if !slices.Contains(f.Names(), name) && !(s.Kind == calc.Solved && name == f.Symbol()) {
			return name + " is given but not used"
		}
	}
	right, err := f.Right(values)
	if err != nil {
		return err.Error()
	}
	if s.Kind == calc.Worked {
		if f.Symbol() == "" {
			return "it must read symbol = expression"
		}
		return apart("the formula gives", right, "the code got", s.Value, 1e-9)
	}
	left, err := f.Left(values)
	if err != nil {
		return err.Error()
	}
	return apart("the left side is", left, "the right", right, 1e-6)
}

// apart says that x and y differ by more than a share of the larger. Differences below 1e-12 are rounding.
func apart(what string, x float64, other string, y, share float64) string {
	if math.Abs(x-y) <= share*max(math.Abs(x), math.Abs(y))+1e-12 {
		return ""
	}
	return what + " " + strconv.FormatFloat(x, 'g', 15, 64) + ", " + other + " " + strconv.FormatFloat(y, 'g', 15, 64)
}

// unreached lists formulas that no form reaches, each with the reason why.
var unreached = map[string]string{}

// A formula that no test evaluates may say anything.
func TestEveryFormulaIsReached(t *testing.T) {
	reached := map[string]bool{}
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c) {
			for _, s := range r.steps {
				reached[s.Formula] = true
			}
		}
	})
	all := slices.Collect(maps.Keys(reached))
	for formula, place := range formulas(t) {
		// A formula put together from pieces is reached when one is that has the pieces in that order.
		shape := regexp.MustCompile("^" + strings.ReplaceAll(regexp.QuoteMeta(formula), open, ".*") + "$")
		switch hit := slices.ContainsFunc(all, shape.MatchString); {
		case !hit && unreached[formula] == "":
			t.Errorf("%s: no form reaches %s", place, formula)
		case hit && unreached[formula] != "":
			t.Errorf("%s: %s is reached; take it off the list", place, formula)
		}
	}
}

// open stands for what the source leaves open in a formula.
const open = "…"

// formulas finds the formulas written in the source, and where. One that is handed on whole is left out.
func formulas(t *testing.T) map[string]string {
	found := map[string]string{}
	files := token.NewFileSet()
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(files, path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if formula := formulaIn(n); strings.Trim(formula, open) != "" {
				found[formula] = files.Position(n.Pos()).String()
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// formulaIn is the formula that a call of Step or Solve writes out, or blank.
func formulaIn(n ast.Node) string {
	call, ok := n.(*ast.CallExpr)
	if !ok {
		return ""
	}
	method, ok := call.Fun.(*ast.SelectorExpr)
	at := map[string]int{"Step": 1, "Solve": 2}
	if !ok || at[method.Sel.Name] == 0 || len(call.Args) <= at[method.Sel.Name] {
		return ""
	}
	return text(call.Args[at[method.Sel.Name]])
}

// text puts together what is written as "a" + b + "c".
func text(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.BasicLit:
		s, _ := strconv.Unquote(e.Value)
		return s
	case *ast.BinaryExpr:
		return text(e.X) + text(e.Y)
	}
	return open
}
