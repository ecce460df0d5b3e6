package templates_test

import (
	"os"
	"reflect"
	"regexp"
	"strings"
	"sync"
	"testing"
	"unicode"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
	"matchmark/templates/words"
)

// starterFiles are the definitions that ship.
var starterFiles = []string{"storm-pump.yaml", "exhaust-fan.yaml", "bevel-gearbox.yaml", "triplex-pump.yaml"}

// loadIn loads a starter in a language, once for all tests.
func loadIn(t *testing.T, starter, lang string) *job.Job {
	t.Helper()
	key := starter + " " + lang
	once, _ := loaded.LoadOrStore(key, sync.OnceValue(func() *job.Job {
		j, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: starter, Language: lang})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		return j
	}))
	return once.(func() *job.Job)()
}

var loaded sync.Map

// composeIn sets a starter on paper, with a second language where one is named.
func composeIn(t *testing.T, starter, lang, second string, paper layout.Paper) (*job.Job, *templates.Pack, source.Problems) {
	t.Helper()
	o := templates.Options{Paper: paper}
	if second != "" {
		o.Second = loadIn(t, starter, second)
	}
	j := loadIn(t, starter, lang)
	pack, problems := templates.Compose(j, o, pdf.NewFaces(), nil)
	return j, pack, problems
}

// eachTextOf goes through the texts of all pages and tags.
func eachTextOf(pack *templates.Pack, do func(f layout.Frame, text string)) {
	frames := append(append([]layout.Frame{}, pack.Pages.Pages...), pack.Tags.Pages...)
	for _, f := range frames {
		for _, it := range f.Items {
			if x, ok := it.Shape.(layout.Text); ok {
				do(f, x.S)
			}
		}
	}
}

// ownTexts are all texts that a job brings along: what its author wrote, numbers of steps,
// marks, sources. The numbers that the program writes are none of them: they have the
// decimal mark.
func ownTexts(j *job.Job) []string {
	var out []string
	seen := map[uintptr]bool{}
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Pointer:
			if !v.IsNil() && !seen[v.Pointer()] {
				seen[v.Pointer()] = true
				walk(v.Elem())
			}
		case reflect.Interface:
			walk(v.Elem())
		case reflect.Struct:
			for i := range v.NumField() {
				if v.Type().Field(i).IsExported() {
					walk(v.Field(i))
				}
			}
		case reflect.Slice, reflect.Array:
			for i := range v.Len() {
				walk(v.Index(i))
			}
		case reflect.Map:
			for _, k := range v.MapKeys() {
				walk(k)
				walk(v.MapIndex(k))
			}
		case reflect.String:
			out = append(out, v.String())
		}
	}
	walk(reflect.ValueOf(j))
	return out
}

// textsOf are all texts of a catalogue.
func textsOf(w *words.Catalogue) []string {
	var out []string
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Struct:
			for i := range v.NumField() {
				walk(v.Field(i))
			}
		case reflect.Slice, reflect.Array:
			for i := range v.Len() {
				walk(v.Index(i))
			}
		case reflect.Map:
			for _, k := range v.MapKeys() {
				walk(v.MapIndex(k))
			}
		case reflect.String:
			out = append(out, v.String())
		}
	}
	walk(reflect.ValueOf(*w))
	return out
}

// figures are the bits of a text that have a figure on both sides of a sign.
func figures(sign *regexp.Regexp, text string) []string {
	var out []string
	for _, bit := range strings.FieldsFunc(text, func(r rune) bool {
		return unicode.IsSpace(r) || strings.ContainsRune("()[],;:·–—/×=", r) && !strings.ContainsRune(",.", r)
	}) {
		if sign.MatchString(bit) {
			out = append(out, strings.Trim(bit, ".,"))
		}
	}
	return out
}

var pointed, comma = regexp.MustCompile(`[0-9]\.[0-9]`), regexp.MustCompile(`[0-9],[0-9]`)
