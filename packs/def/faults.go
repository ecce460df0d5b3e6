package def

import (
	"fmt"
	"strings"

	"matchmark/packs/phrase"
)

// A faultRule says which of the library's messages what fault may stand behind.
type faultRule struct {
	said []string // parts of messages; none: any message
	find []func(*stop) (fault, bool)
}

func (f faultRule) about(said string) bool {
	for _, part := range f.said {
		if strings.Contains(said, part) {
			return true
		}
	}
	return len(f.said) == 0
}

// faultRules are tried in their order; the first that finds its fault is taken.
var faultRules = []faultRule{
	{[]string{"unknown anchor"}, []func(*stop) (fault, bool){(*stop).unknownAnchor}},
	{[]string{"max depth"}, []func(*stop) (fault, bool){(*stop).tooDeep}},
	{nil, []func(*stop) (fault, bool){(*stop).quotesAcross}},
	{[]string{"tab character"}, []func(*stop) (fault, bool){(*stop).tab}},
	{[]string{"escape", "hexdecimal"}, []func(*stop) (fault, bool){(*stop).escape}},
	{[]string{"unexpected end of stream", "document indicator"}, []func(*stop) (fault, bool){(*stop).openQuote}},
	{[]string{"start any token", "comment or line break", "alphabetic or numeric", "directive", "indentation indicator", "tag", "URI", "'>'", "'!'"},
		[]func(*stop) (fault, bool){(*stop).tabHere, (*stop).badStart, (*stop).tab}},
	{[]string{"block sequence entries"}, []func(*stop) (fault, bool){(*stop).listOnKeyLine}},
	{[]string{"could not find expected ':'"}, []func(*stop) (fault, bool){(*stop).quotesGoOn, (*stop).noColon}},
	{[]string{"mapping values"}, []func(*stop) (fault, bool){(*stop).secondColon, (*stop).noColonAbove, (*stop).tooFarIn}},
	{[]string{"expected node content"}, []func(*stop) (fault, bool){(*stop).strayBracket, (*stop).emptyEntry, (*stop).dashInBrackets, (*stop).neverClosed}},
	{[]string{"',' or"}, []func(*stop) (fault, bool){(*stop).quotesGoOn, (*stop).questionInBraces, (*stop).neverClosed, (*stop).noComma}},
	{[]string{"expected key", "'-' indicator", "document start"}, []func(*stop) (fault, bool){(*stop).quotesGoOn, (*stop).strayBracket, (*stop).badIndent}},
}

// somewhere is the fault of which no more is known than where reading stopped.
func (s *stop) somewhere() fault {
	line, col := s.lastSign()
	return fault{
		pos: s.at(line, col, 1), code: "yaml",
		message: "the file cannot be read on from here: a sign is missing or one too many, here or on the line above",
		help:    []string{"look for colons, commas, quotes and brackets, and whether the line begins under those it belongs to"},
	}
}

// lastSign is the last place before the stop where something is written.
func (s *stop) lastSign() (line, col int) {
	line, col = min(s.line, len(s.lines)-1), s.col-1
	for ; line >= 0; line-- {
		col = min(col, len(s.lines[line])-1)
		for ; col >= 0; col-- {
			if c := s.lines[line][col]; c != ' ' && c != '\t' {
				return line, col
			}
		}
		if line > 0 {
			col = len(s.lines[line-1]) - 1
		}
	}
	return 0, 0
}

// replace is the repair that puts a stand-in for the text at a spot.
func (s *stop) replace(at spot) *repair {
	end := valueEnd(s.lines[at.line], at)
	return &repair{at.line, at.col, end, standIn(end - at.col), at.col}
}

// badStart finds a text that begins with a sign YAML keeps for itself.
func (s *stop) badStart() (fault, bool) {
	for i := len(s.starts) - 1; i >= 0; i-- {
		at := s.starts[i]
		if !s.reached(at.line, at.col) {
			continue
		}
		if at.line < s.line-1 {
			break
		}
		rest := s.lines[at.line][at.col:]
		next := ' '
		if len(rest) > 1 {
			next = rest[1]
		}
		word := next == '_' || next == '-' || next >= '0' && next <= '9' || next >= 'A' && next <= 'z'
		switch c := at.what; {
		case strings.ContainsRune("@`%", c), c == '!',
			strings.ContainsRune("*&", c) && !word,
			strings.ContainsRune(">|", c) && !isBlockHead(rest):
			return s.startsWith(at), true
		}
	}
	return fault{}, false
}

