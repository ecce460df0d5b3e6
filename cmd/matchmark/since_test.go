package main

import (
	"os"
	"path/filepath"
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

// A reprinted sheet did not show what had changed on it: whoever held both had to read both.
// A bar stands beside each step that is not as it was, and beside no other.
func TestChangeBars(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	changed := strings.NewReplacer("revision: B", "revision: C", "Lock out the fan motor", "Carefully lock out the fan motor",
		"keep: numbered holes", "keep: the numbered holes", "      - step: marks\n", "      - step: marks\n        note: Marks of the last outage are filed off.\n").Replace(text)
	load := func(text string) *job.Job {
		jb, problems := packs.Load(fstest.MapFS{"fan.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "fan.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		return jb
	}
	old, now := load(text), load(changed)
	since := revise.Since(old, now)
	pack, misfits := templates.Compose(now, templates.Options{Paper: layout.A4, Since: since}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatal(misfits)
	}
	barred := 0
	for _, s := range now.Sections {
		for _, st := range s.Steps {
			got, found := false, false
			for _, f := range pack.Pages.BySheet() {
				if f.Sheet != "traveler" && f.Sheet != "reassembly" {
					continue
				}
				for _, it := range f.Items {
					if x, ok := it.Shape.(layout.Text); !ok || x.S != st.No || it.X > 30 {
						continue
					}
					found = true
					got = got || besideBar(f, it)
				}
			}
			if st.Note != "" && !since.Step(st) { // a new remark was no change
				t.Errorf("step %s has a new remark and is not told as changed", st.Name())
			}
			if found && got != since.Step(st) {
				t.Errorf("step %s has a bar: %v, is changed: %v", st.Name(), got, since.Step(st))
			}
			if got {
				barred++
			}
		}
	}
	if barred == 0 || barred > 4 {
		t.Errorf("%d steps have a bar", barred)
	}
	for _, f := range pack.Pages.BySheet() {
		for _, it := range f.Items {
			if x, ok := it.Shape.(layout.Text); ok && f.Sheet == "register" && strings.HasPrefix(x.S, "C1") && besideBar(f, it) {
				return
			}
		}
	}
	t.Error("the line of C1 on the register, whose tag is printed again, has no bar")
}

// besideBar reports whether a bar of changes stands in the margin beside a text.
func besideBar(f layout.Frame, it layout.Item) bool {
	for _, b := range f.Items {
		if line, ok := b.Shape.(layout.Line); ok && b.Role == layout.RoleChange && it.Y >= b.Y && it.Y <= b.Y+line.DY {
			return true
		}
	}
	return false
}
