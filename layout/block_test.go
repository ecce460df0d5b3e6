package layout

import (
	"math"
	"slices"
	"testing"
)

// rect is a block with one rectangle of its size.
func rect(w, h Mm) Block { return Drawn(w, h, Item{Shape: Rect{W: w, H: h}}) }

// places gives the origins of a block's items.
func places(b Block) (out []Point) {
	for _, it := range b.Items() {
		out = append(out, Point{it.X, it.Y})
	}
	return out
}

func TestJoining(t *testing.T) {
	t.Parallel()
	base := func(b Block, y Mm) Block { b.Base = y; return b }
	for _, c := range []struct {
		name string
		b    Block
		w, h Mm
		at   []Point
	}{
		{"above", Above(3, rect(10, 5), rect(20, 7)), 20, 15, []Point{{0, 0}, {0, 8}}},
		{"above skips what is empty", Above(3, Block{}, rect(10, 5), Block{}, rect(20, 7)), 20, 15, []Point{{0, 0}, {0, 8}}},
		{"beside", Beside(5, rect(10, 5), rect(20, 7)), 35, 7, []Point{{0, 0}, {15, 0}}},
		{"middle", Middle(5, rect(10, 5), rect(20, 7)), 35, 7, []Point{{0, 1}, {15, 0}}},
		{"bottom", Bottom(5, rect(10, 5), rect(20, 7)), 35, 7, []Point{{0, 2}, {15, 0}}},
		{"level", Level(1, base(rect(10, 5), 4), base(rect(20, 7), 6)), 31, 7, []Point{{0, 2}, {11, 0}}},
		{"level makes room below", Level(1, base(rect(10, 9), 2), base(rect(20, 6), 5)), 31, 12, []Point{{0, 3}, {11, 0}}},
		{"pad", rect(10, 5).Pad(1, 2, 3, 4), 16, 9, []Point{{4, 1}}},
		{"center", rect(10, 5).Center(30), 30, 5, []Point{{10, 0}}},
		{"right", rect(10, 5).Right(30), 30, 5, []Point{{20, 0}}},
		{"fill", rect(10, 5).Fill(30, 25, 0.5, 1), 30, 25, []Point{{10, 20}}},
		{"border lies beneath", rect(10, 5).Border(Rect{Weight: 1}), 10, 5, []Point{{0, 0}, {0, 0}}},
	} {
		if c.b.W != c.w || c.b.H != c.h || !slices.Equal(places(c.b), c.at) {
			t.Errorf("%s: %v x %v at %v, want %v x %v at %v", c.name, c.b.W, c.b.H, places(c.b), c.w, c.h, c.at)
		}
	}
}

func TestFillMisfit(t *testing.T) {
	t.Parallel()
	b := rect(10, 5).Tagged("r").Fill(8, 2, 0.5, 0.5)
	if len(b.Misfits()) != 2 || b.Misfits()[0].Over != 2 || b.Misfits()[1].Over != 3 || b.Misfits()[0].Ref != "r" {
		t.Errorf("misfits %+v, want 2 mm too wide and 3 mm too high", b.Misfits())
	}
	if r := b.Items()[0].Shape.(Rect); r.W != 10 || r.H != 5 {
		t.Errorf("the content is %v x %v, want it unchanged", r.W, r.H)
	}
}

// Joined blocks share no memory with their parts.
func TestBlocksAreValues(t *testing.T) {
	t.Parallel()
	a := rect(10, 5)
	_ = Above(1, a, a.Pad(1, 1, 1, 1), a.Tagged("x").Anchored("y"))
	if a.Items()[0].X != 0 || a.Items()[0].Ref != nil || len(a.Anchors()) != 0 {
		t.Errorf("joining changed its part: %+v", a)
	}
}

// Turning is that of the plane: the corner that was at the top left comes to the
// lower left, and four turns change nothing.
func TestTurned(t *testing.T) {
	t.Parallel()
	b := Drawn(30, 20, Item{X: 5, Y: 2, Shape: Rect{W: 10, H: 4}})
	r := b.Turned()
	if r.W != 20 || r.H != 30 {
		t.Errorf("turned %v x %v, want 20 x 30", r.W, r.H)
	}
	// The rectangle spans x 5 to 15 and y 2 to 6; turned, x becomes 30-x downward.
	if left, top, right, bottom := r.Items()[0].Bounds(); left != 2 || top != 15 || right != 6 || bottom != 25 {
		t.Errorf("lies at %v %v %v %v, want 2 15 6 25", left, top, right, bottom)
	}
	four := b.Turned().Turned().Turned().Turned()
	if l, tp, rt, bt := four.Items()[0].Bounds(); l != 5 || tp != 2 || rt != 15 || bt != 6 {
		t.Errorf("after four turns at %v %v %v %v, want 5 2 15 6", l, tp, rt, bt)
	}
}

func TestBoundsTurnedBy30(t *testing.T) {
	t.Parallel()
	// A line of length 10 turned by 30 degrees counter-clockwise goes 8.66 to the
	// right and 5 up.
	l, tp, r, b := Item{X: 1, Y: 20, Turn: 30, Shape: Line{DX: 10}}.Bounds()
	for _, c := range []struct{ got, want Mm }{{l, 1}, {tp, 15}, {r, 1 + 10*Mm(math.Sqrt(3)/2)}, {b, 20}} {
		if math.Abs(float64(c.got-c.want)) > 1e-9 {
			t.Errorf("bounds %v %v %v %v, want 1 15 9.66 20", l, tp, r, b)
		}
	}
}

func TestOnly(t *testing.T) {
	t.Parallel()
	d := &Doc{
		Pages:   []Frame{{Sheet: "a", Number: 1}, {Sheet: "b", Number: 2}, {Sheet: "a", Number: 3}},
		Outline: []Entry{{Title: "A", Page: 0}, {Title: "B", Page: 1}, {Title: "A2", Page: 2}},
	}
	got := d.Only(func(f Frame) bool { return f.Sheet == "a" })
	if len(got.Pages) != 2 || got.Pages[1].Number != 3 {
		t.Errorf("pages %+v, want 1 and 3 with their numbers", got.Pages)
	}
	if len(got.Outline) != 2 || got.Outline[1].Page != 1 || got.Outline[1].Title != "A2" {
		t.Errorf("outline %+v, want A and A2 on the pages that are left", got.Outline)
	}
}

func TestDump(t *testing.T) {
	t.Parallel()
	f := Frame{Sheet: "s", W: 210, H: 297, Items: []Item{
		{X: 20, Y: 31.239, Shape: Text{S: "nut", Face: Bold, Size: 11, Width: 6.0049, Ink: White}},
		{X: 20, Y: 35, Turn: 90, Role: RoleValue, Shape: Rect{W: 37, H: 9, Weight: 0.3, Cells: 6, Point: 4}},
		{X: -0.001, Y: 2, Shape: Line{DX: 5, Weight: 0.25, Dash: 1, Ink: Soft}},
	}}
	const want = `frame s 210.00 x 297.00
  20.00   31.24  text bold 11 pt w 6.00 "nut" white
  20.00   35.00  rect 37.00 x 9.00 stroke 0.30 cells 6 point 4 turn 90 [box:value]
   0.00    2.00  line to 5.00 0.00 stroke 0.25 soft dash 1.00
`
	if got := Dump(f); got != want {
		t.Errorf("got:\n%swant:\n%s", got, want)
	}
}
