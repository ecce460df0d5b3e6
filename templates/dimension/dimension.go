package dimension

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// An entry is one dimension of a block with its boxes; of like places a block has
// several.
type entry struct {
	d     *job.Dim
	sides []Side
}

// content is what stands in the frame of a dimension, or of one at several like places:
// what it is and how it is read, once, then the limit, the boxes and the verdict.
type content struct {
	*block.Composer
	entries []entry
	back    bool
	note    string
	reason  reason // the box for why a reading was not taken, if it has that
	tried   tried
	whole   *layout.Block // what stands in its frame, where that has been set
	half    bool          // one of two frames beside each other: fewer ways are tried
	// limitTold says that the limit of a sum stands in the head, not behind each result.
	limitTold bool
	// before says that the names of boxes stand before them.
	before bool
}

// d is the dimension that the head tells.
func (k content) d() *job.Dim { return k.entries[0].d }

// dims are the dimensions of a content.
func (k content) dims() []*job.Dim {
	var out []*job.Dim
	for _, e := range k.entries {
		out = append(out, e.d)
	}
	return out
}

// inner is what stands in the frame of a content, set in the way that takes the least
// height: with its picture beside all, beside the head alone, or with the verdict below it.
func (k content) inner() layout.Block {
	defer k.share()()
	full := k.Span - 2*block.CellPad
	key, moulded := k.mouldKey()
	if m, known := k.Chosen(key); moulded && known {
		if b := k.cast(m.(mould), full); !b.Empty() {
			return b
		}
	}
	var best *search
	lowest, of := layout.Mm(0), 0
	for i, pic := range k.pictures() {
		s := k.around(pic, full)
		h := s.lowest
		if i > 0 {
			h += plain
		}
		if !s.least.empty && (best == nil || h < lowest-0.5) {
			best, lowest, of = s, h, i
		}
	}
	if best == nil {
		return layout.Block{}
	}
	if moulded && best.least.misfits == 0 {
		k.Choose(key, mould{of, best.found, best.least.w, best.least.h})
	}
	return best.least.make()
}

// plain is how much height the small picture must save before it takes the place of the
// one with names.
const plain layout.Mm = 1

// pictures are the pictures of a content, that with names first; an empty one where there
// is none.
func (k content) pictures() []layout.Block {
	d := k.d()
	if !picture.Drawn(d.Kind) || d.From.Part == nil && d.Of.Part == nil && byHand(d, k.entries[0].sides) {
		return []layout.Block{{}}
	}
	all := once(k.tried.pictures, true, func() []layout.Block { return pictures(k.Composer, d) })
	if k.half {
		all = all[len(all)-1:]
	}
	return all
}

// pictures are that with names, and the small one of a dimension whose head has the names.
func pictures(c *block.Composer, d *job.Dim) []layout.Block {
	out := []layout.Block{picture.OfDimension(c.Setter, d)}
	if faces(c.W, d) != "" {
		out = append(out, picture.Small(c.Setter, d))
	}
	return out
}

// rows are the rows of boxes: of one dimension from its limit to its initials, of like
// places a row each behind its mark.
func (k content) rows(w way, width layout.Mm) sized {
	for _, known := range k.tried.rows[w] {
		if known.width == width {
			return known.sized
		}
	}
	rows := k.setRows(w, width)
	k.tried.rows[w] = append(k.tried.rows[w], inWidth{width, rows})
	return rows
}

func (k content) setRows(w way, width layout.Mm) sized {
	var out []sized
	if len(k.entries) == 1 {
		e := k.entries[0]
		limit, boxes := k.foundFirst(e, k.limit(w, width), k.boxes(e, w, width), w.before, width)
		return above(layout.GapY, k.flow(width, limit, boxes, k.verdict(e, w)), k.warm(e, width))
	}
	if limit := k.limit(w, width); len(limit) > 0 {
		out = append(out, flowRow(width, limit))
	}
	w.limitInHead = false // it changes nothing below the limit
	return above(layout.GapY, append(out, once(k.tried.lists, rowsKey{w, width}, func() []sized { return k.lists(w, width) })...)...)
}

// lists are the boxes of like places: in rows or in a table, behind the packs that were
// tried before.
func (k content) lists(w way, width layout.Mm) []sized {
	var out []sized
	if d := k.d(); k.back && d.Shims != nil && len(d.Shims.Rows) > 0 {
		out = append(out, done(k.packTable(width)))
	}
	packs := once(k.tried.packs, placesKey{w.stacked, width}, func() sized { return k.packs(w, width) })
	table := once(k.tried.places, placesKey{w.stacked, width}, func() sized { return k.placesTable(w, width) })
	most := tallest * 1000
	if !packs.empty {
		most = packs.h
	} else if !table.empty {
		most = table.h
	}
	list := k.placeList(w, width, most+0.6)
	if !packs.empty && (list.empty || packs.h < list.h-0.5) {
		list = packs
	}
	if !table.empty && (list.empty || table.h < list.h-0.5) {
		list = table
	}
	return append(out, list)
}

