package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// A row that closed an opening and needed its lifting permit could go without all permits, or
// ask for that of the entry as well, into what nobody can get any more. It asks for those that
// stand beside none alone, and the paper tells which it goes without; where none is left to go
// without that is told. Common practice, no source.
func TestAPutBackRowGoesWithoutOnePermit(t *testing.T) {
	t.Parallel()
	seen := map[int]int{}
	rapid.Check(t, func(t *rapid.T) {
		all := []string{"entry", "lifting", "hot"}
		of := rapid.SliceOfNDistinct(rapid.SampledFrom(all), 1, 3, rapid.ID[string]).Draw(t, "of the step")
		named := rapid.SliceOfNDistinct(rapid.SampledFrom(of), 0, len(of), rapid.ID[string]).Draw(t, "named for the row")
		list := append(slices.Clone(named), `"none, because it is shut from outside"`)
		list = rapid.Permutation(list).Draw(t, "as written")
		var permits strings.Builder
		for _, key := range of {
			fmt.Fprintf(&permits, "  %s: {what: The %s permit}\n", key, key)
		}
		text := lawHead + "permits:\n" + permits.String() +
			"parts: {lid: {name: Lid}}\ncontainers: {C1: {name: Lid, kind: crate, keep: dry}}\nsteps:\n  - section: Work\n    steps:\n" +
			fmt.Sprintf("      - {step: off, do: Take the lid off., permit: [%s], remove: [lid], into: C1, back-permit: [%s]}\n", strings.Join(of, ", "), strings.Join(list, ", "))
		jb, problems := loadLaw(text)
		if problems.Errors() > 0 {
			t.Fatalf("%v\n%s", problems, text)
		}
		var row *job.Step
		for _, st := range jb.Steps() {
			if st.Undoes != nil {
				row = st
			}
		}
		keys := func(list []*job.Permit) []string {
			out := []string{}
			for _, p := range list {
				out = append(out, p.Key)
			}
			slices.Sort(out)
			return out
		}
		left := slices.DeleteFunc(slices.Clone(of), func(key string) bool { return slices.Contains(named, key) })
		slices.Sort(named)
		slices.Sort(left)
		if got := keys(row.Permits); !slices.Equal(got, named) {
			t.Fatalf("the row asks for %v, want %v\n%s", got, named, text)
		}
		if got := keys(row.SparePermits()); !slices.Equal(got, left) {
			t.Fatalf("the row goes without %v, want %v\n%s", got, left, text)
		}
		if told := len(toldOf(text, "nothing-left-out")) > 0; told != (len(left) == 0) {
			t.Fatalf("nothing-left-out is told: %v\n%s", told, text)
		}
		seen[len(left)]++
	})
	if seen[0] == 0 || seen[1] == 0 {
		t.Errorf("only so much was drawn: %v", seen)
	}
}
