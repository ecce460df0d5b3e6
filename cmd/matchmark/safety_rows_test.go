package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/job"
)

// safetyRow is one line of the outside values of safety rules.
type safetyRow struct {
	key, source string
	want        []float64
	within      float64
}

// safetyRows reads them by kind.
func safetyRows(t *testing.T) map[string]safetyRow {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(testdata, "outside", "safety.txt"))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]safetyRow{}
	number := func(s string) float64 {
		x, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	for _, line := range strings.Split(string(data), "\n") {
		c := strings.Split(line, " | ")
		if strings.HasPrefix(line, "#") || len(c) != 8 {
			continue
		}
		r := safetyRow{key: c[0], source: c[7], within: number(c[4])}
		for _, s := range strings.Split(c[3], "/") {
			r.want = append(r.want, number(s))
		}
		out[c[1]] = r
	}
	return out
}

// withWatch loads a small job whose site asks for a fire watch, and gives the job
// and the codes of what is wrong with it.
func withWatch(minutes float64) (*job.Job, string) {
	files := fstest.MapFS{
		"fan.yaml": {Data: []byte(`pack: 1
equipment: {tag: FN-11, name: Kiln exhaust fan}
jb: {number: WO-5512, title: Bearing change, revision: A, issued: 2026-03-02}
steps:
  - {step: cool, do: Cool the ring in liquid nitrogen.}
`)},
		"site.yaml": {Data: []byte(fmt.Sprintf("fire-watch: %g min\n", minutes))},
	}
	in := packs.Inputs{Definition: "fan.yaml"}
	if minutes > 0 {
		in.Site = "site.yaml"
	}
	jb, problems := packs.Load(files, in)
	var codes []string
	for _, p := range problems {
		codes = append(codes, p.Code)
	}
	return jb, strings.Join(codes, " ")
}

// goldenFigures reads the numbers that a phrase carries on the printed pages.
func goldenFigures(t *testing.T, phrase string) []float64 {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(testdata, "golden", "*", "*.txt"))
	if err != nil {
		t.Fatal(err)
	}
	var out []float64
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range regexp.MustCompile(phrase).FindAllStringSubmatch(string(data), -1) {
			x, err := strconv.ParseFloat(m[1], 64)
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, x)
		}
	}
	if len(out) == 0 {
		t.Fatalf("no page has %q", phrase)
	}
	return out
}

// TestSafetyFiguresAgreeWithTheirRules holds what the site is given by default, what
// cautions say and what pages print against the rules themselves.
func TestSafetyFiguresAgreeWithTheirRules(t *testing.T) {
	t.Parallel()
	all := safetyRows(t)
	take := func(kind string) safetyRow {
		r, ok := all[kind]
		if !ok {
			t.Fatalf("no row %q", kind)
		}
		delete(all, kind)
		return r
	}
	agree := func(r safetyRow, got float64, want float64) {
		t.Helper()
		if math.Abs(got-want) > r.within {
			t.Errorf("%s: %g, want %g; source: %s", r.key, got, want, r.source)
		}
	}
	least := take("least fire watch")
	if _, codes := withWatch(least.want[0]); strings.Contains(codes, "short-watch") {
		t.Errorf("%s: a fire watch of %g min is called too short; source: %s", least.key, least.want[0], least.source)
	}
	if _, codes := withWatch(least.want[0] - 1); !strings.Contains(codes, "short-watch") {
		t.Errorf("%s: a fire watch of %g min is let pass; source: %s", least.key, least.want[0]-1, least.source)
	}
	jb, _ := withWatch(0)
	usual := take("usual fire watch")
	minutes, _ := jb.Site.FireWatch.Number.Rat().Float64()
	agree(usual, minutes, usual.want[0])
	burns := take("nothing that burns within")
	for _, x := range goldenFigures(t, `\(([0-9.]+) ft\)`) {
		agree(burns, x, burns.want[0])
	}
	oxygen := take("oxygen to go in")
	rule := fmt.Sprintf("oxygen %g to %g %%", oxygen.want[0], oxygen.want[1])
	found := false
	for _, c := range jb.Cautions {
		found = found || strings.Contains(c.Rule, rule)
	}
	if !found {
		t.Errorf("%s: no caution says %q; source: %s", oxygen.key, rule, oxygen.source)
	}
	shade := take("filter shade of a heating torch")
	for _, x := range goldenFigures(t, `shade ([0-9]+) goggles`) {
		agree(shade, x, shade.want[0])
	}
	for kind := range all {
		t.Errorf("nothing checks %q", kind)
	}
}
