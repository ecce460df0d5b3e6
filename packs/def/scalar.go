package def

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// isQuoted reports whether a scalar was typed in quotes.
func isQuoted(n *yaml.Node) bool {
	return n.Style&(yaml.SingleQuotedStyle|yaml.DoubleQuotedStyle) != 0
}

// oneLine joins the lines of a text with a blank. Paper breaks lines where it
// has to, not where the file did.
func oneLine(s string) string {
	if !strings.ContainsAny(s, "\n\r") {
		return s
	}
	lines := strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\r' })
	for i := range lines {
		lines[i] = strings.TrimSpace(lines[i])
	}
	return strings.TrimSpace(strings.Join(lines, " "))
}

// place is the place of a node: of a text its first letter and its width within
// its line, inside quotes; of a map or list in braces its opening brace; of
// other maps and lists their first entry.
func (r *reader) place(n *yaml.Node) source.Pos {
	if n.Kind == yaml.DocumentNode && len(n.Content) > 0 {
		return r.place(n.Content[0])
	}
	at := r.at(n.Line, n.Column, 1)
	line := r.line(at.Line)
	rest := line[min(at.Col-1, len(line)):]
	// An anchor or a tag stands before what it belongs to, and YAML counts from it.
	for len(rest) > 1 && n.Kind != yaml.AliasNode && (rest[0] == '&' && n.Anchor != "" || rest[0] == '!') {
		skip := 0
		for skip < len(rest) && rest[skip] != ' ' && rest[skip] != '\t' {
			skip++
		}
		for skip < len(rest) && (rest[skip] == ' ' || rest[skip] == '\t') {
			skip++
		}
		if skip == len(rest) {
			return at
		}
		at.Col += skip
		rest = rest[skip:]
	}
	switch {
	case n.Kind == yaml.AliasNode:
		at.Width = 1 + utf8.RuneCountInString(n.Value)
	case n.Kind != yaml.ScalarNode || n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		at.Width = 1
	case isQuoted(n):
		at.Width = quotedWidth(rest, n.Style&yaml.DoubleQuotedStyle != 0)
		at.Col++
	default:
		at.Width = plainWidth(rest, n.Value)
	}
	return r.at(at.Line, at.Col+r.widened[at.Line], at.Width)
}

// quotedWidth counts the runes between the quote that rest begins with and its
// end on this line.
func quotedWidth(rest []rune, double bool) int {
	for i := 1; i < len(rest); i++ {
		switch {
		case double && rest[i] == '\\':
			i++
		case double && rest[i] == '"':
			return i - 1
		case !double && rest[i] == '\'':
			if i+1 < len(rest) && rest[i+1] == '\'' {
				i++
				continue
			}
			return i - 1
		}
	}
	return max(len(rest)-1, 0)
}

// plainWidth counts the runes of a text without quotes on its first line, which
// rest begins with.
func plainWidth(rest []rune, value string) int {
	i := 0
	for _, c := range value {
		if i == len(rest) || rest[i] != c {
			break
		}
		i++
	}
	for i > 0 && (rest[i-1] == ' ' || rest[i-1] == '\t') {
		i-- // the blank that joins the next line
	}
	return i
}

// scalar reads one text and sees that it is what the entry allows. Where it is
// not, it reports so and gives false.
func (r *reader) scalar(e *entry, n *yaml.Node) (source.Text, bool) {
	n = r.follow(n)
	if n == nil {
		return source.Text{}, false
	}
	if n.Kind != yaml.ScalarNode || isNull(n) {
		help := e.placed
		if len(help) == 0 || n.Kind != yaml.MappingNode && n.Kind != yaml.SequenceNode {
			help = []string{"for example " + e.name + ": " + e.blank()}
		}
		r.add(r.place(n), "wrong-form", e.name+" takes "+e.words()+"; here stands "+formWords(n), help...)
		return source.Text{}, false
	}
	t := source.Text{Value: oneLine(n.Value), At: r.place(n)}
	if strings.TrimSpace(t.Value) == "" {
		switch {
		case n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
			r.add(t.At, "bad-start", "a text cannot start with > or | here: YAML takes it for a sign of its own",
				"write at least or at most for > and <, or put the text in quotes")
		default:
			r.add(t.At, "no-value", "nothing stands in the quotes behind "+e.name, e.help())
		}
		return source.Text{}, false
	}
	if n := utf8.RuneCountInString(t.Value); n > maxText {
		r.add(t.At, "long-text", fmt.Sprintf("the text behind %s has %d letters, more than a page can hold", e.name, n), "write it shorter, or in several steps")
		return source.Text{}, false
	}
	if strings.ContainsRune("=+-@", rune(t.Value[0])) && slices.Contains(listed, e.name) {
		r.add(t.At, "formula-start", fmt.Sprintf("%s begins with %c: in the register a spreadsheet takes it for a formula and shows something else", quote(t.Value), t.Value[0]),
			"begin it with a letter or a figure")
		// A draft has it without the sign.
		if t.Value = strings.TrimLeft(t.Value, "=+-@ "); t.Value == "" {
			return source.Text{}, false
		}
	}
	return r.check(e, r.unquote(e, n, t))
}

