package templates

import (
	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/units"
	"matchmark/templates/block"
)

// movesTable lists by how much the feet of each alignment are to be moved after the
// readings that came back.
func (c *composer) movesTable() []layout.Piece {
	w := c.W
	var out []layout.Piece
	for _, m := range c.Filled.Moves {
		title := m.Of.Mark + " " + m.Of.What + ", " + c.sideWord(m.When)
		if m.Verdict != nil {
			verdict := w.Filled.AlignOut
			if m.Verdict.In() {
				verdict = w.Filled.AlignIn
			}
			title += w.Common.Colon + verdict
		}
		gap := layout.Mm(1)
		if len(out) == 0 {
			out = append(out, layout.Piece{Block: c.Heading(w.Filled.MovesHead), Gap: 4, KeepNext: true})
		} else {
			gap = 3
		}
		out = append(out, layout.Piece{Block: c.Para(c.Span, []layout.Run{layout.T(layout.Strong, title)}, layout.ParaOpts{Ref: m.Of.At}), Gap: gap, KeepNext: true})
		if m.Why != "" {
			out = append(out, layout.Piece{Block: c.Para(c.Span, []layout.Run{layout.T(layout.Body, w.Filled.CannotMove.With(m.Why))}, layout.ParaOpts{Ref: m.Of.At}), Gap: 1})
			continue
		}
		out = append(out, c.feet(m)...)
		for _, check := range m.Checks {
			// Two steps, one at each end, are within what a dial can show.
			if check.Steps > 2 {
				text := c.W.Alignment.Dial[check.Dial] + w.Common.Colon + w.Filled.DoesNotClose.With(m.Of.Setup.Told(check.Sum.Abs()).Print())
				out = append(out, layout.Piece{Block: c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, text)}, layout.ParaOpts{Ref: m.Of.At}), Gap: 1})
			}
		}
	}
	return out
}

// feet is the table of one set of readings.
func (c *composer) feet(m filled.Moves) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(w.Filled.Foot, 0), block.Col(w.Filled.UpDown, 50), block.Col(w.Filled.Sideways, 70))
	g.Table.MinH = 6
	var rows []layout.Row
	for _, f := range m.Moves {
		move := func(n units.Number, more, less string) string {
			q := m.Of.Setup.Told(n)
			switch q.Number.Sign() {
			case 0:
				return w.Filled.Stays
			case 1:
				return more + " " + q.Print()
			}
			q.Number = q.Number.Abs()
			return less + " " + q.Print()
		}
		rows = append(rows, g.Row(m.Of.At, g.Text(0, layout.Body, f.Foot, m.Of.At),
			g.Text(1, layout.Strong, move(f.Up, w.Filled.Raise, w.Filled.Lower), m.Of.At), g.Text(2, layout.Strong, move(f.Right, w.Filled.ToRight, w.Filled.ToLeft), m.Of.At)))
	}
	out := g.Table.Pieces(rows)
	if len(out) > 0 {
		out[0].Gap = 1
	}
	return out
}
