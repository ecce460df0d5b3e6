package layout

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
				firstOf(pages, s.block(g.pieces, i).Anchors, number)
			}
		}
	}
	return pages
}

// firstOf notes the page of anchors that have none yet.
func firstOf(pages map[string]int, anchors []Anchor, number int) {
	for _, a := range anchors {
		if _, known := pages[a.Name]; !known {
			pages[a.Name] = number
		}
	}
}
