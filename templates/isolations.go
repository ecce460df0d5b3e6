package templates

import (
	"strconv"

	"matchmark/layout"
)

// isolations sets the list of points where the machine is cut off: what is
// locked, how it was proved, by whom, and who unlocked it.
func isolations(c *composer) []layout.Piece {
	if len(c.job.Isolations) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(col(w.Common.Number, 9), col(w.Isolations.Point, 0), col(w.Isolations.ProvedBy, 36), col(w.Isolations.LockNumber, 24), col(w.Isolations.LockedBy, 30), col(w.Isolations.UnlockedBy, 30))
	var rows []layout.Row
	for _, x := range c.job.Isolations {
		point := layout.Above(0.5, g.text(1, layout.Strong, x.Point, x.At), g.text(1, layout.Sub, x.Energy+" · "+x.State, x.At))
		proved := layout.Above(layout.GapY, g.text(2, layout.Sub, x.Proved, x.At), c.WideBox(layout.RoleInitials, g.table.Room(2), 1, w.Common.Initials, x.At))
		var on, off string
		if x.LockedAt != nil {
			on = w.Isolations.LockedAt.With(c.stepRef(x.LockedAt))
		}
		if x.UnlockedAt != nil {
			off = w.Isolations.UnlockedAt.With(c.stepRef(x.UnlockedAt))
		}
		row := g.row(x.At, g.text(0, layout.Strong, strconv.Itoa(x.No), x.At), point, proved, layout.Block{},
			g.text(4, layout.Caption, on, x.At), g.text(5, layout.Caption, off, x.At))
		row.Anchor = "isolation " + x.Key
		rows = append(rows, row)
	}
	return c.listSheet(w.Isolations.Rule, g, append(rows, g.blank(spareRows)...))
}

// spareRows is how many empty rows a list has for what is found on the day.
const spareRows = 4