// listed are the keys whose texts stand alone in a column of a list that is written
// for spreadsheets (CSV), which run a text that begins with one of = + - @ as a formula.
var listed = []string{"tag", "name", "serial", "number", "title", "revision", "keep", "location"}

// maxText is the most letters of one text. A full page of running text has about
// 5000.
const maxText = 5000

// check sees that a text has the form of the entry.
func (r *reader) check(e *entry, t source.Text) (source.Text, bool) {
	if e.takesAmount() {
		defer r.amount(e, t)
	}
	switch e.form {
	case numberForm, varyingCountForm, countsForm:
		return t, r.wholeNumber(e, t)
	case decimalForm:
		if less, is := strings.CutPrefix(t.Value, "-"); is && regexpDecimal.MatchString(less) {
			return source.Text{}, false // told by amount, for no key takes less than nothing as a bare number
		}
		if !regexpDecimal.MatchString(t.Value) {
			r.add(t.At, "number-form", e.name+" takes a number, and "+quote(t.Value)+" is none", "for example "+e.name+": "+e.blank())
			return source.Text{}, false
		}
		return t, true
	case flagForm:
		return r.yesOrNo(e, t)
	case choicesForm:
		return yesNoOr(t), true
	case dateForm:
		return r.day(e, t)
	}
	if e.letters != "" {
		return r.reference(e, t)
	}
	if e.allowed == nil || slices.Contains(e.allowed, t.Value) {
		return t, true
	}
	for _, a := range e.allowed {
		if begin, open := strings.CutSuffix(a, "…"); open && strings.HasPrefix(t.Value, begin) {
			return t, true
		}
	}
	near := nearest.Word(t.Value, e.allowed)
	if same := sameWord[strings.ToLower(t.Value)]; same != "" && slices.Contains(e.allowed, same) {
		near = same
	}
	takes := e.name + " takes: " + strings.Join(e.allowed, ", ")
	if near == "" || strings.HasSuffix(near, "…") {
		r.add(t.At, "not-allowed", e.name+" cannot be "+quote(t.Value), takes)
		return source.Text{}, false
	}
	r.add(t.At, "not-allowed", e.name+" cannot be "+quote(t.Value), "did you mean "+near+"?", takes)
	t.Value = near
	return t, true
}

var (
	regexpDecimal  = phrase.Of(`^(0|[1-9]\d*)(\.\d+)?$`)
	regexpWhole    = phrase.Of(`^[1-9]\d{0,5}$`)
	regexpGrouped  = phrase.Of(`^\d[\d_,' ]*$`)
	regexpExponent = phrase.Of(`^[\d.]+[eE][+-]?\d+$`)
)

// wholeNumber sees that a text is a number of pieces, 1 to 999999, written as
// one writes it by hand.
func (r *reader) wholeNumber(e *entry, t source.Text) bool {
	if regexpWhole.MatchString(t.Value) {
		return true
	}
	help := "for example " + e.name + ": 8"
	if n := numberSaid(t.Value); n != "" {
		help = "write: " + e.name + ": " + n
	}
	digits := strings.Map(func(c rune) rune {
		if c < '0' || c > '9' {
			return -1
		}
		return c
	}, t.Value)
	plain := strings.TrimLeft(digits, "0")
	message := quote(t.Value) + " is not a whole number from 1 up"
	switch {
	case regexpExponent.MatchString(t.Value):
		message, help = quote(t.Value)+" is not written out: a number of pieces has digits only", "write all its digits"
	case regexpGrouped.MatchString(t.Value) && regexpWhole.MatchString(plain):
		message, help = quote(t.Value)+" has more than the digits of the number", "write: "+plain
	}
	r.add(t.At, "number-form", message, help)
	return false
}

// yesNoOr puts the usual spellings of yes and no right and leaves other texts.
func yesNoOr(t source.Text) source.Text {
	switch strings.ToLower(t.Value) {
	case "yes", "true":
		t.Value = "yes"
	case "no", "false":
		t.Value = "no"
	}
	return t
}

// yesOrNo reads a text that is yes or no. true and false are taken as well,
// because editors and habit write them.
func (r *reader) yesOrNo(e *entry, t source.Text) (source.Text, bool) {
	if t = yesNoOr(t); t.Value == "yes" || t.Value == "no" {
		return t, true
	}
	r.add(t.At, "yes-or-no", e.name+" is yes or no; here stands "+quote(t.Value), "write: yes, or: no")
	return source.Text{}, false
}
