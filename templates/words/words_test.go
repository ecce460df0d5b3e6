package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/reading"
)

// languages are all catalogues.
var languages = []*Catalogue{English}

// No field of a catalogue is empty: an empty one leaves a hole on paper. A sentence
// has a hole to fill, and no other word has one, for it would be printed as %s.
func TestNoWordIsEmpty(t *testing.T) {
	for _, c := range languages {
		eachText(t, c.Lang, reflect.ValueOf(*c))
	}
}

func eachText(t *testing.T, name string, v reflect.Value) {
	t.Helper()
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			eachText(t, name+"."+v.Type().Field(i).Name, v.Field(i))
		}
	case reflect.Map:
		if v.Len() == 0 && v.Type() != reflect.TypeFor[Sayings]() && v.Type() != reflect.TypeFor[Causes]() { // in English the sentence itself is printed
			t.Errorf("%s is empty", name)
		}
		for _, k := range v.MapKeys() {
			eachText(t, name+"[]", v.MapIndex(k))
		}
	case reflect.Slice, reflect.Array:
		if v.Len() == 0 {
			t.Errorf("%s is empty", name)
		}
		for i := range v.Len() {
			eachText(t, name+"[]", v.Index(i))
		}
	case reflect.String:
		hole := strings.Contains(v.String(), "%s")
		sentence := v.Type() == reflect.TypeFor[Sentence]()
		switch {
		case v.String() == "":
			t.Errorf("%s is empty", name)
		case hole && !sentence:
			t.Errorf("%s is no Sentence and has a hole: %q", name, v)
		case sentence && !hole && !strings.HasSuffix(name, "[]"): // of a list of acts only some have
			t.Errorf("%s is a Sentence without a hole: %q", name, v)
		}
	default:
		t.Errorf("%s is a %s, which is no text", name, v.Kind())
	}
}

// Every word that a limit can ask for has its text: one that lacks would leave a
// hole in a printed limit.
func TestTheCatalogueHasEveryWordOfLimits(t *testing.T) {
	for _, c := range languages {
		for w := reading.Literal + 1; w < reading.NumWords; w++ {
			if c.Limit[w] == "" {
				t.Errorf("%s: word %d of limits has no text", c.Lang, w)
			}
		}
		for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
			if c.Common.Group[g] == "" {
				t.Errorf("%s: group %d of readings has no text", c.Lang, g)
			}
		}
	}
}

// Every field is used where sheets are set: a word that nothing prints would still
// be translated. The sheets write catalogue, struct and field of a word together, as
// in c.W.Lift.Hook or w.Lift.Hook.
func TestEveryWordIsUsed(t *testing.T) {
	used := map[string]bool{}
	err := filepath.WalkDir("..", func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") || strings.HasPrefix(e.Name(), "en") && filepath.Dir(path) == filepath.Join("..", "words") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range f.Decls {
			// A method of a sheet's words writes c.OnePiece for Common.OnePiece.
			self, sheet := receiver(d)
			alias := map[string]string{self: sheet} // w := c.W.Tag
			ast.Inspect(d, func(n ast.Node) bool {
				if set, ok := n.(*ast.AssignStmt); ok && len(set.Lhs) == len(set.Rhs) {
					for i, value := range set.Rhs {
						if of, ok := value.(*ast.SelectorExpr); ok && slices.Contains([]string{"W", "w"}, lastName(of.X)) {
							alias[lastName(set.Lhs[i])] = of.Sel.Name
						}
					}
				}
				s, ok := n.(*ast.SelectorExpr)
				if !ok {
					return true
				}
				switch x := s.X.(type) {
				case *ast.Ident:
					if alias[x.Name] != "" {
						used[alias[x.Name]+"."+s.Sel.Name] = true
					}
				case *ast.SelectorExpr:
					if of := lastName(x.X); of == "W" || of == "w" || sheet == "Catalogue" && of == self {
						used[x.Sel.Name+"."+s.Sel.Name] = true
					}
				}
				return true
			})
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for sheet := range reflect.TypeFor[Catalogue]().Fields() {
		if sheet.Type.Kind() != reflect.Struct {
			continue
		}
		for f := range sheet.Type.Fields() {
			if !used[sheet.Name+"."+f.Name] {
				t.Errorf("no sheet uses %s.%s", sheet.Name, f.Name)
			}
		}
	}
}

// receiver is the name and the type of the receiver of a method, empty for all else.
func receiver(d ast.Decl) (name, typ string) {
	if f, ok := d.(*ast.FuncDecl); ok && f.Recv != nil && len(f.Recv.List[0].Names) > 0 {
		return f.Recv.List[0].Names[0].Name, lastName(f.Recv.List[0].Type)
	}
	return "", ""
}

// lastName is the last name of a chain of selectors.
func lastName(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.StarExpr:
		return lastName(x.X)
	case *ast.SelectorExpr:
		return x.Sel.Name
	case *ast.Ident:
		return x.Name
	}
	return ""
}

// The holes of a sentence are filled in their order. A part whose name held %s
// swallowed the value behind it.
func TestWith(t *testing.T) {
	if got, want := Sentence("%s of %s").With("3", "18"), "3 of 18"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got, want := Sentence("%s, bag %s").With("Tray %s", "springs"), "Tray %s, bag springs"; got != want {
		t.Errorf("a part named with %%s: got %q, want %q", got, want)
	}
}
