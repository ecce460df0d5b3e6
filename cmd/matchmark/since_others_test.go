package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/revise"
	"matchmark/templates"
)

// A lift, a heat or a hazard note that had changed had no bar where it is printed, and the
// front sheet said nothing of it. Now both do, and of nothing else; what is gone is named.
func TestChangeBarsBesideSheets(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "storm-pump.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	edits := []struct{ was, is, sheet, name string }{
		{"Tag lines at both brackets", "Two tag lines at both brackets", "lifts", "L2"},
		{"wet cloth on the cover, not on the hub", "a wet cloth on the cover, none on the hub", "heats", "H1"},
		{"tester dead at the motor", "tester dead at the motor and tried", "isolations", "Breaker 52-3"},
		{"wooden covers under one sheet", "wooden covers under two sheets", "openings", "Casing with impeller space"},
		{"ground as one, arrow across both", "ground as two, arrow across both", "register", "S4"},
		{"pallets and rubber mats", "pallets and thick mats", "front", "Y3"},
		{`"Padlock with its tag, chain", count: 6`, `"Padlock with its tag, chain", count: 8`, "gather", "Padlock with its tag"},
	}
	changed := strings.Replace(text, "revision: ", "revision: Z", 1)
	for _, e := range edits {
		if strings.Count(changed, e.was) != 1 {
			t.Fatalf("%q is %d times in the starter", e.was, strings.Count(changed, e.was))
		}
		changed = strings.Replace(changed, e.was, e.is, 1)
	}
	lines := strings.Split(changed, "\n")
	lines = slices.DeleteFunc(lines, func(l string) bool { return strings.HasPrefix(l, "  spanners: ") })
	load := func(text string) *job.Job {
		jb, problems := packs.Load(fstest.MapFS{"p.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "p.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		return jb
	}
	now := load(strings.Join(lines, "\n"))
	since := revise.Since(load(text), now)
	if len(since.Others) != len(edits) || len(since.Gone) != 1 {
		t.Errorf("told as changed: %v, gone: %v", since.Others, since.Gone)
	}
	pack, misfits := templates.Compose(now, templates.Options{Paper: layout.A4, Since: since}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatal(misfits)
	}
	front, barred := "", map[string]bool{}
	for _, f := range pack.Pages.BySheet() {
		for _, it := range f.Items {
			x, ok := it.Shape.(layout.Text)
			switch {
			case !ok:
			case f.Sheet == "front":
				front += x.S
			case it.X < 50 && besideBar(f, it):
				barred[f.Sheet] = true
			}
		}
	}
	front = strings.Join(strings.Fields(front), "")
	for _, e := range edits {
		if !strings.Contains(front, strings.Join(strings.Fields(e.name), "")) {
			t.Errorf("the front sheet does not name %s", e.name)
		}
		if !barred[e.sheet] && e.sheet != "front" {
			t.Errorf("the sheet %s has no bar for %s", e.sheet, e.name)
		}
	}
	if want := fmt.Sprintf("S4 Thrust pair p. %d", pageOf(pack, "register")); !strings.Contains(front, strings.ReplaceAll(want, " ", "")) {
		t.Errorf("the front sheet does not say %q: %s", want, front)
	}
	for _, sheet := range []string{"holds", "tightening", "alignment", "signatures", "close-out", "counts"} {
		if barred[sheet] {
			t.Errorf("nothing on the sheet %s has changed, and it has a bar", sheet)
		}
	}
	if !strings.Contains(front, "Nolongerthere:HookspannersM110") {
		t.Error("the front sheet does not say that the hook spanners are gone")
	}
}

// pageOf is the first page of a sheet.
func pageOf(pack *templates.Pack, sheet string) int {
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet == sheet {
			return f.Number
		}
	}
	return 0
}

// What all joints were counted with had a bar where the first of them had changed, though not a
// word of it had.
func TestNoBarBesideWhatIsCountedWith(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "storm-pump.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	load := func(text string) *job.Job {
		jb, problems := packs.Load(fstest.MapFS{"p.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "p.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		return jb
	}
	old, now := load(string(data)), load(strings.Replace(string(data), "what: Joint nuts M36\n", "what: Nuts M36 of the joint\n", 1))
	pack, _ := templates.Compose(now, templates.Options{Paper: layout.A4, Since: revise.Since(old, now)}, pdf.NewFaces(), nil)
	bars, workings := 0, 0
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "tightening" {
			continue
		}
		for _, it := range f.Items {
			switch {
			case it.Role == layout.RoleChange:
				bars++
			case it.Role == "working":
				workings++
				if besideBar(f, it) {
					t.Errorf("p. %d: a bar stands beside %v", f.Number, it.Shape)
				}
			}
		}
	}
	if bars == 0 || workings == 0 {
		t.Errorf("%d bars and %d lines of workings: nothing is tested", bars, workings)
	}
}
