package def

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/source"
)

// maxProblems is how many problems of one file are told. A file with more is no
// definition, or one mistake runs through all of it.
const maxProblems = 100

// A reader reads one file. It keeps what is needed to place a problem and to
// leave out what a problem already stands for.
type reader struct {
	file     string
	lines    []string
	problems source.Problems
	left     int // problems that were left out
	tongue   Tongue
	english  map[string]string // the English of texts in another language

	// holes are nodes for which a problem has been reported; what reads them
	// gives nothing and says nothing more.
	holes map[*yaml.Node]bool
	// repaired are the places, by line and column, of values that YAML could not
	// read and that stand in as holes.
	repaired map[[2]int]bool
	// widened counts, for each line, the columns that were added in front of its
	// text when its tabs were replaced by blanks.
	widened map[int]int

	runes [][]rune // those of each line that a place was looked for on
}

// Read reads a definition. The Definition is never nil: what could not be read
// is not written in it. The problems are sorted by place; name is the file they
// speak of.
func Read(name string, data []byte) (*Definition, source.Problems) {
	return Tongue("").Read(name, data)
}

// Read reads a definition with its texts in the language.
func (t Tongue) Read(name string, data []byte) (*Definition, source.Problems) {
	d := &Definition{}
	r := t.newReader(name, data)
	if root := r.root(data, "pack: 1, equipment: …, steps: …"); root != nil {
		d.At = r.firstKey(root)
		definitionKind.fill(r, d, root, d.At)
	}
	d.English = r.english
	return d, r.sorted()
}

// ReadJob reads a job file, as Read reads a definition.
func ReadJob(name string, data []byte) (*JobFile, source.Problems) {
	return Tongue("").ReadJob(name, data)
}

// ReadJob reads a job file with its texts in the language.
func (t Tongue) ReadJob(name string, data []byte) (*JobFile, source.Problems) {
	j := &JobFile{}
	r := t.newReader(name, data)
	if root := r.root(data, "job: {number: WO-5512, revision: A, issued: 2026-03-02}"); root != nil {
		j.At = r.firstKey(root)
		jobFileKind.fill(r, j, root, j.At)
	}
	return j, r.sorted()
}

func (t Tongue) newReader(name string, data []byte) *reader {
	r := &reader{file: name, tongue: t, holes: map[*yaml.Node]bool{}, repaired: map[[2]int]bool{}, widened: map[int]int{}}
	if len(data) <= source.MaxSize {
		r.lines = source.Lines(data)
		r.runes = make([][]rune, len(r.lines))
	}
	return r
}

// root gives the node that a file consists of, nil when there is none. write
// says what a file has to begin with.
func (r *reader) root(data []byte, write string) *yaml.Node {
	if len(data) > source.MaxSize {
		r.problems = append(r.problems, source.TooLarge(r.file))
		return nil
	}
	text, ok := r.clean(data)
	if !ok {
		return nil
	}
	doc := r.parse(text)
	if doc == nil {
		return nil
	}
	if doc.Kind != yaml.DocumentNode || len(doc.Content) == 0 || isNull(doc.Content[0]) {
		r.add(source.Pos{File: r.file}, "empty-file", "nothing is written in this file", "for example "+write)
		return nil
	}
	r.weigh(doc)
	r.tongues(doc)
	root, ok := r.mapping(doc.Content[0], r.place(doc), "a file is a map of keys", write)
	if !ok {
		return nil
	}
	return root
}

// add reports an error.
func (r *reader) add(at source.Pos, code, message string, help ...string) {
	r.report(source.Problem{Pos: at, Severity: source.Error, Code: code, Message: message, Help: help})
}

// warn tells of what can be printed and is hardly meant.
func (r *reader) warn(at source.Pos, code, message string, help ...string) {
	r.report(source.Problem{Pos: at, Severity: source.Warning, Code: code, Message: message, Help: help})
}

// report takes a problem in, up to maxProblems.
func (r *reader) report(p source.Problem) {
	if r.full() {
		r.left++
		return
	}
	p.Message = clip(p.Message, maxWords)
	for i, help := range p.Help {
		p.Help[i] = clip(help, maxWords)
	}
	r.problems = append(r.problems, p)
}

// full reports whether further problems are only counted.
func (r *reader) full() bool { return len(r.problems) >= maxProblems }

// sorted gives the problems by place.
func (r *reader) sorted() source.Problems {
	r.problems.Sort()
	if r.left > 0 {
		r.problems.Add(source.Pos{File: r.file}, "more-problems",
			fmt.Sprintf("%d more problems are not listed: put these right first", r.left))
	}
	return r.problems
}

// at is the place of width runes at a line and column of the text that YAML was
// given, brought inside the file as it is.
func (r *reader) at(line, col, width int) source.Pos {
	line = min(max(line, 1), len(r.lines))
	n := len(r.line(line))
	col = min(max(col-r.widened[line], 1), n+1)
	return source.Pos{File: r.file, Line: line, Col: col, Width: min(max(width, 1), max(n+1-col, 1))}
}

// line gives the runes of a line of the file, which counts from 1.
func (r *reader) line(line int) []rune {
	if r.runes[line-1] == nil {
		r.runes[line-1] = []rune(r.lines[line-1])
	}
	return r.runes[line-1]
}

// maxQuoted is how many letters of a text are quoted in a message, maxWords how
// many a message or a line of help has at most.
const (
	maxQuoted = 40
	maxWords  = 300
)

// clip cuts a text to most letters.
func clip(s string, most int) string {
	if len(s) <= most {
		return s
	}
	n := 0
	for i := range s {
		if n == most {
			return s[:i] + "…"
		}
		n++
	}
	return s
}

// quote gives a text as written, in quotes, cut when it is long.
func quote(s string) string {
	return `"` + clip(strings.Join(strings.Fields(clip(s, 4*maxQuoted)), " "), maxQuoted) + `"`
}

// article puts a or an before the name of a kind.
func article(name string) string {
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// lowerFirst makes a sentence part of another: without its capital and stop.
func lowerFirst(s string) string {
	return strings.ToLower(s[:1]) + strings.TrimSuffix(s[1:], ".")
}
