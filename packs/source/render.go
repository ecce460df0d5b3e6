package source

import (
	"fmt"
	"io"
	"strings"
)

// maxHelp is the most lines of help written under one problem.
const maxHelp = 3

// String gives the place as file:line:col, as far as it is known.
func (p Pos) String() string {
	switch {
	case p.Line == 0:
		return printable(p.File)
	case p.Col == 0:
		return fmt.Sprintf("%s:%d", printable(p.File), p.Line)
	}
	return fmt.Sprintf("%s:%d:%d", printable(p.File), p.Line, p.Col)
}

// Error gives the first problem that stops the print and says how many more
// there are. With warnings only it gives the first of them.
func (ps Problems) Error() string {
	if len(ps) == 0 {
		return "no problems"
	}
	first, more := ps[0], len(ps)-1
	for _, p := range ps {
		if p.Severity == Error {
			first = p
			break
		}
	}
	switch more {
	case 0:
		return first.headline()
	case 1:
		return first.headline() + ", and 1 more problem"
	}
	return fmt.Sprintf("%s, and %d more problems", first.headline(), more)
}

// headline is the first line of a problem: place, message and code.
func (p Problem) headline() string {
	var b strings.Builder
	if at := p.Pos.String(); at != "" {
		b.WriteString(at + ": ")
	}
	if p.Severity == Warning {
		b.WriteString("warning: ")
	}
	b.WriteString(printable(p.Message))
	if p.Code != "" {
		b.WriteString(" [" + p.Code + "]")
	}
	return b.String()
}

// mayFollow stands above the problems that may come from those before them.
const mayFollow = "what follows may come from the above: put that right first"

// Write writes each problem for a person, in the order of the list: its place
// and message, the source line with a mark under the place, the other places
// it speaks of, then at most three lines of help. A place in a file that files
// does not hold is written without its line. The error is that of w.
func (ps Problems) Write(w io.Writer, files Files) error {
	cut := map[string][]string{} // lines of the files met so far
	var b strings.Builder
	for i, p := range ps {
		if p.Follows > 0 && (i == 0 || ps[i-1].Follows == 0) {
			b.WriteString(mayFollow + "\n")
		}
		b.WriteString(p.headline() + "\n")
		if data, ok := files[p.Pos.File]; ok && p.Pos.Line > 0 {
			lines, ok := cut[p.Pos.File]
			if !ok {
				lines = Lines(data)
				cut[p.Pos.File] = lines
			}
			if p.Pos.Line <= len(lines) {
				line, mark := excerpt(lines[p.Pos.Line-1], p.Pos.Col, p.Pos.Width)
				b.WriteString("  " + line + "\n  " + mark + "\n")
			}
		}
		for _, also := range p.See {
			fmt.Fprintf(&b, "  see %s: %s\n", also.Pos, printable(also.What))
		}
		for _, help := range p.Help[:min(len(p.Help), maxHelp)] {
			b.WriteString("  " + printable(help) + "\n")
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}
