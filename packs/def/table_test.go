package def

import (
	"bytes"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

func TestEveryKeyIsDocumented(t *testing.T) {
	for _, s := range shapes() {
		if !strings.HasSuffix(s.about(), ".") {
			t.Errorf("%s: %q is not a sentence", s.title(), s.about())
		}
		for _, e := range s.entries() {
			if !strings.HasSuffix(e.doc, ".") || e.example == "" {
				t.Errorf("%s.%s: doc %q, example %q", s.title(), e.name, e.doc, e.example)
			}
			if e.name != strings.ToLower(e.name) || strings.ContainsAny(e.name, "_ ") {
				t.Errorf("%s.%s: a key is spelled in small letters and dashes", s.title(), e.name)
			}
			if e.words() == "" || e.shapeWords() == "" {
				t.Errorf("%s.%s: nothing is said of what stands behind it", s.title(), e.name)
			}
		}
	}
}

// around is what stands before and behind a key of a shape that is named by the
// marks of a definition; nothing for a definition itself.
func around(s shape) (before, after string) {
	for _, e := range definitionKind.entries() {
		if e.form != mapsForm || e.inner[0] != s {
			continue
		}
		key := s.mark() + "1"
		if s.mark() == "" {
			key = "a"
		}
		return e.name + ": {" + key + ": {", "}}"
	}
	return "", ""
}

func TestTheExamplesOfAllKeysReadWithoutAProblem(t *testing.T) {
	text := exampleOf(definitionKind).text()
	if _, ps := Read("all.yaml", text); len(ps) > 0 {
		t.Errorf("definition:\n%s", show(ps, "all.yaml", text))
	}
	text = exampleOf(jobFileKind).text()
	if _, ps := ReadJob("job.yaml", text); len(ps) > 0 {
		t.Errorf("job file:\n%s", show(ps, "job.yaml", text))
	}
	text = exampleOf(siteFileKind).text()
	if _, ps := ReadSite("site.yaml", text); len(ps) > 0 {
		t.Errorf("site file:\n%s", show(ps, "site.yaml", text))
	}
	// The examples of maps stand in help lines as they are in the table.
	for _, s := range shapes() {
		for _, e := range s.entries() {
			if e.form == mapForm || e.form == mapsForm || e.form == sectionsForm {
				// Of what is not an example, only that it is missing is told.
				before, after := around(s)
				text := []byte(before + e.name + ": " + e.example + after + "\n")
				_, ps := Read("x.yaml", text)
				switch s {
				case shape(jobFileKind):
					_, ps = ReadJob("x.yaml", text)
				case shape(siteFileKind):
					_, ps = ReadSite("x.yaml", text)
				}
				for _, p := range ps {
					if p.Code != "missing-key" || p.Pos.Line != 1 || p.Pos.Col > len(before)+1 {
						t.Errorf("example of %s.%s:\n%s", s.title(), e.name, show(ps, "x.yaml", text))
						break
					}
				}
			}
		}
	}
}

// unwritten lists the fields of a value that hold nothing.
func unwritten(v reflect.Value, path string) []string {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return []string{path}
		}
		return unwritten(v.Elem(), path)
	case reflect.Slice:
		if v.Len() == 0 {
			return []string{path}
		}
		var list []string
		for i := range v.Len() {
			list = append(list, unwritten(v.Index(i), fmt.Sprintf("%s[%d]", path, i))...)
		}
		return list
	case reflect.Struct:
		switch x := v.Interface().(type) {
		case source.Text:
			if !x.Written() || x.Value == "" {
				return []string{path}
			}
			return nil
		case Varying:
			if !x.Written() || !x.One.Written() && len(x.By) == 0 {
				return []string{path}
			}
			return nil
		case Into:
			if x.At.IsZero() || !x.To.Written() && len(x.For) == 0 {
				return []string{path}
			}
			return nil
		case source.Pos:
			if x.IsZero() {
				return []string{path}
			}
			return nil
		}
		var list []string
		for i := range v.NumField() {
			list = append(list, unwritten(v.Field(i), path+"."+v.Type().Field(i).Name)...)
		}
		return list
	}
	return nil
}

