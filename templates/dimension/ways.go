package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// A way is one of the ways to set a content.
type way struct {
	limitInHead bool // the limit in the head, or before the boxes
	stacked     bool // OK and not OK below each other
	cols        int  // columns of a list of boxes, or of a table turned on its side
	before      bool // the names of boxes before them, or above
	markAbove   bool // the mark of each like place above its boxes, or before them
}

// bind is how much height a way must save before the limit leaves its place before the
// boxes, where a reader looks for it.
const bind layout.Mm = 1.5

// bindOf is what a way must save for its limit in the head.
func bindOf(w way) layout.Mm {
	if w.limitInHead {
		return bind
	}
	return 0
}

// leastRows is what rows have of height at the least: the box for initials stands in one of
// them, and so does the tallest of the boxes. A way whose head leaves no more than that below the
// best so far need not be measured. Lists of like places are no lower in less width than in more.
func (k content) leastRows(w way, width layout.Mm) layout.Mm {
	verdict := k.verdict(k.entries[0], w)
	least := max(verdict[len(verdict)-1].H, k.tallestBox(w, width))
	if len(k.entries) > 1 {
		for _, known := range k.tried.rows[w] {
			if known.width > width {
				least = max(least, known.h)
			}
		}
	}
	return least
}

// tallestBox is the height of the tallest of the boxes; of like places it is not looked for.
func (k content) tallestBox(w way, width layout.Mm) layout.Mm {
	tallest := layout.Mm(0)
	if len(k.entries) == 1 {
		for _, b := range k.boxes(k.entries[0], w, width) {
			tallest = max(tallest, b.H)
		}
	}
	return tallest
}

// Many is how many dimensions a job may have before its pack takes too long to set: then
// two ways are tried, and the others only where those do not fit.
const Many = 600

// ways are all ways that are worth a try.
func (k content) ways() []way {
	cols, above := 1, []bool{false}
	if e := k.entries[0]; len(k.tables(e)) > 0 {
		cols = len(k.tables(e))
	} else if e.d.Positions.Kind == job.Grid {
		cols = 5
	}
	if len(k.entries) > 1 {
		above = []bool{false, true}
	}
	stacks := []bool{false}
	if e := k.entries[0]; len(verdictList(k.Composer, e.d, e.sides, k.back)) > 1 {
		stacks = []bool{false, true}
	}
	names := []bool{false}
	if e := k.entries[0]; len(k.Job.Dims) <= Many && e.d.Positions.Kind == job.Single && (e.d.Box.Form == reading.Digits || e.d.Box.Form == reading.Fraction) {
		names = []bool{false, true}
	}
	var out []way
	byHand := len(k.entries) > 1 && byHand(k.d(), k.entries[0].sides)
	for _, limitInHead := range []bool{false, true} {
		if byHand && !limitInHead {
			continue // it stands beside the results as well
		}
		for _, stacked := range stacks {
			for n := range cols {
				for _, a := range above {
					for _, before := range names {
						if stacked && before {
							continue // beside a tall verdict it saves nothing
						}
						out = append(out, way{limitInHead, stacked, n, before, a})
					}
				}
			}
		}
	}
	return out
}

// besideBoxes is the head with tall boxes below it, and limit and verdict beside those.
func (k content) besideBoxes(w way, width layout.Mm) sized {
	rows := k.asideOf(w, width)
	if rows.empty {
		return rows
	}
	return above(headRoom, k.head(w, width), rows)
}

// asideOf has limit and verdict in the room that tall boxes leave beside them; nothing
// where there is none.
func (k content) asideOf(w way, width layout.Mm) sized {
	if len(k.entries) > 1 {
		return sized{empty: true}
	}
	e := k.entries[0]
	boxes := k.boxes(e, w, width)
	aside := width - boxes[0].W - layout.GapX
	if boxes[0].H <= lowBoxes || aside < leastReason {
		return sized{empty: true}
	}
	column := k.flow(aside, k.limit(w, aside), boxes[1:], k.verdict(e, w))
	return above(layout.GapY, beside(layout.GapX, ready(&boxes[0]), column), k.warm(e, width))
}

// headBeside has head and verdict beside tall boxes that leave room for them.
func (k content) headBeside(w way, width layout.Mm) sized {
	const leastAside = 60 // for head and verdict together
	e := k.entries[0]
	boxes := k.boxes(e, w, width)
	aside := width - boxes[0].W - layout.GapX
	if len(k.entries) > 1 || boxes[0].H <= lowBoxes || aside < leastAside {
		return sized{empty: true}
	}
	column := k.flow(aside, k.limit(w, aside), boxes[1:], k.verdict(e, w))
	return beside(layout.GapX, ready(&boxes[0]), above(layout.GapY, k.head(w, aside), column, k.warm(e, aside)))
}

// underHead has the head over the whole width, and below it the picture with the boxes to
// its right.
func (k content) underHead(w way, pic sized, full, room layout.Mm) sized {
	rows := k.rows(w, room)
	if b := k.asideOf(w, room); !b.empty && b.h < rows.h {
		rows = b
	}
	return above(headRoom, k.head(w, full), beside(block.CellPad, pic, rows))
}

// underPicture has the verdict below the picture.
func (k content) underPicture(s *search, w way, pic sized, width layout.Mm) sized {
	const gap = 3 // with the room beside the initials that of two boxes
	width -= gap - block.CellPad
	if len(k.entries) > 1 || !s.may(headRoom+k.tallestBox(w, width)) {
		return sized{empty: true}
	}
	e := k.entries[0]
	head, limit, boxes, warm := k.head(w, width), k.limit(w, width), k.boxes(e, w, width), k.warm(e, width)
	body := sized{h: high(headRoom, head, flowSize(width, limit, boxes))}
	if !s.may(high(layout.GapY, body, warm)) {
		return sized{empty: true}
	}
	left := above(layout.GapY, pic, k.verdictIn(e, w, pic.w))
	if !left.w.Fits(pic.w) {
		return sized{empty: true}
	}
	narrow := left.make
	left.w, left.make = pic.w, func() layout.Block {
		b := narrow()
		b.W = pic.w
		return b
	}
	body = above(layout.GapY, above(headRoom, head, flowRow(width, limit, boxes)), warm)
	return beside(gap, left, body)
}
