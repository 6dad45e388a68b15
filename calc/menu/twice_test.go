package menu_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// What is named once must not be described a second time under the same name: which of the two would be meant?
func TestNothingIsDescribedTwice(t *testing.T) {
	for _, tt := range []struct{ folder, name string }{
		{"../field", "Key"}, // inputs; choices are told apart below
		{"../source", "ID"},
		{"../source", "Title"},
	} {
		seen := map[string]string{}
		for text, place := range written(t, tt.folder, tt.name) {
			for _, at := range place[1:] {
				t.Errorf("%s: %s %q is described here and at %s", at, tt.name, text, place[0])
			}
			seen[text] = place[0]
		}
		if len(seen) == 0 {
			t.Errorf("no %s is written in %s", tt.name, tt.folder)
		}
	}
}

// written finds what is written for a field of a literal, and where; for a Key also what is handed to a function that
// makes an input of it. A literal within a list of others, as a choice is, does not count, nor does a When, which names
// another's key.
func written(t *testing.T, folder, field string) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	files, parsed := sources(t, folder)
	add := func(text string, ok bool, at token.Pos) {
		if ok {
			found[text] = append(found[text], files.Position(at).String())
		}
	}
	makers := inputMakers(parsed)
	for _, file := range parsed {
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if name, ok := n.Fun.(*ast.Ident); ok && field == "Key" && makers[name.Name] && len(n.Args) > 0 {
					s, isText := quoted(n.Args[0])
					add(s, isText, n.Pos())
				}
			case *ast.CompositeLit:
				if _, list := n.Type.(*ast.ArrayType); list {
					return false
				}
				if named, ok := n.Type.(*ast.SelectorExpr); ok && named.Sel.Name == "When" {
					return false
				}
				for _, e := range n.Elts {
					s, isText := value(e, field)
					add(s, isText, e.Pos())
				}
			}
			return true
		})
	}
	return found
}

// sources parses the files of a package but for its tests.
func sources(t *testing.T, folder string) (*token.FileSet, []*ast.File) {
	t.Helper()
	paths, err := filepath.Glob(folder + "/*.go")
	if err != nil {
		t.Fatal(err)
	}
	files := token.NewFileSet()
	var parsed []*ast.File
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(files, path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		parsed = append(parsed, file)
	}
	return files, parsed
}

// inputMakers names the functions that make an input; the key comes first in their calls.
func inputMakers(parsed []*ast.File) map[string]bool {
	makers := map[string]bool{}
	for _, file := range parsed {
		for _, d := range file.Decls {
			f, ok := d.(*ast.FuncDecl)
			if ok && f.Type.Results != nil && types.ExprString(f.Type.Results.List[0].Type) == "calc.Input" {
				makers[f.Name.Name] = true
			}
		}
	}
	return makers
}

// value is the text written after "field:".
func value(e ast.Expr, field string) (string, bool) {
	pair, ok := e.(*ast.KeyValueExpr)
	if !ok {
		return "", false
	}
	name, ok := pair.Key.(*ast.Ident)
	if !ok || name.Name != field {
		return "", false
	}
	return quoted(pair.Value)
}

// quoted is the text of a literal.
func quoted(e ast.Expr) (string, bool) {
	literal, ok := e.(*ast.BasicLit)
	if !ok {
		return "", false
	}
	s, err := strconv.Unquote(literal.Value)
	return s, err == nil
}
