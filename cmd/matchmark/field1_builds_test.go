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
	"matchmark/templates"
)

// otherMachine is a definition of testdata/good for the machine of a job file.
func otherMachine(t *testing.T, name, jb string) (*job.Job, *templates.Pack) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(testdata, "good", name))
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{name: {Data: data}, "job.yaml": {Data: []byte(jb)}}
	j, problems := packs.Load(files, packs.Inputs{Definition: name, Job: "job.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	pack, misfits := templates.Compose(j, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatal(misfits)
	}
	return j, pack
}

// TestFieldProceduresForOtherMachines: the same definition for another serial number,
// size or part prints the limits of that, and no others. The figures are those of the
// sources named at the head of the definitions: CC 0.002 to 0.006 in of the older
// blower, 0.0075 in and 20 to 25 lb-ft of the small one; balance only of a new impeller.
func TestFieldProceduresForOtherMachines(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, file, jb, sheet, at string
		want, not                 []string
	}{
		{"serial 4100 is an early blower", "field-lobe-blower.yaml", "equipment: {serial: \"4100\"}\n", "traveler", "D1",
			[]string{"0.0020 – 0.0060 in"}, []string{"0.0040 – 0.0080 in"}},
		{"serial 6000 is the first late blower", "field-lobe-blower.yaml", "equipment: {serial: \"6000\"}\n", "traveler", "D1",
			[]string{"0.0040 – 0.0080 in"}, []string{"0.0020 – 0.0060 in"}},
		{"the small blower at its housing", "field-lobe-blower.yaml", "options: {size: small}\n", "traveler", "D4",
			[]string{"at least 0.0075 in", "TM 5-3895-346-14"}, []string{"at least 0.0150 in"}},
		{"the screws of the small blower", "field-lobe-blower.yaml", "options: {size: small}\n", "reassembly", "cover",
			[]string{"20–25 lb-ft"}, []string{"J2"}},
		{"no new impeller, no balance", "field-fire-pump.yaml", "options: {new-impeller: no}\n", "reassembly", "balance",
			[]string{"Do not balance"}, []string{"650 rpm"}},
	} {
		jb, pack := otherMachine(t, c.file, c.jb)
		from, to := linesOf(t, jb, c.at)
		var text strings.Builder
		for _, it := range itemsOf(pack, c.sheet, from, to) {
			if s, ok := it.Shape.(layout.Text); ok {
				text.WriteString(strings.ReplaceAll(s.S, "\u00a0", " ") + " ")
			}
		}
		for _, w := range c.want {
			if !strings.Contains(text.String(), w) {
				t.Errorf("%s: %q is not in %q", c.name, w, text.String())
			}
		}
		for _, w := range c.not {
			if strings.Contains(text.String(), w) {
				t.Errorf("%s: %q is in %q", c.name, w, text.String())
			}
		}
	}
}
