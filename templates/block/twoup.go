package block

import (
	"matchmark/layout"
)

// TwoUp makes a table over half the width, for rows of short texts: Pairs sets two of
// its rows beside each other.
func (c *Composer) TwoUp(cols ...Column) Grid {
	half := *c
	half.Span = c.Span / 2
	g := half.gridPadded(0.6, cols...)
	g.c = c
	return g
}

// Pairs sets the rows of a table of half the width in two columns, to be read down the
// first and then down the second.
func (g Grid) Pairs(rows []layout.Row) (Grid, []layout.Row) {
	n := len(g.Table.Columns)
	both := g
	both.Table.Columns = append(append([]layout.Column{}, g.Table.Columns...), g.Table.Columns...)
	half := (len(rows) + 1) / 2
	var out []layout.Row
	for i := range half {
		pair := rows[i]
		cells := make([]layout.Block, 2*n)
		copy(cells, pair.Cells)
		if right := i + half; right < len(rows) {
			copy(cells[n:], rows[right].Cells)
		}
		pair.Cells = cells
		out = append(out, pair)
	}
	return both, out
}

// Across sets the rows of a table of half the width in two columns, to be read along the
// rows: what belongs together stands beside each other.
func (g Grid) Across(rows []layout.Row) (Grid, []layout.Row) {
	n := len(g.Table.Columns)
	both := g
	both.Table.Columns = append(append([]layout.Column{}, g.Table.Columns...), g.Table.Columns...)
	var out []layout.Row
	for i, r := range rows {
		if i%2 == 0 {
			cells := make([]layout.Block, 2*n)
			copy(cells, r.Cells)
			r.Cells = cells
			out = append(out, r)
			continue
		}
		copy(out[len(out)-1].Cells[n:], r.Cells)
	}
	return both, out
}
