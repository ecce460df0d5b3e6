package words

import (
	"embed"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"sync"
)

// The other languages stand in one file each, named by ISO 639-1. A file has the sheets
// and words of Catalogue as objects and keys. The words of a map are found by their key,
// or by their English text where the key is a number in the program; the sentences of
// Sayings always by their English text, those of Causes by the code of a problem.
//
//go:embed tongues/*.json
var files embed.FS

// Languages are the languages that a pack can be printed in, by ISO 639-1: en first.
func Languages() []string {
	out := []string{English.Lang}
	entries, _ := files.ReadDir("tongues")
	for _, e := range entries {
		out = append(out, strings.TrimSuffix(e.Name(), ".json"))
	}
	return out
}

// In gives the catalogue of a language. The error names the languages that there are, or
// for a file of the program that lacks words or has words too many, all of those.
func In(lang string) (*Catalogue, error) {
	if lang == "" || lang == English.Lang {
		return English, nil
	}
	if !slices.Contains(Languages(), lang) {
		return nil, fmt.Errorf("there are no words in the language %q: it is one of %s", lang, strings.Join(Languages(), ", "))
	}
	once, _ := read.LoadOrStore(lang, sync.OnceValues(func() (*Catalogue, error) { return readTongue(lang) }))
	return once.(func() (*Catalogue, error))()
}

var read sync.Map // of func() (*Catalogue, error) by language

func readTongue(lang string) (*Catalogue, error) {
	data, err := files.ReadFile("tongues/" + lang + ".json")
	if err != nil {
		return nil, err
	}
	var tree map[string]any
	if err := json.Unmarshal(data, &tree); err != nil {
		return nil, fmt.Errorf("words of %s: %w", lang, err)
	}
	out := &Catalogue{}
	f := filler{}
	f.fill(lang, reflect.ValueOf(out).Elem(), reflect.ValueOf(*English), tree)
	out.Lang = lang
	return out, errors.Join(f.faults...)
}

// filler puts the texts of a file into a catalogue of the shape of the English one, and
// notes what lacks and what is too many.
type filler struct{ faults []error }

func (f *filler) fault(path, what string) {
	f.faults = append(f.faults, fmt.Errorf("%s %s", path, what))
}

func (f *filler) fill(path string, dst, english reflect.Value, from any) {
	switch dst.Kind() {
	case reflect.String:
		text, ok := from.(string)
		if !ok || text == "" {
			f.fault(path, "has no text")
		}
		dst.SetString(text)
	case reflect.Struct:
		f.fields(path, dst, english, from)
	case reflect.Map:
		f.entries(path, dst, english, from)
	case reflect.Slice, reflect.Array:
		list, _ := from.([]any)
		if len(list) != english.Len() {
			f.fault(path, fmt.Sprintf("has %d entries and not %d", len(list), english.Len()))
			return
		}
		if dst.Kind() == reflect.Slice {
			dst.Set(reflect.MakeSlice(dst.Type(), len(list), len(list)))
		}
		for i := range list {
			f.fill(fmt.Sprintf("%s[%d]", path, i), dst.Index(i), english.Index(i), list[i])
		}
	}
}

func (f *filler) fields(path string, dst, english reflect.Value, from any) {
	tree, _ := from.(map[string]any)
	left := maps.Clone(tree)
	for i := range dst.NumField() {
		name := dst.Type().Field(i).Name
		switch {
		case name == "Lang":
			continue
		case english.Field(i).Kind() == reflect.Slice && english.Field(i).Len() == 0:
			continue
		}
		f.fill(path+"."+name, dst.Field(i), english.Field(i), tree[name])
		delete(left, name)
	}
	for _, name := range slices.Sorted(maps.Keys(left)) {
		f.fault(path+"."+name, "is no word of the catalogue")
	}
}

func (f *filler) entries(path string, dst, english reflect.Value, from any) {
	tree, _ := from.(map[string]any)
	dst.Set(reflect.MakeMap(dst.Type()))
	free := dst.Type() == reflect.TypeFor[Counted]() || dst.Type() == reflect.TypeFor[Sayings]() || dst.Type() == reflect.TypeFor[Causes]()
	left := maps.Clone(tree)
	put := func(name string, key, model reflect.Value) {
		v := reflect.New(dst.Type().Elem()).Elem()
		f.fill(path+"."+name, v, model, tree[name])
		dst.SetMapIndex(key, v)
		delete(left, name)
	}
	if free {
		for name := range tree {
			put(name, reflect.ValueOf(name).Convert(dst.Type().Key()), reflect.Value{})
		}
		return
	}
	for _, key := range english.MapKeys() {
		name := english.MapIndex(key).String()
		if key.Kind() == reflect.String {
			name = key.String()
		}
		put(name, key, english.MapIndex(key))
	}
	for _, name := range slices.Sorted(maps.Keys(left)) {
		f.fault(path+"."+name, "is no word of the catalogue")
	}
}
