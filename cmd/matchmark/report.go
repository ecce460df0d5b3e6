package main

import (
	"fmt"
	"io"

	"matchmark/packs/source"
)

// report writes problems with their lines, and in the end how many there are.
func report(w io.Writer, problems source.Problems, files source.Files) {
	if len(problems) == 0 {
		return
	}
	problems.Write(w, files)
	errors := problems.Errors()
	fmt.Fprintf(w, "%s, %s\n", counted(errors, "problem"), counted(len(problems)-errors, "warning"))
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
