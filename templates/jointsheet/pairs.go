package jointsheet

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A joint of one fastener at many places, tightened once, has two places in a row of its
// table: how tight it becomes stands above it.

// pairTable is that table; empty for another joint.
func pairTable(c *block.Composer, g []*job.Joint) layout.Block {
	j := g[0]
	where := c.Span/2 - tickCol - 3*leastDid
	if len(g) <= 2 || j.Count() > 1 || len(roundsOf(j)) > 1 || j.Spec.BreaksLoose != nil || len(finalTorque(c, j)) == 0 || where < whereCol {
		return layout.Block{}
	}
	t := layout.Table{PadX: 1, PadY: tickPad, Grid: true, MinH: tickRow}
	column := func(width layout.Mm, head layout.Block) {
		t.Columns = append(t.Columns, layout.Column{Width: width, Head: head})
	}
	caption := func(width layout.Mm, text string) layout.Block {
		return c.Para(width-2*t.PadX, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: j.At})
	}
	w := c.W.Tightening
	column(where, caption(where, w.WhereColumn))
	column(tickCol, c.Words(layout.Strong, strconv.Itoa(1)).Center(tickCol-2*t.PadX))
	for _, text := range []string{toolHead(c, j), w.FinalBy, w.CheckedBy} {
		column(leastDid, caption(leastDid, text))
	}
	var rows []layout.Row
	for _, j := range g {
		mark := []layout.Run{{Text: j.Mark, Style: layout.SubBold, Deco: layout.Boxed}}
		place := layout.Above(0.3, c.Para(t.Room(0), mark, layout.ParaOpts{Ref: j.At}), caption(where, j.Place.Name))
		rows = append(rows, layout.Row{Cells: []layout.Block{place, c.Tick(layout.Sub, "", j.At).Center(tickCol - 2*t.PadX)}, Middle: true, Ref: j.At})
	}
	both, rows := block.Grid{Table: t}.Across(rows)
	return both.Table.Block(rows)
}
