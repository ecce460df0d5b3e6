package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/templates/block"
)

// isolations sets the list of points where the machine is cut off: what is
// locked, how it was proved, by whom, and who unlocked it.
func isolations(c *composer) []layout.Piece {
	if len(c.Job.Isolations) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Common.Number, 9), block.Col(w.Isolations.Point, 0), block.Col(w.Isolations.ProvedBy, 36), block.Col(w.Isolations.LockNumber, 24), block.Col(w.Isolations.LockedBy, 30), block.Col(w.Isolations.UnlockedBy, 30))
	var rows []layout.Row
	for _, x := range c.Job.Isolations {
		point := layout.Above(0.5, g.Text(1, layout.Strong, x.Point, x.At), g.Text(1, layout.Sub, x.Energy+" · "+x.State, x.At))
		proved := layout.Above(layout.GapY, g.Text(2, layout.Sub, x.Proved, x.At), c.WideBox(layout.RoleInitials, g.Table.Room(2), 1, w.Common.Initials, x.At))
		var on, off string
		if x.LockedAt != nil {
			on = w.Isolations.LockedAt.With(c.StepRef(x.LockedAt))
		}
		if x.UnlockedAt != nil {
			off = w.Isolations.UnlockedAt.With(c.StepRef(x.UnlockedAt))
		}
		row := g.Row(x.At, g.Text(0, layout.Strong, strconv.Itoa(x.No), x.At), point, proved, layout.Block{},
			g.Text(4, layout.Caption, on, x.At), g.Text(5, layout.Caption, off, x.At))
		row.Anchor = "isolation " + x.Key
		rows = append(rows, row)
	}
	return c.ListSheet(w.Isolations.Rule, g, append(rows, g.Blank(spareRows)...))
}

// spareRows is how many empty rows a list has for what is found on the day.
const spareRows = 4
