package layout

import "testing"

// A figure that is put in later is set as any other: the same lines, the same places.
func TestPutLater(t *testing.T) {
	now, later := newFake(), newFake()
	if !later.SetsLater() {
		t.Fatal("the figures have one width")
	}
	figures, ok := Later(mostLater-1, 2)
	if _, more := Later(mostLater, 2); !ok || more {
		t.Fatal("so many numbers there may be")
	}
	const text = "see p.\u00a0%, and C4/DE on p.\u00a0%-% of the pump-housing/and\u00adothers 1%"
	with := func(s string) (out string) {
		for _, r := range text {
			if r == '%' {
				out += s
			} else {
				out += string(r)
			}
		}
		return out
	}
	for width := Mm(8); width < 90; width += 3 {
		a := now.Para(width, []Run{T(Body, with("47"))}, ParaOpts{})
		b := later.Para(width, []Run{T(Body, with(figures))}, ParaOpts{})
		p := &Pages{Frames: []Frame{{Items: b.Items()}}}
		p.PutLater(func(i int) string {
			if i != mostLater-1 {
				t.Fatal(i)
			}
			return "47"
		})
		if got, want := Dump(p.Frames[0]), Dump(Frame{Items: a.Items()}); got != want {
			t.Fatalf("at %v mm\n%s\nwant\n%s", width, got, want)
		}
	}
	if _, ok := Later(0, 4); ok {
		t.Error("no page has four figures")
	}
	// A text that holds such a rune of its own is refused as any without a sign.
	if b := newFake().Words(Body, figures); len(b.Misfits()) == 0 {
		t.Error("a private sign has no glyph")
	}
}

// A drawing of several items stays one for a reader when a number in its words is put in.
func TestPutLaterKeepsElements(t *testing.T) {
	t.Parallel()
	figures, _ := Later(0, 2)
	drawing := &Element{Alt: "as on p. " + figures}
	p := &Pages{Frames: []Frame{{Items: []Item{{Shape: Rect{}, Of: drawing}, {Shape: Line{}, Of: drawing}}}}}
	p.PutLater(func(int) string { return "47" })
	a, b := p.Frames[0].Items[0].Of, p.Frames[0].Items[1].Of
	if a != b || a.Alt != "as on p. 47" {
		t.Errorf("the items are of %q and %q, want one element, as on p. 47", a.Alt, b.Alt)
	}
	if drawing.Alt != "as on p. "+figures {
		t.Error("what is kept for the next pass was written to")
	}
}
