package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// saysAt are the functions of the calculators that make a sentence for paper, by package
// and name, with the places of their texts.
var saysAt = map[string][]int{
	"heat.assume": {1}, "heat.add": {1}, "heat.warn": {2},
	"lift.say": {0}, "lift.caution": {3}, "lift.work": {0, 1}, "lift.workOf": {1, 2}, "lift.fig": {0}, "lift.figUp": {0}, "lift.figDown": {0},
	"joint.caution": {2},
}

// sayings are the sentences that the calculators and the hazard notes bring along, found
// in their source.
func sayings(t *testing.T) map[string]bool {
	t.Helper()
	out := map[string]bool{}
	for _, pkg := range []string{"heat", "lift", "joint", "hazard"} {
		files, err := filepath.Glob(filepath.Join("..", "..", "packs", pkg, "*.go"))
		if err != nil || len(files) == 0 {
			t.Fatal(pkg, err)
		}
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			ast.Inspect(f, func(n ast.Node) bool {
				switch x := n.(type) {
				case *ast.CallExpr:
					for _, i := range saysAt[pkg+"."+lastName(x.Fun)] {
						if i < len(x.Args) {
							note(out, x.Args[i])
						}
					}
				case *ast.KeyValueExpr:
					key := lastName(x.Key)
					if pkg == "hazard" && slices.Contains([]string{"Hazard", "Result", "Short", "Avoid"}, key) || pkg == "lift" && slices.Contains([]string{"What", "Formula"}, key) {
						note(out, x.Value)
					}
				case *ast.CompositeLit:
					if pkg == "lift" && lastName(x.Type) == "Reduction" && len(x.Elts) > 0 {
						note(out, x.Elts[0])
					}
				}
				return true
			})
		}
	}
	return out
}

// note takes up a text that has a word in it; a formula in symbols needs no language.
func note(out map[string]bool, x ast.Expr) {
	lit, ok := x.(*ast.BasicLit)
	if !ok || lit.Kind != token.STRING {
		return
	}
	text, err := strconv.Unquote(lit.Value)
	if err == nil && hasWord(text) {
		out[text] = true
	}
}

// hasWord tells a text with a word of three letters or more, sin, cos and sqrt apart.
func hasWord(text string) bool {
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
		if len(w) > 2 && !slices.Contains([]string{"sin", "cos", "sqrt", "rho", "sum"}, w) {
			return true
		}
	}
	return false
}

// Every sentence of a calculation and of a hazard note has its text in each language.
func TestEverySentenceIsSaid(t *testing.T) {
	want := sayings(t)
	for _, lang := range Languages()[1:] {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range slices.Sorted(maps.Keys(want)) {
			if c.Sayings[s] == "" {
				t.Errorf("%s lacks %q", lang, s)
			}
		}
	}
}
