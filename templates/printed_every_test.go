package templates_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// A written is one text of a definition: the path of fields that leads to it, the text, and
// for which place or build it is.
type written struct {
	path string
	text source.Text
	by   string // the name in a map from names: a place, or a build
}

// writtenIn are the texts of a definition, in the order of its fields. What only some
// machines have is left out: it stands on the paper of those.
func writtenIn(v reflect.Value, path string) (out []written) {
	switch x := v.Interface().(type) {
	case source.Text:
		if x.Written() {
			out = append(out, written{path: path, text: x})
		}
		return out
	case source.Pos:
		return nil
	case def.Varying:
		if x.One.Written() {
			out = append(out, written{path: path, text: x.One})
		}
		for _, n := range x.By {
			out = append(out, written{path: path, text: n.Value, by: n.Name.Value})
		}
		return out
	}
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			return writtenIn(v.Elem(), path)
		}
	case reflect.Slice:
		for i := range v.Len() {
			out = append(out, writtenIn(v.Index(i), path)...)
		}
	case reflect.Struct:
		if a := v.FieldByName("Applies"); a.IsValid() && (a.Interface().(def.Applies).Fitted.Written() || a.Interface().(def.Applies).If.Written()) {
			return nil
		}
		for i := range v.NumField() {
			out = append(out, writtenIn(v.Field(i), fieldPath(path, v.Type().Field(i)))...)
		}
	}
	return out
}

// pathsOf are the paths of all texts that a type of definition can hold.
func pathsOf(t reflect.Type, path string) (out []string) {
	switch t {
	case reflect.TypeFor[source.Text](), reflect.TypeFor[def.Varying]():
		return []string{path}
	case reflect.TypeFor[source.Pos]():
		return nil
	}
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice:
		return pathsOf(t.Elem(), path)
	case reflect.Struct:
		for i := range t.NumField() {
			out = append(out, pathsOf(t.Field(i).Type, fieldPath(path, t.Field(i)))...)
		}
	}
	return out
}

// fieldPath is the path of a field; those that a struct takes over are its own.
func fieldPath(path string, f reflect.StructField) string {
	switch {
	case f.Anonymous:
		return path
	case path == "":
		return f.Name
	}
	return path + "." + f.Name
}

// An edited file system has one file with other bytes.
type edited struct {
	fs.FS
	own fstest.MapFS
}

func (e edited) Open(name string) (fs.File, error) {
	if _, ok := e.own[name]; ok {
		return e.own.Open(name)
	}
	return e.FS.Open(name)
}

// behind puts a word behind each of some texts of a file, those of a line from its end on.
func behind(data []byte, words map[source.Pos]string) []byte {
	lines := bytes.Split(data, []byte("\n"))
	var places []source.Pos
	for p := range words {
		places = append(places, p)
	}
	slices.SortFunc(places, func(a, b source.Pos) int { return b.Col - a.Col })
	for _, p := range places {
		line := []rune(string(lines[p.Line-1]))
		end := p.Col - 1 + p.Width
		lines[p.Line-1] = []byte(string(line[:end]) + " " + words[p] + string(line[end:]))
	}
	return bytes.Join(lines, []byte("\n"))
}

// loadOther loads a definition of other bytes than those of its file.
func loadOther(file string, data []byte) (*job.Job, source.Problems) {
	dir, in := inputsOf(file)
	return packs.Load(edited{os.DirFS(dir), fstest.MapFS{in.Definition: {Data: data}}}, in)
}

// Each key whose text is for people stands in printedTexts, and each other one in
// otherTexts with the reason why it is not looked up word by word: a new key has to be
// given its place.
func TestEveryKeyIsForPaperOrNot(t *testing.T) {
	known := map[string]int{}
	for _, p := range strings.Fields(printedTexts) {
		known[p]++
	}
	for reason, list := range otherTexts {
		for _, p := range strings.Fields(list) {
			known[p]++
		}
		if len(reason) < 10 {
			t.Errorf("%q is no reason", reason)
		}
	}
	for _, p := range pathsOf(reflect.TypeFor[def.Definition](), "") {
		if known[p] != 1 {
			t.Errorf("%s is in %d lists, not in one: is it printed, or why not?", p, known[p])
		}
		delete(known, p)
	}
	for p := range known {
		t.Errorf("%s is in a list, and no key of a definition", p)
	}
}

