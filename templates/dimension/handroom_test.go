package dimension

import (
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
)

// Below the head of a dimension that is worked out there was as much room as between two boxes,
// though no box stands in a head: a page ended before a step that would have gone on it.
func TestSumsStandCloseBelowTheirHead(t *testing.T) {
	t.Parallel()
	jb, c := starter("bevel-gearbox.yaml", 180)
	tested := 0
	for _, st := range jb.Steps() {
		i := slices.IndexFunc(st.Set, func(d *job.Dim) bool { return d.Base == "D11" })
		if i < 0 {
			continue
		}
		set, _ := Blocks(c, st.Set[i:i+1], Left, st.At, false)
		head, below := layout.Mm(0), layout.Mm(1e6)
		for _, it := range set[0].Items() {
			s, isText := it.Shape.(layout.Text)
			_, top, _, bottom := it.Bounds()
			if isText && strings.Contains(s.S, "118.00 mm + D9") {
				head = bottom
			}
			if isText && strings.Contains(s.S, "Number etched") || it.Role != "" && !isText {
				below = min(below, top)
			}
		}
		if head == 0 || below == 1e6 {
			t.Fatalf("%s: no head or no boxes", st.Name())
		}
		if room := below - head; room < 0.5 || room > layout.GapY {
			t.Errorf("%s: %.2f mm between the head and what stands below it, want less than between two boxes (%.0f mm)", st.Name(), room, layout.GapY)
		}
		tested++
	}
	if tested == 0 {
		t.Error("D11 is worked out nowhere")
	}
}