// placeList has the rows of like places below each other, each behind its mark; nothing where
// that is higher than most.
func (k content) placeList(w way, width, most layout.Mm) sized {
	var out []sized
	h := layout.Mm(0)
	label := layout.Mm(0)
	for _, e := range k.entries {
		label = max(label, k.Width(layout.SubBold, e.d.Mark))
	}
	for _, e := range k.entries {
		name := k.Line(label, []layout.Run{layout.T(layout.SubBold, e.d.Mark)}, layout.ParaOpts{Ref: e.d.At})
		rest := width - label - 2
		if w.markAbove {
			rest = width
		}
		row := k.entry(e, w, rest)
		switch {
		case w.markAbove:
			row = above(0.3, done(name), row)
		case row.h > lowBoxes:
			row = beside(2, done(name.Pad(6, 0, 0, 0)), row)
		default:
			row = bottom(2, done(name.Pad(0, 0, 2.5, 0)), row)
		}
		if h += row.h; h > most {
			return sized{empty: true}
		}
		out = append(out, row)
	}
	return above(layout.GapY, append(out, k.lastRow(nil, width))...)
}

// entry is one of several like places.
func (k content) entry(e entry, w way, width layout.Mm) sized {
	if byHand(e.d, e.sides) {
		return k.handEntry(e, w, width)
	}
	limit, boxes := k.foundFirst(e, k.limitOf(e.d, w.before).boxesIn(width), k.boxes(e, w, width), w.before, width)
	row := k.flow(width, limit, boxes, k.verdict(e, w))
	if rest := width - boxes[0].W - layout.GapX; boxes[0].H > lowBoxes && rest > 0 {
		aside := k.flow(rest, limit, boxes[1:], k.verdict(e, w))
		if one := beside(layout.GapX, ready(&boxes[0]), aside); aside.w.Fits(rest) && one.h < row.h-0.5 {
			row = one
		}
	}
	return above(layout.GapY, row, k.warm(e, width))
}

// warm is the line for the temperature of a part that is measured warm.
func (k content) warm(e entry, width layout.Mm) sized {
	return done(warmLine(k.Composer, e.d, writtenSide(e.sides), width))
}

// boxes are the write-in boxes of one dimension, tall ones in one piece, with those of
// what is worked out from them.
func (k content) boxes(e entry, w way, width layout.Mm) []layout.Block {
	switch tables := k.tables(e); {
	case e.d.Positions.Kind == job.Single:
		// They are the same in all widths in which each has its unit behind it, and in all others.
		if all := k.boxesIn(e, w, anyWidth); block.RowWidth(all[:len(e.sides)]) <= width {
			return all
		}
		width = 0
	case len(tables) > 0:
		w.cols, width = tableIn(tables, w.cols, width), anyWidth
	case e.d.Positions.Kind == job.Clock || e.d.Positions.Kind == job.Row:
		w.cols, width = 0, anyWidth
	}
	return k.boxesIn(e, w, width)
}

// anyWidth is wider than all paper.
const anyWidth layout.Mm = 1e6

func (k content) boxesIn(e entry, w way, width layout.Mm) []layout.Block {
	return listOnce(k.tried.boxes, boxesKey{e.d, w.cols, w.before, width}, func() []layout.Block {
		return append(boxItems(k.Composer, e.d, e.sides, k.tables(e), w, width), extraItems(k.Composer, e.d, e.sides)...)
	})
}

// tables are the ways to set boxes at several places: those of several sides, and those
// that are too many for a row.
func (k content) tables(e entry) []layout.Block {
	if kind := e.d.Positions.Kind; kind == job.Single || kind == job.Log || len(e.sides) < 2 && kind != job.Grid {
		return nil
	}
	if f := e.d.Box.Form; len(e.sides) < 2 && (f == reading.Line || f == reading.Grid) {
		return nil
	}
	return listOnce(k.tried.tables, e.d, func() []layout.Block { return sideTables(k.Composer, e.d, e.sides) })
}

// flow sets the pieces of lists in rows, those of the verdict last; the box for the reason, if
// there is one, takes what its row leaves, before the initials.
func (k content) flow(width layout.Mm, lists ...[]layout.Block) sized {
	verdict := lists[len(lists)-1]
	if k.reason == (reason{}) || len(verdict) == 0 || len(k.entries) > 1 {
		return flowRow(width, lists...)
	}
	initials := len(verdict) - 1
	return k.reasoned(width, append(slices.Clone(lists[:len(lists)-1]), verdict[:initials]), verdict[initials:])
}

// verdict are the pieces that say how a reading came out, ending with the initials.
func (k content) verdict(e entry, w way) []layout.Block {
	return listOnce(k.tried.verdicts, verdictKey{e.d, w.stacked}, func() []layout.Block {
		return verdictItems(k.Composer, e.d, e.sides, k.back, w.stacked)
	})
}

// verdictIn are the same in the rows of a width, of a dimension that has no like places.
func (k content) verdictIn(e entry, w way, width layout.Mm) sized {
	return once(k.tried.judged, headKey{w.stacked, width}, func() sized { return k.flow(width, k.verdict(e, w)) })
}

// padded is a content with the room to its frame.
func padded(c *block.Composer, content layout.Block) layout.Block {
	return content.Fill(c.Span-2*block.CellPad, content.H, 0, 0).Pad(0.8, block.CellPad, 1.1, block.CellPad)
}

// lowBoxes is the height of one line of boxes with their captions.
const lowBoxes layout.Mm = 16

// headRoom is the room below the head of a dimension, above the names of its boxes.
const headRoom layout.Mm = 1.1
