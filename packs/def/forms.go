package def

import (
	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

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
	for _, p := range r.pairs(n, keySet{}) {
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
var aQuantity = phrase.Of(`^[-+]?[0-9][0-9./-]* \S`)

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
	for _, p := range r.pairs(n, keySet{}) {
		if t, ok := r.scalar(e, p.value); ok {
			list = append(list, Named{p.key, t})
		}
	}
	return list
}

// face reads a part, alone or with one of its faces, which may differ by place.
func (r *reader) face(e *entry, n *yaml.Node) (Face, bool) {
	n = r.follow(n)
	if n == nil {
		return Face{}, false
	}
	if n.Kind != yaml.MappingNode {
		t, ok := r.scalar(e, n)
		return Face{Part: t}, ok
	}
	if len(n.Content) != 2 {
		list := r.pairs(n, keySet{}) // tells of keys that stand twice
		r.add(r.place(n), "wrong-form", e.name+" takes one part and one face of it", e.faceHelp(list, r)...)
		return Face{}, false
	}
	for _, p := range r.pairs(n, keySet{}) {
		if v, ok := r.varying(e, p.value); ok {
			return Face{Part: p.key, Face: v}, true
		}
	}
	return Face{}, false
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
		for _, p := range r.pairs(n, keySet{}) {
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

// marked reads parts, each with or without the part on the other side of its joint: a part, a
// list of them, or maps from one part to the other.
func (r *reader) marked(e *entry, n *yaml.Node) []MatchMark {
	n = r.follow(n)
	if n == nil {
		return nil
	}
	switch n.Kind {
	case yaml.MappingNode:
		if len(n.Content) == 0 {
			r.add(r.place(n), "empty-map", "nothing stands in the braces behind "+e.name, e.help())
		}
		var list []MatchMark
		for _, nd := range r.named(e, n) {
			list = append(list, MatchMark{nd.Name, nd.Value})
		}
		return list
	case yaml.SequenceNode:
		if len(n.Content) == 0 {
			r.emptyList(e, n)
		}
		var list []MatchMark
		var parts []source.Text
		for _, item := range n.Content {
			if it := r.follow(item); it != nil && it.Kind == yaml.SequenceNode {
				r.scalar(e, it) // a list in the list: says what is wrong
				continue
			}
			for _, m := range r.marked(e, item) {
				if !r.doubled(e, parts, m.Part) {
					list, parts = append(list, m), append(parts, m.Part)
				}
			}
		}
		return list
	}
	var list []MatchMark
	for _, t := range r.part(e, n) {
		list = append(list, MatchMark{Part: t})
	}
	return list
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
