package def

import (
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// The functions of this file make one key of the table each: from its name, its
// sentence, an example and the field where it lands.

// one makes a key with one scalar of the given form.
func one[T any](f form, name, doc, example string, field func(*T) *source.Text) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: f, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			if v, ok := r.scalar(e, p.value); ok {
				*field(t) = v
			}
		},
	}
}

// text makes a key with one text.
func text[T any](name, doc, example string, field func(*T) *source.Text) key[T] {
	return one(textForm, name, doc, example, field)
}

// number makes a key with a whole number.
func number[T any](name, doc, example string, field func(*T) *source.Text) key[T] {
	return one(numberForm, name, doc, example, field)
}

// flag makes a key with yes or no.
func flag[T any](name, doc, example string, field func(*T) *source.Text) key[T] {
	return one(flagForm, name, doc, example, field)
}

// varying makes a key whose value may differ by place.
func varying[T any](name, doc, example string, field func(*T) *Varying) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: varyingForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			if v, ok := r.varying(e, p.value); ok {
				*field(t) = v
			}
		},
	}
}

// count makes a key with a number of pieces that may differ by place.
func count[T any](name, doc, example string, field func(*T) *Varying) key[T] {
	k := varying(name, doc, example, field)
	k.form = varyingCountForm
	return k
}

// list makes a key with one text or several.
func list[T any](name, doc, example string, field func(*T) *[]source.Text) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: listForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.list(e, p.value)
		},
	}
}

// each is the key of everything that repeats over places.
func each[T any](field func(*T) *[]source.Text) key[T] {
	return list("each", "The group of places it repeats over, or one of its places; two groups are crossed.", "end", field)
}

// face makes a key with a part and one of its faces.
func face[T any](name, doc, example string, field func(*T) *Face) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: faceForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			if v, ok := r.face(e, p.value); ok {
				*field(t) = v
			}
		},
	}
}

// counts makes a key with parts, each with or without a number of pieces.
func counts[T any](name, doc, example string, field func(*T) *[]Count) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: countsForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.counts(e, p.value)
		},
	}
}

// marked makes a key with parts, each with or without the part on the other side of its joint.
func marked[T any](name, doc, example string, field func(*T) *[]MatchMark) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: marksForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.marked(e, p.value)
		},
	}
}

// mapOf makes a key with a map from a mark or name to maps of one kind.
func mapOf[T, E any](name, doc, example string, k *kind[E], field func(*T) *[]*E, own func(*E) *source.Text) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: mapsForm, example: example, inner: []shape{k}},
		land: func(r *reader, e *entry, t *T, p pair) {
			n, ok := r.mapping(p.value, r.place(p.value), name+" is a map", name+": "+e.blank())
			if !ok {
				return
			}
			for _, p := range r.pairs(n, keySet{}) {
				thing := new(E)
				*own(thing) = r.ownKey(p.key, k.name, k.letter)
				if p.value != nil {
					k.fill(r, thing, p.value, p.key.At)
				}
				*field(t) = append(*field(t), thing)
			}
		},
	}
}

// single makes a key with one map of its own.
func single[T, E any](name, doc, example string, k *kind[E], field func(*T, source.Pos) *E) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: mapForm, example: example, inner: []shape{k}},
		land: func(r *reader, _ *entry, t *T, p pair) {
			k.fill(r, field(t, p.key.At), p.value, p.key.At)
		},
	}
}

// textOrMap makes a key with one text, or a map that says it in full.
func textOrMap[T, E any](name, doc, example string, k *kind[E], word func(*T) *source.Text, field func(*T, source.Pos) *E) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: textOrMapForm, example: example, inner: []shape{k}},
		land: func(r *reader, e *entry, t *T, p pair) {
			if n := r.follow(p.value); n != nil && n.Kind == yaml.MappingNode {
				k.fill(r, field(t, p.key.At), n, p.key.At)
			} else if v, ok := r.scalar(e, p.value); ok {
				field(t, p.key.At)
				*word(t) = v
			}
		},
	}
}

