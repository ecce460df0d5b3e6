package layout

import (
	"fmt"
	"testing"
)

// Heads and feet get the numbers of the whole document; a landscape sheet is
// turned on the same paper.
func TestPaginateHeads(t *testing.T) {
	t.Parallel()
	mark := func(word string) func(page, total int) Block {
		return func(page, total int) Block {
			return Drawn(20, 5, Item{Role: fmt.Sprintf("%s %d of %d", word, page, total), Shape: Rect{W: 20, H: 5}})
		}
	}
	p := Paginate(page, []Sheet{
		{Name: "up", Title: "Up", Head: mark("head"), Foot: mark("foot"), Pieces: []Piece{named("a", 90), named("b", 90)}},
		{Name: "across", Title: "Across", Landscape: true, Head: mark("head"), Pieces: []Piece{named("c", 20)}},
	})
	if len(p.Frames) != 3 {
		t.Fatalf("%d pages, want 3", len(p.Frames))
	}
	last := p.Frames[1].Items
	if last[0].Role != "head 2 of 3" || last[len(last)-1].Role != "foot 2 of 3" {
		t.Errorf("page 2 begins with %q and ends with %q", last[0].Role, last[len(last)-1].Role)
	}
	if y := last[len(last)-1].Y; y != 120-10-5 {
		t.Errorf("the foot stands at %v, want at the lower margin", y)
	}
	if f := p.Frames[2]; f.W != 100 || f.H != 120 || f.Number != 3 || f.Sheet != "across" {
		t.Errorf("landscape page %+v, want the upright paper", f)
	}
	// The head stands at the top of the turned sheet, which is the left edge.
	if l, top, r, bottom := p.Frames[2].Items[0].Bounds(); l != 10 || r != 15 || bottom != 110 || top != 90 {
		t.Errorf("turned head lies at %v %v %v %v, want 10 90 15 110", l, top, r, bottom)
	}
	if o := p.Outline; len(o) != 2 || o[0].Page != 0 || o[1].Page != 2 || o[1].Title != "Across" {
		t.Errorf("outline %+v", o)
	}
}

// TestSheetsShareAPage: a sheet that follows goes on where the one before it ends; each
// part of the page is found again by itself, and one that is left out takes nothing of
// the other away. A sheet of three lines took a page of its own.
func TestSheetsShareAPage(t *testing.T) {
	line := func(name string) Piece {
		return Piece{Block: Drawn(50, 10, Item{Role: name, Shape: Rect{W: 50, H: 10}})}
	}
	head := func(page, total int) Block { return Drawn(50, 10, Item{Role: "head", Shape: Rect{W: 50, H: 10}}) }
	paper := Paper{W: 100, H: 120, Left: 10, Right: 10, Top: 10, Bottom: 10}
	p := Paginate(paper, []Sheet{
		{Name: "a", Title: "A", Head: head, Pieces: []Piece{line("a1"), line("a2")}},
		{Name: "b", Title: "B", Head: head, Follows: true, Pieces: []Piece{line("b1")}},
		{Name: "c", Title: "C", Head: head, Pieces: []Piece{line("c1")}},
	})
	if len(p.Frames) != 2 || len(p.Frames[0].Parts) != 2 || p.Frames[0].Parts[1].Used != 10 {
		t.Fatalf("%d pages, the first with the parts %v", len(p.Frames), p.Frames[0].Parts)
	}
	doc := &Doc{Pages: p.Frames, Outline: p.Outline}
	roles := func(f Frame) string {
		s := ""
		for _, it := range f.Items {
			s += it.Role + " "
		}
		return s
	}
	if only := doc.OnlySheets(func(s string) bool { return s == "b" }); len(only.Pages) != 1 || roles(only.Pages[0]) != "head b1 " || only.Pages[0].Number != 1 {
		t.Errorf("sheet b alone is %q", roles(only.Pages[0]))
	} else if len(only.Outline) != 1 || only.Outline[0].Title != "B" {
		t.Errorf("its outline is %v", only.Outline)
	}
	if all := doc.BySheet(); len(all) != 3 || roles(all[0]) != "head a1 a2 " {
		t.Errorf("%d sheets, the first with %q", len(all), roles(all[0]))
	}
}

// TestRightHandPages: a piece that begins on the right gets an odd page, and the back
// before it is left empty.
func TestRightHandPages(t *testing.T) {
	piece := Piece{Block: Drawn(50, 10), NewPage: true, RightHand: true}
	p := Paginate(Paper{W: 100, H: 120}, []Sheet{{Name: "a", Pieces: []Piece{piece, piece, {Block: Drawn(50, 10)}, piece}}})
	if len(p.Frames) != 5 {
		t.Fatalf("%d pages, want 5", len(p.Frames))
	}
	for i, f := range p.Frames {
		if (f.Used == 0) != (i%2 == 1) {
			t.Errorf("page %d uses %v", i+1, f.Used)
		}
	}
}
