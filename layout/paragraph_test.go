package layout

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"
)

// TestParagraphIsMeasuredAsSet: in any width, one after the other, a paragraph has the height
// and the misfits of the block that a fresh setter makes of its runs, and is set as that.
func TestParagraphIsMeasuredAsSet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SampledFrom([]string{"Take the cover off ", "0.30 – 0.60\u00a0mm ", "Schraubensicherungsbleche", " and/or\n", "≤ ⌀12 ", "a\u05d0b", ""})
		var runs []Run
		for _, text := range rapid.SliceOfN(words, 1, 6).Draw(t, "texts") {
			runs = append(runs, Run{Text: text, Style: rapid.SampledFrom([]Style{ten, Body, Sub}).Draw(t, "style"), Deco: Deco(rapid.IntRange(0, 2).Draw(t, "deco"))})
		}
		opts := ParaOpts{Hang: Mm(rapid.IntRange(0, 3).Draw(t, "hang")), Ref: "here"}
		s := newFake()
		p := s.Paragraph(runs, opts)
		for range 3 {
			width := Mm(rapid.IntRange(4, 120).Draw(t, "width"))
			want := newFake().Para(width, runs, opts)
			if h, misfits := p.Size(width); h != want.H || misfits != len(want.Misfits()) {
				t.Fatalf("in %v: %v high with %d misfits, want %v and %d", width, h, misfits, want.H, len(want.Misfits()))
			}
			if got := p.Set(width); !equal(got, want) {
				t.Fatalf("in %v: got %+v, want %+v", width, got, want)
			}
		}
	})
}

// TestEachIsItems: what is looked at are the items of a block, also while others are.
func TestEachIsItems(t *testing.T) {
	inner := newFake().Para(20, []Run{T(ten, "one two"), T(Body, " three four five")}, ParaOpts{Ref: 1})
	b := Above(2, inner, Drawn(5, 5, Item{Shape: Rect{W: 5, H: 5}})).At(3, 4)
	for range 2 {
		var got []Item
		b.Each(func(it Item) {
			inner.Each(func(Item) {})
			got = append(got, it)
		})
		if !reflect.DeepEqual(got, b.Items()) {
			t.Errorf("got %+v, want %+v", got, b.Items())
		}
	}
}
