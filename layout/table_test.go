package layout

import (
	"fmt"
	"testing"
)

func TestTable(t *testing.T) {
	t.Parallel()
	s := newFake()
	tab := Table{Columns: []Column{{Width: 20, Head: s.Words(ten, "mark")}, {Width: 30, Head: s.Words(ten, "value")}}, PadX: 1, PadY: 2, Grid: true}
	var rows []Row
	for i := range 15 {
		rows = append(rows, Row{Cells: []Block{s.Words(ten, fmt.Sprintf("D%d", i)), s.Value(Number{Before: 1, After: 2})}, Anchor: fmt.Sprintf("D%d", i)})
	}
	p := Paginate(page, []Sheet{{Pieces: tab.Pieces(rows)}})
	if len(p.Misfits) > 0 {
		t.Fatalf("misfits %v", p.Misfits)
	}
	// A head of 5+4 mm and rows of 9+4 mm: 7 rows to a page of 100 mm.
	for name, want := range map[string]int{"D0": 1, "D6": 1, "D7": 2, "D13": 2, "D14": 3} {
		if p.Anchors[name] != want {
			t.Errorf("%s is on page %d, want %d", name, p.Anchors[name], want)
		}
	}
	for n, f := range p.Frames {
		if got := linesOf(Drawn(0, 0, f.Items...))[0]; got != "mark value" {
			t.Errorf("page %d begins with %q, want the head again", n+1, got)
		}
	}
	wide := tab.Block([]Row{{Ref: "r", Cells: []Block{s.Words(ten, "far too many words here")}}})
	if len(wide.Misfits()) != 1 || wide.Misfits()[0].Over != 23-18 || wide.Misfits()[0].Ref != "r" {
		t.Errorf("misfits %+v, want one by 5 mm", wide.Misfits())
	}
}
