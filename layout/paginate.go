package layout

import (
	"slices"
)

// Pages is what Paginate gives.
type Pages struct {
	Frames []Frame
	// Anchors tells for each anchor the page it came to, counted from 1. When a
	// name stands more than once the first counts.
	Anchors map[string]int
	Outline []Entry
	Misfits []Misfit
	// Boxes counts the boxes of each role on each sheet.
	Boxes map[string]map[string]int
}

// widestPage stands for a page number while the heads are measured.
const widestPage = 888

// Paginate breaks the sheets into pages of the paper. Pages are counted over all
// sheets; each sheet that does not follow another starts a page. A sheet without
// pieces has no page.
func Paginate(paper Paper, sheets []Sheet) *Pages {
	p := newPages()
	runs, total := broken(paper, sheets, func(g *run, at int, over Mm) {
		b := g.pieces[at].Block
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), g.of(at).Ref), Kind: TooHigh, Text: b.someText(), Over: over})
	})
	p.Frames = make([]Frame, 0, total)
	for _, g := range runs {
		for _, s := range g.spans {
			g.page(p, s, total)
		}
	}
	return p
}

// broken are the sheets in their runs, each broken into pages, and how many those are.
func broken(paper Paper, sheets []Sheet, tall func(g *run, at int, over Mm)) (runs []run, total int) {
	runs = inRuns(paper, sheets)
	for i := range runs {
		g := &runs[i]
		for _, s := range breakPages(g.flowed(), func(at int, over Mm) { tall(g, at, over) }) {
			if g.pieces[s.from].RightHand && total%2 == 1 {
				g.spans = append(g.spans, span{from: s.from, to: s.from})
				total++
			}
			g.spans = append(g.spans, s)
			total++
		}
	}
	return runs, total
}

// run is a row of sheets that follow each other on the same pages, and sets them.
type run struct {
	sheets      []Sheet
	starts      []int // the first piece of each sheet
	pieces      []Piece
	spans       []span
	upright     Paper // the paper as it is printed
	paper       Paper // the paper as the sheets see it
	width, high Mm    // of a page within its margins
}

// inRuns joins the sheets that follow each other; those without pieces are left out.
func inRuns(paper Paper, sheets []Sheet) []run {
	var out []run
	for i := range sheets {
		sheets[i].measure()
		sh := sheets[i]
		if len(sh.Pieces) == 0 {
			continue
		}
		if !sh.Follows || len(out) == 0 || out[len(out)-1].sheets[0].Landscape != sh.Landscape {
			out = append(out, newRun(paper, sheets[i:]))
		}
		g := &out[len(out)-1]
		g.sheets = append(g.sheets, sh)
		g.starts = append(g.starts, len(g.pieces))
		g.pieces = append(g.pieces, sh.Pieces...)
	}
	return out
}

// RoomLeft is the room that sheets leave on their last page, and the height that a page of
// them has for its flow, for pieces that are made as high as there is room.
func RoomLeft(paper Paper, sheets []Sheet) (left, page Mm) {
	runs := inRuns(paper, sheets)
	if len(runs) == 0 {
		return 0, 0
	}
	g := runs[len(runs)-1]
	spans := breakPages(g.flowed(), func(int, Mm) {})
	last := spans[len(spans)-1]
	used := heightOf(last.again)
	for i := last.from; i < last.to; i++ {
		if i > last.from {
			used += g.pieces[i].Gap
		}
		used += last.block(g.pieces, i).H
	}
	return max(g.roomAt(last.from)-used, 0), g.roomAt(len(g.pieces) - 1)
}

// newRun begins a run with the first of some sheets; it has room for all that may follow.
func newRun(paper Paper, sheets []Sheet) run {
	g := run{upright: paper, paper: paper}
	if sheets[0].Landscape {
		g.paper = paper.Turned()
	}
	pieces := len(sheets[0].Pieces)
	for _, sh := range sheets[1:] {
		if len(sh.Pieces) > 0 && !sh.Follows {
			break
		}
		pieces += len(sh.Pieces)
	}
	g.pieces = make([]Piece, 0, pieces)
	g.width, g.high = g.paper.Inner()
	return g
}

// roomAt is the room of a page that begins with a piece: its head and foot are those of the
// sheet of that piece.
func (g run) roomAt(piece int) Mm {
	sh := &g.sheets[g.sheetOf(piece)]
	return g.high - sh.headH - sh.footH
}

// flowed is the run as it is broken into pages.
func (g run) flowed() flow {
	return flow{g.pieces, g.roomAt, func(i int) bool { return g.of(i).Steady }}
}

// sheetOf is the number of the sheet that a piece belongs to.
func (g run) sheetOf(piece int) int {
	i := len(g.starts) - 1
	for i > 0 && g.starts[i] > piece {
		i--
	}
	return i
}

// of is the sheet that a piece belongs to.
func (g run) of(piece int) Sheet { return g.sheets[g.sheetOf(piece)] }

