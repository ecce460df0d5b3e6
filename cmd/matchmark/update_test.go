package main

import (
	"errors"
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// update rewrites the expected outputs and names each file that it changed. A test
// that rewrote one ends as failed, for go test shows nothing of those that pass; the
// next run passes.
var update = flag.Bool("update", false, "rewrite the expected outputs under testdata and name those that changed")

const testdata = "../../testdata"

// expect compares what a test made with a file under testdata, or writes it there.
func expect(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join(testdata, name)
	want, err := os.ReadFile(path)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		t.Fatal(err)
	}
	if err == nil && string(want) == got {
		return
	}
	if !*update {
		line, was, is := firstDifference(string(want), got)
		t.Errorf("testdata/%s line %d\nis:  %s\nwas: %s\n(go test ./cmd/matchmark -update rewrites it)", name, line, is, was)
		return
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
		t.Fatal(err)
	}
	t.Errorf("rewritten: testdata/%s", name)
}

// firstDifference finds the first line that differs, which counts from 1.
func firstDifference(a, b string) (line int, inA, inB string) {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := 0; ; i++ {
		p, inX := at(x, i)
		q, inY := at(y, i)
		if p != q || !inX || !inY {
			return i + 1, p, q
		}
	}
}

func at(lines []string, i int) (string, bool) {
	if i < len(lines) {
		return lines[i], true
	}
	return "(nothing)", false
}

// dropped removes the expected outputs of a folder that no test has made, so that
// a sheet or a starter that is gone leaves nothing behind.
func dropped(t *testing.T, dir string, made map[string]bool) {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(testdata, dir, "*"))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if made[filepath.Base(f)] {
			continue
		}
		if !*update {
			t.Errorf("testdata/%s/%s: no test makes this file (go test ./cmd/matchmark -update removes it)", dir, filepath.Base(f))
		} else if err := os.RemoveAll(f); err != nil {
			t.Error(err)
		} else {
			t.Errorf("removed: testdata/%s/%s", dir, filepath.Base(f))
		}
	}
}

// longTest leaves a test out with -short: one that takes its time and would find
// nothing more under the race detector.
func longTest(t *testing.T) {
	t.Helper()
	if testing.Short() {
		t.Skip("left out with -short")
	}
}
