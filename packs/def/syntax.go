package def

import (
	"bytes"
	"io"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// maxRepairs is how many faults of YAML are stepped over in one file, and
// maxReparsed how many bytes are read again in all for their sake.
const (
	maxRepairs  = 20
	maxReparsed = 2 << 20
)

// A fault is a place where YAML cannot read on, put into words.
type fault struct {
	pos     source.Pos
	code    string
	message string
	help    []string
	see     []source.Also
	repair  *repair // nil: nothing behind the fault can be read
}

// A repair puts something in place of a part of one line, so that YAML can read
// on behind it. Lines count from 0, columns in runes from 0.
type repair struct {
	line, from, to int
	with           string
	hole           int // column of the value that stands in, -1 if none does
}

// parse reads the first document of a text into nodes. It reports what YAML
// cannot read and steps over it where it can; nil means that it cannot.
func (r *reader) parse(text []byte) *yaml.Node {
	text = r.firstDocument(text)
	for tries := 1; ; tries++ {
		doc := &yaml.Node{}
		err := yaml.Unmarshal(text, doc)
		if err == nil {
			return doc
		}
		f := r.explain(text, err)
		r.report(source.Problem{Pos: f.pos, Severity: source.Error, Code: f.code, Message: f.message, Help: f.help, See: f.see})
		if f.repair == nil || tries > maxRepairs || tries*len(text) > maxReparsed {
			return nil
		}
		text = r.mend(text, f.repair)
	}
}

// documentMark gives the dashes or dots of a line that begins the next document
// or ends one, "" for any other line.
func documentMark(line string) string {
	if len(line) < 3 || line[:3] != "---" && line[:3] != "..." || len(line) > 3 && line[3] != ' ' && line[3] != '\t' {
		return ""
	}
	return line[:3]
}

// firstDocument cuts a text behind its first document and reports the second.
func (r *reader) firstDocument(text []byte) []byte {
	begun, offset := false, 0
	ended := -1
	for i, line := range strings.Split(string(text), "\n") {
		bare := strings.TrimSpace(line)
		mark := documentMark(line)
		switch {
		case mark != "" && (begun || ended >= 0) && mark == "---",
			ended >= 0 && bare != "" && bare[0] != '#' && mark == "":
			r.add(r.at(i+1, 1, len(bare)), "second-document", "a second document begins here; it is not read", "one file holds one definition: take the line of dashes out, or move what follows into a file of its own")
			if ended >= 0 {
				return text[:ended]
			}
			return text[:offset]
		case mark == "..." && ended < 0:
			ended = offset
		case mark != "" && len(bare) > 3, mark == "" && bare != "" && bare[0] != '#' && bare[0] != '%':
			begun = true
		}
		offset += len(line) + 1
	}
	return text
}

// mend carries out a repair.
func (r *reader) mend(text []byte, p *repair) []byte {
	lines := strings.Split(string(text), "\n")
	if p.line < 0 { // tabs before the lines: two blanks stand in for each
		for i, line := range lines {
			if in := len(line) - len(strings.TrimLeft(line, "\t")); in > 0 {
				lines[i] = strings.Repeat("  ", in) + line[in:]
				r.widened[i+1] = in
			}
		}
		return []byte(strings.Join(lines, "\n"))
	}
	line := []rune(lines[p.line])
	lines[p.line] = string(line[:p.from]) + p.with + string(line[p.to:])
	if p.hole >= 0 {
		r.repaired[[2]int{p.line + 1, p.hole + 1}] = true
	}
	return []byte(strings.Join(lines, "\n"))
}

// standIn is a quoted text of n runes, or a word when there is no room for quotes.
func standIn(n int) string {
	if n < 2 {
		return strings.Repeat("x", n)
	}
	return "'" + strings.Repeat("x", n-2) + "'"
}

// A drip gives a text one byte at a time and so tells how far its reader came.
type drip struct {
	text []byte
	read int
}

func (d *drip) Read(p []byte) (int, error) {
	if d.read == len(d.text) {
		return 0, io.EOF
	}
	p[0] = d.text[d.read]
	d.read++
	return 1, nil
}

// A stop is where YAML gave up: what it said, the line that it named (from 0),
// and where it had come to, a few letters behind what it stumbled over or, where
// it has to see the end of a text first, at the start of the next line. The
// line that the library names is that of the map or list around the fault, one
// too small at that, for all but the faults of single words.
type stop struct {
	r         *reader
	said      string
	named     int
	lines     [][]rune
	line, col int // where reading had come to, from 0
	outline
}

// saidLine is the line number in an error of the library.
var saidLine = phrase.Of(`^yaml: (?:line (\d+): )?`)

// explain finds the place of a fault and puts it into words.
func (r *reader) explain(text []byte, err error) fault {
	s := &stop{r: r}
	m := saidLine.FindStringSubmatch(err.Error())
	if m != nil {
		s.said = err.Error()[len(m[0]):]
		if n, err := strconv.Atoi(m[1]); err == nil {
			s.named = n - 1
		}
	}
	d := &drip{text: text}
	_ = yaml.NewDecoder(d).Decode(&yaml.Node{}) // fails as before; only how far it comes counts
	line, col := position(text, d.read)
	s.line, s.col = line-1, col-1
	for _, l := range bytes.Split(text, []byte{'\n'}) {
		s.lines = append(s.lines, []rune(string(l)))
	}
	s.named = min(max(s.named, 0), len(s.lines)-1)
	s.outline = outlineOf(s.lines)
	line, col = s.lastSign()
	s.line, s.col = line, col+1
	for _, rule := range faultRules {
		if !rule.about(s.said) {
			continue
		}
		for _, find := range rule.find {
			if f, ok := find(s); ok {
				return f
			}
		}
	}
	return s.somewhere()
}

// at is the place of width runes at a line and column from 0.
func (s *stop) at(line, col, width int) source.Pos {
	return s.r.at(line+1, col+1, width)
}

// reached reports whether a spot lies before where reading stopped.
func (s *stop) reached(line, col int) bool {
	return line < s.line || line == s.line && col < s.col
}
