package def

import (
	"fmt"
	"regexp"
	"strconv"

	"gopkg.in/yaml.v3"

	"matchmark/packs/source"
)

// maxPlaces is the most places that one range of numbers may stand for: more
// than any machine has cylinders, gates or blades in one row.
const maxPlaces = 200

// maxAxes is how many lists of positions paper can lay out: rows and columns.
const maxAxes = 2

// varying reads a text, or a map from names to texts.
func (r *reader) varying(e *entry, n *yaml.Node) (Varying, bool) {
	n = r.follow(n)
	if n == nil {
		return Varying{}, false
	}
	v := Varying{At: r.place(n)}
	if n.Kind != yaml.MappingNode {
		t, ok := r.scalar(e, n)
		v.One = t
		return v, ok
	}
	for _, p := range r.pairs(n, nil) {
		value := r.follow(p.value)
		if value == nil {
			continue
		}
		if value.Kind != yaml.ScalarNode {
			r.add(r.place(value), "too-deep", e.name+" differs by one thing only: behind "+quote(p.key.Value)+" a text is needed; here stands "+formWords(value),
				"write: "+e.name+": {DE: …, others: …}")
			continue
		}
		if t, ok := r.scalar(e, value); ok {
			v.By = append(v.By, Named{p.key, t})
		}
	}
	if len(n.Content) == 0 {
		r.add(v.At, "empty-map", "nothing stands in the braces behind "+e.name, e.help())
	}
	return v, len(v.By) > 0
}

// list reads one text or several.
func (r *reader) list(e *entry, n *yaml.Node) []source.Text {
	n = r.follow(n)
	if n == nil {
		return nil
	}
	if n.Kind != yaml.SequenceNode {
		return r.part(e, n)
	}
	if len(n.Content) == 0 {
		r.emptyList(e, n)
	}
	var list []source.Text
	for _, item := range n.Content {
		for _, t := range r.part(e, item) {
			if !r.doubled(e, list, t) {
				list = append(list, t)
			}
		}
	}
	return list
}

// lists reads a list of lists.
func (r *reader) lists(e *entry, n *yaml.Node) [][]source.Text {
	n = r.follow(n)
	switch {
	case n == nil:
		return nil
	case n.Kind != yaml.SequenceNode:
		r.add(r.place(n), "wrong-form", e.name+" is a list of lists; here stands "+formWords(n), "for example "+e.name+": "+e.blank())
		return nil
	case len(n.Content) == 0:
		r.emptyList(e, n)
	}
	var out [][]source.Text
	for _, item := range n.Content {
		out = append(out, r.list(e, item))
	}
	return out
}

// aQuantity is a number with a unit behind it, as the lengths of a point.
var aQuantity = regexp.MustCompile(`^[-+]?[0-9][0-9./-]* \S`)

// doubled reports an item of a list that stands in it already, unless things of
// that list come several times. Quantities may be alike.
func (r *reader) doubled(e *entry, list []source.Text, t source.Text) bool {
	if e.again || aQuantity.MatchString(t.Value) {
		return false
	}
	for _, first := range list {
		if first.Value == t.Value && first.At != t.At {
			r.report(source.Problem{
				Pos: t.At, Severity: source.Error, Code: "doubled-item", Message: quote(t.Value) + " stands twice in the list of " + e.name,
				Help: []string{"take one of them out"}, See: []source.Also{{Pos: first.At, What: "the first one"}},
			})
			return true
		}
	}
	return false
}

// named reads a map from names to texts.
func (r *reader) named(e *entry, n *yaml.Node) []Named {
	n, ok := r.mapping(n, r.place(n), e.name+" is a map", e.name+": "+e.blank())
	if !ok {
		return nil
	}
	var list []Named
	for _, p := range r.pairs(n, nil) {
		if t, ok := r.scalar(e, p.value); ok {
			list = append(list, Named{p.key, t})
		}
	}
	return list
}

// face reads a part, alone or with one of its faces.
func (r *reader) face(e *entry, n *yaml.Node) (Face, bool) {
	n = r.follow(n)
	if n == nil {
		return Face{}, false
	}
	if n.Kind != yaml.MappingNode {
		t, ok := r.scalar(e, n)
		return Face{Part: t}, ok
	}
	list := r.named(e, n)
	if len(n.Content) != 2 {
		r.add(r.place(n), "wrong-form", e.name+" takes one part and one face of it", "for example "+e.name+": "+e.blank())
		return Face{}, false
	}
	if len(list) == 0 {
		return Face{}, false
	}
	return Face{Part: list[0].Name, Face: list[0].Value}, true
}

// counts reads parts, each with or without a number of pieces: a part, a list of
// them, or maps from part to number.
func (r *reader) counts(e *entry, n *yaml.Node) []Count {
	n = r.follow(n)
	if n == nil {
		return nil
	}
	part := *e // the part itself is a text; only its number has the form of counts
	part.form = textForm
	switch n.Kind {
	case yaml.MappingNode:
		var list []Count
		for _, p := range r.pairs(n, nil) {
			if p.value == nil {
				continue
			}
			if t, ok := r.scalar(e, p.value); ok {
				list = append(list, Count{p.key, t})
			}
		}
		return list
	case yaml.SequenceNode:
		if len(n.Content) == 0 {
			r.emptyList(e, n)
		}
		var list []Count
		for _, item := range n.Content {
			if it := r.follow(item); it != nil && it.Kind == yaml.SequenceNode {
				r.scalar(&part, it) // a list in the list: says what is wrong
				continue
			}
			for _, c := range r.counts(e, item) {
				list = r.addCount(e, list, c)
			}
		}
		return list
	}
	var list []Count
	part.form = countsForm
	for _, t := range r.partsIn(&part, n) {
		if c, ok := r.pieces(e, t); ok {
			list = append(list, c)
			continue
		}
		list = append(list, Count{Part: t})
	}
	return list
}

