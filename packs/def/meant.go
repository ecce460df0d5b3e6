package def

import (
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// What was clearly meant is told as a problem and then read as it was meant, so that
// nothing else is said of what would be missing without it. What can mean two
// things is told with both and read as neither.

// dayShapes are how people write days. In 15.04.2026 the day comes first wherever
// points are written (EN 28601 and its forerunners, from memory); in 03/04/2026
// habits differ, and both are offered.
var dayShapes = []struct{ layout, typed string }{
	{"2006-1-2", "-"}, {"2006/1/2", "/"}, {"2006.1.2", "."}, {"2.1.2006", "."}, {"2-1-2006", "-"},
	{"2/1/2006", "/"}, {"1/2/2006", "/"}, {"2 January 2006", " "}, {"2 Jan 2006", " "}, {"2-Jan-2006", "-"},
	{"January 2, 2006", ","}, {"Jan 2, 2006", ","}, {"January 2 2006", " "}, {"2. January 2006", " "},
}

// days lists the days that a text can mean, each once.
func days(text string) []string {
	var out []string
	for _, s := range dayShapes {
		d, err := time.Parse(s.layout, text)
		if err != nil {
			continue
		}
		if day := d.Format(time.DateOnly); len(out) == 0 || out[len(out)-1] != day {
			out = append(out, day)
		}
	}
	return out
}

// day reads a day of the calendar, and says how to write one that was clearly meant.
func (r *reader) day(e *entry, t source.Text) (source.Text, bool) {
	if _, err := time.Parse(time.DateOnly, t.Value); err == nil {
		return t, true
	}
	meant := days(t.Value)
	switch len(meant) {
	case 0:
		r.add(t.At, "date-form", quote(t.Value)+" is no day of the calendar, written year-month-day", "for example "+e.name+": "+e.example)
		return source.Text{}, false
	case 1:
		r.add(t.At, "date-form", quote(t.Value)+" is not written year-month-day", "write: "+e.name+": "+meant[0])
		t.Value = meant[0]
		return t, true
	}
	r.add(t.At, "date-form", quote(t.Value)+" can mean two days: write it year-month-day", e.name+": "+meant[0], "or "+e.name+": "+meant[1])
	return source.Text{}, false
}

// pairedQuotes are the quotes of word processors, opening and closing, as several
// languages use them. YAML takes none of them for quotes.
var pairedQuotes = map[rune]string{'“': "”“", '”': "”", '„': "“”", '‟': "”", '‘': "’‘", '’': "’", '‚': "‘’", '«': "»", '»': "«"}

// insideQuotes gives what stands between the quotes of a word processor, if a text
// begins and ends with a pair of them.
func insideQuotes(text string) (string, bool) {
	first, n := utf8.DecodeRuneInString(text)
	last, m := utf8.DecodeLastRuneInString(text)
	if len(text) < n+m || !strings.ContainsRune(pairedQuotes[first], last) || last == utf8.RuneError {
		return "", false
	}
	return text[n : len(text)-m], true
}

// unquote takes the quotes of a word processor off a text, which is told.
func (r *reader) unquote(e *entry, n *yaml.Node, t source.Text) source.Text {
	inside, ok := insideQuotes(t.Value)
	if !ok || isQuoted(n) || strings.TrimSpace(inside) == "" {
		return t
	}
	r.add(t.At, "smart-quotes", "these quotes come from a word processor; they are letters here and would be printed", "write: "+e.name+": "+quote(inside))
	return source.Text{Value: strings.TrimSpace(inside), At: t.At}
}

// markRun is a run of marks: D4 to D6, D4-D6, D4–6.
var markRun = phrase.Of(`^([A-Z])(\d{1,3}) *(?:to|-|–|—|\.\.) *([A-Z]?)(\d{1,3})$`)

// parted finds a list that was written as one text: D1, D2 or D1 and D2, D4 to D6,
// lock-nut, washer. It gives nil for one text.
func parted(e *entry, text string) []string {
	if m := markRun.FindStringSubmatch(text); m != nil && e.letters != "" && (m[3] == "" || m[3] == m[1]) {
		from, _ := strconv.Atoi(m[2])
		to, _ := strconv.Atoi(m[4])
		var out []string
		for i := from; i <= to && to-from < lastDimension; i++ {
			out = append(out, m[1]+strconv.Itoa(i))
		}
		return out
	}
	if strings.ContainsAny(text, "[]{}") {
		return nil
	}
	between := func(c rune) bool { return c == ',' || c == ';' || c == '&' || c == '+' }
	if e.letters != "" && !e.named {
		between = func(c rune) bool { return strings.ContainsRune(",;&+ ", c) }
	}
	var out []string
	for _, piece := range strings.FieldsFunc(strings.ReplaceAll(text, " and ", ", "), between) {
		piece = strings.TrimSpace(piece)
		if piece == "" || piece == "and" {
			continue
		}
		if e.letters != "" && !e.named && !markLike.MatchString(strings.Split(piece, "/")[0]) || strings.Contains(piece, " ") && e.letters == "" {
			return nil
		}
		out = append(out, piece)
	}
	if len(out) < 2 {
		return nil
	}
	return out
}

// part reads a text of a list of names. One that is several names is told, and read
// as those.
func (r *reader) part(e *entry, n *yaml.Node) []source.Text {
	n = r.follow(n)
	if n == nil {
		return nil
	}
	if n.Kind == yaml.ScalarNode && !isNull(n) && (e.letters != "" || e.form == countsForm || e.form == afterForm) {
		if names := parted(e, n.Value); names != nil {
			at := r.place(n)
			r.add(at, "list-form", quote(n.Value)+" is several, and they are written as a list", "write: "+e.name+": ["+strings.Join(names, ", ")+"]")
			var out []source.Text
			for _, name := range names {
				if t, ok := r.check(e, source.Text{Value: name, At: at}); ok {
					out = append(out, t)
				}
			}
			return out
		}
	}
	if t, ok := r.scalar(e, n); ok {
		return []source.Text{t}
	}
	return nil
}

// piecesIn is a part with its number of pieces in one text: 8 bolt, bolt x 8, 8x bolt.
var piecesIn = phrase.Of(`^(?:(\d+) *(?:x|×|off|pcs)? +([\p{L}][\p{L}\d/-]*)|([\p{L}][\p{L}\d/-]*) *(?: |x|×) *(\d+)(?: *(?:x|×|off|pcs))?)$`)

// pieces reads a part whose number stands beside it in one text, which is told.
func (r *reader) pieces(e *entry, t source.Text) (Count, bool) {
	m := piecesIn.FindStringSubmatch(t.Value)
	if m == nil {
		return Count{}, false
	}
	part, n := m[2]+m[3], m[1]+m[4]
	if !regexpWhole.MatchString(n) {
		return Count{}, false
	}
	r.add(t.At, "list-form", quote(t.Value)+" is a part and a number, with a colon between them", "write: "+e.name+": [{"+part+": "+n+"}]")
	return Count{source.Text{Value: part, At: t.At}, source.Text{Value: n, At: t.At}}, true
}

// sameWord are usual words for a value that a key takes under another name.
var sameWord = map[string]string{
	"rh": "right", "lh": "left", "right-hand": "right", "left-hand": "left", "right hand": "right", "left hand": "left",
	"attention": "caution", "note": "notice",
}

// numberOf is a number with a word for pieces behind it.
var numberOf = phrase.Of(`^(\d+) *(?:x|×|off|pcs|pc|pieces|ea|each|st|no)?\.?$`)

// numberSaid is the number of pieces in a text that says more than it: 8 pcs, 8x,
// eight; "" where none is clear.
func numberSaid(text string) string {
	if m := numberOf.FindStringSubmatch(strings.ToLower(text)); m != nil && regexpWhole.MatchString(m[1]) {
		return m[1]
	}
	for i, word := range strings.Fields("one two three four five six seven eight nine ten eleven twelve") {
		if strings.ToLower(text) == word {
			return strconv.Itoa(i + 1)
		}
	}
	return ""
}

// partsIn reads the parts that one text names; its form has been looked at by check
// for numbers, which a part is not.
func (r *reader) partsIn(e *entry, n *yaml.Node) []source.Text {
	if names := parted(e, n.Value); n.Kind == yaml.ScalarNode && names != nil {
		at := r.place(n)
		r.add(at, "list-form", quote(n.Value)+" is several, and they are written as a list", "write: "+e.name+": ["+strings.Join(names, ", ")+"]")
		out := make([]source.Text, len(names))
		for i, name := range names {
			out[i] = source.Text{Value: name, At: at}
		}
		return out
	}
	plain := *e
	plain.form = textForm
	if t, ok := r.scalar(&plain, n); ok {
		return []source.Text{t}
	}
	return nil
}

// otherWords are words that planners write for a key, and the keys that they mean; of
// those the first that the map has is taken. Common practice, no source.
var otherWords = map[string][]string{
	"take": {"measure"}, "read": {"measure"}, "record": {"measure"}, "readings": {"measure"}, "check-dimension": {"measure"},
	"disassemble": {"remove"}, "dismantle": {"remove"}, "take-off": {"remove"}, "strip": {"remove"}, "dismount": {"remove"},
	"install": {"fit"}, "assemble": {"fit"}, "mount": {"fit"}, "refit": {"fit"}, "reassemble": {"fit"},
	"torque": {"tighten"}, "slacken": {"loosen"}, "undo": {"loosen"},
	"description": {"do", "what", "name"}, "text": {"do", "what"}, "action": {"do"}, "instruction": {"do"}, "title": {"what", "name", "section"},
	"qty": {"count"}, "quantity": {"count"}, "pieces": {"count"}, "number": {"count"}, "weight": {"mass"}, "type": {"kind"},
	"limit": {"left"}, "limits": {"left"}, "tolerance": {"left"}, "as-left": {"left"}, "as-found": {"found"}, "tool": {"by"}, "instrument": {"by"},
	"requires": {"after"}, "needs": {"after"}, "depends": {"after"}, "depends-on": {"after"}, "put-in": {"into"}, "store": {"into"}, "container": {"into"},
	"repeat": {"each"}, "for-each": {"each"}, "hold-point": {"hold"}, "warning": {"caution"}, "location": {"where"},
}
