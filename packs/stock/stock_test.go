package stock

import "testing"

// Labels keep their size on either paper: what does not fit is turned, or there are
// fewer on a page. Paper sizes are those of ISO 216 and ANSI/ASME Y14.1.
func TestLabelsOnPaper(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		paper  string
		w, h   Mm
		per    []int // hang tags, box labels, bag labels
		turned []bool
	}{
		// Two tags above each other need 285 mm: A4 has 297, Letter 279.4.
		{"a4", 210, 297, []int{4, 4, 18}, []bool{false, true, false}},
		{"letter", 215.9, 279.4, []int{3, 4, 18}, []bool{true, false, false}},
	} {
		for i, s := range On(c.paper, c.w, c.h) {
			if s.PerPage() != c.per[i] || s.Turned != c.turned[i] {
				t.Errorf("%s: %d a page, turned %v; want %d, %v", s.Name, s.PerPage(), s.Turned, c.per[i], c.turned[i])
			}
			if stub := (s.Stub > 0); stub != (s.Use != Bag) {
				t.Errorf("%s: a stub of %v", s.Name, s.Stub)
			}
			if err := s.Check(); err != nil {
				t.Errorf("%s: %v", s.Name, err)
			}
			if s.Left < Reach+1 || s.Top < Reach+1 {
				t.Errorf("%s: the first label lies %v, %v from the edges, where the printer ends", s.Name, s.Left, s.Top)
			}
		}
	}
	for _, s := range Rolls() {
		if err := s.Check(); err != nil || s.PerPage() != 1 || s.PageW != s.W {
			t.Errorf("%s: %d a page of %v, %v", s.Name, s.PerPage(), s.PageW, err)
		}
	}
}

// A stock that cannot be is refused, with what is wrong of it.
func TestStockThatCannotBe(t *testing.T) {
	t.Parallel()
	good := Stock{Name: "x", PageW: 210, PageH: 297, W: 99.1, H: 67.7, Across: 2, Down: 4, PitchX: 101.6, PitchY: 67.7, Left: 4.65, Top: 13.1}
	if err := good.Check(); err != nil {
		t.Fatal(err)
	}
	for what, spoil := range map[string]func(*Stock){
		"too wide":       func(s *Stock) { s.Across = 3 },
		"too high":       func(s *Stock) { s.Top = 30 },
		"overlap":        func(s *Stock) { s.PitchX = 90 },
		"hole too small": func(s *Stock) { s.Hole, s.HoleAt = 3, 11 },
		"hole at edge":   func(s *Stock) { s.Hole, s.HoleAt = 6, 6 },
		"tiny":           func(s *Stock) { s.H = 10 },
		"none":           func(s *Stock) { s.Down = 0 },
		"coarse":         func(s *Stock) { s.Resolution = 96 },
	} {
		s := good
		spoil(&s)
		if s.Check() == nil {
			t.Errorf("%s: it is taken", what)
		}
	}
}

// Squares of codes are whole dots: 0.6 mm are 4.8 dots of a printer of 203 dots an inch, and
// 5 of them are 0.626 mm.
func TestWholeDots(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		dots int
		want Mm
	}{{0, 0.6}, {203, 5 * 25.4 / 203}, {300, 8 * 25.4 / 300}, {600, 15 * 25.4 / 600}, {254, 0.6}} {
		if got := (Stock{Resolution: c.dots}).Dots(0.6); got < c.want-1e-9 || got > c.want+1e-9 {
			t.Errorf("%d dots an inch: %v, want %v", c.dots, got, c.want)
		}
	}
}
