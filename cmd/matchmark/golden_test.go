package main

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/templates"
)

// TestGoldenPages holds every sheet of the starters against the one that was last
// looked at: each item with its place, on A4. Run with -update after a change, look
// at the printed pages, and commit the changed files with the reason.
func TestGoldenPages(t *testing.T) {
	for _, starter := range starters(t) {
		t.Run(starter, func(t *testing.T) {
			_, pack := composed(t, starter, templates.Options{Paper: layout.A4})
			dir := "golden/" + strings.TrimSuffix(starter, ".yaml")
			sheets := map[string]string{}
			for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
				for i, f := range doc.Pages {
					sheets[f.Sheet+".txt"] += fmt.Sprintf("page %d\n", i+1) + layout.Dump(f)
				}
			}
			sheets["files.txt"] = hashLine(t, "pack", pack.Pages) + hashLine(t, "tags", pack.Tags)
			made := map[string]bool{}
			for name, text := range sheets {
				made[name] = true
				expect(t, dir+"/"+name, text)
			}
			dropped(t, dir, made)
		})
	}
}

// hashLine paints a document twice, which must give the same bytes, and tells
// their SHA-256: the file is the same on every machine and every day.
func hashLine(t *testing.T, name string, doc *layout.Doc) string {
	t.Helper()
	var once, again bytes.Buffer
	for _, b := range []*bytes.Buffer{&once, &again} {
		if err := pdf.Write(b, doc); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(once.Bytes(), again.Bytes()) {
		t.Errorf("the %s painted twice are two different files", name)
	}
	return fmt.Sprintf("%s: %d pages, %d bytes, SHA-256 %x\n", name, len(doc.Pages), once.Len(), sha256.Sum256(once.Bytes()))
}

// TestSamePackTwice: reading, composing and painting again gives the same bytes,
// on both papers; nothing hangs on the order of a map.
func TestSamePackTwice(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			var first []string
			for range 3 {
				_, pack := composed(t, starter, templates.Options{Paper: paper})
				lines := []string{hashLine(t, "pack", pack.Pages), hashLine(t, "tags", pack.Tags)}
				if first == nil {
					first = lines
				}
				if lines[0] != first[0] || lines[1] != first[1] {
					t.Errorf("%s on %s: %s%safter\n%s%s", starter, paper.Name, lines[0], lines[1], first[0], first[1])
				}
			}
		}
	}
}