// lists makes a key with a list of lists, as the places of points.
func lists[T any](name, doc, example string, field func(*T) *[][]source.Text) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: listsForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.lists(e, p.value)
		},
	}
}

// items makes a key with a list of maps of one kind; a single map may stand for
// a list of one.
func items[T, E any](name, doc, example string, k *kind[E], add func(*T, source.Pos) *E) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: itemsForm, example: example, inner: []shape{k}},
		land: func(r *reader, e *entry, t *T, p pair) {
			for _, item := range r.items(e, p.value) {
				at := r.firstKey(item)
				k.fill(r, add(t, at), item, at)
			}
		},
	}
}

// positions makes a key with the places at which one dimension is read.
func positions[T any](name, doc, example string, field func(*T) *Positions) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: positionsForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.positions(e, p)
		},
	}
}

// after makes a key with steps that come before, each with or without a reason.
func after[T any](name, doc, example string, field func(*T) *After) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: afterForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.after(e, p)
		},
	}
}

// into makes a key with the place where removed parts go.
func into[T any](name, doc, example string, field func(*T) *Into) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: intoForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.into(e, p)
		},
	}
}

// names makes a key with a list of names or a range of numbers.
func names[T any](name, doc, example string, add func(*T, []source.Text)) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: namesForm, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			list := r.names(e, p.value)
			for i, x := range list {
				list[i] = r.ownName(x, "place")
			}
			add(t, list)
		},
	}
}

// choices makes a key with a map from an option to yes, no or one of its builds.
func choices[T any](name, doc, example string, field func(*T) *[]Named) key[T] {
	return namesTo(choicesForm, name, doc, example, field)
}

// namedTexts makes a key with a map from a name to a text.
func namedTexts[T any](name, doc, example string, field func(*T) *[]Named) key[T] {
	return namesTo(namedTextsForm, name, doc, example, field)
}

func namesTo[T any](f form, name, doc, example string, field func(*T) *[]Named) key[T] {
	return key[T]{
		entry: entry{name: name, doc: doc, form: f, example: example},
		land: func(r *reader, e *entry, t *T, p pair) {
			*field(t) = r.named(e, p.value)
		},
	}
}

// sections makes the key with the whole work of a definition.
func sections(name, doc, example string) key[Definition] {
	return key[Definition]{
		entry: entry{name: name, doc: doc, form: sectionsForm, example: example, inner: []shape{sectionKind, reverseKind, stepKind, useKind}},
		land: func(r *reader, e *entry, d *Definition, p pair) {
			r.sections(e, d, p.value)
		},
	}
}

// amounts are an example of nothing but amounts with their units: 3 t, 5 to 40 C,
// [60 mm, 0 mm, -80 mm].
var amounts = phrase.Of(`^\[?-?[0-9./]+( to [0-9./]+)? ?[^0-9, ]+(, -?[0-9./]+ ?[^0-9, ]+)*$`)

// amountIn is an amount that stands alone behind a key, or in a list, of an example with
// keys of its own: outside: 210 mm, holding: 0.12.
var amountIn = phrase.Of(`([:,] |\[)-?[0-9][0-9./]*(?: to -?[0-9./]+)?((?: ?[A-Za-z°%µ·][A-Za-z0-9°%µ·]*(?: rise)?)?)([,}\]])`)

// digits is one number of an amount.
var digits = phrase.Of(`-?[0-9][0-9./]*`)

// blank is the example as help shows it: a number that has to be weighed, measured,
// counted or looked up is left open, for what a message offers is copied.
func (e *entry) blank() string {
	if strings.HasPrefix(e.example, "{") {
		// Twice, because the comma between two amounts belongs to both.
		return amountIn.ReplaceAllString(amountIn.ReplaceAllString(e.example, "$1…$2$3"), "$1…$2$3")
	}
	if e.form != numberForm && !amounts.MatchString(e.example) {
		return e.example
	}
	return digits.ReplaceAllString(e.example, "…")
}
