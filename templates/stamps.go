package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/templates/block"
)

// stamps sets the list of what is struck into metal tags, or etched into parts that go
// through the wash, where paper does not last: asked for by name, no sheet of every pack.
func stamps(c *composer) []layout.Piece {
	if !c.stamping {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Common.Number, 9), block.Col(w.Stamps.Strike, 58), block.Col(w.Stamps.Signs, 14), block.Col(w.Common.Contents, 0), block.Col(w.Stamps.Struck, 20), block.Col(w.Stamps.ReadBack, 24))
	var rows []layout.Row
	for _, t := range c.Job.Tags {
		no, name := "", w.Tag.Spare
		if !t.Spare {
			no, name = strconv.Itoa(t.N), c.tagName(t)
		}
		text := t.Stamp()
		st := layout.Strong.With(layout.Mono)
		strike := c.Para(g.Table.Room(1), []layout.Run{layout.T(st, c.Breakable(st, g.Table.Room(1), text))}, layout.ParaOpts{Ref: t.At})
		rows = append(rows, g.Row(t.At, g.Text(0, layout.Sub, no, t.At), strike, g.Text(2, layout.Body, strconv.Itoa(signs(text)), t.At), g.Text(3, layout.Sub, name, t.At)))
	}
	return c.ListSheet(w.Stamps.Rule, g, rows)
}

// signs counts the letters and figures of a text, which are struck one by one.
func signs(text string) (n int) {
	for _, r := range text {
		if r != ' ' {
			n++
		}
	}
	return n
}
