package arith

import (
	"fmt"
	"go/ast"
	"go/token"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
)

// A function takes args numbers, or at least one where that is several.
type function struct {
	args int
	of   func(x []float64) float64
}

const several = -1

var functions = map[string]function{
	"ln":    one(math.Log),
	"log10": one(math.Log10),
	"exp":   one(math.Exp),
	"sqrt":  one(math.Sqrt),
	"sin":   one(math.Sin),
	"cos":   one(math.Cos),
	"tan":   one(math.Tan),
	"atan":  one(math.Atan),
	"floor": one(math.Floor),
	"ceil":  one(math.Ceil),
	"round": one(math.Round),
	"erf":   one(math.Erf),
	"pow":   {2, func(x []float64) float64 { return math.Pow(x[0], x[1]) }},
	"min":   {several, slices.Min[[]float64]},
	"max":   {several, slices.Max[[]float64]},
}

func one(f func(float64) float64) function {
	return function{1, func(x []float64) float64 { return f(x[0]) }}
}

var constants = map[string]float64{"pi": math.Pi}

var operators = map[token.Token]func(x, y float64) float64{
	token.ADD: func(x, y float64) float64 { return x + y },
	token.SUB: func(x, y float64) float64 { return x - y },
	token.MUL: func(x, y float64) float64 { return x * y },
	token.QUO: func(x, y float64) float64 { return x / y },
}

// Left works out the left side. A name without a value is an error.
func (f Formula) Left(values map[string]float64) (float64, error) {
	if f.left == nil {
		return 0, fmt.Errorf("%s: has no left side", f.text)
	}
	return f.work(f.left, values)
}

// Right works out the right side. A name without a value is an error.
func (f Formula) Right(values map[string]float64) (float64, error) { return f.work(f.right, values) }

func (f Formula) work(e ast.Expr, values map[string]float64) (float64, error) {
	x, err := eval(e, values)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", f.text, err)
	}
	return x, nil
}

func eval(e ast.Expr, values map[string]float64) (float64, error) {
	switch e := e.(type) {
	case *ast.BasicLit:
		return strconv.ParseFloat(e.Value, 64)
	case *ast.Ident:
		return named(e.Name, values)
	case *ast.ParenExpr:
		return eval(e.X, values)
	case *ast.UnaryExpr:
		x, err := eval(e.X, values)
		return -x, err
	case *ast.BinaryExpr:
		xs, err := all([]ast.Expr{e.X, e.Y}, values)
		if err != nil {
			return 0, err
		}
		return operators[e.Op](xs[0], xs[1]), nil
	case *ast.CallExpr:
		xs, err := all(e.Args, values)
		if err != nil {
			return 0, err
		}
		return functions[e.Fun.(*ast.Ident).Name].of(xs), nil
	}
	return 0, fmt.Errorf("%T is not allowed in a formula", e) // Parse lets none through
}

func all(es []ast.Expr, values map[string]float64) ([]float64, error) {
	xs := make([]float64, len(es))
	for i, e := range es {
		var err error
		if xs[i], err = eval(e, values); err != nil {
			return nil, err
		}
	}
	return xs, nil
}

func named(name string, values map[string]float64) (float64, error) {
	if x, ok := values[name]; ok {
		return x, nil
	}
	if x, ok := constants[name]; ok {
		return x, nil
	}
	return 0, fmt.Errorf("%q has no value; named are %s", name, strings.Join(slices.Sorted(maps.Keys(values)), " "))
}
