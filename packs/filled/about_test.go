package filled_test

import (
	"strings"
	"testing"

	"matchmark/packs/filled"
)

// TestOfAnotherJob: that a file is of another job or revision, and that nobody is named who
// typed it, is told whatever else is said of it. One value without a box, which a file of
// another job nearly always has, kept all of that silent, and its values were taken.
func TestOfAnotherJob(t *testing.T) {
	jb := stormPump(t)
	for _, row := range []string{"D999,,found,2.35 mm,\n", "D4,,found,2.3 mm,\n", "D4,,found,2.35 mm,\nD4,,found,2.35 mm,\n"} {
		for _, x := range []struct{ code, head string }{
			{"other-job", head + "job,,,WO-9999,\n"},
			{"other-revision", head + "revision,,,Z,\n"},
			{"other-pack", head + "pack,,,00000000,\n"},
		} {
			var told []string
			for _, p := range filled.Read("x.csv", []byte(x.head+row), jb).Told {
				told = append(told, p.Code)
			}
			if len(told) < 2 || !strings.Contains(strings.Join(told, " "), x.code) {
				t.Errorf("a file with %q tells %v, want %s among them", row, told, x.code)
			}
		}
	}
	// Behind a quote mark that stands alone nothing is read: what is missing is not told.
	for _, p := range filled.Read("x.csv", []byte("mark,position,side,value\nD4,,\"found,2.35 mm\n"), jb).Told {
		if p.Code == "typed-by" {
			t.Errorf("told of a file that is not read to its end: %s", p.Message)
		}
	}
}
