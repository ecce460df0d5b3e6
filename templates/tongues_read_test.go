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
	once, _ := loaded.LoadOrStore(starter+" "+lang, sync.OnceValue(func() *job.Job {
		j, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: starter, Language: lang})
		if problems.Errors() > 0 {
			panic(starter + " in " + lang + ": " + problems.Error())
		}
		return j
	}))
	return once.(func() *job.Job)()
}

var loaded, composed sync.Map // what is made once, by the names of what it is made from

// A composing is a pack with what does not fit.
type composing struct {
	pack     *templates.Pack
	problems source.Problems
}

// composeIn sets a starter on paper, with a second language where one is named, once for
// all tests, which must not change it.
func composeIn(t *testing.T, x setting) (*job.Job, *templates.Pack, source.Problems) {
	t.Helper()
	j := loadIn(t, x.starter, x.lang)
	once, _ := composed.LoadOrStore(x, sync.OnceValue(func() composing {
		o := templates.Options{Paper: x.paper}
		if x.second != "" {
			o.Second = loadIn(t, x.starter, x.second)
		}
		pack, problems := templates.Compose(j, o, pdf.NewFaces(), nil)
		return composing{pack, problems}
	}))
	made := once.(func() composing)()
	return j, made.pack, made.problems
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