// Every text that a definition has for people is found on some sheet: a word of its own put
// behind each is printed. Four keys were read and stood nowhere: why an instrument is so
// coarse, a remark on a part, where a highest temperature and a table of reductions are from.
func TestEveryTextStandsOnPaper(t *testing.T) {
	texts := map[string]bool{}
	for _, p := range strings.Fields(printedTexts) {
		texts[p] = true
	}
	asked := map[string]bool{}
	for _, file := range definitions(t) {
		if _, in := inputsOf(file); in.Job != "" {
			continue // another file decides what its machine has
		}
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		d, problems := def.Read(filepath.Base(file), data)
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		words, whose := wordsFor(writtenIn(reflect.ValueOf(d), ""), texts)
		for _, x := range whose {
			asked[x.path] = true
		}
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			jb, problems := loadOther(file, behind(data, words))
			if problems.Errors() > 0 {
				t.Fatal(problems)
			}
			text := everyWord(jb)
			for word, x := range whose {
				if !strings.Contains(text, word) {
					t.Errorf("%s:%d: %s: %q stands on no sheet", filepath.Base(file), x.text.At.Line, x.path, x.text.Value)
				}
			}
			t.Logf("%d texts looked up", len(whose))
		})
	}
	for p := range texts {
		if !asked[p] {
			t.Errorf("no definition has %s: it was looked up nowhere", p)
		}
	}
}

// called are the keys that name a thing by a text that is printed, with the key of that text.
var called = map[string]string{"Sections.Reverse": "Sections.Name", "Lifts.UpendedOn": "Lifts.Legs.Name", "Lifts.Points.Name": "Lifts.Legs.Takes"}

// aMark is a text that names a dimension or a joint.
var aMark = regexp.MustCompile(`^[A-Z]\d+(/|$)`)

// asWritten reports whether a text is printed as it was written, by the texts before it in
// the definition: fixed words and marks are not, nor what is said of one build alone, nor is the name of a part that is only
// measured or tightened, which is told by its face and by its joint.
func asWritten(x written, moved, builds map[string]bool, key string) bool {
	switch x.path {
	case "Equipment.Serial":
		return len(builds) == 0 // else it says which build the machine is
	case "Parts.Renew":
		return strings.HasPrefix(x.text.Value, "if ")
	case "Parts.Name":
		return moved[key]
	case "Sections.Steps.EachTry":
		return !aMark.MatchString(x.text.Value)
	case "Sections.Steps.BackPermit":
		return strings.Contains(x.text.Value, " ") // a reason, not the name of a permit
	}
	if x.text.Value == "none" || x.by == "others" && len(builds) > 0 {
		return false
	}
	return !builds[x.by] && len([]rune(x.text.Value)) == x.text.At.Width
}

// wordsFor gives each text for people a word of its own, by its place, and tells whose each
// word is. What names a thing by such a text has the same word.
func wordsFor(all []written, texts map[string]bool) (words map[source.Pos]string, whose map[string]written) {
	words, whose = map[source.Pos]string{}, map[string]written{}
	moved, builds, byText := map[string]bool{}, map[string]bool{}, map[string]string{}
	for _, x := range all {
		switch x.path {
		case "Sections.Steps.Remove.Part", "Sections.Steps.Fit.Part", "Sections.Steps.ForNow.Part":
			moved[x.text.Value] = true
		case "Options.Builds.Name":
			builds[x.text.Value] = true
		}
	}
	named := slices.Collect(maps.Values(called))
	key := ""
	for _, x := range all {
		if x.path == "Parts.Key" {
			key = x.text.Value
		}
		if !texts[x.path] || words[x.text.At] != "" || !asWritten(x, moved, builds, key) {
			continue
		}
		word := fmt.Sprintf("qz%sj", strings.Map(func(r rune) rune { return r - '0' + 'b' }, fmt.Sprint(len(words))))
		if slices.Contains(named, x.path) {
			if same := byText[x.path+" "+x.text.Value]; same != "" {
				word = same
			}
			byText[x.path+" "+x.text.Value] = word
		}
		words[x.text.At], whose[word] = word, x
	}
	for _, x := range all {
		if word := byText[called[x.path]+" "+x.text.Value]; word != "" {
			words[x.text.At] = word
		}
	}
	return words, whose
}

// everyWord is all that is read on the pages and tags of a job, in small letters.
func everyWord(jb *job.Job) string {
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	var b strings.Builder
	for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
		for _, f := range doc.Pages {
			for _, it := range f.Items {
				if x, ok := it.Shape.(layout.Text); ok {
					b.WriteString(x.S)
				}
			}
		}
	}
	return strings.ToLower(squeeze(b.String()))
}
