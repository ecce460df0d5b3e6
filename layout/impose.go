package layout

// Stock is a page on which labels of one size are laid in a grid, or a roll that
// gives one label a page. Labels are never scaled: a label that is too large for
// its place is a misfit.
type Stock struct {
	Name string
	// PageW and PageH is the size of the page.
	PageW, PageH Mm
	// W and H is the size of a label as it is read.
	W, H Mm
	// Cols and Rows count the labels on a page.
	Cols, Rows int
	// Left and Top place the first label, GapX and GapY part the labels.
	Left, Top, GapX, GapY Mm
	// Turned lays the labels on their side, their tops to the left.
	Turned bool
	// Marks draws cut marks about the labels.
	Marks bool
}

// leastEdge is the strip at the page's edge that an office printer may not
// reach: common practice, no source.
const leastEdge Mm = 5

// Fit lays labels of w by h on the paper, upright or turned, whichever gives
// more, in the middle of the page and with cut marks. Upright wins a tie. A label
// that is larger than the paper gives a stock for none.
func Fit(paper Paper, w, h, gap Mm) Stock {
	up := gridOn(paper, w, h, gap)
	side := gridOn(paper, h, w, gap)
	s := up
	if side.Cols*side.Rows > up.Cols*up.Rows {
		s = side
		s.Turned = true
	}
	s.Name, s.W, s.H = paper.Name, w, h
	return s
}

// gridOn lays places of w by h on the paper.
func gridOn(paper Paper, w, h, gap Mm) Stock {
	s := Stock{PageW: paper.W, PageH: paper.H, GapX: gap, GapY: gap, Marks: true}
	s.Cols, s.Left = along(paper.W, w, gap)
	s.Rows, s.Top = along(paper.H, h, gap)
	return s
}

// along counts places of a size in a length and centres them.
func along(room, size, gap Mm) (n int, start Mm) {
	for (size*Mm(n+1) + gap*Mm(n)).fits(room - 2*leastEdge) {
		n++
	}
	used := size*Mm(n) + gap*Mm(max(n-1, 0))
	return n, (room - used) / 2
}

// Roll is a stock of one label a page.
func Roll(w, h Mm) Stock {
	return Stock{Name: "roll", PageW: w, PageH: h, W: w, H: h, Cols: 1, Rows: 1}
}

// PerPage is the number of labels on a page.
func (s Stock) PerPage() int { return s.Cols * s.Rows }

// Impose lays the labels on as many pages as they need, row by row. sheet is the
// name the frames get. A stock that holds no label gives no page and one misfit.
func (s Stock) Impose(sheet string, labels []Block) *Pages {
	p := &Pages{Anchors: map[string]int{}}
	per := s.PerPage()
	if per == 0 && len(labels) > 0 {
		w, _ := s.place()
		p.Misfits = append(p.Misfits, Misfit{Ref: labels[0].someRef(), Kind: TooWide, Text: labels[0].someText(),
			Over: w - s.PageW + 2*leastEdge, Detail: "label on this paper"})
		return p
	}
	for i, l := range labels {
		if i%per == 0 {
			p.Frames = append(p.Frames, Frame{Sheet: sheet, W: s.PageW, H: s.PageH})
		}
		s.lay(p, &p.Frames[len(p.Frames)-1], l, i%per)
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
	for _, a := range l.Anchors {
		if _, known := p.Anchors[a.Name]; !known {
			p.Anchors[a.Name] = len(p.Frames)
		}
	}
	l = l.Fill(s.W, s.H, 0, 0)
	if s.Turned {
		l = l.Turned()
	}
	w, h := s.place()
	x := s.Left + Mm(n%s.Cols)*(w+s.GapX)
	y := s.Top + Mm(n/s.Cols)*(h+s.GapY)
	page := Block{Items: f.Items}
	page.place(l, x, y)
	if s.Marks {
		page.Items = append(page.Items, Item{X: x, Y: y, Role: RoleCut, Shape: s.cutMarks(n)})
	}
	f.Items = page.Items
	p.Misfits = append(p.Misfits, page.Misfits...)
}

// cutMarks are short strokes that prolong the edges of a label at its corners.
// They end half way to the neighbour, so that no mark lies on another label.
func (s Stock) cutMarks(n int) Path {
	const off, long Mm = 0.5, 3
	w, h := s.place()
	col, row := n%s.Cols, n/s.Cols
	reach := func(outer bool, gap Mm) Mm {
		if outer {
			return long
		}
		return min(long, gap/2)
	}
	p := Path{Weight: Inner}
	add := func(x0, y0, x1, y1 Mm) {
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{x0, y0}}, Op{Verb: LineTo, P: Point{x1, y1}})
	}
	l, r := reach(col == 0, s.GapX), reach(col == s.Cols-1, s.GapX)
	t, b := reach(row == 0, s.GapY), reach(row == s.Rows-1, s.GapY)
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
