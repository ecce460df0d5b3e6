package layout

// Stock is a page on which labels of one size are laid in a grid; one of one label is a
// piece of a roll. Labels are never scaled: a label that is too large for its place is a
// misfit.
type Stock struct {
	Name string
	// PageW and PageH is the size of the page.
	PageW, PageH Mm
	// W and H is the size of a label as it is read.
	W, H Mm
	// Cols and Rows count the labels on a page.
	Cols, Rows int
	// Left and Top place the first label, PitchX and PitchY the next ones, from edge to
	// the same edge.
	Left, Top, PitchX, PitchY Mm
	// Turned lays the labels on their side, their tops to the left.
	Turned bool
	// Marks draws cut marks about the labels.
	Marks bool
	// Reach is the strip at the page's edge that the printer leaves white: no mark goes
	// into it.
	Reach Mm
}

// PerPage is the number of labels on a page.
func (s Stock) PerPage() int { return s.Cols * s.Rows }

// Impose lays the labels on as many pages as they need, row by row, on the first page from
// the place start on, counted from 0: those before it are used already. sheet is the
// name the frames get. A stock that holds no label gives no page and one misfit.
func (s Stock) Impose(sheet string, labels []Block, start int) *Pages {
	p := &Pages{Anchors: map[string]int{}}
	per := s.PerPage()
	if per == 0 && len(labels) > 0 {
		w, _ := s.place()
		p.Misfits = append(p.Misfits, Misfit{Ref: labels[0].someRef(), Kind: TooWide, Text: labels[0].someText(),
			Over: w - s.PageW + 2*s.Reach, Detail: "label on this paper"})
		return p
	}
	for i, l := range labels {
		at := start + i
		if i == 0 || at%per == 0 {
			p.Frames = append(p.Frames, Frame{Sheet: sheet, W: s.PageW, H: s.PageH})
		}
		s.lay(p, &p.Frames[len(p.Frames)-1], l, at%per)
	}
	return p
}

// place is the size of a label as it lies on the page.
func (s Stock) place() (w, h Mm) {
	if s.Turned {
		return s.H, s.W
	}
	return s.W, s.H
}

// lay puts one label on the page at place n.
func (s Stock) lay(p *Pages, f *Frame, l Block, n int) {
	for _, a := range l.Anchors() {
		if _, known := p.Anchors[a.Name]; !known {
			p.Anchors[a.Name] = len(p.Frames)
		}
	}
	l = l.Fill(s.W, s.H, 0, 0)
	if s.Turned {
		l = l.Turned()
	}
	x, y := s.Left+Mm(n%s.Cols)*s.PitchX, s.Top+Mm(n/s.Cols)*s.PitchY
	f.Items = append(f.Items, l.At(x, y).Items()...)
	if s.Marks {
		f.Items = append(f.Items, Item{X: x, Y: y, Role: RoleCut, Shape: s.cutMarks(n)})
	}
	p.Misfits = append(p.Misfits, l.Misfits()...)
}

// cutMarks are short strokes that prolong the edges of a label at its corners.
// They end half way to the neighbour, so that no mark lies on another label, and
// where the printer ends.
func (s Stock) cutMarks(n int) Path {
	const off, long Mm = 0.5, 3
	w, h := s.place()
	col, row := n%s.Cols, n/s.Cols
	reach := func(outer bool, edge, gap Mm) Mm {
		if outer {
			return min(long, edge-s.Reach-Inner)
		}
		return min(long, gap/2)
	}
	p := Path{Weight: Inner}
	add := func(x0, y0, x1, y1 Mm) {
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{x0, y0}}, Op{Verb: LineTo, P: Point{x1, y1}})
	}
	gapX, gapY := s.PitchX-w, s.PitchY-h
	right := s.PageW - s.Left - s.PitchX*Mm(s.Cols-1) - w
	foot := s.PageH - s.Top - s.PitchY*Mm(s.Rows-1) - h
	l, r := reach(col == 0, s.Left, gapX), reach(col == s.Cols-1, right, gapX)
	t, b := reach(row == 0, s.Top, gapY), reach(row == s.Rows-1, foot, gapY)
	for _, y := range []Mm{0, h} {
		if l > off {
			add(-l, y, -off, y)
		}
		if r > off {
			add(w+off, y, w+r, y)
		}
	}
	for _, x := range []Mm{0, w} {
		if t > off {
			add(x, -t, x, -off)
		}
		if b > off {
			add(x, h+off, x, h+b)
		}
	}
	return p
}
