package main

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates"
)

// TestGoldenPages holds every sheet of the starters against the one that was last
// looked at: what is read on each page on A4, and for both papers the hashes of the
// pages with all places and sizes, and of the painted files. Run with -update after a
// change, look at the printed pages, and commit the changed files with the reason.
func TestGoldenPages(t *testing.T) {
	top := map[string]bool{"cautions.txt": true}
	for _, starter := range starters(t) {
		name := strings.TrimSuffix(starter, ".yaml")
		top[name] = true
		t.Run(starter, func(t *testing.T) {
			files := starterGoldens(t, starter)
			made := map[string]bool{}
			for _, file := range slices.Sorted(maps.Keys(files)) {
				made[file] = true
				expect(t, "golden/"+name+"/"+file, files[file])
			}
			dropped(t, "golden/"+name, made)
		})
	}
	dropped(t, "golden", top)
}

// starterGoldens gives the golden files of a starter, made once for all tests.
func starterGoldens(t *testing.T, starter string) map[string]string {
	t.Helper()
	for _, paper := range papers {
		composed(t, starter, templates.Options{Paper: paper}) // fails here, not within what is made once
	}
	return goldensOnce.of(starter, func() map[string]string {
		return goldenFiles(t, func(paper layout.Paper) (*job.Job, *templates.Pack) {
			return composed(t, starter, templates.Options{Paper: paper})
		})
	})
}

var goldensOnce once[map[string]string] // by starter

// goldenFiles gives all golden files of one job.
func goldenFiles(t *testing.T, on func(layout.Paper) (*job.Job, *templates.Pack)) map[string]string {
	t.Helper()
	jb, pack := on(layout.A4)
	files := goldenSheets(jb.Digest, pack)
	for _, paper := range papers {
		_, pack := on(paper)
		files[framesFile(paper)] = frameHashes(pack) + hashLine(t, "pack", pack.Pages) + hashLine(t, "tags", pack.Tags)
	}
	return files
}

// framesFile is the name of the file of hashes of a paper.
func framesFile(paper layout.Paper) string { return "frames-" + strings.ToLower(paper.Name) + ".txt" }

// definitionOf is the text of a starter.
func definitionOf(t *testing.T, starter string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(startersDir, starter))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestGoldenWordChanged changes a word in a definition. The files of the sheets
// where it stands change, and the hashes; no other, though every page of the pack
// has another digest.
func TestGoldenWordChanged(t *testing.T) {
	longTest(t)
	t.Parallel()
	const starter = "exhaust-fan.yaml"
	definition := definitionOf(t, starter)
	was := starterGoldens(t, starter)
	for _, c := range []struct {
		from, to string
		files    []string
	}{
		{"fits measured", "fits looked at", []string{"front.txt"}},
		{"A slipping claw throws", "A slipping hook throws", []string{"cautions.txt"}},
		{"in hot). Rotor", "in hot). Wheel", []string{"steps.txt", "traveler.txt"}},
		{"with its drain hole down", "with its drain hole left", []string{"reassembly.txt", "steps.txt"}},
	} {
		text := strings.Replace(definition, c.from, c.to, 1)
		if text == definition {
			t.Fatalf("%s no longer says %q: the test has lost its subject", starter, c.from)
		}
		got := differing(was, goldenFiles(t, freshAs(t, starter, text)))
		want := append(slices.Clone(c.files), framesFile(layout.A4), framesFile(layout.Letter))
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%q in place of %q changes %v, want %v", c.to, c.from, got, want)
		}
	}
}

// TestGoldenEverySheet puts another text on a page of each kind of sheet. The file
// of the sheet changes, no other, and of the hashes that of the page.
func TestGoldenEverySheet(t *testing.T) {
	longTest(t)
	t.Parallel()
	tried := map[string]bool{}
	for _, starter := range starters(t) {
		jb, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		was, hashes := goldenSheets(jb.Digest, pack), strings.Split(frameHashes(pack), "\n")
		for i, f := range pack.Pages.Pages {
			part := slices.IndexFunc(f.Parts, func(p layout.Part) bool { return !tried[p.Sheet] })
			if part < 0 {
				continue
			}
			on := f.Parts[part]
			tried[on.Sheet] = true
			pages := slices.Clone(pack.Pages.Pages)
			pages[i].Items = slices.Concat(f.Items[:on.From], otherWord(t, f.Items[on.From:on.To], i), f.Items[on.To:])
			doc := *pack.Pages
			doc.Pages = pages
			changed := &templates.Pack{Pages: &doc, Tags: pack.Tags}
			if got := differing(was, goldenSheets(jb.Digest, changed)); !slices.Equal(got, []string{on.Sheet + ".txt"}) {
				t.Errorf("%s page %d: another word in %s changes %v", starter, i+1, on.Sheet, got)
			}
			for k, line := range strings.Split(frameHashes(changed), "\n") {
				if (line != hashes[k]) != (k == i) {
					t.Errorf("%s: another word on page %d: line %d of the hashes is %q, was %q", starter, i+1, k+1, line, hashes[k])
				}
			}
		}
	}
}

// otherWord gives the items with another text in place of one of them, which one
// hangs on n.
func otherWord(t *testing.T, items []layout.Item, n int) []layout.Item {
	t.Helper()
	var texts []int
	for i, it := range items {
		if _, ok := it.Shape.(layout.Text); ok {
			texts = append(texts, i)
		}
	}
	if len(texts) == 0 {
		t.Fatal("a page without a text")
	}
	out := slices.Clone(items)
	i := texts[n%len(texts)]
	s := out[i].Shape.(layout.Text)
	s.S = "another word"
	out[i].Shape = s
	return out
}

// differing lists the files that are not the same in both.
func differing(a, b map[string]string) []string {
	var names []string
	for name := range a {
		if b[name] != a[name] {
			names = append(names, name)
		}
	}
	for name := range b {
		if _, ok := a[name]; !ok {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

// hashLine paints a document and tells the SHA-256 of its bytes: the file is the same on
// every machine and every day.
func hashLine(t *testing.T, name string, doc *layout.Doc) string {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, doc); err != nil {
		t.Errorf("the %s is not painted: %v", name, err)
	}
	return fmt.Sprintf("%s: %d pages, %d bytes, SHA-256 %x\n", name, len(doc.Pages), b.Len(), sha256.Sum256(b.Bytes()))
}

// TestSamePackTwice: reading, composing and painting again gives the same sheets and the
// same bytes, on both papers; nothing hangs on the order of a map, nor on what was painted
// before.
func TestSamePackTwice(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		was := starterGoldens(t, starter)
		if names := differing(was, goldenFiles(t, freshAs(t, starter, definitionOf(t, starter)))); len(names) > 0 {
			t.Errorf("%s printed twice differs in %v", starter, names)
		}
	}
}
