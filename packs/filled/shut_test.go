package filled_test

import (
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
)

// shutFoot is a foot that must lie on its base, read with feelers from 0.02 mm; and a bore,
// of which a reading of nothing is a slip.
const shutFoot = `
pack: 1
equipment: {tag: MO-2, name: Motor}
job: {number: WO-1, title: Feet, revision: A, issued: 2026-03-02}
parts: {foot: {name: Foot}, base: {name: Base}}
instruments:
  feeler: {name: Feelers, range: 0.02 to 1.00 mm, reads: 0.01 mm}
  inside: {name: Inside micrometer, range: 25.00 to 50.00 mm, reads: 0.01 mm}
dimensions:
  D1: {what: Gap of the foot, kind: gap, from: {foot: face}, to: {base: face}, by: feeler, left: at most 0.05 mm, source: sheet 1}
  D2: {what: Dowel bore, kind: bore, of: {foot: dowel hole}, by: inside, left: at most 40.50 mm, source: sheet 1}
steps:
  - {step: feet, do: Measure., measure: [D1, D2]}
`

// TestAShutGapIsNothing: where no feeler goes in the box has a nought, which the file of
// readings refused as less than the thinnest leaf. A leaf thinner than all in hand is refused
// still, and so is a bore of nothing. Common practice, no source.
func TestAShutGapIsNothing(t *testing.T) {
	jb, problems := packs.Load(fstest.MapFS{"foot.yaml": {Data: []byte(shutFoot)}}, packs.Inputs{Definition: "foot.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	for _, x := range []struct{ row, told string }{
		{"D1,,found,0.00 mm,\n", ""}, {"D1,,found,0.01 mm,\n", "instrument"}, {"D1,,found,0.02 mm,\n", ""}, {"D2,,found,0.00 mm,\n", "instrument"},
	} {
		r, told := worked(t, jb, x.row)
		if told != x.told {
			t.Errorf("%q is told %q, want %q", x.row, told, x.told)
		}
		if v, _ := r.Verdict(dim(t, jb, "D1"), job.AsFound); told == "" && v.Outcome != filled.In {
			t.Errorf("%q is judged %d", x.row, v.Outcome)
		}
	}
}
