package def

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// kindOf names the kind of thing that a letter of a mark stands for.
var kindOf = map[string]string{
	"D": "dimension", "C": "container", "B": "big part", "Y": "lay-down spot", "L": "lift", "H": "heat",
	"J": "joint", "A": "alignment", "W": "hold or witness point", "S": "matched set", "K": "stack", "O": "option",
}

// lastDimension is the last number of a dimension; those above are printed on
// the rows that are kept free for what is found on the day.
const lastDimension = 50

// maxName is the most letters of a name: it is printed after the slash of a mark.
const maxName = 40

var (
	// markShape is a mark as it should be, markLike what was probably meant for one.
	markShape = phrase.Of(`^([A-Z])([1-9]\d{0,2})$`)
	markLike  = phrase.Of(`^([A-Za-z])[ .#-]?(0*)(\d{1,3})$`)
)

// markFault says what is wrong with the mark of one of the letters' kinds, and
// what it should probably be ("" when that can't be told). An empty fault means
// that it is right.
func markFault(mark, letters string) (fault, meant string) {
	what := kindOf[letters[:1]]
	if plain := source.Plain(mark); plain != mark {
		if fault, meant := markFault(plain, letters); fault == "" {
			return quote(mark) + " only looks like " + plain + ": " + disguised(mark), meant
		}
	}
	m := markLike.FindStringSubmatch(mark)
	if m == nil || m[3] == "0" {
		example := letters[:1] + "7"
		if len(letters) > 1 {
			example += " or " + letters[1:2] + "1"
		}
		return quote(mark) + " is not a mark: a capital letter and a number from 1 to 999, as " + example, ""
	}
	letter, right := strings.ToUpper(m[1]), strings.ToUpper(m[1])+m[3]
	switch {
	case letter == "X":
		return quote(mark) + ": X marks are kept for the blank spare tags", ""
	case !strings.Contains(letters, letter):
		if other, ok := kindOf[letter]; ok {
			return quote(mark) + " is the mark of " + article(other) + ", here " + article(what) + " is needed", ""
		}
		return quote(mark) + ": no mark begins with " + letter + "; that of " + article(what) + " begins with " + letters[:1], ""
	case m[1] != letter:
		return quote(mark) + ": the letter of a mark is a capital", right
	case m[2] != "":
		return quote(mark) + ": a mark has no leading zero", right
	case !markShape.MatchString(mark):
		return quote(mark) + ": nothing stands between letter and number of a mark", right
	}
	return "", mark
}

// disguised names the characters of a text that look like others.
func disguised(s string) string {
	var out []string
	for _, c := range s {
		if _, ok := source.Twin(c); ok {
			out = append(out, fmt.Sprintf("%q is %s", c, source.RuneName(c)))
		}
	}
	return strings.Join(out, ", ")
}

// ownMark takes over the mark of a thing where it is described. When it is clear
// what was meant, this is taken, so that those who name it still find it.
func (r *reader) ownMark(t source.Text, kind, letter string) source.Text {
	if base, _, slash := strings.Cut(t.Value, "/"); slash {
		r.add(t.At, "mark-form", quote(t.Value)+": a mark is written without its place where the thing is described", "write: "+base+", and each: with its group of places")
		t.Value = base
		return t
	}
	fault, meant := markFault(t.Value, letter)
	switch {
	case fault != "" && meant != "":
		r.add(t.At, "mark-form", fault, "write: "+meant)
		t.Value = meant
	case fault != "":
		r.add(t.At, "mark-form", fault, article(kind)+" has a mark of its own: "+letter+"1, "+letter+"2 and so on")
	case letter == "D" && (len(t.Value) > 3 || t.Value > fmt.Sprintf("D%d", lastDimension) && len(t.Value) == 3):
		r.add(t.At, "mark-kept", quote(t.Value)+fmt.Sprintf(": D%d and above are kept for the spare rows on paper", lastDimension+1),
			fmt.Sprintf("use a number from D1 to D%d", lastDimension))
	}
	return t
}

// ownName takes over the name of a thing where it is described.
func (r *reader) ownName(t source.Text, kind string) source.Text {
	switch {
	case strings.Contains(t.Value, "/"):
		r.add(t.At, "name-form", quote(t.Value)+": a slash parts a name from its place, so it cannot stand in the name of "+article(kind),
			"write: "+strings.ReplaceAll(t.Value, "/", "-"))
	case strings.ContainsFunc(t.Value, source.OddBlank):
		c, _ := utf8.DecodeRuneInString(t.Value[strings.IndexFunc(t.Value, source.OddBlank):])
		r.add(t.At, "name-form", fmt.Sprintf("the blank in %s is %s, which looks like any other: names that differ in it alone are two on file and one on paper", quote(t.Value), source.RuneName(c)),
			"type it with the blank key, or with a hyphen: "+strings.Map(func(c rune) rune {
				if source.OddBlank(c) {
					return '-'
				}
				return c
			}, t.Value))
	case t.Value == "others":
		r.add(t.At, "name-form", `"others" stands for all that are not named and cannot name `+article(kind), "give it another name")
	case slices.Contains(Tongues, t.Value):
		r.noLanguage(t, kind)
	case utf8.RuneCountInString(t.Value) > maxName:
		r.add(t.At, "name-form", quote(t.Value)+fmt.Sprintf(" is longer than %d letters: the name of %s is short, what it is called in full stands behind it", maxName, article(kind)))
	}
	return t
}

// noLanguage sees that a name is not that of a language: {en: 1.00 mm, es: 2.00 mm} is a text in
// two languages, and the paper would have the first of them at both places.
func (r *reader) noLanguage(t source.Text, kind string) {
	if slices.Contains(Tongues, t.Value) {
		r.add(t.At, "name-form", quote(t.Value)+" stands for a language and cannot name "+article(kind), "write: "+strings.ToUpper(t.Value))
	}
}

// reference reads a text that names a thing by its mark, with or without a place
// (D7, D7/DE, C4/springs), or is one of the allowed texts.
func (r *reader) reference(e *entry, t source.Text) (source.Text, bool) {
	if slices.Contains(e.allowed, t.Value) {
		return t, true
	}
	base, place, slash := strings.Cut(t.Value, "/")
	if e.named && !markLike.MatchString(base) {
		return t, true
	}
	fault, meant := markFault(base, e.letters)
	if fault == "" {
		return t, true
	}
	if meant != "" && slash {
		meant += "/" + place
	}
	var help []string
	if near := nearest.Word(t.Value, e.allowed); near != "" {
		help = append(help, "did you mean "+near+"?")
	}
	switch {
	case meant != "":
		help = append(help, "write: "+meant)
	case e.form == intoForm && parted(e, t.Value) != nil:
		several := parted(e, t.Value)
		help = append(help, "one place for all parts, or one for each: "+e.name+": {one part: "+several[0]+", another: "+several[1]+"}")
	case len(e.allowed) > 0:
		help = append(help, e.name+" also takes: "+strings.Join(e.allowed, ", "))
	case strings.ContainsAny(t.Value, " ;+") && e.form == listForm:
		help = append(help, "write several as a list: ["+strings.Join(strings.FieldsFunc(t.Value, func(c rune) bool { return strings.ContainsRune(" ;+", c) }), ", ")+"]")
	default:
		help = append(help, "for example "+e.name+": "+e.blank())
	}
	r.add(t.At, "mark-form", fault, help...)
	if meant == "" {
		return source.Text{}, false
	}
	t.Value = meant
	return t, true
}
