package revise_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/revise"
)

// readingsChanged lists the readings that two revisions say otherwise.
func readingsChanged(t *testing.T, before, after string) []revise.Change {
	t.Helper()
	old, okOld := load(before)
	now, okNow := load(after)
	if !okOld || !okNow {
		t.Fatalf("a definition has problems: %t %t", okOld, okNow)
	}
	return revise.Compare(old, now).Readings
}

// whatChanged lists all that two revisions say otherwise of their steps.
func whatChanged(t *testing.T, before, after string) []string {
	t.Helper()
	old, okOld := load(before)
	now, okNow := load(after)
	if !okOld || !okNow || before == after {
		t.Fatalf("a definition has problems, or both are the same: %t %t", okOld, okNow)
	}
	var out []string
	for _, c := range revise.Compare(old, now).Steps {
		out = append(out, c.What...)
	}
	return out
}

// Which of two dials takes a reading was told as "by piece: 1".
func TestThePieceOfAnInstrumentIsTold(t *testing.T) {
	t.Parallel()
	const text = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
parts: {hub: {name: Hub}}
instruments: {dial: {name: Dial gauge, range: 0 to 10 mm, reads: 0.01 mm, count: 2}}
dimensions: {D1: {what: Rim of the hub, kind: runout, of: {hub: rim}, by: dial/1, found: at most 0.20 mm, source: sheet 4}}
steps: [{step: read, do: Measure., measure: [D1]}]
`
	for by, want := range map[string]string{"dial/2": "instrument: Dial gauge, 2 of 2", "dial": "instrument: Dial gauge, all 2"} {
		got := readingsChanged(t, text, strings.Replace(text, "dial/1", by, 1))
		if len(got) != 1 || !slices.Equal(got[0].What, []string{"instrument: Dial gauge, 1 of 2", want}) {
			t.Errorf("by: %s: told %+v, want %s alone", by, got, want)
		}
	}
}

// A mark goes across another joint in the new revision, which was told as nothing.
func TestThePartnerOfAMarkIsTold(t *testing.T) {
	t.Parallel()
	const text = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
parts: {cap: {name: Cap}, foot: {name: Foot}, frame: {name: Frame}}
containers: {C1: {name: Cap, kind: bag}}
steps:
  - {step: off, do: Mark the cap and take it off., match-marks: [{cap: foot}], remove: [cap], into: C1}
  - {step: on, do: Cap on by its mark., fit: [cap], match-marks: [cap]}
`
	got := whatChanged(t, text, strings.Replace(text, "{cap: foot}", "{cap: frame}", 1))
	was, is := "the mark of Cap is across: Foot", "the mark of Cap is across: Frame"
	if n := len(slices.DeleteFunc(slices.Clone(got), func(s string) bool { return s != was && s != is })); n != 4 {
		t.Errorf("told %q, want %q and %q at both steps", got, was, is)
	}
}

// The leg on which a load is upended is told by its name, and so is the first one that is
// taken out.
func TestTheLegOfAnUpendedLoadIsTold(t *testing.T) {
	t.Parallel()
	file, err := os.ReadFile("../../testdata/good/lift-upended.yaml")
	if err != nil {
		t.Fatal(err)
	}
	text := string(file)
	out := strings.Replace(text, "    upended-on: head\n", "", 1)
	for _, x := range []struct{ before, after, want string }{
		{text, out, "L1 upended on: head | L1 upended on: nothing"},
		{out, text, "L1 upended on: nothing | L1 upended on: head"},
	} {
		if got := strings.Join(whatChanged(t, x.before, x.after), " | "); !strings.Contains(got, x.want) || strings.Contains(got, "upper") {
			t.Errorf("told %q, want %q", got, x.want)
		}
	}
}