// page sets one page and adds it to p. Items go down in the order in which the
// page is read: head, flow, foot. A span of no pieces makes an empty page, the back
// of the one before.
func (g run) page(p *Pages, s span, total int) {
	number := len(p.Frames) + 1
	first := g.of(s.from)
	parted := s.head > 0 && !g.pieces[s.from].Block.Partings()[s.head-1].Apart ||
		s.head == 0 && s.last() > s.from && s.from > 0 && g.pieces[s.from].Group != 0 && g.pieces[s.from].Group == g.pieces[s.from-1].Group
	page := Block{ink: ink{parts: make([]part, 0, 64)}}
	if first.Head != nil {
		g.edge(p, &page, first.Head(number, total), first.headH, g.paper.Top)
	}
	parts, used := g.flow(p, &page, s)
	if first.Foot != nil {
		g.edge(p, &page, first.Foot(number, total), first.footH, g.paper.H-g.paper.Bottom-first.footH)
	}
	p.Misfits = append(p.Misfits, page.Misfits()...)
	firstOf(p.Anchors, page.Anchors(), number)
	items := page.Items()
	if first.Landscape {
		items = turned(items, g.paper.W)
	}
	p.Frames = append(p.Frames, Frame{Sheet: parts[0].Sheet, Number: number, W: g.upright.W, H: g.upright.H, Items: items,
		Used: used, Room: g.roomAt(s.from), Parted: parted, Parts: parts})
}

// flow places the pieces of a page below its head. It gives the parts of the page and
// the height that they use.
func (g run) flow(p *Pages, page *Block, s span) (parts []Part, used Mm) {
	start := g.paper.Top + g.of(s.from).headH
	y, top := start, start
	parts = []Part{{Sheet: g.of(s.from).Name, From: page.ink.count()}}
	for _, b := range s.again {
		p.count(parts[0].Sheet, b)
		page.ink.add(b.ink, g.paper.Left, y)
		y += b.H
	}
	parts[0].Fresh = page.ink.count()
	for i := s.from; i < s.last(); i++ {
		pc, name := g.pieces[i], g.of(i).Name
		if i > s.from {
			if name != parts[len(parts)-1].Sheet {
				parts = append(ended(parts, page.ink.count(), y-top), Part{Sheet: name, From: page.ink.count(), Fresh: page.ink.count()})
				top = y
			}
			y += pc.Gap
		}
		pc.Block = *s.block(g.pieces, i)
		p.count(name, &pc.Block)
		g.piece(p, page, i, pc, y)
		if i > s.from || s.head == 0 { // else they stand there already
			g.lines(p, i, pc, y)
		}
		y += pc.Block.H
	}
	return ended(parts, page.ink.count(), y-top), y - start
}

// ended says where the last part of a page ends.
func ended(parts []Part, items int, used Mm) []Part {
	last := &parts[len(parts)-1]
	last.To, last.Used = items, used
	return parts
}

// piece places a piece of flow.
func (g run) piece(p *Pages, page *Block, i int, pc Piece, y Mm) {
	sh := g.of(i)
	if !pc.Block.W.Fits(g.width) {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(pc.Block.someRef(), sh.Ref), Kind: TooWide,
			Text: pc.Block.someText(), Over: pc.Block.W - g.width})
	}
	page.place(pc.Block, g.paper.Left, y)
}

// lines adds the lines of a piece to the outline: that of the sheet with the first piece of
// it, and its own.
func (g run) lines(p *Pages, i int, pc Piece, y Mm) {
	sh := g.of(i)
	at := Entry{Sheet: sh.Name, Page: len(p.Frames), Y: y}
	if slices.Contains(g.starts, i) {
		e := at
		e.Title = sh.Title
		if !sh.Follows || g.sheets[0].Landscape {
			e.Y = 0
		}
		p.Outline = append(p.Outline, e)
	}
	if pc.Title == "" {
		return
	}
	at.Title, at.Level = pc.Title, max(pc.Level, 1)
	if g.sheets[0].Landscape {
		at.Y = 0 // a height of the turned sheet is no height of the page
	}
	p.Outline = append(p.Outline, at)
}

// edge places a head or foot, which must not be higher than it was measured nor
// wider than the room.
func (g run) edge(p *Pages, page *Block, b Block, h, y Mm) {
	if over := b.H - h; over > slack {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), g.sheets[0].Ref), Kind: TooHigh, Text: b.someText(), Over: over})
	}
	if over := b.W - g.width; over > slack {
		p.Misfits = append(p.Misfits, Misfit{Ref: refOr(b.someRef(), g.sheets[0].Ref), Kind: TooWide, Text: b.someText(), Over: over})
	}
	page.place(b, g.paper.Left, y)
}

// maxPasses bounds Settle. The first pass knows no page, the second knows them
// all; a third is needed when the numbers themselves moved a line.
const maxPasses = 6