// startsWith words the fault of a text that begins with a sign.
func (s *stop) startsWith(at spot) fault {
	f := fault{code: "bad-start", repair: s.replace(at)}
	f.pos = s.at(at.line, at.col, f.repair.to-at.col)
	text := string(s.lines[at.line][at.col:f.repair.to])
	f.message = fmt.Sprintf("a line cannot start with %q here", string(at.what))
	switch {
	case at.what == '>':
		f.help = []string{"write: at least " + strings.TrimSpace(strings.TrimLeft(text, ">= "))}
	case at.what == '%' && at.col == 0:
		f.help = []string{"a comment begins with #"}
	case at.what == '%':
		f.help = []string{"the number comes first: 25 " + text, "or put the text in quotes: " + quote(text)}
	default:
		f.help = []string{"put the text in quotes: " + quote(text)}
	}
	return f
}

// tab finds tabs before the text of a line. When all lines that are set in are
// set in by tabs, blanks stand in for them.
func (s *stop) tab() (fault, bool) {
	first, count, mixed := -1, 0, false
	for i, line := range s.lines {
		in := 0
		for in < len(line) && (line[in] == ' ' || line[in] == '\t') {
			in++
		}
		head := string(line[:in])
		switch tabs := strings.Count(head, "\t"); {
		case in == len(line):
		case tabs > 0:
			count++
			mixed = mixed || tabs != in
			if first < 0 {
				first = i
			}
		case in > 0:
			mixed = true
		}
	}
	if first < 0 || first > s.line && first > s.below(s.line) {
		return fault{}, false
	}
	f := fault{
		pos: s.at(first, strings.IndexRune(string(s.lines[first]), '\t'), 1), code: "tab",
		message: "a tab stands before the text of this line; YAML takes blanks only",
		help:    []string{"set lines in by two blanks; most editors can turn tabs into blanks"},
	}
	if count > 1 {
		f.message = fmt.Sprintf("tabs stand before the text of this line and %d more; YAML takes blanks only", count-1)
	}
	if !mixed {
		f.repair = &repair{line: -1, hole: -1}
	}
	return f, true
}

// tabHere finds tabs before the text of the very line where reading stopped, or the
// next.
func (s *stop) tabHere() (fault, bool) {
	for _, line := range []int{s.line, s.below(s.line)} {
		if line >= 0 && strings.ContainsRune(string(s.lines[line][:s.indent(line)]), '\t') {
			return s.tab()
		}
	}
	return fault{}, false
}

// inQuotes is what the YAML library names in its quotes.
var inQuotes = phrase.Of(`'(.*)'`)

// unknownAnchor finds an alias of something that has no anchor.
func (s *stop) unknownAnchor() (fault, bool) {
	name := inQuotes.FindStringSubmatch(s.said)
	if name == nil {
		return fault{}, false
	}
	for _, at := range s.starts {
		if at.what != '*' || !strings.HasPrefix(string(s.lines[at.line][at.col:]), "*"+name[1]) {
			continue
		}
		f := fault{code: "unknown-alias", repair: s.replace(at)}
		f.pos = s.at(at.line, at.col, 1+len([]rune(name[1])))
		f.message = quote("*"+name[1]) + " repeats what stands behind &" + name[1] + ", and nothing does above it"
		f.help = []string{"if the * belongs to the text, put the text in quotes"}
		return f, true
	}
	return fault{}, false
}

// tooDeep is the fault of a file nested so deeply that YAML gives up.
func (s *stop) tooDeep() (fault, bool) {
	line, col := s.lastSign()
	return fault{
		pos: s.at(line, col, 1), code: "too-deep",
		message: fmt.Sprintf("maps and lists stand more than %d levels inside one another here", maxDepth),
		help:    []string{"a definition needs about eight levels; is a bracket left open?"},
	}, true
}
