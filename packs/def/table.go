package def

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/source"
)

// A form is what may stand behind a key.
type form int

const (
	textForm         form = iota // a text
	numberForm                   // a whole number from 1 up
	decimalForm                  // a number with or without decimals
	flagForm                     // yes or no
	dateForm                     // a day: 2026-03-02
	varyingForm                  // a text, or a map from a name to a text
	varyingCountForm             // a whole number, or a map from a name to one
	listForm                     // a text or a list of texts
	faceForm                     // a part, or a map from the part to its face
	countsForm                   // a part, or a list of parts, each with or without a number of pieces
	marksForm                    // a part, or a list of parts, each with or without the part across its joint
	intoForm                     // a place for all parts, or a map from a part to its place
	afterForm                    // a step, a list of steps, or a map from a step to the reason
	positionsForm                // clock, a list, or a map of one or two lists
	namesForm                    // a list of names, or a range of numbers: 1 to 16
	choicesForm                  // a map from an option to yes, no or a build
	namedTextsForm               // a map from a name to a text
	mapForm                      // a map of keys of its own
	mapsForm                     // a map from a mark or name to maps
	sectionsForm                 // a list of sections, put-backs and steps
	itemsForm                    // a list of maps
	textOrMapForm                // a text, or a map of keys of its own
	listsForm                    // a list of lists of texts
)

// An entry is one line of the table of keys: all that the reader, the schema
// and the reference need to know of a key.
type entry struct {
	name    string
	doc     string // one sentence
	form    form
	example string // a value as it stands behind the key, in one line of YAML
	need    bool   // the map is not complete without it

	allowed []string // the only texts that may stand; "if …" allows all that begin with "if "
	letters string   // the marks that may stand besides the allowed texts, as "CY"
	named   bool     // a name may stand where a mark may
	again   bool     // an item may stand several times in the list
	least   bound    // which amounts it takes, where it takes one
	inner   []shape  // the maps that may stand behind it
	placed  []string // what to write in place of a map by place, which it does not take
}

// A key is an entry of the maps that are read into a T.
type key[T any] struct {
	entry
	land func(r *reader, e *entry, t *T, p pair)
}

// must marks a key that has to be written.
func (k key[T]) must() key[T] { k.need = true; return k }

// oneOf lists the only texts that may stand behind a key.
func (k key[T]) oneOf(texts ...string) key[T] { k.allowed = texts; return k }

// marks says which marks a key names, by their letters.
func (k key[T]) marks(letters string) key[T] { k.letters = letters; return k }

// orName says that a key takes names as well as marks.
func (k key[T]) orName() key[T] { k.named = true; return k }

// mayRepeat says that an item may stand several times in the list.
func (k key[T]) mayRepeat() key[T] { k.again = true; return k }

// byPlace says what to write where a map by place is tried, which the key does not take.
func (k key[T]) byPlace(help ...string) key[T] { k.placed = help; return k }

// A kind is a sort of map: its name in the singular, what it is, the letter of
// the marks that it stands behind (none: it has a name or stands alone), and its
// keys in the order in which they are explained.
type kind[T any] struct {
	name   string
	doc    string
	letter string
	keys   []key[T]
	// rest reads what stands behind a key that is not in keys. Only groups of
	// places have one: there the author chooses the keys. restShape is what it
	// reads, for schema and reference.
	rest      func(r *reader, t *T, p pair)
	restShape shape
}

// A shape is a kind without its type, as schema and reference see it.
type shape interface {
	title() string
	about() string
	mark() string
	entries() []*entry
	others() shape
}

func (k *kind[T]) title() string { return k.name }
func (k *kind[T]) about() string { return k.doc }
func (k *kind[T]) mark() string  { return k.letter }
func (k *kind[T]) others() shape { return k.restShape }

func (k *kind[T]) entries() []*entry {
	list := make([]*entry, len(k.keys))
	for i := range k.keys {
		list[i] = &k.keys[i].entry
	}
	return list
}

// find gives the key of a name, nil if there is none.
func (k *kind[T]) find(name string) *key[T] {
	for i := range k.keys {
		if k.keys[i].name == name {
			return &k.keys[i]
		}
	}
	return nil
}

// known are the keys of the kind.
func (k *kind[T]) known() keySet {
	return keySet{find: func(name string) *entry {
		if found := k.find(name); found != nil {
			return &found.entry
		}
		return nil
	}}
}

// fill reads a map into t. Its problems are reported at the keys they concern;
// at is the place for those of the map as a whole.
func (k *kind[T]) fill(r *reader, t *T, n *yaml.Node, at source.Pos) {
	sample := k.sample()
	if v := r.follow(n); v != nil && v.Kind == yaml.ScalarNode && !isNull(v) && oneLine(v.Value) != "" && len(k.keys) > 0 {
		if e := k.keys[0].entry; e.form == textForm || e.form == varyingForm {
			sample = "{" + e.name + ": " + oneLine(v.Value) + ", …}"
		}
	}
	n, ok := r.mapping(n, at, k.name+" is a map of keys", sample)
	if !ok {
		return
	}
	seen := map[string]bool{}
	for _, p := range r.pairs(n, k.known()) {
		found := k.find(p.key.Value)
		if found == nil {
			if k.rest == nil {
				// A misspelled key is one problem, and read as what it was meant for.
				near := r.unknownKey(p.key, k, k.lacking(n))
				if meant := k.find(near); meant != nil && p.value != nil && !seen[near] && !hasKey(n, near) {
					meant.land(r, &meant.entry, t, p)
				}
				seen[near] = true
			} else if p.value != nil {
				k.rest(r, t, p)
			}
			continue
		}
		seen[found.name] = true
		if p.value != nil {
			found.land(r, &found.entry, t, p)
		}
	}
	for i := range k.keys {
		if e := &k.keys[i].entry; e.need && !seen[e.name] {
			r.add(at, "missing-key", article(k.name)+" needs the key "+e.name+": "+lowerFirst(e.doc), "for example "+e.name+": "+e.blank())
		}
	}
}

// lacking are the keys that a map has to have and has not.
func (k *kind[T]) lacking(n *yaml.Node) []string {
	var out []string
	for i := range k.keys {
		if e := &k.keys[i].entry; e.need && !hasKey(n, e.name) {
			out = append(out, e.name)
		}
	}
	return out
}

// sample is an example of a map of this kind: of the keys it needs, or of its
// first two.
func (k *kind[T]) sample() string {
	var list []string
	for i := range k.keys {
		if e := &k.keys[i].entry; e.need {
			list = append(list, e.name+": "+e.blank())
		}
	}
	for i := 0; i < len(k.keys) && i < 2 && !k.needs(); i++ {
		list = append(list, k.keys[i].name+": "+k.keys[i].blank())
	}
	return "{" + strings.Join(list, ", ") + "}"
}

// needs reports whether there is a key that has to be written.
func (k *kind[T]) needs() bool {
	return slices.ContainsFunc(k.keys, func(key key[T]) bool { return key.need })
}
