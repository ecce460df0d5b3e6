package source

import (
	"fmt"
	"slices"
	"sort"

	"matchmark/packs/phrase"
)

// anyPlace finds what tells one place from another in a message: the place behind a
// mark or a name, and the number of a step.
var anyPlace = phrase.Of(`/[\p{L}\p{N}-]+|\bR?[0-9]+\.[0-9]+ \(`)

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
	// Sentence is the message where it can be told in other languages; nil where the
	// paper tells what stands behind the code.
	Sentence Sentence
	// See names other places that matter to the problem, each with a few words.
	See []Also
	// More is at how many further places of one thing the same holds, which the message says
	// as well.
	More int
	// Follows is 0 for a problem that stands alone. One that was found behind errors,
	// which leave holes, may come from them; the later the stage that found it, the
	// higher the number.
	Follows int
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

// Follow says of all problems from number first on (from 0) that a stage found them
// behind the errors before them, if there are any. Stages count from 1.
func (ps Problems) Follow(first, stage int) {
	if ps[:first].Errors() == 0 {
		return
	}
	for i := first; i < len(ps); i++ {
		ps[i].Follows = stage
	}
}

// Unless takes out the problems of some codes where another error stands at the same place: what
// is said of a value in general is not said again of one that has been told of by its use.
func (ps *Problems) Unless(codes ...string) {
	type place struct {
		file      string
		line, col int
	}
	at := func(p Problem) place { return place{p.Pos.File, p.Pos.Line, p.Pos.Col} }
	told := map[place]bool{}
	for _, p := range *ps {
		if p.Severity == Error && !slices.Contains(codes, p.Code) {
			told[at(p)] = true
		}
	}
	*ps = slices.DeleteFunc(*ps, func(p Problem) bool { return slices.Contains(codes, p.Code) && told[at(p)] })
}

// Sort orders the problems, causes before what may come of them and then by place, and drops those that say the same again. What is
// said of several places of one thing, at one place of the file, is said of the
// first, with how many more there are.
func (ps *Problems) Sort() {
	list := *ps
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if a.Follows != b.Follows {
			return a.Follows < b.Follows
		}
		if a.Pos.File != b.Pos.File || a.Pos.Line != b.Pos.Line || a.Pos.Col != b.Pos.Col {
			return a.Pos.Before(b.Pos)
		}
		return a.Severity > b.Severity // and in the order in which they were found
	})
	var kept Problems
	more := map[string]int{} // further places of the problem kept, by what it says
	at := map[string]int{}
	for _, p := range list {
		key := fmt.Sprint(p.Pos, p.Severity, p.Code, anyPlace.ReplaceAllString(p.Message, ""))
		i, said := at[key]
		switch {
		case !said:
			at[key] = len(kept)
			kept = append(kept, p)
		case kept[i].Message != p.Message:
			more[key]++
		}
	}
	for key, n := range more {
		p := &kept[at[key]]
		p.More, p.Message = n, p.Message+moreSaid(nil, n)
	}
	*ps = kept
}
