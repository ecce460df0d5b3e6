package def

import (
	"gopkg.in/yaml.v3"

	"matchmark/packs/nearest"
	"matchmark/packs/source"
)

// sections reads the work: a list whose items are sections, put-backs, uses of other files and steps.
// Steps outside a section make one without a heading, as long as they follow
// one another.
func (r *reader) sections(e *entry, d *Definition, n *yaml.Node) {
	var loose *Section
	for _, item := range r.items(e, n) {
		m, ok := r.mapping(item, r.place(item), "steps is a list of sections", e.name+": "+e.blank())
		if !ok {
			continue
		}
		at := r.firstKey(m)
		what := itemKind(m)
		if what == "step" {
			if loose == nil {
				loose = &Section{At: at}
				d.Sections = append(d.Sections, loose)
			}
			stepKind.fill(r, addStep(loose, at), m, at)
			continue
		}
		loose = nil
		s := &Section{At: at}
		d.Sections = append(d.Sections, s)
		switch what {
		case "reverse":
			reverseKind.fill(r, s, m, at)
		case "use":
			s.Use = &Use{At: at}
			useKind.fill(r, s.Use, m, at)
		default:
			sectionKind.fill(r, s, m, at)
		}
	}
}

// itemKind tells by its keys what an item of the work is: section, reverse, use or
// step. Where none of these is written, a misspelled one counts, and then a key
// that only steps have.
func itemKind(m *yaml.Node) string {
	kinds := []string{"section", "reverse", "use", "step"}
	for _, k := range kinds {
		if hasKey(m, k) {
			return k
		}
	}
	what := "section"
	for i := 0; i+1 < len(m.Content); i += 2 {
		name := m.Content[i].Value
		if sectionKind.find(name) != nil {
			continue
		}
		if near := nearest.Word(name, kinds); near != "" {
			return near
		}
		if stepKind.find(name) != nil {
			what = "step"
		}
	}
	return what
}

// hasKey reports whether a map has a key.
func hasKey(m *yaml.Node, name string) bool {
	for i := 0; i+1 < len(m.Content); i += 2 {
		if m.Content[i].Kind == yaml.ScalarNode && m.Content[i].Value == name {
			return true
		}
	}
	return false
}

// ownKey takes over the key under which a thing is known: a mark with the letter
// of its kind, or a name when it has none.
func (r *reader) ownKey(t source.Text, kind, letter string) source.Text {
	if letter != "" {
		return r.ownMark(t, kind, letter)
	}
	return r.ownName(t, kind)
}