// addCount adds a part to a list unless it stands there already.
func (r *reader) addCount(e *entry, list []Count, c Count) []Count {
	parts := make([]source.Text, len(list))
	for i := range list {
		parts[i] = list[i].Part
	}
	if r.doubled(e, parts, c.Part) {
		return list
	}
	return append(list, c)
}

// into reads one place for all removed parts, or one for each.
func (r *reader) into(e *entry, p pair) Into {
	in := Into{At: p.key.At}
	if n := r.follow(p.value); n != nil && n.Kind == yaml.MappingNode {
		in.For = r.named(e, n)
	} else if n != nil {
		in.To, _ = r.scalar(e, n)
	}
	return in
}

// after reads the steps that come before: one, a list, or a map to the reasons.
// An empty map or list says that none has to.
func (r *reader) after(e *entry, p pair) After {
	a := After{At: p.key.At}
	n := r.follow(p.value)
	switch {
	case n == nil:
	case n.Kind == yaml.MappingNode:
		a.Steps = r.named(e, n)
	case n.Kind == yaml.SequenceNode && len(n.Content) == 0:
	default:
		for _, t := range r.list(e, n) {
			a.Steps = append(a.Steps, Named{Name: t})
		}
	}
	return a
}

// positions reads the places of one reading: a name, a range, a list, or a map
// of one or two lists. Without a map there is one list, without a name.
func (r *reader) positions(e *entry, p pair) Positions {
	n := r.follow(p.value)
	if n == nil {
		return Positions{}
	}
	if n.Kind != yaml.MappingNode {
		return Positions{At: p.key.At, Axes: []Axis{{Values: r.names(e, n)}}}
	}
	pos := Positions{At: p.key.At}
	log := 0 // keys that are no list
	for _, q := range r.pairs(n, nil) {
		v := r.follow(q.value)
		if v == nil {
			continue
		}
		if r.logKey(&pos, q, v) {
			log++
			continue
		}
		if v.Kind == yaml.ScalarNode && v.Value == "clock" {
			r.add(r.place(v), "wrong-form", "clock stands alone, not beside other positions", "for example "+q.key.Value+": [0°, 90°, 180°, 270°]")
			continue
		}
		if values := r.names(e, v); len(values) > 0 {
			pos.Axes = append(pos.Axes, Axis{q.key, values})
		}
	}
	switch lists := len(n.Content)/2 - log; {
	case len(n.Content) == 0:
		r.add(r.place(n), "empty-map", "nothing stands in the braces behind "+e.name, e.help())
	case lists > maxAxes:
		r.add(p.key.At, "too-many-lists", fmt.Sprintf("positions run over %d lists; paper has rows and columns, so two at most", lists), "make dimensions of their own for the third")
		pos.Axes = pos.Axes[:min(maxAxes, len(pos.Axes))]
	}
	return pos
}

// logKey reads every or rows of a log; it reports whether the key is one of them.
func (r *reader) logKey(pos *Positions, q pair, v *yaml.Node) bool {
	switch {
	case v.Kind != yaml.ScalarNode: // a list of that name
		return false
	case q.key.Value == "every":
		pos.Every, _ = r.scalar(&entry{name: "every", form: textForm, example: "2 min"}, v)
	case q.key.Value == "rows":
		pos.Rows, _ = r.scalar(&entry{name: "rows", form: numberForm, example: "8"}, v)
	default:
		return false
	}
	return true
}

// numberRange is a range of whole numbers: 1 to 16; letters may stand before both:
// G1 to G16.
var numberRange = regexp.MustCompile(`^([A-Za-z]*)(\d+)(?: +to +| *(?:-|–|\.\.) *)([A-Za-z]*)(\d+)$`)

// names reads a list of names, or a range of numbers that stands for them. All
// names of a range have the place of the range.
func (r *reader) names(e *entry, n *yaml.Node) []source.Text {
	list := r.list(e, n)
	if n = r.follow(n); n == nil || n.Kind != yaml.ScalarNode || len(list) != 1 {
		return list
	}
	t := list[0]
	m := numberRange.FindStringSubmatch(t.Value)
	if m == nil {
		return list
	}
	letters := m[1]
	if letters != "" && m[3] != letters {
		return list // two names with a dash between: A1-B2
	}
	from, err1 := strconv.Atoi(m[2])
	to, err2 := strconv.Atoi(m[4])
	if m[3] != letters || err1 != nil || err2 != nil || from >= to || to-from >= maxPlaces {
		r.add(t.At, "range-form", fmt.Sprintf("%s is no range of 2 to %d places counted upward", quote(t.Value), maxPlaces), "for example 1 to 16")
		return nil
	}
	list = list[:0]
	for i := from; i <= to; i++ {
		list = append(list, source.Text{Value: letters + strconv.Itoa(i), At: t.At})
	}
	return list
}

// sections reads the work: a list whose items are sections, put-backs and steps.
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
		if what == "reverse" {
			reverseKind.fill(r, s, m, at)
		} else {
			sectionKind.fill(r, s, m, at)
		}
	}
}

// itemKind tells by its keys what an item of the work is: section, reverse or
// step. Where none of these is written, a misspelled one counts, and then a key
// that only steps have.
func itemKind(m *yaml.Node) string {
	kinds := []string{"section", "reverse", "step"}
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
		if near := source.Nearest(name, kinds); near != "" {
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
