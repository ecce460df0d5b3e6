package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"strings"

	"matchmark/packs/source"
)

// report writes problems with their lines, and in the end how many there are.
func report(w io.Writer, problems source.Problems, files source.Files) {
	if len(problems) == 0 {
		return
	}
	var text bytes.Buffer
	problems.Write(&text, files)
	errors := problems.Errors()
	fmt.Fprintf(&text, "%s, %s\n", counted(errors, "problem"), counted(len(problems)-errors, "warning"))
	if coloured(w) {
		io.WriteString(w, colour(text.String()))
		return
	}
	w.Write(text.Bytes())
}

// coloured reports whether a stream is a terminal that shows colours: NO_COLOR (as the
// convention of that name has it) and the terminal "dumb" switch them off.
func coloured(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok || os.Getenv("NO_COLOR") != "" || os.Getenv("TERM") == "dumb" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0 && f.Name() != os.DevNull
}

// The colours of a terminal (ECMA-48, select graphic rendition). They add nothing to
// the words.
const (
	bold   = "\x1b[1m"
	red    = "\x1b[31m"
	yellow = "\x1b[33m"
	plain  = "\x1b[0m"
)

// colour marks the first line of each problem, and the mark under its place: red what
// stops the print, yellow a warning.
func colour(text string) string {
	var out strings.Builder
	now := red
	for _, line := range strings.SplitAfter(text, "\n") {
		bare := strings.TrimSuffix(line, "\n")
		switch {
		case bare == "":
		case !strings.HasPrefix(bare, " "):
			if now = red; strings.Contains(bare, ": warning: ") {
				now = yellow
			}
			bare = bold + bare + plain
		case strings.Trim(bare, " \t^~") == "" && strings.Contains(bare, "^"):
			bare = now + bare + plain
		}
		out.WriteString(bare + line[len(strings.TrimSuffix(line, "\n")):])
	}
	return out.String()
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// exitFor is the exit code that problems call for.
func exitFor(problems source.Problems) int {
	for _, p := range problems {
		if p.Code == source.Unreadable {
			return exitFiles
		}
	}
	if problems.Errors() > 0 {
		return exitProblems
	}
	return exitDone
}
