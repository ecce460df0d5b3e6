package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Of two permits each is handed back at any step or at none, and asked for at some: one that
// never is, where the other is, is told; so is one that is asked for once more below its
// end. Common practice, no source.
func TestEveryPermitIsHandedBack(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		const steps = 5
		type permit struct {
			asked []bool
			ends  int // before which of the steps' ends, steps for never
		}
		draw := func(name string) permit {
			return permit{rapid.SliceOfN(rapid.Bool(), steps, steps).Draw(t, name+" asked"), rapid.IntRange(0, steps).Draw(t, name+" ends")}
		}
		all := map[string]permit{"work": draw("work"), "entry": draw("entry")}
		text := lawHead + "permits: {work: {what: Permit to work}, entry: {what: Entry permit}}\nsteps:\n"
		for i := range steps {
			var asks, back []string
			for _, k := range []string{"work", "entry"} {
				if all[k].asked[i] {
					asks = append(asks, k)
				}
				if all[k].ends == i {
					back = append(back, k)
				}
			}
			text += fmt.Sprintf("  - {step: s%d, do: Do it., permit: [%s], hand-back: [%s]}\n", i, strings.Join(asks, ", "), strings.Join(back, ", "))
		}
		text = strings.NewReplacer(", permit: []", "", ", hand-back: []", "").Replace(text)
		want := map[string]bool{}
		for k, p := range all {
			other := all[map[string]string{"work": "entry", "entry": "work"}[k]]
			if p.ends == steps && slices.Contains(p.asked, true) && other.ends < steps {
				want["never-handed-back"] = true
			}
			if p.ends < steps && slices.Contains(p.asked[p.ends+1:], true) {
				want["permit-ended"] = true
			}
		}
		got := toldOf(text, "never-handed-back", "permit-ended", "back-again")
		if len(got) != len(want) || slices.ContainsFunc(got, func(c string) bool { return !want[c] }) {
			t.Fatalf("told %v, want %v\n%s", got, want, text)
		}
	})
}
