package layout

import "strings"

// AnchorPages are the Anchors that Paginate would give, for a guess before all sheets are set;
// no page is made. What stands in a head or foot is left out.
func AnchorPages(paper Paper, sheets []Sheet) map[string]int {
	pages := map[string]int{}
	runs, _ := broken(paper, sheets, func(*run, int, Mm) {})
	number := 0
	for _, g := range runs {
		for _, s := range g.spans {
			number++
			for i := s.from; i < s.last(); i++ {
				firstOf(pages, s.block(g.pieces, i).Anchors(), number)
			}
		}
	}
	return pages
}

// Paged is Paginate for a pass over the pages that is only to find on which of them all stands:
// nothing is drawn, no head or foot is made, and what does not fit is not told.
func Paged(paper Paper, sheets []Sheet) *Pages {
	p := newPages()
	runs, _ := broken(paper, sheets, func(*run, int, Mm) {})
	for _, g := range runs {
		for _, s := range g.spans {
			var page Block
			parts, _ := g.flow(p, &page, s)
			firstOf(p.Anchors, page.Anchors(), len(p.Frames)+1)
			p.Frames = append(p.Frames, Frame{Sheet: parts[0].Sheet, Number: len(p.Frames) + 1, Parts: parts})
		}
	}
	p.Misfits = nil
	return p
}

func newPages() *Pages {
	return &Pages{Anchors: map[string]int{}, Boxes: map[string]map[string]int{}}
}

// count adds the boxes of a block to those of its sheet.
func (p *Pages) count(sheet string, b *Block) {
	boxes := p.Boxes[sheet]
	if boxes == nil {
		boxes = map[string]int{}
		p.Boxes[sheet] = boxes
	}
	b.ink.eachItem(0, 0, func(it *Item, _, _ Mm) {
		if strings.HasPrefix(it.Role, boxRoles) {
			boxes[it.Role]++
		}
	})
}

// firstOf notes the page of anchors that have none yet.
func firstOf(pages map[string]int, anchors []Anchor, number int) {
	for _, a := range anchors {
		if _, known := pages[a.Name]; !known {
			pages[a.Name] = number
		}
	}
}
