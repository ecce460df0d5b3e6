package def

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A pair is one key of a map and what stands behind it; value is nil when a
// problem has been reported for it.
type pair struct {
	key   source.Text
	value *yaml.Node
}

// isNull reports whether nothing stands where a value should: an empty place, ~
// or the word null without quotes.
func isNull(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Tag == "!!null"
}

// follow gives the node that an alias stands for, and nil for a hole.
func (r *reader) follow(n *yaml.Node) *yaml.Node {
	for n != nil && !r.holes[n] {
		if n.Kind != yaml.AliasNode {
			return n
		}
		n = n.Alias
	}
	return nil
}

// mapping gives n if it is a map. If it is not, it reports so in the words
// given, with an example, and false is returned.
func (r *reader) mapping(n *yaml.Node, at source.Pos, words, example string) (*yaml.Node, bool) {
	n = r.follow(n)
	if n == nil {
		return nil, false
	}
	if n.Kind != yaml.MappingNode {
		if !isNull(n) {
			at = r.place(n)
		}
		r.add(at, "wrong-form", words+"; here stands "+formWords(n), "for example "+example)
		return nil, false
	}
	return n, true
}

// formWords says what a node is.
func formWords(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.MappingNode:
		return "a map of keys"
	case n.Kind == yaml.SequenceNode:
		return "a list"
	case isNull(n), n.Kind == yaml.ScalarNode && n.Value == "":
		return "nothing"
	}
	return quote(n.Value)
}

// firstKey is the place of the first key of a map, else of the node.
func (r *reader) firstKey(n *yaml.Node) source.Pos {
	if m := r.follow(n); m != nil && m.Kind == yaml.MappingNode && len(m.Content) > 0 {
		return r.place(m.Content[0])
	}
	return r.place(n)
}

// pairs gives the keys of a map in the order written. It reports keys that are
// doubled, that are no texts, and that have no value. known tells which keys
// the map may have.
func (r *reader) pairs(m *yaml.Node, known keySet) []pair {
	var list []pair
	first := map[string]source.Pos{}
	for i := 0; i+1 < len(m.Content); i += 2 {
		k, v := m.Content[i], m.Content[i+1]
		if cut := r.cutByComma(m, i, known); cut > 0 {
			// The entry before lost its end: it is no more than a hole.
			if len(list) > 0 {
				list[len(list)-1].value = nil
			}
			i += 2 * (cut - 1)
			continue
		}
		key, ok := r.keyText(k)
		if !ok {
			continue
		}
		if at, twice := first[key.Value]; twice {
			r.report(source.Problem{
				Pos: key.At, Severity: source.Error, Code: "doubled-key",
				Message: "the key " + quote(key.Value) + " stands twice in this map",
				Help:    []string{"take one of them out, or give it another name"},
				See:     []source.Also{{Pos: at, What: "the first one"}},
			})
			continue
		}
		first[key.Value] = key.At
		if isNull(v) && !r.holes[v] && known.has(key.Value) {
			r.noValue(m, key)
			v = nil
		}
		list = append(list, pair{key, v})
	}
	return list
}

// keyText gives the text of a key.
func (r *reader) keyText(k *yaml.Node) (source.Text, bool) {
	switch {
	case r.holes[k]:
		return source.Text{}, false
	case k.Tag == "!!merge":
		r.add(r.place(k), "merge-key", "<< is not read here: each key is written where it belongs",
			"write the keys out, or repeat a whole map with an alias: key: *name")
		return source.Text{}, false
	case k.Kind == yaml.AliasNode:
		r.add(r.place(k), "key-form", "an alias cannot stand for a key", "write the key out")
		return source.Text{}, false
	case k.Kind != yaml.ScalarNode:
		r.add(r.place(k), "key-form", "a key is a word; here stands "+formWords(k), "are the braces or brackets in the wrong place?")
		return source.Text{}, false
	case k.Value == "" && !isQuoted(k):
		r.add(r.place(k), "key-form", "a key is missing before the colon", "write: key: value, or put a text with a colon in quotes")
		return source.Text{}, false
	}
	return source.Text{Value: oneLine(k.Value), At: r.place(k)}, true
}

// noValue reports a key with nothing behind it.
func (r *reader) noValue(m *yaml.Node, key source.Text) {
	help := []string{"write a value behind it, or take the key out"}
	if m.Style&yaml.FlowStyle != 0 {
		help = append(help, "inside { } a comma ends the entry: a text with a comma needs quotes")
	}
	r.add(key.At, "no-value", "no value stands behind "+quote(key.Value), help...)
}

// wordKey is what a key looks like, known or not.
var wordKey = phrase.Of(`^[\p{L}\d -]+$`)

// unknownKey reports a key that the map cannot have, and gives the one that was
// probably meant, "" if none is near. One that the map lacks is meant before others.
func (r *reader) unknownKey(key source.Text, k shape, lacking []string) string {
	var names []string
	for _, e := range k.entries() {
		names = append(names, e.name)
	}
	slices.Sort(names)
	var help []string
	near := nearest.Word(key.Value, lacking)
	if near == "" {
		near = nearest.Word(key.Value, names)
	}
	for _, word := range otherWords[strings.ToLower(key.Value)] {
		if near == "" && slices.Contains(names, word) {
			near = word
		}
	}
	if near != "" {
		help = append(help, "did you mean "+near+"?")
	}
	if near == "" && !wordKey.MatchString(key.Value) {
		help = append(help, "a text with a colon and a blank in it needs quotes")
	}
	help = append(help, "keys of "+article(k.title())+": "+strings.Join(names, ", "))
	r.add(key.At, "unknown-key", quote(key.Value)+" is not a key of "+article(k.title()), help...)
	return near
}

// items gives the entries of a list of maps; one map alone stands for a list of
// one.
func (r *reader) items(e *entry, n *yaml.Node) []*yaml.Node {
	n = r.follow(n)
	switch {
	case n == nil:
		return nil
	case n.Kind == yaml.MappingNode:
		return []*yaml.Node{n}
	case n.Kind != yaml.SequenceNode:
		r.add(r.place(n), "wrong-form", e.name+" is a list; here stands "+formWords(n), "for example "+e.name+": "+e.blank())
		return nil
	case len(n.Content) == 0:
		r.emptyList(e, n)
	}
	return n.Content
}

// emptyList reports a list with nothing in it.
func (r *reader) emptyList(e *entry, n *yaml.Node) {
	r.add(r.place(n), "empty-list", "nothing stands in the list of "+e.name, e.help())
}

// help says what to write behind a key, or to leave it out where that can be.
func (e *entry) help() string {
	s := "for example " + e.name + ": " + e.blank()
	if !e.need {
		s += ", or take the key out"
	}
	return s
}
