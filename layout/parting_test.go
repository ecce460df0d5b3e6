package layout

import "testing"

// A piece that is set on two pages began a second line of the outline for its sheet on the
// second of them, and the room below it was measured as if all of it stood there.
func TestPartedPiece(t *testing.T) {
	t.Parallel()
	b := named("b", 60)
	b.Title = "B"
	b.Block.SetPartings([]Parting{{Upper: Space(10, 30), Lower: Space(10, 33)}})
	sheets := []Sheet{{Name: "one", Title: "One", Pieces: []Piece{named("a", 60)}}, {Name: "two", Title: "Two", Pieces: []Piece{b, named("c", 60)}, Follows: true}}
	p := Paginate(page, sheets)
	if len(p.Frames) != 2 || p.Frames[0].Used != 90 || p.Frames[1].Used != 93 {
		t.Fatalf("the piece is not parted: %d pages", len(p.Frames))
	}
	var titles []string
	for _, e := range p.Outline {
		titles = append(titles, e.Title)
		if e.Page != 0 {
			t.Errorf("%s is on page %d, want the one on which it begins", e.Title, e.Page)
		}
	}
	if len(titles) != 3 {
		t.Errorf("the outline has %v, want One, Two and B once each", titles)
	}
	if left, room := RoomLeft(page, sheets); room != 100 || left != 7 {
		t.Errorf("%v of %v mm are left, want 7 of 100", left, room)
	}
}

// Two steps that stand beside each other went to the next page together, and left half a page
// empty: to part them is no break within a step, and is done even where it saves no page.
func TestThingsApartPartFreely(t *testing.T) {
	t.Parallel()
	for _, apart := range []bool{true, false} {
		b := named("b", 60)
		b.Block.SetPartings([]Parting{{Upper: Space(10, 35), Lower: Space(10, 35), Apart: apart}})
		p := Paginate(page, []Sheet{{Name: "one", Pieces: []Piece{named("a", 60), b}}})
		if len(p.Frames) != 2 || (p.Frames[0].Used == 95) != apart || p.Frames[1].Parted {
			t.Errorf("apart %v: %d pages, the first %v mm full, the second begins in a piece: %v", apart, len(p.Frames), p.Frames[0].Used, p.Frames[1].Parted)
		}
	}
}

// Of two steps below the words of both the second stood alone on the next page, though both go
// onto it.
func TestThingsThatAreLedStayTogether(t *testing.T) {
	t.Parallel()
	b := named("b", 60)
	b.Block.SetPartings([]Parting{{Upper: Space(10, 35), Lower: Space(10, 35), Apart: true, Led: true}})
	p := Paginate(page, []Sheet{{Name: "one", Pieces: []Piece{named("a", 60), b}}})
	if len(p.Frames) != 2 || p.Frames[0].Used != 60 {
		t.Errorf("%d pages, the first %v mm full, want 2 and 60 mm", len(p.Frames), p.Frames[0].Used)
	}
}
