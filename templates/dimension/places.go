package dimension

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// A placeRow is one row of a table of like places.
type placeRow struct {
	label layout.Block
	boxes []layout.Block
	cells layout.Block   // the boxes in their columns
	tail  []layout.Block // what stands behind the boxes of the last row of a place
	entry *entry         // the place that ends with the row, or nil
}

// placesTable has the boxes of like places in one table under the heads of their columns,
// in the way that takes the least height; nothing where they are not read alike.
func (k content) placesTable(w way, width layout.Mm) sized {
	least := sized{empty: true}
	if !k.inTable() {
		return least
	}
	for _, how := range k.placesWays() {
		rows := how
		rows.aside = false // which hangs on the width alone
		g := once(k.tried.placed, placedKey{w.stacked, rows, k.Span}, func() *placeGrid { return k.placeGrid(w, rows) })
		if !least.empty && g.least > least.h-0.49 {
			continue
		}
		if b := k.placesIn(g, how, width); !b.empty && (least.empty || b.h < least.h-0.5) {
			least = b
		}
	}
	return least
}

// inTable reports whether like places have boxes that go into one table: low ones at the
// same positions.
func (k content) inTable() bool {
	first := k.entries[0]
	if len(k.entries) < 2 || byHand(first.d, first.sides) || first.d.Positions.Kind == job.Log {
		return false
	}
	if f := first.d.Box.Form; f == reading.Line || f == reading.Grid {
		return false
	}
	names := PositionNames(first.d.Positions)
	for _, e := range k.entries {
		if e.d.Box != first.d.Box || len(e.sides) != len(first.sides) || !slices.Equal(names, PositionNames(e.d.Positions)) {
			return false
		}
	}
	return true
}

// A placeGrid is a table of like places but for what stands behind the boxes, which hangs on
// the width.
type placeGrid struct {
	rows   []placeRow
	widths []layout.Mm // of the columns
	head   layout.Block
	labelW layout.Mm
	least  layout.Mm // the height of its head and rows alone
	set    bool      // the boxes stand in their columns
}

func (k content) placeGrid(w way, how placesWay) *placeGrid {
	rows := how
	rows.whole = false // which is of the heads alone
	g := &placeGrid{}
	g.rows = slices.Clone(once(k.tried.placeRows, placedKey{w.stacked, rows, k.Span}, func() (out []placeRow) {
		for i := range k.entries {
			out = append(out, k.placeRows(&k.entries[i], w, how)...)
		}
		return out
	}))
	cols := k.placeCols(how)
	widths := make([]layout.Mm, len(cols))
	for _, r := range g.rows {
		g.labelW = max(g.labelW, r.label.W)
		for i, b := range r.boxes {
			widths[i] = max(widths[i], b.W)
		}
	}
	if how.whole {
		for i, name := range cols {
			widths[i] = max(widths[i], k.Width(layout.Caption, name)+0.1)
		}
	}
	g.head = layout.Bottom(layout.GapX, heads(k.Composer, k.d(), cols, widths)...)
	g.widths, g.least = widths, g.head.H
	for i := range g.rows {
		r := &g.rows[i]
		r.label.W = g.labelW
		high := r.label.H
		for _, b := range r.boxes {
			high = max(high, b.H)
		}
		if g.least += high; i > 0 {
			g.least += layout.GapY
		}
	}
	return g
}

// inColumns sets the boxes in their columns, once: most tables are as high without them as one
// that was tried before.
func (g *placeGrid) inColumns() {
	for i := range g.rows {
		if !g.set {
			g.rows[i].cells = cells(g.rows[i].boxes, g.widths)
		}
	}
	g.set = true
}

// placesIn sets a table of like places. What stands behind the boxes of a place and does
// not go into the width stands below the table, behind the mark of the place.
func (k content) placesIn(g *placeGrid, how placesWay, width layout.Mm) sized {
	rows, labelW := g.rows, g.labelW
	room := width - labelW - labelGap - g.head.W
	if room < 0 {
		return sized{empty: true}
	}
	g.inColumns()
	if how.aside {
		return k.placesAside(g, width, room-layout.GapX)
	}
	tails := tailWidths(rows, room)
	var lines, below []sized
	for _, r := range rows {
		line := []layout.Block{r.cells}
		n := min(len(tails), len(r.tail))
		for i, b := range r.tail[:n] {
			line = append(line, b.Fill(tails[i], b.H, 0, 0))
		}
		lines = append(lines, done(layout.Middle(labelGap, r.label, layout.Bottom(layout.GapX, line...))))
		if r.entry == nil {
			continue
		}
		if rest := r.tail[n:]; len(rest) > 0 {
			mark := textLine(k.Composer, r.entry.d, layout.SubBold, r.entry.d.Mark).Pad(0, 0, 2.5, 0)
			below = append(below, done(layout.Bottom(labelGap, mark, block.FlowRow(rest, width-mark.W-labelGap))))
		}
		below = append(below, k.warm(*r.entry, width))
	}
	table := above(headGap, done(g.head.At(labelW+labelGap, 0)), above(layout.GapY, lines...))
	var items []layout.Block
	for _, b := range below {
		if !b.empty {
			items = append(items, b.make())
		}
	}
	return above(layout.GapY, table, k.lastRow(items, width))
}

// placesAside sets a table of like places with what stands behind the boxes of a place beside all
// its rows, in what they leave of the width.
func (k content) placesAside(g *placeGrid, width, room layout.Mm) sized {
	var places, rows []sized
	var items []layout.Block
	for _, r := range g.rows {
		rows = append(rows, done(layout.Middle(labelGap, r.label, r.cells)))
		if r.entry == nil {
			continue
		}
		tail := flowRow(room, r.tail)
		if !tail.w.Fits(room) {
			return sized{empty: true}
		}
		places = append(places, beside(layout.GapX, above(layout.GapY, rows...), tail))
		if warm := k.warm(*r.entry, width); !warm.empty {
			items = append(items, warm.make())
		}
		rows = nil
	}
	table := above(headGap, done(g.head.At(g.labelW+labelGap, 0)), above(layout.GapY, places...))
	return above(layout.GapY, table, k.lastRow(items, width))
}

// tailWidths are the widths of the pieces behind the boxes that go into the room: the first
// ones, one below the other in all places.
func tailWidths(rows []placeRow, room layout.Mm) []layout.Mm {
	var out []layout.Mm
	for i := 0; ; i++ {
		w := layout.Mm(0)
		for _, r := range rows {
			if i < len(r.tail) {
				w = max(w, r.tail[i].W)
			}
		}
		if room -= w + layout.GapX; w == 0 || room < -0.01 {
			return out
		}
		out = append(out, w)
	}
}
