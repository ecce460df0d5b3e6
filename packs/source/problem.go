package source

import "sort"

// A Pos is a place in a file: line and column count from 1, the column in
// runes. Width is how many runes the marked text has. The zero Pos means that
// no place is known; a Pos with a File and Line 0 means the file as a whole.
type Pos struct {
	File      string
	Line, Col int
	Width     int
}

// IsZero reports whether no place is known.
func (p Pos) IsZero() bool { return p.File == "" && p.Line == 0 }

// Before reports whether p stands before q: by file, line, then column.
func (p Pos) Before(q Pos) bool {
	if p.File != q.File {
		return p.File < q.File
	}
	if p.Line != q.Line {
		return p.Line < q.Line
	}
	return p.Col < q.Col
}

// Severity tells a problem that stops the print from one that only prints.
type Severity int

const (
	// Warning lets the pack be printed and is itself printed on the front sheet.
	Warning Severity = iota
	// Error stops the print.
	Error
)

// A Problem is one thing a planner has to look at.
type Problem struct {
	Pos      Pos
	Severity Severity
	Code     string   // short name of the kind of problem, as "unknown-key"
	Message  string   // what is wrong, with the value as written; one line
	Help     []string // what to write instead, at most three lines
	// See names other places that matter to the problem, each with a few words.
	See []Also
}

// An Also is a second place that a problem speaks of.
type Also struct {
	Pos  Pos
	What string // as "first used here"
}

// Problems is a list of problems. It is an error when it holds one.
type Problems []Problem

// Add appends an error with a message and up to three lines of help.
func (ps *Problems) Add(at Pos, code, message string, help ...string) {
	*ps = append(*ps, Problem{Pos: at, Severity: Error, Code: code, Message: message, Help: help})
}

// Warn appends a warning with a message and up to three lines of help.
func (ps *Problems) Warn(at Pos, code, message string, help ...string) {
	*ps = append(*ps, Problem{Pos: at, Severity: Warning, Code: code, Message: message, Help: help})
}

// Errors counts the problems that stop the print.
func (ps Problems) Errors() int {
	n := 0
	for _, p := range ps {
		if p.Severity == Error {
			n++
		}
	}
	return n
}

// Sort orders the problems by place and drops those that say the same again.
func (ps *Problems) Sort() {
	list := *ps
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if a.Pos != b.Pos {
			return a.Pos.Before(b.Pos)
		}
		if a.Severity != b.Severity {
			return a.Severity > b.Severity
		}
		return a.Code < b.Code
	})
	kept := list[:0]
	for i, p := range list {
		if i > 0 && p.Pos == kept[len(kept)-1].Pos && p.Message == kept[len(kept)-1].Message {
			continue
		}
		kept = append(kept, p)
	}
	*ps = kept
}
