package layout

import "testing"

// Paper sizes are those of ISO 216 (A4, 210 x 297 mm) and ANSI/ASME Y14.1 (A,
// 8.5 x 11 in).
func TestPaperSizes(t *testing.T) {
	t.Parallel()
	if A4.W != 210 || A4.H != 297 {
		t.Errorf("A4 is %v x %v", A4.W, A4.H)
	}
	if Letter.W != 8.5*25.4 || Letter.H != 11*25.4 {
		t.Errorf("letter is %v x %v", Letter.W, Letter.H)
	}
	for _, p := range []Paper{A4, Letter} {
		// Filing holes of ISO 838: 12 mm from the edge, 6 mm across.
		if p.Left < 12+3 {
			t.Errorf("%s: the left margin of %v mm does not clear the filing holes", p.Name, p.Left)
		}
		if tp := p.Turned(); tp.W != p.H || tp.H != p.W || tp.Top != p.Left {
			t.Errorf("%s turned: %+v, want the binding margin on top", p.Name, tp)
		}
	}
}

// Labels lie on a page in rows, at their size and apart, upright and turned; what is
// used of the first page stays free.
func TestLabelsOnPages(t *testing.T) {
	t.Parallel()
	for _, s := range []Stock{
		{Name: "upright", PageW: 210, PageH: 297, W: 70, H: 140, Cols: 2, Rows: 2, Left: 32.5, Top: 6, PitchX: 75, PitchY: 145, Marks: true, Reach: 4.2},
		{Name: "turned", PageW: 215.9, PageH: 279.4, W: 100, H: 70, Cols: 2, Rows: 2, Left: 20, Top: 20, PitchX: 75, PitchY: 105, Turned: true},
	} {
		n := s.PerPage() + 1
		labels := make([]Block, n)
		for i := range labels {
			labels[i] = rect(s.W, s.H).Tagged(i)
		}
		p := s.Impose("tags", labels, 0)
		if len(p.Frames) != 2 || len(p.Misfits) > 0 {
			t.Fatalf("%d labels: %d pages, misfits %v; want 2 pages", n, len(p.Frames), p.Misfits)
		}
		checkLabels(t, p.Frames[0], s)
		later := s.Impose("tags", labels[:2], 1)
		if x, y := later.Frames[0].Items[0].X, later.Frames[0].Items[0].Y; len(later.Frames) != 1 || x < s.Left+s.PitchX-1 && y < s.Top+s.PitchY-1 {
			t.Errorf("%s: from the second place on the first label lies at %v, %v", s.Name, x, y)
		}
		if all := s.Impose("tags", labels[:2], s.PerPage()-1); len(all.Frames) != 2 {
			t.Errorf("%s: two labels from the last place on take %d pages", s.Name, len(all.Frames))
		}
	}
}

// No cut mark goes where an office printer leaves the page white: on A4 the marks of tags
// ended 3 mm from the edge.
func TestCutMarksWithinReach(t *testing.T) {
	t.Parallel()
	s := Stock{PageW: 210, PageH: 297, W: 70, H: 140, Cols: 2, Rows: 2, Left: 32.5, Top: 6, PitchX: 75, PitchY: 145, Marks: true, Reach: 4.2}
	labels := make([]Block, 4)
	for i := range labels {
		labels[i] = rect(s.W, s.H)
	}
	for _, it := range s.Impose("tags", labels, 0).Frames[0].Items {
		if l, tp, r, b := it.Bounds(); l < 4.2 || tp < 4.2 || r > 210-4.2 || b > 297-4.2 {
			t.Errorf("%s reaches from %v, %v to %v, %v", it.Role, l, tp, r, b)
		}
	}
}

// checkLabels sees that labels lie within the page, apart, and at their size.
func checkLabels(t *testing.T, f Frame, s Stock) {
	t.Helper()
	var seen [][4]Mm
	for _, it := range f.Items {
		l, tp, r, b := it.Bounds()
		if l < 0 || tp < 0 || r > f.W || b > f.H {
			t.Errorf("%s: an item lies at %v %v %v %v, off the page", s.Name, l, tp, r, b)
		}
		if _, ok := it.Shape.(Rect); !ok {
			continue
		}
		if (r-l)*(b-tp) < s.W*s.H-slack || (r-l)*(b-tp) > s.W*s.H+slack {
			t.Errorf("%s: a label of %v x %v, want %v x %v or turned", s.Name, r-l, b-tp, s.W, s.H)
		}
		for _, o := range seen {
			if l < o[2]-slack && r > o[0]+slack && tp < o[3]-slack && b > o[1]+slack {
				t.Errorf("%s: labels at %v and %v overlap", s.Name, o, [4]Mm{l, tp, r, b})
			}
		}
		seen = append(seen, [4]Mm{l, tp, r, b})
	}
	if len(seen) != s.PerPage() {
		t.Errorf("%s: %d labels on a page, want %d", s.Name, len(seen), s.PerPage())
	}
}

func TestLabelMisfits(t *testing.T) {
	t.Parallel()
	roll := Stock{Name: "roll", PageW: 60, PageH: 40, W: 60, H: 40, Cols: 1, Rows: 1}
	if m := roll.Impose("tags", []Block{rect(60, 41).Tagged("r")}, 0).Misfits; len(m) != 1 || m[0].Kind != TooHigh || m[0].Over != 1 || m[0].Ref != "r" {
		t.Errorf("a label too high by 1 mm: %v", m)
	}
	if p := (Stock{PageW: 210, PageH: 297, W: 300, H: 300}).Impose("tags", []Block{rect(300, 300)}, 0); len(p.Misfits) != 1 || len(p.Frames) != 0 {
		t.Errorf("a label larger than the paper: %d pages, %v", len(p.Frames), p.Misfits)
	}
	if p := roll.Impose("tags", []Block{rect(60, 40), rect(60, 40)}, 0); len(p.Frames) != 2 || p.Frames[1].W != 60 {
		t.Errorf("a roll: %d pages, want one a label", len(p.Frames))
	}
}
