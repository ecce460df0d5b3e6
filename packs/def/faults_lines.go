package def

import (
	"fmt"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// The faults of how lines, colons and dashes stand to one another. YAML tells
// what belongs together by how far lines are set in, so a fault here often shows
// only some lines below; what is said names the line that is wrong.

// keyLine is a line that begins with a key, and gluedKey one whose key has no
// blank behind its colon.
var (
	keyLine  = phrase.Of(`^\s*(?:- +)*[\p{L}\p{N}_-]+ *:(?:\s|$)`)
	gluedKey = phrase.Of(`^(\s*(?:- +)*)([\p{L}\p{N}_-]+):([^\s:/]\S?.*)$`)
)

// gluedDash is an entry of a list with no blank behind its dash.
var gluedDash = phrase.Of(`^-([\p{L}_].*:.*)$`)

// indent counts the blanks before the text of a line.
func (s *stop) indent(line int) int {
	l := s.lines[line]
	return len(l) - len([]rune(strings.TrimLeft(string(l), " \t")))
}

// above is the last line before line with something on it that is no comment,
// -1 if there is none.
func (s *stop) above(line int) int {
	for line--; line >= 0; line-- {
		if bare := strings.TrimSpace(string(s.lines[line])); bare != "" && bare[0] != '#' {
			return line
		}
	}
	return -1
}

// below is the next line with something on it that is no comment, -1 if there is
// none.
func (s *stop) below(line int) int {
	for line++; line < len(s.lines); line++ {
		if bare := strings.TrimSpace(string(s.lines[line])); bare != "" && bare[0] != '#' {
			return line
		}
	}
	return -1
}

// whole is the place of all that stands on a line.
func (s *stop) whole(line int) source.Pos {
	text := strings.TrimSpace(string(s.lines[line]))
	return s.at(line, s.indent(line), len([]rune(text)))
}

// secondColon finds a text with a colon and a blank in it.
func (s *stop) secondColon() (fault, bool) {
	for i := len(s.colons) - 1; i > 0; i-- {
		c := s.colons[i]
		if !s.reached(c.line, c.col) {
			continue
		}
		first := i
		for first > 0 && s.colons[first-1].line == c.line && !s.colons[first-1].flow {
			first--
		}
		if first == i || c.flow {
			return fault{}, false
		}
		line := s.lines[c.line]
		from := s.colons[first].col + 1
		for from < len(line) && line[from] == ' ' {
			from++
		}
		f := fault{
			pos: s.at(c.line, c.col, 1), code: "second-colon",
			message: "a second colon with a blank behind it stands in this line",
			repair:  s.replace(spot{line: c.line, col: from}),
		}
		f.help = []string{"put the text in quotes: " + quote(string(line[from:f.repair.to])), "or is a comma or a new line missing before the second key?"}
		return f, true
	}
	return fault{}, false
}

// noColon finds a line that should be a key and a value and is not.
func (s *stop) noColon() (fault, bool) {
	return s.noColonOn(s.named)
}

// noColonAbove finds it above the line where YAML stumbled.
func (s *stop) noColonAbove() (fault, bool) {
	line, _ := s.lastSign()
	if above := s.above(line); above >= 0 {
		return s.noColonOn(above)
	}
	return fault{}, false
}

func (s *stop) noColonOn(line int) (fault, bool) {
	text := string(s.lines[line])
	if m := gluedKey.FindStringSubmatch(text); m != nil {
		colon := len([]rune(m[1] + m[2]))
		end := valueEnd(s.lines[line], spot{line: line, col: colon})
		f := fault{
			pos: s.at(line, colon, 1), code: "no-blank",
			message: "a blank is missing behind the colon of " + quote(m[2]),
			help:    []string{"write: " + m[2] + ": " + strings.TrimSpace(string(s.lines[line][colon+1:end]))},
		}
		// Nothing behind it may move, so the first letter of the value makes room.
		if end > colon+2 {
			f.repair = &repair{line, colon + 1, end, " " + standIn(end-colon-2), colon + 2}
		}
		return f, true
	}
	bare := strings.TrimSpace(text)
	if bare == "" || keyLine.MatchString(text) || strings.Contains(bare, ": ") || strings.HasSuffix(bare, ":") {
		return fault{}, false
	}
	f := fault{
		pos: s.whole(line), code: "no-colon",
		message: "no colon stands in this line, and it is neither an entry of a list nor the end of a text above it",
		help:    []string{withColon(bare)},
	}
	in, end := s.indent(line), len(s.lines[line])
	switch next := s.below(line); {
	case next > 0 && s.indent(next) > in && !strings.ContainsAny(bare, " \t"):
		f.repair = &repair{line, end, end, ":", -1} // the key of the lines below
	case end > in: // as a comment it is out of the way
		f.repair = &repair{line, in, end, "#" + strings.Repeat("x", end-in-1), -1}
	}
	return f, true
}

// tooFarIn finds a key that stands deeper than a line that has its value already.
func (s *stop) tooFarIn() (fault, bool) {
	line, _ := s.lastSign()
	above := s.above(line)
	if above < 0 || s.indent(line) <= s.indent(above) {
		return fault{}, false
	}
	return fault{
		pos: s.whole(line), code: "indent",
		message: "this line stands further in than the line above, which has its value already",
		help:    []string{fmt.Sprintf("keys of one map begin under one another: the line above begins %s in", blanks(s.indent(above)))},
		see:     []source.Also{{Pos: s.whole(above), What: "the line above"}},
	}, true
}

// badIndent finds a line that begins under no line it could belong to.
func (s *stop) badIndent() (fault, bool) {
	line, _ := s.lastSign()
	if !keyLine.MatchString(string(s.lines[line])) && !strings.HasPrefix(strings.TrimSpace(string(s.lines[line])), "-") {
		return fault{}, false
	}
	above := s.above(line)
	if above < 0 {
		return fault{}, false
	}
	if m := gluedDash.FindStringSubmatch(strings.TrimSpace(string(s.lines[line]))); m != nil {
		return fault{
			pos: s.at(line, s.indent(line), 1), code: "no-blank",
			message: "a blank is missing behind the dash",
			help:    []string{"write: - " + m[1]},
		}, true
	}
	dash := strings.HasPrefix(strings.TrimSpace(string(s.lines[line])), "-")
	if s.indent(line) == s.indent(above) && dash != strings.HasPrefix(strings.TrimSpace(string(s.lines[above])), "-") {
		return fault{
			pos: s.whole(line), code: "indent",
			message: "a key and the dash of a list stand under one another",
			help:    []string{"the entries of a list all begin with a dash, the keys of a map never do; one of the lines is set in wrongly"},
			see:     []source.Also{{Pos: s.whole(above), What: "the line above"}},
		}, true
	}
	return fault{
		pos: s.whole(line), code: "indent",
		message: fmt.Sprintf("this line begins %s in and belongs to nothing above it", blanks(s.indent(line))),
		help: []string{
			fmt.Sprintf("keys of one map begin under one another, and so do the dashes of one list: the line above begins %s in", blanks(s.indent(above))),
		},
	}, true
}

// otherColon is a key with another sign behind it than the colon, or with none.
var otherColon = phrase.Of(`^((?:- +)?)([\p{L}\d_-]+)(?: *[=：﹕∶;→] *| +)(\S.*)$`)

// withColon writes a line that lacks its colon, if it is clear where that goes.
func withColon(bare string) string {
	m := otherColon.FindStringSubmatch(bare)
	if m != nil && (anyKey(m[2]) || strings.ContainsAny(bare, "=：﹕∶")) {
		return "write: " + m[1] + m[2] + ": " + m[3]
	}
	return "write: key: value; an entry of a list begins with a dash and a blank"
}

// anyKey reports whether a word is a key of some map.
func anyKey(word string) bool {
	for _, s := range shapes() {
		for _, e := range s.entries() {
			if e.name == word {
				return true
			}
		}
	}
	return false
}

func blanks(n int) string {
	switch n {
	case 0:
		return "no blanks"
	case 1:
		return "1 blank"
	}
	return fmt.Sprintf("%d blanks", n)
}

// listOnKeyLine finds a list that begins behind a key.
func (s *stop) listOnKeyLine() (fault, bool) {
	for i := len(s.colons) - 1; i >= 0; i-- {
		c := s.colons[i]
		if !s.reached(c.line, c.col) {
			continue
		}
		line := s.lines[c.line]
		dash := c.col + 1
		for dash < len(line) && line[dash] == ' ' {
			dash++
		}
		if dash+1 >= len(line) || line[dash] != '-' || line[dash+1] != ' ' {
			break
		}
		return fault{
			pos: s.at(c.line, dash, 1), code: "list-behind-key",
			message: "a list with dashes begins on a line of its own, not behind its key",
			help:    []string{"write: [one, two], or begin a new line with the dash"},
			repair:  s.replace(spot{line: c.line, col: dash}),
		}, true
	}
	return fault{}, false
}
