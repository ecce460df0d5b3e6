package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// elsewhere are the codes that no file in bad shows, with the reason.
var elsewhere = map[string]string{
	"unreadable":    "needs a file that the system does not give: testdata/script/files.txtar",
	"too-large":     "needs a file above 4 MB: hostile_test.go",
	"more-problems": "needs over a hundred mistakes: hostile_test.go",
	"yaml":          "a fault of YAML that no other message fits; none is known: packs/def, FuzzRead",
	"empty":         "an empty limit; the reader of the file finds the missing value first",
	"dimension":     "units that do not convert; the caller words it, as other-unit or box-size",
	"picture":       "a picture that cannot be read; no key takes a picture",
	"code-too-long": "a code longer than any symbol holds; names and numbers have limits of their own below that",
	"condition":     "no key takes a condition",
	"formula":       "no key takes a formula",
	"stage":         "no sheet prints stages of tightening",
}

// TestEveryCodeIsShown: each code of a problem in the source has a definition in
// bad that gets it.
func TestEveryCodeIsShown(t *testing.T) {
	t.Parallel()
	shown := codesShown(t)
	codes := codesInSource(t, codeDirs...)
	if len(codes) < 80 {
		t.Errorf("found %d codes in the source, there are more", len(codes))
	}
	for _, c := range codes {
		switch _, apart := elsewhere[c]; {
		case apart && shown[c] != "":
			t.Errorf("%s is shown in testdata/bad: take it off the list", c)
		case !apart && shown[c] == "":
			t.Errorf("no definition in testdata/bad gets the problem %s", c)
		}
	}
}

// codeDirs are the packages that find problems.
var codeDirs = []string{
	"packs", "packs/names", "packs/choose", "packs/expand", "packs/lifting", "packs/heating", "packs/plan", "packs/proofread", "packs/proof",
	"packs/putback", "packs/keep", "packs/hazard", "packs/def", "packs/source", "packs/reading", "packs/units", "templates",
}

// saidHead is the first line of a problem as check prints it.
var saidHead = regexp.MustCompile(`(?m)^[\w.-]+\.(?:yaml|inc)(?::\d+:\d+)?: .* \[([a-z0-9-]+)\]$`)

// codesShown are the codes that definitions in bad get, each with the file that shows
// it: that of its own name where there is one, else the first.
func codesShown(t *testing.T) map[string]string {
	t.Helper()
	outs, err := filepath.Glob(filepath.Join(testdata, "bad", "*.out"))
	if err != nil {
		t.Fatal(err)
	}
	shown := map[string]string{}
	for _, f := range outs {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		name := strings.TrimSuffix(filepath.Base(f), ".out")
		for _, m := range saidHead.FindAllStringSubmatch(string(data), -1) {
			if shown[m[1]] == "" || name == m[1] {
				shown[m[1]] = name + ".yaml"
			}
		}
	}
	return shown
}

// codesInSource lists the codes of problems that packages can report: the texts
// given for a parameter called code, and those of a field Code.
func codesInSource(t *testing.T, dirs ...string) []string {
	t.Helper()
	var files []*ast.File
	for _, dir := range dirs {
		paths, err := filepath.Glob(filepath.Join("../..", dir, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range paths {
			if strings.HasSuffix(path, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, f)
		}
	}
	takes := codeParameters(files)
	var codes []string
	add := func(e ast.Expr) {
		if lit, ok := e.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			if s, err := strconv.Unquote(lit.Value); err == nil && s != "" {
				codes = append(codes, s)
			}
		}
	}
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if i, ok := takes[calledName(n.Fun)]; ok && i < len(n.Args) {
					add(n.Args[i])
				}
			case *ast.KeyValueExpr:
				if key, ok := n.Key.(*ast.Ident); ok && strings.EqualFold(key.Name, "code") {
					add(n.Value)
				}
			}
			return true
		})
	}
	slices.Sort(codes)
	return slices.Compact(codes)
}

// codeParameters finds the functions with a parameter called code, and which of
// their parameters it is.
func codeParameters(files []*ast.File) map[string]int {
	takes := map[string]int{}
	note := func(name string, f *ast.FuncType) {
		i := 0
		for _, field := range f.Params.List {
			for _, p := range field.Names {
				if p.Name == "code" {
					takes[name] = i
				}
				i++
			}
		}
	}
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.FuncDecl:
				note(n.Name.Name, n.Type)
			case *ast.AssignStmt:
				for i, x := range n.Rhs {
					if fn, ok := x.(*ast.FuncLit); ok {
						if id, ok := n.Lhs[i].(*ast.Ident); ok {
							note(id.Name, fn.Type)
						}
					}
				}
			}
			return true
		})
	}
	return takes
}

// calledName is the last name of what is called.
func calledName(f ast.Expr) string {
	switch f := f.(type) {
	case *ast.Ident:
		return f.Name
	case *ast.SelectorExpr:
		return f.Sel.Name
	}
	return ""
}