// Every field of the definition is reached by a key, and every key reaches one:
// with all keys written no field is empty, save those that exclude each other.
func TestEveryKeyLandsInAFieldAndEveryFieldHasAKey(t *testing.T) {
	f := exampleOf(definitionKind)
	d, _ := Read("all.yaml", f.text())
	expected := map[string]bool{
		// positions in lists are no log
		"Definition.Dimensions[0].At.Every": true, "Definition.Dimensions[0].At.Rows": true,
		// a scatter in full is not one word
		"Definition.Joints[0].Scatter.Word": true,
		// the examples of parts without a number, and of ranges without own places
		"Definition.Sections[0].Reverse": true, "Definition.Sections[1].Name": true,
		"Definition.Sections[1].Each": true, "Definition.Sections[1].Steps": true,
		"Definition.Sections[1].Applies.Fitted": true, "Definition.Sections[1].Applies.If": true,
		"Definition.Sections[2].Applies.Fitted": true, "Definition.Sections[2].Applies.If": true,
		"Definition.Sections[2].Name": true, "Definition.Sections[2].Each": true, "Definition.Sections[2].Reverse": true,
		// a section is no use of another file, nor the other way round
		"Definition.Sections[0].Use": true, "Definition.Sections[1].Use": true, "Definition.Sections[2].Use": true,
		"Definition.Sections[3].Name": true, "Definition.Sections[3].Each": true, "Definition.Sections[3].Steps": true, "Definition.Sections[3].Reverse": true,
		"Definition.Sections[3].Applies.Fitted": true, "Definition.Sections[3].Applies.If": true,
	}
	for _, path := range unwritten(reflect.ValueOf(d), "Definition") {
		switch {
		case expected[path],
			strings.Contains(path, "].Remove[0].N"), strings.Contains(path, "].Fit[0].N"), // a part without a number
			strings.Contains(path, "Places[0].Places[") && !strings.Contains(path, "Places[16]"): // names alone
		default:
			t.Errorf("%s is not written by any key", path)
		}
	}
	j, _ := ReadJob("job.yaml", exampleOf(jobFileKind).text())
	for _, path := range unwritten(reflect.ValueOf(j), "JobFile") {
		t.Errorf("%s is not written by any key", path)
	}
	site, _ := ReadSite("site.yaml", exampleOf(siteFileKind).text())
	for _, path := range unwritten(reflect.ValueOf(site), "SiteFile") {
		t.Errorf("%s is not written by any key", path)
	}
}

func TestTakingAKeyAwaySpeaksWhenItIsNeededAndElseEmptiesItsField(t *testing.T) {
	f := exampleOf(definitionKind)
	whole, _ := Read("all.yaml", f.text())
	empty := map[string]bool{}
	for _, path := range unwritten(reflect.ValueOf(whole), "") {
		empty[path] = true
	}
	for _, k := range f.keys {
		text := f.without(k)
		d, ps := Read("all.yaml", text)
		name := k.shape.title() + "." + k.entry.name
		switch {
		case k.shape == reverseKind, k.shape == useKind && k.entry.name == "use": // it alone makes the item what it is
		case k.entry.need:
			found := false
			for _, p := range ps {
				found = found || strings.Contains(p.Message, "needs the key "+k.entry.name+":") || p.Code == "no-value" || p.Code == "wrong-form"
			}
			if !found {
				t.Errorf("%s: taking it away says nothing:\n%s", name, show(ps, "all.yaml", text))
			}
		case k.entry.name == "names":
			if n := len(d.Places[0].Places); n != 1 {
				t.Errorf("%s: taking it away leaves %d places, want the one written out", name, n)
			}
		case !slices.ContainsFunc(unwritten(reflect.ValueOf(d), ""), func(path string) bool { return !empty[path] }):
			t.Errorf("%s: taking it away leaves no field empty", name)
		}
	}
}

func TestMisspellingAKeySpeaksAtItsPlace(t *testing.T) {
	f := exampleOf(definitionKind)
	for _, k := range f.keys {
		text := f.misspelled(k)
		_, ps := Read("all.yaml", text)
		found := false
		for _, p := range ps {
			// A key that a group of places does not know is the name of a place,
			// and then what stands behind it is no map.
			unknown := p.Code == "unknown-key" || k.shape == groupKind && p.Code == "wrong-form"
			found = found || unknown && p.Pos.Line == k.line+1
		}
		if !found {
			t.Errorf("%s.%s: misspelling it says nothing at line %d:\n%s", k.shape.title(), k.entry.name, k.line+1, show(ps, "all.yaml", text))
		}
	}
}

func TestDoublingAKeyNamesTheFirst(t *testing.T) {
	f := exampleOf(definitionKind)
	for _, k := range f.keys {
		lines := append([]string{}, f.lines[:k.end]...)
		lines = append(lines, f.lines[k.line:k.end]...)
		lines = append(lines, f.lines[k.end:]...)
		text := []byte(strings.Join(lines, "\n"))
		_, ps := Read("all.yaml", text)
		found := false
		for _, p := range ps {
			found = found || p.Code == "doubled-key" && len(p.See) == 1 && p.See[0].Pos.Line == k.line+1 &&
				p.Pos.Line == k.end+1 && p.Pos.Col == k.col
		}
		if !found {
			t.Errorf("%s.%s: doubling it is not told at its place:\n%s", k.shape.title(), k.entry.name, show(ps, "all.yaml", text))
		}
	}
}

func TestSchemaAndReferenceHoldEveryKeyAndAreTheSameEachTime(t *testing.T) {
	for _, w := range []struct {
		name  string
		write func(*bytes.Buffer) error
		key   string
	}{
		{"schema", func(b *bytes.Buffer) error { return errors.Join(Schema(b), JobSchema(b), SiteSchema(b)) }, `"%s": {`},
		{"reference", func(b *bytes.Buffer) error { return Reference(b) }, "`%s`"},
	} {
		var first, second bytes.Buffer
		if err := w.write(&first); err != nil {
			t.Fatal(err)
		}
		if err := w.write(&second); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(first.Bytes(), second.Bytes()) {
			t.Errorf("%s differs when written twice", w.name)
		}
		for _, s := range shapes() {
			for _, e := range s.entries() {
				if !strings.Contains(first.String(), fmt.Sprintf(w.key, e.name)) {
					t.Errorf("%s: %s.%s is missing", w.name, s.title(), e.name)
				}
			}
		}
	}
}
