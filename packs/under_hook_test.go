package packs_test

import (
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// What was put under a load had no box to tick out at a step that sets the load down without
// making its lift, nor where it hung on a hook for one step alone, off and on again.
func TestWhatStandsUnderALoadOfNoLiftComesOut(t *testing.T) {
	t.Parallel()
	for _, x := range []struct{ dir, file, before, add, first, last string }{
		{"starters", "storm-pump.yaml", "      - step: lift-rotor\n", "      - step: rotor-down\n        do: Lower the rotor on its feet again.\n        set-down: [L2]\n        people: 5\n", "hardwood", ""},
		{"../testdata/good", "field-water-turbine.yaml", "        remove: [shell-bolt, shell-dowel, guide-shell]\n", "        on-hook: hall crane\n        under-load: two oak blocks\n", "", "two oak blocks"},
	} {
		data, err := os.ReadFile(x.dir + "/" + x.file)
		if err != nil {
			t.Fatal(err)
		}
		text := strings.Replace(string(data), x.before, x.add+x.before, 1)
		if text == string(data) {
			t.Fatalf("%s has no %q", x.file, x.before)
		}
		jb, _ := packs.Load(fstest.MapFS{x.file: {Data: []byte(text)}}, packs.Inputs{Definition: x.file})
		first, last := 0, 0
		for _, st := range jb.Steps() {
			if x.first != "" && st.Key == "rotor-down" && slices.ContainsFunc(st.FromUnder, func(u string) bool { return strings.HasPrefix(u, x.first) }) {
				first++
			}
			if slices.Contains(st.LeftBehind, x.last) && st.UnderLoad.Value == x.last {
				last++
			}
		}
		if x.first != "" && first != 1 || x.last != "" && last != 2 {
			t.Errorf("%s: comes out at the step that sets down %d times, at the steps on the hook %d times, want 1 or 2", x.file, first, last)
		}
	}
}
