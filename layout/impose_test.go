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

// Labels keep their size on either paper: what does not fit is turned, or there
// are fewer on a page.
func TestLabelsOnPaper(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		paper  Paper
		w, h   Mm
		per    int
		turned bool
	}{
		// Two tags above each other need 280 mm: A4 has 297, letter 279.4.
		{A4, 70, 140, 4, false},
		{Letter, 70, 140, 3, true},
		{A4, 100, 70, 8, false},
		{Letter, 100, 70, 6, false},
		{A4, 60, 40, 21, false},
		{Letter, 60, 40, 20, true},
	} {
		s := Fit(c.paper, c.w, c.h, 0)
		if s.PerPage() != c.per || s.Turned != c.turned {
			t.Errorf("%v x %v on %s: %d a page, turned %v; want %d, %v", c.w, c.h, c.paper.Name, s.PerPage(), s.Turned, c.per, c.turned)
		}
		n := s.PerPage() + 1
		labels := make([]Block, n)
		for i := range labels {
			labels[i] = rect(c.w, c.h).Tagged(i)
		}
		p := s.Impose("tags", labels)
		if len(p.Frames) != 2 || len(p.Misfits) > 0 {
			t.Fatalf("%d labels: %d pages, misfits %v; want 2 pages", n, len(p.Frames), p.Misfits)
		}
		checkLabels(t, p.Frames[0], s)
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
	if m := Roll(60, 40).Impose("tags", []Block{rect(60, 41).Tagged("r")}).Misfits; len(m) != 1 || m[0].Kind != TooHigh || m[0].Over != 1 || m[0].Ref != "r" {
		t.Errorf("a label too high by 1 mm: %v", m)
	}
	if p := Fit(A4, 300, 300, 0).Impose("tags", []Block{rect(300, 300)}); len(p.Misfits) != 1 || len(p.Frames) != 0 {
		t.Errorf("a label larger than the paper: %d pages, %v", len(p.Frames), p.Misfits)
	}
	if p := Roll(60, 40).Impose("tags", []Block{rect(60, 40), rect(60, 40)}); len(p.Frames) != 2 || p.Frames[1].W != 60 {
		t.Errorf("a roll: %d pages, want one a label", len(p.Frames))
	}
}
