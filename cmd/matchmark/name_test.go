package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The names that Windows keeps for devices are those of its own list of naming
// conventions, from memory.
func TestFileName(t *testing.T) {
	t.Parallel()
	for in, want := range map[string]string{
		"WO-5512-B": "WO-5512-B", "WO_1.2-A": "WO_1.2-A",
		"CON.1-A": "_CON.1-A", "nul.2-A": "_nul.2-A", "lpt9.x-B": "_lpt9.x-B", "CONCRETE-A": "CONCRETE-A", "COM1-A": "COM1-A",
		"..-A": "_..-A", ".profile-A": "_.profile-A",
	} {
		if got := fileName(in); got != want {
			t.Errorf("%q gives the name %q, want %q", in, got, want)
		}
	}
	seen := map[string]string{}
	for _, in := range []string{"WO/1-A", "WO-1-A", "WO 1-A", "WO\\1-A", "WO:1-A", "../../etc/WO-A", "ЗН-1-A", "ЖН-1-A", "a\u00a0b"} {
		got := fileName(in)
		if other, twice := seen[got]; twice {
			t.Errorf("%q and %q print into the same file %q", in, other, got)
		}
		seen[got] = in
		if strings.ContainsAny(got, "/\\:*?\"<>| ") {
			t.Errorf("%q gives the name %q", in, got)
		}
	}
}

// TestLinksStayInside: a link that stands in the place of a file to be written is
// replaced; what it leads to, outside the folder, is not touched.
func TestLinksStayInside(t *testing.T) {
	t.Parallel()
	dir, outside := t.TempDir(), filepath.Join(t.TempDir(), "letter")
	if err := os.WriteFile(outside, []byte("a letter"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"7-A-pack.pdf", "7-A-tags.pdf"} {
		if err := os.Symlink(outside, filepath.Join(dir, name)); err != nil {
			t.Skip(err)
		}
	}
	var out, talk strings.Builder
	if code := run([]string{"print", filepath.Join(testdata, "good", "smallest.yaml"), "--out", dir}, strings.NewReader(""), &out, &talk); code != exitDone {
		t.Fatalf("exit %d: %s", code, talk.String())
	}
	if data, err := os.ReadFile(outside); err != nil || string(data) != "a letter" {
		t.Errorf("what the link leads to holds %.20q, %v", data, err)
	}
	if info, err := os.Lstat(filepath.Join(dir, "7-A-pack.pdf")); err != nil || !info.Mode().IsRegular() {
		t.Errorf("the pack is no file of its own: %v %v", info, err)
	}
}
