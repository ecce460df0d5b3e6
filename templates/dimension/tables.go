package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// boxTable sets one row a position and one column a side, for putting back. The
// captions stand once, above the first row.
func boxTable(c *block.Composer, d *job.Dim, sides []Side) layout.Block {
	names := PositionNames(d.Positions)
	labelW := labelWidth(c, names)
	const gap = 2
	var head []layout.Block
	widths := make([]layout.Mm, len(sides))
	for i, s := range sides {
		caption := c.Words(layout.Caption, withUnit(c, d, s.caption))
		widths[i] = max(Box(c, d, s, "", false).W, caption.W)
		head = append(head, caption.Fill(widths[i], caption.H, 0, 0))
	}
	rows := []layout.Block{layout.Beside(layout.GapX, head...).At(labelW+gap, 0)}
	for i, n := range names {
		label := c.Line(labelW, []layout.Run{layout.T(layout.Sub, n)}, layout.ParaOpts{Ref: d.At})
		var row []layout.Block
		for k, s := range sides {
			b := Box(c, d, s.on(i), "", false)
			row = append(row, b.Fill(widths[k], b.H, 0, 0))
		}
		rows = append(rows, layout.Middle(gap, label, layout.Beside(layout.GapX, row...)))
	}
	return layout.Above(0.5, rows[0], layout.Above(layout.GapY, rows[1:]...))
}

// tables are other ways to set a table of sides than a row a position: turned on its
// side, and rows and columns of positions for each side beside each other.
func tables(c *block.Composer, d *job.Dim, sides []Side, n int) []layout.Block {
	p := d.Positions
	switch {
	case n == 1:
		return []layout.Block{boxTableTurned(c, d, sides)}
	case n == 4:
		return []layout.Block{boxPairs(c, d, sides)}
	case n == 2 && len(p.Rows) > 0 && len(p.Cols) > 0:
		return []layout.Block{sideGrids(c, d, sides, p.Rows, p.Cols, func(r, col int) int { return r*len(p.Cols) + col })}
	case n == 3 && len(p.Rows) > 0 && len(p.Cols) > 0:
		return []layout.Block{sideGrids(c, d, sides, p.Cols, p.Rows, func(col, r int) int { return r*len(p.Cols) + col })}
	}
	return nil
}

// sideGrids sets the grids of the sides beside each other, their rows on a level, what
// each side is above its grid.
func sideGrids(c *block.Composer, d *job.Dim, sides []Side, down, across []string, at func(down, across int) int) layout.Block {
	labelW := labelWidth(c, down)
	out := []layout.Block{layout.Space(labelW-3, 1)}
	for k, s := range sides {
		var rows []layout.Block
		for i, r := range down {
			var row []layout.Block
			for j, name := range across {
				if i > 0 {
					name = ""
				}
				row = append(row, Box(c, d, s.on(at(i, j)), name, false))
			}
			boxes := layout.Bottom(layout.GapX, row...)
			if k == 0 {
				label := c.Line(labelW, []layout.Run{layout.T(layout.Sub, r)}, layout.ParaOpts{Ref: d.At}).Pad(0, 0, 2.5, 0)
				boxes = layout.Overlay(boxes, label.At(-labelW-2, boxes.H-label.H))
			}
			rows = append(rows, boxes)
		}
		side := layout.Above(0.3, c.Words(layout.Caption, withUnit(c, d, s.caption)), layout.Above(layout.GapY, rows...))
		out = append(out, side)
	}
	return layout.Beside(layout.GapX, out...)
}

// sideNameW is the most that the name of a side takes before its row of boxes.
const sideNameW layout.Mm = 26

// boxTableTurned sets one row a side and one column a position.
func boxTableTurned(c *block.Composer, d *job.Dim, sides []Side) layout.Block {
	names := PositionNames(d.Positions)
	var rows []layout.Block
	for i, s := range sides {
		var row []layout.Block
		for k, n := range names {
			if i > 0 {
				n = ""
			}
			row = append(row, Box(c, d, s.on(k), n, false))
		}
		label := c.Para(sideNameW, []layout.Run{layout.T(layout.Caption, withUnit(c, d, s.caption))}, layout.ParaOpts{Ref: d.At})
		label.W = sideNameW
		rows = append(rows, layout.Bottom(2, label.Pad(0, 0, max((9-label.H)/2, 0), 0), layout.Bottom(layout.GapX, row...)))
	}
	return layout.Above(layout.GapY, rows...)
}

// boxPairs sets the positions in two columns, the first half down the left one, each with
// its name above its boxes.
func boxPairs(c *block.Composer, d *job.Dim, sides []Side) layout.Block {
	names := PositionNames(d.Positions)
	half := (len(names) + 1) / 2
	var columns []layout.Block
	for from := 0; from < len(names); from += half {
		var rows []layout.Block
		for i := from; i < min(from+half, len(names)); i++ {
			var row []layout.Block
			for k, s := range sides {
				caption := ""
				switch {
				case k == 0 && i == from:
					caption = withUnit(c, d, s.caption) + ", " + names[i]
				case k == 0:
					caption = names[i]
				case i == from:
					caption = withUnit(c, d, s.caption)
				}
				row = append(row, Box(c, d, s.on(i), caption, false))
			}
			rows = append(rows, layout.Bottom(layout.GapX, row...))
		}
		columns = append(columns, layout.Above(layout.GapY, rows...))
	}
	return layout.Beside(layout.GapX, columns...)
}
