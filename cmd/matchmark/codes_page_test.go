package main

import (
	"bytes"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/codes"
)

// TestEveryCodeIsExplained: each code that the source can report, or that a definition
// in bad gets, has its cause and its cure, and no other has.
func TestEveryCodeIsExplained(t *testing.T) {
	t.Parallel()
	known := codesInSource(t, append([]string{"packs/filled"}, codeDirs...)...)
	for c := range codesShown(t) {
		known = append(known, c)
	}
	for c := range elsewhere {
		known = append(known, c)
	}
	slices.Sort(known)
	known = slices.Compact(known)
	names := codes.Names()
	for _, c := range known {
		if !slices.Contains(names, c) {
			t.Errorf("the problem %s is not explained", c)
		}
	}
	for i, c := range names {
		if !slices.Contains(known, c) {
			t.Errorf("%s is explained, and nothing reports it", c)
		}
		if i > 0 && names[i-1] == c {
			t.Errorf("%s is explained twice", c)
		}
		e, _ := codes.Find(c)
		for _, s := range []string{e.Cause, e.Cure} {
			if !strings.HasSuffix(s, ".") || len(s) < 12 || strings.Contains(s, "nvalid") {
				t.Errorf("%s: %q is not a sentence that helps", c, s)
			}
		}
	}
}

// TestCodesPage keeps packs/codes/CODES.md as the table says.
func TestCodesPage(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	b.WriteString("# What check says, and what to do\n\nEach problem carries a code in brackets. `matchmark explain CODE` shows one; the links lead to a definition that gets it, with\nwhat check says of it beside it. Made from the tables of this folder by `go test ./cmd/matchmark -run TestCodesPage -update`.\n\n")
	shown := codesShown(t)
	err := codes.Reference(&b, func(code string) string {
		if shown[code] == "" {
			return ""
		}
		return "../../testdata/bad/" + shown[code]
	})
	if err != nil {
		t.Fatal(err)
	}
	expect(t, filepath.Join("..", "packs", "codes", "CODES.md"), b.String())
}
