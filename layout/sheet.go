package layout

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
	// Follows lets the sheet go on where the one before it ends, on the same page, with
	// that one's head and foot on it. The first sheet does not follow.
	Follows bool
	// Steady says that few pages of the sheet are to begin within a group or block: one in
	// five, though it takes more pages. Where more than 40 (mostCounted) would begin so in what
	// is broken together, or no way has so few, they stay as they are. Of as many pages few
	// begin with it.
	Steady bool
	Ref    Ref

	measured     bool // its head and foot are
	headH, footH Mm
}

// measure makes the head and foot of a sheet once, for their heights.
func (sh *Sheet) measure() {
	if sh.measured || len(sh.Pieces) == 0 {
		return
	}
	sh.measured = true
	if sh.Head != nil {
		sh.headH = sh.Head(widestPage, widestPage).H
	}
	if sh.Foot != nil {
		sh.footH = sh.Foot(widestPage, widestPage).H
	}
}
