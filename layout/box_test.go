package layout

import (
	"math"
	"testing"
)

// boxesOf gives the items of a role.
func boxesOf(b Block, role string) (out []Item) {
	for _, it := range b.Items() {
		if it.Role == role {
			out = append(out, it)
		}
	}
	return out
}

// Sizes of write-in boxes. The value box follows a rule of form design that
// workers need 5 characters and 3 lines of handwriting to the inch: 5.1 mm a
// character and 8.5 mm a line, rounded up here to 5.5 mm and 9 mm. The other sizes
// are common practice, no source.
func TestBoxSizes(t *testing.T) {
	t.Parallel()
	bare, gloves := newFake(), NewSetter(fake{}, Pen{Gloves: true})
	for _, c := range []struct {
		name string
		b    Block
		role string
		w, h Mm
	}{
		{"a reading like 420.70", bare.Value(Number{Before: 3, After: 2, Unit: "mm"}), RoleValue, 37, 9},
		{"a reading like 0.05", bare.Value(Number{Before: 1, After: 2}), RoleValue, 26, 9},
		{"a count of two figures", bare.Value(Number{Before: 2}), RoleValue, 15, 9},
		{"written with gloves", gloves.Value(Number{Before: 3, After: 2}), RoleValue, 37, 11},
		{"the sign", bare.Value(Number{Before: 1, After: 2, Sign: true}), RoleSign, 9, 7},
		{"a tick", bare.Tick(Body, "in", nil), RoleTick, 6, 6},
		{"initials", bare.Box(RoleInitials, "initials", nil), RoleInitials, 18, 9},
		{"name and signature", bare.Box(RoleName, "name and signature", nil), RoleName, 55, 10},
		{"date", bare.Box(RoleDate, "date", nil), RoleDate, 24, 9},
		{"time", bare.Box(RoleTime, "time", nil), RoleTime, 18, 9},
		{"initials with gloves", gloves.Box(RoleInitials, "initials", nil), RoleInitials, 18, 11},
		{"a line for words", bare.WideBox(RoleWords, 70, 1, "", nil), RoleWords, 70, 9},
		{"three lines for words", bare.WideBox(RoleWords, 70, 3, "", nil), RoleWords, 70, 26},
		{"the least sketch", bare.Sketch(80, 60, "sketch", nil), RoleSketch, 80, 60},
	} {
		boxes := boxesOf(c.b, c.role)
		if len(boxes) != 1 {
			t.Errorf("%s: %d boxes, want one", c.name, len(boxes))
			continue
		}
		r := boxes[0].Shape.(Rect)
		if r.W != c.w || r.H != c.h {
			t.Errorf("%s: %v x %v mm, want %v x %v", c.name, r.W, r.H, c.w, c.h)
		}
		// Outlines of 0.25 to 0.35 mm, about half a point.
		if r.Weight < 0.25 || r.Weight > 0.35 || r.Fill != Usual {
			t.Errorf("%s: outline %v mm, fill %v; want a line of 0.25 to 0.35 mm and no fill", c.name, r.Weight, r.Fill)
		}
		if len(c.b.Misfits()) > 0 {
			t.Errorf("%s: misfits %v", c.name, c.b.Misfits())
		}
	}
}

// A rule of form design (5 characters to the inch) from outside: no cell is
// narrower than 25.4/5 mm, no line lower than 25.4/3 mm.
func TestCellsHoldHandwriting(t *testing.T) {
	t.Parallel()
	s := newFake()
	for before := 1; before <= 6; before++ {
		for after := range 5 {
			b := s.Value(Number{Before: before, After: after})
			r := boxesOf(b, RoleValue)[0].Shape.(Rect)
			if got := float64(r.W) / float64(r.Cells); got < 25.4/5 {
				t.Errorf("%d.%d: %.2f mm a character, want at least %.2f", before, after, got, 25.4/5)
			}
			if float64(r.H) < 25.4/3 {
				t.Errorf("%d.%d: %v mm high, want at least %.2f", before, after, r.H, 25.4/3)
			}
		}
	}
}

// The printed point stands in its own cell between the digits, near the foot.
func TestValuePoint(t *testing.T) {
	t.Parallel()
	b := newFake().Value(Number{Before: 3, After: 2, Unit: "mm", Caption: "as found"})
	box := boxesOf(b, RoleValue)[0]
	r := box.Shape.(Rect)
	if r.Cells != 6 || r.Point != 4 {
		t.Errorf("cells %d, point in %d; want 6 and 4, as in 420.70", r.Cells, r.Point)
	}
	var dot Item
	for _, it := range b.Items() {
		if p, ok := it.Shape.(Path); ok && p.Fill == Black {
			dot = it
		}
	}
	// Two millimetres of margin, then three digits of 5.5 mm, then half a cell.
	if x := dot.X - box.X; math.Abs(float64(x-(2+3*5.5+2.75))) > 1e-9 {
		t.Errorf("the point stands at %v mm in its box, want 21.25", x)
	}
	if y := dot.Y - box.Y; y < r.H/2 || y > r.H-1 {
		t.Errorf("the point stands %v mm down in a box of %v", y, r.H)
	}
	last := b.Items()[len(b.Items())-1]
	if u, ok := last.Shape.(Text); !ok || u.S != "mm" || last.X < box.X+r.W+1 {
		t.Errorf("the unit comes last and after the box, got %+v", last)
	}
	if c := b.Items()[0].Shape.(Text); c.S != "as found" || c.Size != Caption.Size {
		t.Errorf("the caption comes first, got %+v", c)
	}
}

func TestBoxMisfits(t *testing.T) {
	t.Parallel()
	s := newFake()
	if m := s.Box(RoleInitials, "a caption that is far too long", "r").Misfits(); len(m) != 1 || m[0].Kind != TooWide || m[0].Ref != "r" {
		t.Errorf("long caption: misfits %v", m)
	}
	if m := s.Sketch(79, 60, "sketch", "r").Misfits(); len(m) != 1 || m[0].Kind != TooWide || m[0].Over != 5 {
		t.Errorf("narrow sketch: misfits %v, want one by 5 mm", m)
	}
	if m := s.Sketch(90, 42, "sketch", "r").Misfits(); len(m) != 1 || m[0].Kind != TooHigh || m[0].Over != 20 {
		t.Errorf("low sketch: misfits %v, want one by 20 mm", m)
	}
	if m := s.Value(Number{After: 2, Ref: "r"}).Misfits(); len(m) != 1 || m[0].Kind != NoDigits {
		t.Errorf("no digit before the point: misfits %v", m)
	}
}

// A copied box is told from a first one without tone or colour.
func TestCopiedBox(t *testing.T) {
	t.Parallel()
	r := boxesOf(newFake().Value(Number{Before: 2, After: 1, Copied: true}), RoleValue)[0].Shape.(Rect)
	if r.Dash == 0 || r.Fill != Usual {
		t.Errorf("copied box %+v, want a dashed outline and no fill", r)
	}
}

func TestFraction(t *testing.T) {
	t.Parallel()
	b := newFake().Fraction("spacer", "in", false, nil)
	boxes := boxesOf(b, RoleFraction)
	if len(boxes) != 3 {
		t.Fatalf("%d boxes, want whole, numerator and denominator", len(boxes))
	}
	for i, it := range boxes {
		if r := it.Shape.(Rect); r.Cells != 2 || r.W != 15 || r.H != 9 {
			t.Errorf("box %d: %+v, want two figures in 15 x 9 mm", i, r)
		}
	}
}
