package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
)

// TestExitCodes: 0 done, 1 problems, 2 wrong usage, 3 files.
func TestExitCodes(t *testing.T) {
	t.Parallel()
	starter := filepath.Join(startersDir, "exhaust-fan.yaml")
	file := filepath.Join(t.TempDir(), "file")
	if err := writeAll([]output{{path: file, data: bytes.NewBufferString("x")}}); err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name  string
		args  string
		stdin string
		want  int
	}{
		{"a good definition has no problem", "check " + starter, "", exitDone},
		{"help is no mistake", "--help", "", exitDone},
		{"help of a command is no mistake", "print --help", "", exitDone},
		{"an empty definition is a problem", "check -", "", exitProblems},
		{"a definition of another kind is a problem", "print -", "just text", exitProblems},
		{"no command is wrong usage", "", "", exitUsage},
		{"an unknown command is wrong usage", "paint x", "", exitUsage},
		{"an unknown flag is wrong usage", "check --fast x", "", exitUsage},
		{"a missing file cannot be read", "check missing.yaml", "", exitFiles},
		{"a missing job file cannot be read", "check " + starter + " --job missing.yaml", "", exitFiles},
		{"a folder cannot be read as a file", "check " + startersDir, "", exitFiles},
		{"a file in the way of the folder cannot be written", "print " + starter + " --out " + file, "", exitFiles},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var out, talk bytes.Buffer
			got := run(strings.Fields(test.args), strings.NewReader(test.stdin), &out, &talk)
			if got != test.want {
				t.Errorf("matchmark %s: exit %d, want %d\n%s%s", test.args, got, test.want, &out, &talk)
			}
			if got != exitDone && out.Len()+talk.Len() == 0 {
				t.Errorf("matchmark %s: exit %d without a word", test.args, got)
			}
		})
	}
}
