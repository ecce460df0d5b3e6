package packs_test

import (
	"fmt"
	"os"
	"path/filepath"
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
					if p.Code == "use-words" {
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
