package packs_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// A coupling is read, the motor comes off, and nothing more is written: the row that sets the
// dials again names the alignment, which names the row; where a written step sets them no row does.
func TestRowsThatSetDialsNameTheirAlignment(t *testing.T) {
	t.Parallel()
	seen := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		written, names := rapid.Bool().Draw(t, "a step is written that aligns"), rapid.Bool().Draw(t, "the reading names the alignment")
		found := "measure: [D1, D2]"
		if names {
			found += ", align: [A1]"
		}
		text := alignHead("motor") + "  - {step: found, do: Read it., " + found + "}\n  - {step: off, do: Take it off., remove: [motor], into: C1}\n"
		if written {
			text += "  - {step: on, do: Put it on., fit: [motor]}\n  - {step: align, do: Align it., align: [A1], set: [D1, D2]}\n"
		} else if !names {
			text += "  - {step: align, do: Dials on., align: [A1]}\n"
		}
		jb, _ := codesOf(text)
		rows := 0
		for _, st := range stepsOf(jb) {
			if st.Undoes == nil {
				continue
			}
			want := !written && names && slices.ContainsFunc(st.Set, func(d *job.Dim) bool { return d.Base == "D1" })
			if got := len(st.Align) > 0; got != want || got != slices.Contains(jb.Alignments[0].Steps, st) {
				t.Fatalf("%s names the alignment: %v, want %v\n%s", st.Name(), got, want, text)
			}
			if want {
				rows++
			}
		}
		if want := !written && names; (rows == 1) != want {
			t.Fatalf("%d rows align\n%s", rows, text)
		}
		seen[rows == 1]++
	})
	if seen[true] == 0 || seen[false] == 0 {
		t.Errorf("seen %v", seen)
	}
}
