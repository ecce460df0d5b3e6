package layout

import "maps"

// Sheet is a run of pages of one kind: a head, the flow, a foot on each page.
type Sheet struct {
	// Name is the short name that pages are chosen by, Title the one in the
	// outline.
	Name, Title string
	Pieces      []Piece
	// Head and Foot make the blocks at the top and bottom of a page from its
	// number and the number of all pages. Their height must not depend on the
	// numbers. Either may be nil.
	Head, Foot func(page, total int) Block
	// Landscape sets the sheet across the page; it is drawn turned on the same
	// paper, its top at the left edge.
	Landscape bool
	Ref       Ref
}

// Pages is what Paginate gives.
type Pages struct {
	Frames []Frame
	// Anchors tells for each anchor the page it came to, counted from 1. When a
	// name stands more than once the first counts.
	Anchors map[string]int
	Outline []Entry
	Misfits []Misfit
}

// widestPage stands for a page number while the heads are measured.
const widestPage = 888

// Paginate breaks the sheets into pages of the paper. Pages are counted over all
// sheets; each sheet starts a page. A sheet without pieces has no page.
func Paginate(paper Paper, sheets []Sheet) *Pages {
	p := &Pages{Anchors: map[string]int{}}
	type job struct {
		pager
		spans []span
	}
	jobs := make([]job, len(sheets))
	total := 0
	for i, sh := range sheets {
		j := job{pager: newPager(paper, sh)}
		j.spans = breakPages(sh.Pieces, j.room, func(at int, over Mm) {
			b := sh.Pieces[at].Block
			p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), sh.Ref), Kind: TooHigh, Text: b.someText(), Over: over})
		})
		total += len(j.spans)
		jobs[i] = j
	}
	p.Frames = make([]Frame, 0, total)
	for _, j := range jobs {
		for n, s := range j.spans {
			if n == 0 {
				p.Outline = append(p.Outline, Entry{Title: j.sheet.Title, Page: len(p.Frames)})
			}
			j.page(p, s, total)
		}
	}
	return p
}

// pager sets the pages of one sheet.
type pager struct {
	sheet        Sheet
	upright      Paper // the paper as it is printed
	paper        Paper // the paper as the sheet sees it
	width, room  Mm    // for pieces
	headH, footH Mm
}

func newPager(paper Paper, sh Sheet) pager {
	g := pager{sheet: sh, upright: paper, paper: paper}
	if sh.Landscape {
		g.paper = paper.Turned()
	}
	if sh.Head != nil {
		g.headH = sh.Head(widestPage, widestPage).H
	}
	if sh.Foot != nil {
		g.footH = sh.Foot(widestPage, widestPage).H
	}
	g.width, g.room = g.paper.Inner()
	g.room -= g.headH + g.footH
	return g
}

// page sets one page and adds it to p. Items go down in the order in which the
// page is read: head, flow, foot.
func (g pager) page(p *Pages, s span, total int) {
	number := len(p.Frames) + 1
	parted := s.from > 0 && g.sheet.Pieces[s.from].Group != 0 && g.sheet.Pieces[s.from].Group == g.sheet.Pieces[s.from-1].Group
	page := Block{Items: make([]Item, 0, 64)}
	x, y := g.paper.Left, g.paper.Top
	if g.sheet.Head != nil {
		g.edge(p, &page, g.sheet.Head(number, total), g.headH, y)
	}
	y += g.headH
	for _, b := range s.again {
		page.place(Block{Items: b.Items}, x, y)
		y += b.H
	}
	for i := s.from; i < s.to; i++ {
		pc := g.sheet.Pieces[i]
		if i > s.from {
			y += pc.Gap
		}
		g.piece(p, &page, pc, y)
		y += pc.Block.H
	}
	used := y - g.paper.Top - g.headH
	if g.sheet.Foot != nil {
		g.edge(p, &page, g.sheet.Foot(number, total), g.footH, g.paper.H-g.paper.Bottom-g.footH)
	}
	p.Misfits = append(p.Misfits, page.Misfits...)
	for _, a := range page.Anchors {
		if _, known := p.Anchors[a.Name]; !known {
			p.Anchors[a.Name] = number
		}
	}
	items := page.Items
	if g.sheet.Landscape {
		items = turned(items, g.paper.W)
	}
	p.Frames = append(p.Frames, Frame{Sheet: g.sheet.Name, Number: number, W: g.upright.W, H: g.upright.H, Items: items,
		Used: used, Room: g.room, Parted: parted})
}

// piece places a piece of flow and its line of the outline.
func (g pager) piece(p *Pages, page *Block, pc Piece, y Mm) {
	if !pc.Block.W.fits(g.width) {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(pc.Block.someRef(), g.sheet.Ref), Kind: TooWide,
			Text: pc.Block.someText(), Over: pc.Block.W - g.width})
	}
	page.place(pc.Block, g.paper.Left, y)
	if pc.Title == "" {
		return
	}
	e := Entry{Title: pc.Title, Level: max(pc.Level, 1), Page: len(p.Frames), Y: y}
	if g.sheet.Landscape {
		e.Y = 0 // a height of the turned sheet is no height of the page
	}
	p.Outline = append(p.Outline, e)
}

// edge places a head or foot, which must not be higher than it was measured nor
// wider than the room.
func (g pager) edge(p *Pages, page *Block, b Block, h, y Mm) {
	if over := b.H - h; over > slack {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), g.sheet.Ref), Kind: TooHigh, Text: b.someText(), Over: over})
	}
	if over := b.W - g.width; over > slack {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), g.sheet.Ref), Kind: TooWide, Text: b.someText(), Over: over})
	}
	page.place(b, g.paper.Left, y)
}

// maxPasses bounds Settle. The first pass knows no page, the second knows them
// all; a third is needed when the numbers themselves moved a line.
const maxPasses = 6

// Settle composes again until the page numbers that were printed are those that
// came out. compose is given the pages of all anchors and the number of pages as
// the last pass found them, nil and 0 at first. Where a page is not known yet it
// should set a number of the usual width. When the pages never come to rest,
// settled is false and the printed numbers may be wrong.
func Settle(compose func(known map[string]int, total int) *Pages) (p *Pages, settled bool) {
	var known map[string]int
	total := 0
	for range maxPasses {
		p = compose(known, total)
		if len(p.Frames) == total && maps.Equal(p.Anchors, known) {
			return p, true
		}
		known, total = p.Anchors, len(p.Frames)
	}
	return p, false
}
