package main

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/revise"
	"matchmark/templates"
)

// The front sheet of a pack with change bars had a page more for what has changed, and fill told
// each page one too low, under a digest that stands on no paper.
func TestFilledTellsThePagesOfAPackWithChangeBars(t *testing.T) {
	dir, old := t.TempDir(), filepath.Join(startersDir, "bevel-gearbox.yaml")
	written, err := os.ReadFile(old)
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Replace(string(written), "revision: A", "revision: Z", 1)
	text = regexp.MustCompile(`what: ([A-Z])([a-z])`).ReplaceAllString(text, "what: New $1$2")
	text = regexp.MustCompile(`(avoid: "?)`).ReplaceAllString(text, "${1}Now ")
	definition := filepath.Join(dir, "gearbox.yaml")
	if err := os.WriteFile(definition, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	load := func(name string) *job.Job {
		jb, problems := packs.Load(disk{}, packs.Inputs{Definition: name})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		return jb
	}
	now := load(definition)
	plain, _ := templates.Compose(now, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	paper, _ := templates.Compose(now, templates.Options{Paper: layout.A4, Since: revise.Since(load(old), now)}, pdf.NewFaces(), nil)
	if len(paper.Pages.Pages) == len(plain.Pages.Pages) {
		t.Fatalf("both have %d pages: the test has no longer anything to look at", len(plain.Pages.Pages))
	}

	var said, talk bytes.Buffer
	if code := run([]string{"print", definition, "--since", old, "--out", dir}, nil, &said, &talk); code != exitDone {
		t.Fatal(talk.String())
	}
	readings, err := filepath.Glob(filepath.Join(dir, "*-readings.csv"))
	if err != nil || len(readings) != 1 {
		t.Fatal(readings, err)
	}
	rows, err := os.ReadFile(readings[0])
	if err != nil {
		t.Fatal(err)
	}
	for _, command := range []string{"fill", "report"} {
		for _, named := range []bool{false, true} {
			p := cameBackFlags{readings: readings}
			if named {
				p.since.definition = old
			}
			talk.Reset()
			c, _ := comeBack([]string{definition}, p, command, streams{out: &said, err: &talk})
			if c == nil {
				t.Fatal(talk.String())
			}
			if !bytes.Contains(rows, []byte(","+c.job.Digest+",")) {
				t.Errorf("%s: the digest %s stands on no paper", command, c.job.Digest)
			}
			whole, _ := templates.Compose(c.job, templates.Options{Paper: c.paper, Since: c.since}, pdf.NewFaces(), nil)
			on, further := whole.Printed(c.pages)
			if further == named {
				t.Errorf("%s, old revision named %v: pages lie further: %v", command, named, further)
			}
			for key, page := range paper.Boxes() {
				if on.Boxes[key] != page {
					t.Errorf("%s, old revision named %v: box %s on page %d, on paper %d", command, named, key, on.Boxes[key], page)
				}
			}
			first := slices.Min(slices.Collect(maps.Values(plain.Boxes()))) // what stands before the first box is known with the old revision
			for key, page := range paper.Anchors {
				if got, told := on.Anchors[key]; told && got != page && (named || plain.Anchors[key] >= first) {
					t.Errorf("%s, old revision named %v: %s on page %d, on paper %d", command, named, key, got, page)
				}
			}
		}
	}
}

// Paper with other blank tags was told to be another pack, and neither fill nor report took the
// flag that it was printed with.
func TestSparesAreToldToFillAndReport(t *testing.T) {
	definition, dir := filepath.Join(startersDir, "exhaust-fan.yaml"), t.TempDir()
	var said, talk bytes.Buffer
	if code := run([]string{"print", definition, "--spares", "bag=6", "--out", dir}, nil, &said, &talk); code != exitDone {
		t.Fatal(talk.String())
	}
	for _, command := range []string{"fill", "report"} {
		args := []string{command, definition, "--readings", filepath.Join(dir, "WO-5512-B-readings.csv"), "--out", dir}
		talk.Reset()
		if code := run(args, nil, &said, &talk); code != exitDone || !strings.Contains(talk.String(), "[other-pack]") {
			t.Errorf("%s without them: %d, %s", command, code, talk.String())
		}
		talk.Reset()
		if code := run(append(args, "--spares", "bag=6"), nil, &said, &talk); code != exitDone || talk.Len() > 0 {
			t.Errorf("%s with them: %d, %s", command, code, talk.String())
		}
		if code := run(append(args, "--spares", "crate=6"), nil, &said, &talk); code != exitUsage {
			t.Errorf("%s with a tag that is none: %d", command, code)
		}
	}
}
