package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"path/filepath"
	"regexp"
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
	"lift.refuse":   {2}, "lift.ask": {2}, "heat.refuse": {2}, "heat.refuseAs": {3}, "fit.because": {0}, "lifting.Fixed": {1}, "outage.Fixed": {1}, "outage.of": {1, 2}, "outage.Said": {0}, "source.NotWritten": {0},
	"heat.positive": {1}, "heat.notNegative": {1}, "heat.check": {1},
}

// composed are sentences that are put together of pieces, or stand in a variable.
var composed = []string{
	"not named",
	"number and revision are those of %s",
	"published guides for flanges",
	"ASME PCC-1, Table 2, legacy",
	"%s: %s",
	"%s is not written",
	"; the same at 1 more place",
	"; the same at %d more places",
	"%s to %s",
	"the wanted preload",
	"legs of %s and steeper",
	"%s, top lug of %s",
	", half its rating",
	"F = share As Sp",
	"M = sum m; X = sum(m x)/M",
	"T = W sin(beta of the other) / sin(both betas), beta from the plumb line",
	"T = the most of all balanced sets of four legs, two carrying",
	"V_A = W b/s, b and s square to the plumb line",
	"angle in the choke",
	"basket, two parts",
	"bridle as a whole",
	"conductivity",
	"contraction",
	"contraction = diameter x mean expansion x (20 °C - coolant)",
	"exact statics",
	"exact statics; two legs counted also by US Navy training manuals 14080 and 14251",
	"expansion, mean",
	"force over area",
	"greatest of the fit",
	"gross + gear above the legs + block",
	"gross + gear above the legs + block + the tackle and the pull on its line",
	"hub expansion, mean",
	"induction",
	"levels off at",
	"lifting point",
	"lug",
	"mean expansion",
	"opening levels off = expansion x diameter x power / (8 pi x conductivity x length), and the joint's share",
	"oven",
	"quasi-steady heating of a solid shaft and its hub, derived; no losses counted",
	"rise = (interference + clearance) / (expansion x diameter)",
	"sum V = W, moments about the centre of gravity nothing",
	"time to lay the torches down and to work a loaded puller over the length of the seat; common practice, no source",
	"torch",
	"two legs to 45° from vertical",
	"volume of a solid of revolution",
}

// inWords tells a rule that is told in words from a number of a standard.
var inWords = regexp.MustCompile(`[a-z]{4}`)

// sayings are the sentences that the calculators and the hazard notes bring along, found
// in their source.
func sayings(t *testing.T) map[string]bool {
	t.Helper()
	out := map[string]bool{"angle from the bolt axis": true}
	for _, s := range composed {
		out[s] = true
	}
	for _, pkg := range []string{"heat", "lift", "joint", "hazard", "fit", "lifting", "outage"} {
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
					switch {
					case key == "Rule" && inWords.MatchString(literal(x.Value)), pkg == "heat" && slices.Contains([]string{"Name", "Source"}, key):
						note(out, x.Value)
					}
					if pkg == "hazard" && slices.Contains([]string{"Hazard", "Result", "Short", "Avoid"}, key) || pkg == "lift" && slices.Contains([]string{"What", "Formula"}, key) {
						note(out, x.Value)
					}
				case *ast.ValueSpec:
					if lastName(x.Names[0]) == "temperColours" {
						ast.Inspect(x.Values[0], func(n ast.Node) bool {
							if c, ok := n.(*ast.CompositeLit); ok && c.Type == nil {
								note(out, c.Elts[0])
							}
							return true
						})
					}
				case *ast.CompositeLit:
					if pkg == "heat" && lastName(x.Type) == "Limit" && len(x.Elts) > 1 {
						note(out, x.Elts[1]) // the source of a ceiling
					}
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
	if text := literal(x); hasWord(text) {
		out[text] = true
	}
}

// literal is a text in quotes, or of several joined; empty for all else.
func literal(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.BasicLit:
		if text, err := strconv.Unquote(x.Value); err == nil && x.Kind == token.STRING {
			return text
		}
	case *ast.BinaryExpr:
		if a, b := literal(x.X), literal(x.Y); a != "" && b != "" {
			return a + b
		}
	}
	return ""
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

// A sentence that one language has all have, with the same holes: what one translator found
// on paper stood in English on that of the others.
func TestSayingsAreTheSameInAllLanguages(t *testing.T) {
	holes := regexp.MustCompile(`%(?:\[[0-9]\])?((?:\.[0-9])?[a-z])`)
	of := func(text string) []string {
		var out []string
		for _, m := range holes.FindAllStringSubmatch(text, -1) {
			out = append(out, m[1])
		}
		slices.Sort(out)
		return out
	}
	all := map[string]bool{}
	var cs []*Catalogue
	for _, lang := range Languages()[1:] {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		cs = append(cs, c)
		for s := range c.Sayings {
			all[s] = true
		}
	}
	for _, s := range slices.Sorted(maps.Keys(all)) {
		for _, c := range cs {
			if text, ok := c.Sayings[s]; !ok || !slices.Equal(of(text), of(s)) {
				t.Errorf("%s: %q is %q", c.Lang, s, text)
			}
		}
	}
}
