package def

import (
	"path"
	"reflect"
	"slices"
	"strings"

	"matchmark/packs/source"
)

// includedKind are the keys of a file that a definition includes: the things, without
// the machine, the job and the work.
var includedKind = &kind[Definition]{
	name: "included file",
	doc:  "Things that several definitions share: cautions, instruments, joints and the like.",
	keys: slices.DeleteFunc(slices.Clone(definitionKind.keys), func(k key[Definition]) bool {
		return slices.Contains([]string{"pack", "equipment", "job", "steps"}, k.name)
	}),
}

// ReadIncluded reads a file that a definition includes, as Read reads a definition.
func (t Tongue) ReadIncluded(name string, data []byte) (*Definition, source.Problems) {
	d := &Definition{}
	r := t.newReader(name, data)
	if root := r.root(data, "cautions: {…}, or any other key of a definition but pack, equipment, job and steps"); root != nil {
		d.At = r.firstKey(root)
		includedKind.fill(r, d, root, d.At)
	}
	d.English = r.english
	return d, r.sorted()
}

// Beside is the path of a file that another one names: beside it, or in a folder below.
// No other path is taken, so that a definition that somebody sends reads nothing else
// of the disk.
func Beside(file, name string) (string, bool) {
	if name == "" || strings.ContainsAny(name, "\\:") || path.IsAbs(name) || path.Clean(name) != name || name == "." || name == ".." || strings.HasPrefix(name, "../") {
		return "", false
	}
	dir := strings.ReplaceAll(file, "\\", "/")
	if i := strings.LastIndex(dir, "/"); i >= 0 {
		return dir[:i+1] + name, true
	}
	return name, true
}

// Take adds the things of an included file to those of the definition. Two of one kind
// with one mark or name are a problem that names both.
func (d *Definition) Take(from *Definition) source.Problems {
	var ps source.Problems
	to, by := reflect.ValueOf(d).Elem(), reflect.ValueOf(from).Elem()
	for i := range to.NumField() {
		field := to.Field(i)
		if field.Kind() != reflect.Slice || field.Type().Elem().Kind() != reflect.Pointer || to.Type().Field(i).Name == "Sections" {
			continue
		}
		have := map[string]source.Pos{}
		for k := range field.Len() {
			t := ownText(field.Index(k))
			have[t.Value] = t.At
		}
		for k := range by.Field(i).Len() {
			thing := by.Field(i).Index(k)
			t := ownText(thing)
			if first, twice := have[t.Value]; twice {
				ps.AddWith(t.At, "doubled-key", source.Quote(t.Value)+" is described by two files", first, "the first one", "take one of them out, or give it another name")
				continue
			}
			have[t.Value] = t.At
			field.Set(reflect.Append(field, thing))
		}
	}
	return ps
}

// ownText is the mark or name of a thing: the first text of its kind.
func ownText(thing reflect.Value) source.Text {
	for i := range thing.Elem().NumField() {
		if t, ok := thing.Elem().Field(i).Interface().(source.Text); ok {
			return t
		}
	}
	return source.Text{}
}

// TakeSite adds the hazard notes of a site that steps of the definition name; one of the
// definition with the same name stands in place of that of the site.
func (d *Definition) TakeSite(s *SiteFile) {
	named := map[string]bool{}
	for _, section := range d.Sections {
		for _, st := range section.Steps {
			for _, t := range slices.Concat(st.Caution, st.BackCaution) {
				named[t.Value] = true
			}
		}
	}
	for _, c := range d.Cautions {
		delete(named, c.Key.Value)
	}
	for _, c := range s.Cautions {
		if named[c.Key.Value] {
			d.Cautions = append(d.Cautions, c)
		}
	}
}
