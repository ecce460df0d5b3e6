package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
)

// isolations sets the list of points where the machine is cut off: what is
// locked, how it was proved, by whom, and who unlocked it.
func isolations(c *composer) []layout.Piece {
	if len(c.job.Isolations) == 0 {
		return nil
	}
	w := c.w
	number := layout.Mm(9)
	for _, x := range c.job.Isolations {
		if len(x.Periods) > 1 {
			number = 12 // room for: again
		}
	}
	g := c.grid(column{w.number, number}, column{w.point, 0}, column{w.provedBy, 36}, column{w.lockNumber, 24}, column{w.lockedBy, 30}, column{w.unlockedBy, 30})
	var rows []layout.Row
	for _, x := range c.job.Isolations {
		point := layout.Above(0.5, g.text(1, layout.Strong, x.Point, x.At), g.text(1, layout.Sub, x.Energy+" · "+x.State, x.At))
		proved := layout.Above(layout.GapY, g.text(2, layout.Sub, x.Proved, x.At), c.WideBox(layout.RoleInitials, g.t.Room(2), 1, w.initials, x.At))
		for i, p := range periods(x) {
			on, off := c.lockTimes(p)
			no := strconv.Itoa(x.No)
			if i > 0 {
				no = fill(w.lockNoAgain, no)
			}
			row := g.row(x.At, g.text(0, layout.Strong, no, x.At), point, proved, layout.Block{},
				g.text(4, layout.Caption, on, x.At), g.text(5, layout.Caption, off, x.At))
			if i == 0 {
				row.Anchor = "isolation " + x.Key
			}
			rows = append(rows, row)
		}
	}
	return c.listSheet(w.isolationsRule, g, append(rows, g.blank(spareRows)...))
}

// periods are the times that an isolation is locked, one where no step locks it.
func periods(x *job.Isolation) []job.LockPeriod {
	if len(x.Periods) == 0 {
		return []job.LockPeriod{{}}
	}
	return x.Periods
}

// lockTimes says at which steps a lock goes on and comes off.
func (c *composer) lockTimes(p job.LockPeriod) (on, off string) {
	if p.Locked != nil {
		sentence := c.w.lockedAt
		if p.Again {
			sentence = c.w.lockedAgainAt
		}
		on = fill(sentence, c.stepRef(p.Locked))
	}
	if p.Unlocked != nil {
		sentence := c.w.unlockedAt
		if p.ForNow {
			sentence = c.w.unlockedNowAt
		}
		off = fill(sentence, c.stepRef(p.Unlocked))
	}
	return on, off
}

// spareRows is how many empty rows a list has for what is found on the day.
const spareRows = 4
