package words

import (
	"errors"
	"fmt"
	"go/ast"
	"go/constant"
	"go/types"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/tools/go/packages"
)

// A place is one use of a text.
type place struct {
	text, is, file string // is: what kind of text, "label", "help"; file: where, from the module's root
	line           int
	key            string // the field that it labels: "job.part.name"
}

// inGo finds every text in the Go sources: what the compiler takes as a constant of type phrase.Phrase. A phrase that is
// put together at run time could never be found in a catalogue, so it is an error anywhere but in the engine.
func inGo(root string) ([]place, error) {
	env := append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	said, err := imported(root, env, "./wasm/...")
	if err != nil {
		return nil, err
	}
	all, err := inPackages(root, env, said...)
	if err != nil {
		return nil, err
	}
	site, err := inPackages(root, os.Environ(), "./site")
	return append(all, site...), err
}

// imported lists the packages of this module that the given ones rest on, and themselves: what no core holds is never said.
func imported(root string, env []string, pattern string) ([]string, error) {
	tops, err := packages.Load(&packages.Config{Mode: packages.NeedName | packages.NeedImports | packages.NeedDeps, Dir: root, Env: env}, pattern)
	if err != nil {
		return nil, err
	}
	var all []string
	packages.Visit(tops, func(p *packages.Package) bool {
		if strings.HasPrefix(p.PkgPath, "spraywright/") {
			all = append(all, p.PkgPath)
		}
		return true
	}, nil)
	return all, nil
}

func inPackages(root string, env []string, patterns ...string) ([]place, error) {
	found, err := packages.Load(&packages.Config{
		Mode: packages.NeedName | packages.NeedSyntax | packages.NeedTypes | packages.NeedTypesInfo | packages.NeedImports | packages.NeedExportFile,
		Dir:  root, Env: env,
	}, patterns...)
	if err != nil {
		return nil, err
	}
	var all []place
	var wrong []error
	for _, p := range found {
		if len(p.Errors) > 0 {
			return nil, p.Errors[0]
		}
		r := reader{Package: p, root: root}
		for _, file := range p.Syntax {
			r.file(file)
		}
		wrong = append(wrong, r.wrong...)
		all = append(all, r.found...)
	}
	return all, errors.Join(wrong...)
}

// A reader goes through the files of one package.
type reader struct {
	*packages.Package
	root  string
	found []place
	wrong []error
}

func (r *reader) file(file *ast.File) {
	var above []ast.Node
	ast.Inspect(file, func(n ast.Node) bool {
		if n == nil {
			above = above[:len(above)-1]
			return true
		}
		if e, ok := n.(ast.Expr); ok && r.phrase(e, above) {
			return false
		}
		above = append(above, n)
		return true
	})
}

// phrase takes an expression that is a text, and reports whether there is nothing more to find in it.
func (r *reader) phrase(e ast.Expr, above []ast.Node) bool {
	t := r.TypesInfo.Types[e]
	if t.Type == nil || !t.IsValue() || !isPhrase(t.Type) {
		return false
	}
	if t.Value == nil {
		if r.PkgPath != "spraywright/calc" && r.PkgPath != "spraywright/calc/unit" && r.PkgPath != "spraywright/site" && r.joined(e) {
			r.wrong = append(r.wrong, fmt.Errorf("%s: a text is put together at run time; write it as one constant with {holes}", r.Fset.Position(e.Pos())))
		}
		return false
	}
	// First only orders cautions; it is no part of the text.
	if text := strings.TrimPrefix(constant.StringVal(t.Value), "\x01"); says(text) {
		is := r.kind(e, above)
		if is == "symbol" && !strings.Contains(text, " ") {
			return true // in every language the same
		}
		at := r.Fset.Position(e.Pos())
		file, _ := filepath.Rel(r.root, at.Filename)
		r.found = append(r.found, place{text: text, is: is, file: filepath.ToSlash(file), line: at.Line})
	}
	return true
}

// joined reports whether an expression joins texts, or makes one of a plain string.
func (r *reader) joined(e ast.Expr) bool {
	switch e := e.(type) {
	case *ast.BinaryExpr:
		return true
	case *ast.CallExpr:
		return r.TypesInfo.Types[e.Fun].IsType() && !isPhrase(r.TypesInfo.Types[e.Args[0]].Type)
	}
	return false
}

// kind says what sort of text an expression is, by the field or the parameter that takes it.
func (r *reader) kind(e ast.Expr, above []ast.Node) string {
	switch up := above[len(above)-1].(type) {
	case *ast.KeyValueExpr:
		if name, ok := up.Key.(*ast.Ident); ok {
			return strings.ToLower(name.Name)
		}
	case *ast.AssignStmt:
		for i, right := range up.Rhs {
			if left, ok := up.Lhs[i].(*ast.SelectorExpr); ok && right == e {
				return strings.ToLower(left.Sel.Name)
			}
		}
	case *ast.CallExpr:
		f, ok := r.TypesInfo.Types[up.Fun].Type.(*types.Signature)
		if i := slices.Index(up.Args, e); ok && i >= 0 {
			return parameter(up, f, i)
		}
	}
	return "text"
}

func parameter(call *ast.CallExpr, f *types.Signature, i int) string {
	name := f.Params().At(min(i, f.Params().Len()-1)).Name()
	if name == "" {
		return "text"
	}
	if called, ok := call.Fun.(*ast.SelectorExpr); ok && called.Sel.Name == "At" && name == "place" {
		return "source"
	}
	return name
}

func isPhrase(t types.Type) bool {
	named, ok := types.Unalias(t).(*types.Named)
	return ok && named.Obj().Name() == "Phrase" && named.Obj().Pkg().Path() == "spraywright/calc/phrase"
}

var hole = regexp.MustCompile(`\{\w+\}`)

// says reports whether a text has words of its own, besides its holes.
func says(text string) bool {
	return strings.ContainsFunc(hole.ReplaceAllString(text, ""), unicode.IsLetter)
}
