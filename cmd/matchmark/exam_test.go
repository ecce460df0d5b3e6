package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// An exam asks what people who work from a printed pack must find in it: forty
// questions in three parts, with the answers in a file of their own, so that readers
// can be given the questions alone.
type exam struct {
	parts []string // headings
	lines []string // what stands behind the numbers, in their order
}

var (
	examLine  = regexp.MustCompile(`^(\d+)\. (.+)$`)
	quoted    = regexp.MustCompile("`([^`]+)`")
	examParts = []string{"Mechanic", "Storekeeper", "Planner"}
)

// readExam reads one file of an exam; its numbers must run from 1 to 40.
func readExam(t *testing.T, path string) exam {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var e exam
	for _, l := range strings.Split(string(data), "\n") {
		if part, ok := strings.CutPrefix(l, "## "); ok {
			e.parts = append(e.parts, part+" from "+strconv.Itoa(len(e.lines)+1))
			if want := len(e.parts); want > len(examParts) || part != examParts[want-1] {
				t.Errorf("%s: part %q", path, part)
			}
		}
		m := examLine.FindStringSubmatch(l)
		if m == nil {
			continue
		}
		e.lines = append(e.lines, m[2])
		if n := strconv.Itoa(len(e.lines)); m[1] != n {
			t.Fatalf("%s: number %s stands in place %s", path, m[1], n)
		}
	}
	if len(e.lines) != 40 {
		t.Errorf("%s: %d numbers, want 40", path, len(e.lines))
	}
	return e
}

// TestExam: questions and answers have the same numbers in the same parts, each answer
// names the sheets where it is found, and what it quotes is printed on one of them. The
// golden pages are read, which TestGoldenPages keeps as they are printed.
func TestExam(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		name := strings.TrimSuffix(starter, ".yaml")
		questions := readExam(t, filepath.Join(testdata, "exam", name+".md"))
		answers := readExam(t, filepath.Join(testdata, "exam", name+"-answers.md"))
		if !slices.Equal(questions.parts, answers.parts) {
			t.Errorf("%s: the parts begin at %v in the questions and at %v in the answers", name, questions.parts, answers.parts)
		}
		for i, a := range answers.lines {
			if i < len(questions.lines) && strings.Contains(questions.lines[i], "`") {
				t.Errorf("%s, question %d gives its answer away", name, i+1)
			}
			text, where, ok := strings.Cut(a, " — ")
			found := quoted.FindAllStringSubmatch(text, -1)
			if !ok || len(found) == 0 {
				t.Errorf("%s, answer %d quotes nothing, or does not say where it is found: %s", name, i+1, a)
				continue
			}
			sheets := ""
			for _, w := range strings.Split(where, "; ") {
				sheet, _, _ := strings.Cut(w, " ")
				page, err := os.ReadFile(filepath.Join(testdata, "golden", name, sheet+".txt"))
				if err != nil {
					t.Errorf("%s, answer %d: there is no sheet %q", name, i+1, sheet)
				}
				sheets += unspaced(string(page)) + "\n"
			}
			for _, q := range found {
				if !strings.Contains(sheets, unspaced(q[1])) {
					t.Errorf("%s, answer %d: %q is printed on no sheet named in %q", name, i+1, q[1], where)
				}
			}
		}
	}
}
