package def

import (
	"fmt"
	"strconv"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// maxPlaces is the most places that one range of numbers may stand for: more
// than any machine has cylinders, gates or blades in one row.
const maxPlaces = 200

// maxAxes is how many lists of positions paper can lay out: rows and columns.
const maxAxes = 2

// positions reads the places of one reading: a name, a range, a list, or a map
// of one or two lists. Without a map there is one list, without a name.
func (r *reader) positions(e *entry, p pair) Positions {
	n := r.follow(p.value)
	if n == nil {
		return Positions{}
	}
	if n.Kind != yaml.MappingNode {
		return Positions{At: p.key.At, Axes: []Axis{{Values: r.ownPositions(e, n)}}}
	}
	pos := Positions{At: p.key.At}
	log := 0 // keys that are no list
	pairs := r.pairs(n, keySet{any: listForm})
	for _, q := range pairs {
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
		if values := r.ownPositions(e, v); len(values) > 0 {
			pos.Axes = append(pos.Axes, Axis{q.key, values})
		}
	}
	switch lists := len(pairs) - log; {
	case len(n.Content) == 0:
		r.add(r.place(n), "empty-map", "nothing stands in the braces behind "+e.name, e.help())
	case lists > maxAxes:
		r.add(p.key.At, "too-many-lists", fmt.Sprintf("positions run over %d lists; paper has rows and columns, so two at most", lists), "make dimensions of their own for the third")
		pos.Axes = pos.Axes[:min(maxAxes, len(pos.Axes))]
	}
	return pos
}

// ownPositions reads the names of one list of positions, by which values may be given.
func (r *reader) ownPositions(e *entry, n *yaml.Node) []source.Text {
	list := r.names(e, n)
	for _, t := range list {
		r.noLanguage(t, "position")
	}
	return list
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
var numberRange = phrase.Of(`^([A-Za-z]*)(\d+)(?: +to +| *(?:-|–|\.\.) *)([A-Za-z]*)(\d+)$`)

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
