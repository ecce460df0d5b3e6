package templates

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A text of a reading that was too wide for its column was told to be written shorter, and
// not that without as-table: it has the width of the sheet: that was told of boxes alone.
func TestWhatIsTooWideForATableSaysSo(t *testing.T) {
	t.Parallel()
	at, other := source.Pos{File: "a.yaml", Line: 3, Col: 5}, source.Pos{File: "a.yaml", Line: 9, Col: 5}
	const long = "circumferential-thrust-face"
	for _, x := range []struct {
		name  string
		table bool
		ref   source.Pos
		kind  layout.Kind
		want  bool
	}{
		{"wide in a table", true, at, layout.TooWide, true}, {"high in a table", true, at, layout.TooHigh, true},
		{"wide in no table", false, at, layout.TooWide, false}, {"of another entry", true, other, layout.TooWide, false},
	} {
		st := &job.Step{No: "1.1", Key: "pins", Measure: []*job.Dim{{At: at, Mark: "D1"}}}
		st.Table = x.table
		j := &job.Job{Files: source.Files{"a.yaml": []byte(long)}, Sections: []*job.Section{{Steps: []*job.Step{st}}}}
		told := problems(j, false, []layout.Misfit{{Kind: x.kind, Ref: x.ref, Text: long, Over: 2}}, nil)
		if len(told) != 1 {
			t.Fatalf("%s: %v", x.name, told)
		}
		help := strings.Join(told[0].Help, "\n")
		if got := strings.Contains(help, "take as-table: yes out at 1.1 (pins)"); got != x.want || !strings.HasPrefix(help, "write it shorter") {
			t.Errorf("%s: told %q", x.name, help)
		}
	}
}
