package packs_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// headless is the machine and the job of a definition that only uses other files.
const headless = "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, title: Try, revision: A, issued: 2026-03-02}\n"

// loadText loads a definition with files beside it and gives what check says.
func loadText(files fstest.MapFS, text string) (*job.Job, source.Problems, string) {
	files["p.yaml"] = &fstest.MapFile{Data: []byte(text)}
	jb, problems := packs.Load(files, packs.Inputs{Definition: "p.yaml"})
	var b strings.Builder
	problems.Write(&b, jb.Files)
	return jb, problems, b.String()
}

// TestUsedStarters: every starter and every good definition, used as a part of a machine
// that has nothing else, says what it says alone: a name that were not taken over would
// be a name of nothing.
func TestUsedStarters(t *testing.T) {
	for _, glob := range []string{"starters/*.yaml", "../testdata/good/*.yaml"} {
		list, err := filepath.Glob(glob)
		if err != nil || len(list) == 0 {
			t.Fatal(glob, err)
		}
		for _, name := range list {
			base := filepath.Base(name)
			if strings.HasSuffix(base, ".job.yaml") || strings.HasSuffix(base, ".site.yaml") || base == "variants.yaml" || base == "included.yaml" {
				continue // need files of their own
			}
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			jb, alone, _ := loadText(fstest.MapFS{}, string(data))
			head := strings.Replace(headless, "name: Pump", `name: Pump, serial: "`+jb.Equipment.Serial+`"`, 1)
			for _, marks := range []string{"", ", marks: 1"} {
				in, used, said := loadText(fstest.MapFS{base: {Data: data}}, strings.Replace(head, `, serial: ""`, "", 1)+"steps: [{use: "+base+", as: Q7"+marks+"}]\n")
				words := 0
				for _, p := range used {
					if p.Code == "use-words" || marks != "" && (p.Code == "hold-early" || p.Code == "hold-past") { // these read marks in words, which are of other things then
						words++
					}
				}
				if len(used)-words != len(alone) || marks == "" && words > 0 {
					t.Errorf("%s%s:\n%s", base, marks, said)
				}
				if counts(in) != counts(jb) {
					t.Errorf("%s%s: %s, alone %s", base, marks, counts(in), counts(jb))
				}
			}
		}
	}
}

// counts tells of how much a job consists.
func counts(jb *job.Job) string {
	steps := 0
	for _, s := range jb.Sections {
		steps += len(s.Steps)
	}
	return fmt.Sprintf("%d parts, %d dimensions, %d containers, %d steps, %d notes", len(jb.Parts), len(jb.Dims), len(jb.Containers), steps, len(jb.Cautions))
}

// TestUseEnds: files that use one another end, whether in a ring or each of them the next
// one twice, and no more than fifty copies are made.
func TestUseEnds(t *testing.T) {
	step := "{step: look, do: Look.}"
	ring := fstest.MapFS{"a.yaml": {Data: []byte("steps: [{use: b.yaml, as: B}, " + step + "]")}, "b.yaml": {Data: []byte("steps: [{use: a.yaml, as: A}, " + step + "]")}}
	if _, _, said := loadText(ring, headless+"steps: [{use: a.yaml, as: Q}]"); !strings.Contains(said, "b.yaml:1:15: \"a.yaml\" uses itself: a.yaml uses b.yaml uses a.yaml [use-ring]") {
		t.Error(said)
	}
	fan := fstest.MapFS{}
	for i := range 30 {
		fan[fmt.Sprintf("f%d.yaml", i)] = &fstest.MapFile{Data: fmt.Appendf(nil, "steps: [{use: f%d.yaml, as: L}, {use: f%d.yaml, as: R}, %s]", i+1, i+1, step)}
	}
	fan["f30.yaml"] = &fstest.MapFile{Data: []byte("steps: [" + step + "]")}
	chain := fstest.MapFS{}
	for i := range 1000 {
		chain[fmt.Sprintf("f%d.yaml", i)] = &fstest.MapFile{Data: fmt.Appendf(nil, "steps: [{use: f%d.yaml, as: L}, %s]", i+1, step)}
	}
	if jb, _, said := loadText(chain, headless+"steps: [{use: f0.yaml, as: Q}]"); !strings.Contains(said, "too-many") || len(jb.Files) > 60 {
		t.Errorf("%d files read; %.300s", len(jb.Files), said)
	}
	jb, problems, _ := loadText(fan, headless+"steps: [{use: f0.yaml, as: Q}]")
	steps := 0
	for _, s := range jb.Sections {
		steps += len(s.Steps)
	}
	if !slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "too-many" }) || steps > 60 {
		t.Errorf("%d steps", steps)
	}
}

// TestUsedWithinUsed: a file that uses another one is used in its turn; a fault of the
// innermost is told in its own words, and what the files share stands once.
func TestUsedWithinUsed(t *testing.T) {
	files := fstest.MapFS{
		"pump/pump.yaml": {Data: []byte("instruments: {rule: {name: Rule, range: 0 to 300 mm, reads: 1 mm}}\nparts: {cover: {name: Cover}}\nsteps:\n  - section: Cover\n    steps: [{step: cover, do: Take the cover off., remove: [cover], into: bench}]\n  - {use: seal/seal.yaml, as: S}\n  - reverse: [S Seal, Cover]\n")},
		"pump/seal/seal.yaml": {Data: []byte("parts: {ring: {name: Ring}}\ndimensions: {D1: {what: Ring height, kind: length, of: {ring: height}, by: rule, left: D2 +/- 1 mm, source: sheet 1}, " +
			"D2: {what: Ring width, kind: length, of: {ring: width}, by: rule, found: record to 1 mm}}\nsteps:\n  - section: Seal\n    steps: [{step: ring, do: Measure the ring and take it out., measure: [D2, D1], remove: [ring], into: C1}]\n")},
	}
	jb, _, said := loadText(files, headless+"steps:\n  - {use: pump/pump.yaml, as: A, marks: 10}\n  - {use: pump/pump.yaml, as: B, marks: 20}\n")
	want := `pump/seal/seal.yaml:5:106: "C1" is not a container, lay-down spot, bench or scrap [unknown-name]`
	if !strings.Contains(said, want) || strings.Count(said, "unknown-name") != 1 || !strings.Contains(said, "used as A-S") {
		t.Error(said)
	}
	var marks []string
	for _, d := range jb.Dims {
		marks = append(marks, d.Mark)
	}
	if got := strings.Join(marks, " "); got != "D11 D12 D21 D22" {
		t.Error(got)
	}
	if len(jb.Instruments) != 1 || len(jb.Parts) != 4 || jb.Parts[1].Name != "A S Ring" && jb.Parts[0].Name != "A S Ring" {
		t.Errorf("%d instruments, parts %v", len(jb.Instruments), jb.Parts)
	}
}
