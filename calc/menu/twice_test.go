package menu_test

import (
	"go/ast"
	"go/parser"
	"go/token"
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

// written finds what is written for a field of a literal, and where. A literal within a list of others, as a choice
// is, does not count, nor does a When, which names another's key.
func written(t *testing.T, folder, field string) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	files := token.NewFileSet()
	paths, err := filepath.Glob(folder + "/*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(files, path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			literal, ok := n.(*ast.CompositeLit)
			if !ok {
				return true
			}
			if _, list := literal.Type.(*ast.ArrayType); list {
				return false
			}
			if named, ok := literal.Type.(*ast.SelectorExpr); ok && named.Sel.Name == "When" {
				return false
			}
			for _, e := range literal.Elts {
				if text, ok := value(e, field); ok {
					found[text] = append(found[text], files.Position(e.Pos()).String())
				}
			}
			return true
		})
	}
	return found
}

// value is the text written after "field:".
func value(e ast.Expr, field string) (string, bool) {
	pair, ok := e.(*ast.KeyValueExpr)
	if !ok {
		return "", false
	}
	name, ok := pair.Key.(*ast.Ident)
	text, isText := pair.Value.(*ast.BasicLit)
	if !ok || !isText || name.Name != field {
		return "", false
	}
	s, err := strconv.Unquote(text.Value)
	return s, err == nil
}
