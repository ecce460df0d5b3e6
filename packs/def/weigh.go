package def

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"matchmark/packs/source"
)

// The bounds of what a file may nest and repeat.
const (
	maxDepth   = 100
	maxAliased = 10_000
)

// A scale goes once through all nodes of a file before they are read. It looks
// at what concerns every node alike, and makes holes of what would take the
// reader too deep, round in rings or without end.
type scale struct {
	r       *reader
	weights map[*yaml.Node]int // nodes below an anchor, those of its aliases included
	open    map[*yaml.Node]bool
	aliased int
	deep    bool // too deep has been reported
	many    bool // too many aliases has been reported
}

// weigh looks at all nodes of a document.
func (r *reader) weigh(doc *yaml.Node) {
	s := &scale{r: r, weights: map[*yaml.Node]int{}, open: map[*yaml.Node]bool{}}
	s.node(doc, 0)
}

// node gives how many nodes the reader meets at n and below it.
func (s *scale) node(n *yaml.Node, depth int) int {
	r := s.r
	if r.repaired[[2]int{n.Line, n.Column}] && n.Kind == yaml.ScalarNode {
		r.holes[n] = true
		return 1
	}
	if depth > maxDepth {
		if !s.deep {
			s.deep = true
			r.add(r.place(n), "too-deep", fmt.Sprintf("maps and lists stand more than %d levels inside one another here", maxDepth), "a definition needs about eight levels; is a bracket left open?")
		}
		r.holes[n] = true
		return 1
	}
	if n.Kind == yaml.AliasNode {
		return s.alias(n)
	}
	if n.Style&yaml.TaggedStyle != 0 {
		r.add(r.tagPlace(n), "tag", "a word that begins with ! is a sign of YAML's own and gets lost", "put the text in quotes")
		r.holes[n] = true
	}
	if n.Kind == yaml.ScalarNode {
		s.scalar(n)
	}
	if n.Anchor != "" {
		s.open[n] = true
		defer func() { delete(s.open, n) }()
	}
	weight := 1
	for _, c := range n.Content {
		weight = min(weight+s.node(c, depth+1), maxAliased+1)
	}
	if n.Anchor != "" {
		s.weights[n] = weight
	}
	return weight
}

// alias gives the weight of what an alias stands for. YAML knows an anchor from
// where it begins, so an alias inside its own anchor would go round for ever.
func (s *scale) alias(n *yaml.Node) int {
	r := s.r
	if s.open[n.Alias] {
		r.add(r.place(n), "alias-ring", quote("*"+n.Value)+" stands inside what it stands for", "write out what is meant")
		r.holes[n] = true
		return 1
	}
	weight := s.weights[n.Alias]
	s.aliased += weight
	if s.aliased > maxAliased {
		if !s.many {
			s.many = true
			r.add(r.place(n), "too-many-aliases", fmt.Sprintf("aliases repeat more than %d entries up to here", maxAliased), "use each: for what repeats over places")
		}
		r.holes[n] = true
		return 1
	}
	return weight
}

// scalar looks at the text of one scalar.
func (s *scale) scalar(n *yaml.Node) {
	r := s.r
	if i := strings.IndexFunc(n.Value, func(c rune) bool { return c != '\n' && source.Invisible(c) }); i >= 0 {
		c, _ := utf8.DecodeRuneInString(n.Value[i:])
		if c == '\t' {
			r.add(r.place(n), "control-character", "a tab stands in this text", "use blanks, or take it out")
		} else {
			r.unseen(r.place(n), c, "stands in this text")
		}
		r.holes[n] = true
	}
	if c, word := source.MixedLetter(n.Value); c != 0 {
		twin, _ := source.Twin(c)
		at := source.Text{Value: n.Value, At: r.place(n)}.PlaceOf(word)
		r.add(at, "look-alike", fmt.Sprintf("the %q in %s only looks like %c: it is %s", c, quote(word), twin, source.RuneName(c)),
			"type the word anew with the letters of one alphabet: "+source.Plain(word))
	}
	if !isQuoted(n) && n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) == 0 && !isNull(n) {
		s.cutByHash(n)
	}
}

// cutByHash warns of a text that probably goes on behind a number sign: one
// blank, then # and a letter without a blank between them, or # and a number.
// An ordinary comment has a blank behind its #.
func (s *scale) cutByHash(n *yaml.Node) {
	at := s.r.place(n)
	line := s.r.line(at.Line)
	end := at.Col - 1 + at.Width
	if end+2 >= len(line) || line[end] != ' ' || line[end+1] != '#' {
		return
	}
	next := end + 2
	blank := line[next] == ' '
	for next < len(line) && line[next] == ' ' {
		next++
	}
	if next == len(line) || line[next] == '#' || blank && (line[next] < '0' || line[next] > '9') {
		return
	}
	whole := string(line[at.Col-1:])
	pos := source.Pos{File: at.File, Line: at.Line, Col: end + 2, Width: len(line) - end - 1}
	s.r.report(source.Problem{
		Pos: pos, Severity: source.Warning, Code: "cut-by-hash",
		Message: "a comment begins at the # here, so the text reads only " + quote(n.Value),
		Help:    []string{`if the # belongs to the text, put it in quotes: "` + strings.TrimSpace(whole) + `"`, "if it is a comment, put a blank after the #"},
	})
}

// tagPlace is the place of the tag before a node.
func (r *reader) tagPlace(n *yaml.Node) source.Pos {
	at := r.at(n.Line, n.Column, 1)
	line := r.line(at.Line)
	for i := at.Col - 1; i < len(line); i++ {
		if line[i] == '!' {
			at.Col = i + 1
			for i < len(line) && line[i] != ' ' {
				i++
			}
			at.Width = i + 1 - at.Col
			break
		}
	}
	return at
}
