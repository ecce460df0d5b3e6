package layout

import (
	"maps"
	"slices"
	"testing"
)

// TestPagedTellsWhatPaginateDoes: a pass in which nothing is drawn knows the same pages, and as
// many boxes on each sheet, blocks that stand again counted with them.
func TestPagedTellsWhatPaginateDoes(t *testing.T) {
	t.Parallel()
	box := Drawn(10, 10, Item{Role: RoleTick, Shape: Rect{W: 6, H: 6}})
	again := Beside(1, box, box)
	var pieces []Piece
	for _, name := range []string{"a", "b", "c", "d"} {
		p := named(name, 40)
		p.Block = Beside(2, box, p.Block)
		p.Under = []*Block{&again}
		pieces = append(pieces, p)
	}
	sheets := []Sheet{{Name: "one", Pieces: pieces[:3]}, {Name: "two", Pieces: pieces[3:], Follows: true}}
	drawn, paged := Paginate(page, sheets), Paged(page, sheets)
	if len(drawn.Frames) != 2 || len(paged.Frames) != 2 || !maps.Equal(drawn.Anchors, paged.Anchors) {
		t.Fatalf("anchors %v on %d pages, without drawing %v on %d", drawn.Anchors, len(drawn.Frames), paged.Anchors, len(paged.Frames))
	}
	counted := map[string]int{}
	for i, f := range drawn.Frames {
		if paged.Frames[i].Sheet != f.Sheet || !slices.EqualFunc(paged.Frames[i].Parts, f.Parts, func(a, b Part) bool { return a.Sheet == b.Sheet }) {
			t.Errorf("page %d: %v, without drawing %v", i+1, f.Parts, paged.Frames[i].Parts)
		}
		for _, p := range f.Parts {
			for _, it := range f.Items[p.From:p.To] {
				if it.Role == RoleTick {
					counted[p.Sheet]++
				}
			}
		}
	}
	for _, name := range []string{"one", "two"} {
		if n := counted[name]; n == 0 || drawn.Boxes[name][RoleTick] != n || paged.Boxes[name][RoleTick] != n {
			t.Errorf("sheet %s: %d boxes drawn, %d counted, %d without drawing", name, n, drawn.Boxes[name][RoleTick], paged.Boxes[name][RoleTick])
		}
	}
}
