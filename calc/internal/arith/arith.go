// Package arith works out the formulas that the working shows, so that tests can hold each one to the value the
// code got. A formula is an expression in Go's syntax over float64. Only tests import this package.
package arith

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"slices"
	"strings"
)

// A Formula is text that has been read and can be worked out. "WFT = DFT / VS" has the left side WFT and the
// right side DFT / VS; text without an equals sign has only a right side.
type Formula struct {
	text        string
	left, right ast.Expr
}

// Parse reads a formula. It fails on anything but numbers, names, + - * /, parentheses and calls of the
// functions that [Functions] lists.
func Parse(text string) (Formula, error) {
	f := Formula{text: text}
	left, right, equation := strings.Cut(text, "=")
	var err error
	if !equation {
		right = left
	} else if f.left, err = side(left); err != nil {
		return f, fmt.Errorf("%s: %w", text, err)
	}
	if f.right, err = side(right); err != nil {
		return f, fmt.Errorf("%s: %w", text, err)
	}
	return f, nil
}

// side reads one side and lets through only what eval knows.
func side(text string) (ast.Expr, error) {
	e, err := parser.ParseExpr(text)
	if err != nil {
		return nil, err
	}
	ast.Inspect(e, func(n ast.Node) bool {
		if err == nil {
			err = allowed(n)
		}
		return err == nil
	})
	return e, err
}

func allowed(n ast.Node) error {
	switch n := n.(type) {
	case nil, *ast.ParenExpr, *ast.Ident:
		return nil
	case *ast.BasicLit:
		if n.Kind == token.INT || n.Kind == token.FLOAT {
			return nil
		}
	case *ast.UnaryExpr:
		if n.Op == token.SUB {
			return nil
		}
	case *ast.BinaryExpr:
		if operators[n.Op] != nil {
			return nil
		}
		return fmt.Errorf("%s is not allowed in a formula", n.Op)
	case *ast.CallExpr:
		return allowedCall(n)
	}
	return fmt.Errorf("%T is not allowed in a formula", n)
}

func allowedCall(n *ast.CallExpr) error {
	name, ok := n.Fun.(*ast.Ident)
	if !ok {
		return fmt.Errorf("a formula calls functions by plain name only")
	}
	f, known := functions[name.Name]
	switch {
	case !known:
		return fmt.Errorf("there is no function %q; there are %s", name.Name, strings.Join(Functions(), " "))
	case len(n.Args) != f.args && (f.args != several || len(n.Args) == 0):
		return fmt.Errorf("%s is called with %d numbers", name.Name, len(n.Args))
	}
	return nil
}

// Functions lists the functions a formula may call.
func Functions() []string { return slices.Sorted(maps.Keys(functions)) }

// Names lists the names a formula needs values for, sorted: those on the right of "name = expression", those on
// both sides of "expression = expression".
func (f Formula) Names() []string {
	found := map[string]bool{}
	note := func(n ast.Node) bool {
		if id, ok := n.(*ast.Ident); ok && constants[id.Name] == 0 && functions[id.Name].of == nil {
			found[id.Name] = true
		}
		return true
	}
	ast.Inspect(f.right, note)
	if f.left != nil && f.Symbol() == "" {
		ast.Inspect(f.left, note)
	}
	return slices.Sorted(maps.Keys(found))
}

// Symbol is the name on the left of "name = expression", or blank.
func (f Formula) Symbol() string {
	if id, ok := f.left.(*ast.Ident); ok {
		return id.Name
	}
	return ""
}
