package words

import (
	"strconv"
	"strings"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"
)

// A Sentence is a text with holes. Each is written %s and takes the value after the one
// before it; a language that says things in another order writes %[2]s for the second.
type Sentence string

// Untold stands in a sentence for what is not told: the draft of a definition with holes.
const Untold = "…"

// Bare is the sentence with nothing in its holes, without the blanks about them: for a label
// that stands with its value or alone.
func (s Sentence) Bare() string { return strings.TrimSpace(s.With()) }

// With puts values into the holes. A value may hold %s itself; it is printed as it is.
// A hole without a value stays empty; an empty value, as of what a definition leaves out, is
// Untold.
func (s Sentence) With(values ...string) string {
	if strings.IndexByte(string(s), '%') < 0 {
		return string(s)
	}
	room := len(s)
	for _, v := range values {
		room += len(v)
	}
	var out strings.Builder
	out.Grow(room)
	next := 0
	rest := string(s)
	for rest != "" {
		i := strings.IndexByte(rest, '%')
		if i < 0 {
			break
		}
		out.WriteString(rest[:i])
		rest = rest[i:]
		which, size := hole(rest)
		switch {
		case size == 0:
			out.WriteByte('%')
			size = 1
		case which > 0:
			next = which - 1
			fallthrough
		default:
			switch {
			case next >= len(values):
			case values[next] == "":
				out.WriteString(Untold)
			default:
				out.WriteString(values[next])
			}
			next++
		}
		rest = rest[size:]
	}
	out.WriteString(rest)
	return out.String()
}

// hole reads the hole that a text begins with: the number of its value, 0 where it is
// the next, and its length, 0 for what is no hole.
func hole(text string) (which, size int) {
	if strings.HasPrefix(text, "%s") {
		return 0, 2
	}
	if len(text) > 4 && text[1] == '[' && text[2] >= '1' && text[2] <= '9' && strings.HasPrefix(text[3:], "]s") {
		return int(text[2] - '0'), 5
	}
	return 0, 0
}

// A Mark explains one letter of the marks of things, as D for a dimension.
type Mark struct{ Letter, Means string }

// A Counted is a sentence with a number in it, in the forms that the language has for
// numbers, by the names that CLDR gives them: "one" and "other" in English, "few" and
// "many" as well in Polish. The form "one" may do without a hole.
type Counted map[string]Sentence

// Pieces words a number of pieces: 1 piece, 4 pieces.
func (c *Catalogue) Pieces(n int) string { return c.Count(c.Common.Pieces, n) }

// Count words how many there are of a thing in the catalogue's language.
func (c *Catalogue) Count(forms Counted, n int) string {
	rule := plural.Cardinal.MatchPlural(language.Make(c.Lang), n, 0, 0, 0, 0)
	form, ok := forms[pluralNames[rule]]
	if !ok {
		form = forms["other"]
	}
	return form.With(strconv.Itoa(n))
}

var pluralNames = map[plural.Form]string{
	plural.Other: "other", plural.Zero: "zero", plural.One: "one", plural.Two: "two", plural.Few: "few", plural.Many: "many",
}
