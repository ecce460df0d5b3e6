package words

import (
	"reflect"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"
)

// Each counted sentence has all the forms that CLDR gives its language for whole numbers
// (golang.org/x/text/feature/plural), and no others.
func TestCountedHasTheFormsOfItsLanguage(t *testing.T) {
	for _, lang := range Languages() {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		met := map[string]bool{"other": true} // of parts of a thing
		for _, n := range append(ints(1000), 1_000_000, 2_000_000) {
			met[pluralNames[plural.Cardinal.MatchPlural(language.Make(lang), n, 0, 0, 0, 0)]] = true
		}
		n := 0
		eachCounted(reflect.ValueOf(*c), lang, func(name string, forms Counted) {
			n++
			for form := range met {
				if forms[form] == "" {
					t.Errorf("%s lacks the form %s", name, form)
				}
			}
			for form, text := range forms {
				if !met[form] && form != "many" { // which later editions of CLDR give French and Spanish for millions
					t.Errorf("%s has the form %s, which the language has not", name, form)
				}
				if form != "one" && !strings.Contains(string(text), "%s") {
					t.Errorf("%s has no number in %q", name, text)
				}
			}
		})
		if n < 3 {
			t.Errorf("%s: %d counted sentences", lang, n)
		}
	}
}

// ints are the whole numbers from 0 on.
func ints(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// eachCounted goes through the counted sentences of a catalogue.
func eachCounted(v reflect.Value, name string, do func(name string, forms Counted)) {
	if forms, ok := v.Interface().(Counted); ok {
		do(name, forms)
		return
	}
	if v.Kind() == reflect.Struct {
		for i := range v.NumField() {
			eachCounted(v.Field(i), name+"."+v.Type().Field(i).Name, do)
		}
	}
}

// The forms of Polish: one for 1, few for 2 to 4 but not for 12 to 14, many for the others
// (grammar, from memory). 22 pieces are said as 2, 12 as 5.
func TestPolishPieces(t *testing.T) {
	pl, err := In("pl")
	if err != nil {
		t.Fatal(err)
	}
	for n, form := range map[int]string{
		1: "one", 2: "few", 4: "few", 5: "many", 11: "many", 12: "many", 14: "many", 21: "many", 22: "few", 25: "many", 101: "many", 102: "few", 112: "many",
	} {
		if got, want := pl.Pieces(n), pl.Common.Pieces[form].With(strconv.Itoa(n)); got != want {
			t.Errorf("%d pieces are %q, want %q", n, got, want)
		}
	}
}
