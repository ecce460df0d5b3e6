package def

import (
	_ "embed"
	"fmt"
	"io"
	"slices"
	"strings"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
)

// Explain writes what a key means, in each map that has it: its sentence, what stands
// behind it and an example. It reports whether there is such a key.
func Explain(w io.Writer, word string) bool {
	found := false
	for _, s := range shapes() {
		for _, e := range s.entries() {
			if e.name != word {
				continue
			}
			found = true
			need := ""
			if e.need {
				need = " It has to be written."
			}
			fmt.Fprintf(w, "%s, of %s\n  %s%s\n  %s\n  %s: %s\n", e.name, article(s.title()), e.doc, need, e.shapeWords(), e.name, e.example)
			for _, in := range e.inner {
				fmt.Fprintf(w, "  keys of %s: %s\n", article(in.title()), strings.Join(keyNames(in), ", "))
			}
		}
	}
	return found
}

// ExplainMark writes what a letter of a mark stands for, and the keys of what has such
// marks. It reports whether there is such a letter.
func ExplainMark(w io.Writer, letter string) bool {
	for _, s := range shapes() {
		if s.mark() != letter || letter == "" {
			continue
		}
		fmt.Fprintf(w, "%s: %s. %s\n", letter, s.title(), s.about())
		fmt.Fprintf(w, "  marks are %s1 to %s999, with their place behind a slash: %s1/DE\n", letter, letter, letter)
		for _, e := range s.entries() {
			fmt.Fprintf(w, "  %-14s %s\n", e.name, e.doc)
		}
		return true
	}
	if letter == "X" {
		fmt.Fprintln(w, "X: kept for the blank spare tags, X1 and on; spare rows of dimensions are D51 and on.")
		return true
	}
	return false
}

// Words lists all keys and letters of marks, sorted.
func Words() []string {
	var out []string
	for _, s := range shapes() {
		out = append(out, keyNames(s)...)
		if s.mark() != "" {
			out = append(out, s.mark())
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// NearestWord is the key that was probably meant, "" if none is near.
func NearestWord(word string) string { return nearest.Word(word, Words()) }

func keyNames(s shape) []string {
	var out []string
	for _, e := range s.entries() {
		out = append(out, e.name)
	}
	return out
}

//go:embed SAY.md
var say string

// sayRow is a row of the table of things to be said: number, what, line.
var sayRow = phrase.Of("(?m)^\\| \\d+ \\| ([^|]+) \\| `((?:[^`|]|\\\\\\|)+)` \\|")

// ExplainLimits writes the forty things that procedures ask of a limit or a step, with
// the line that says each, as SAY.md has them.
func ExplainLimits(w io.Writer) {
	for _, m := range sayRow.FindAllStringSubmatch(say, -1) {
		fmt.Fprintf(w, "%s\n    %s\n", m[1], strings.ReplaceAll(m[2], `\|`, "|"))
	}
}
