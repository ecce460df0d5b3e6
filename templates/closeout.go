package templates

import (
	"slices"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// closeOut sets the sheet by which the pack is found complete: everything that it
// holds with its number as printed, to be counted, and who says so.
func closeOut(c *composer) []layout.Piece {
	w := c.W
	g := c.TwoUp(block.Col(w.CloseOut.What, 0), block.Col(w.CloseOut.Printed, 12.5), block.Col(w.CloseOut.Counted, 14.5), block.Col(w.Common.InitialsDate, 22))
	var rows []layout.Row
	for _, x := range c.tally() {
		rows = append(rows, g.Row(nil, g.Text(0, layout.Body, x.what, nil), g.Text(1, layout.Strong, x.printed, nil)))
	}
	if c.Job.Hours.Sign() > 0 {
		rows = append(rows, g.Row(nil, g.Text(0, layout.Body, w.CloseOut.Hours, nil), g.Text(1, layout.Strong, c.Job.Hours.Print(), nil)))
		rows = append(rows, g.Row(nil, g.Text(0, layout.Body, w.CloseOut.CrewHours, nil), g.Text(1, layout.Strong, c.Job.CrewHours.Print(), nil)))
	}
	out := append([]layout.Piece{c.RuleLine(w.CloseOut.Rule)}, c.twoTables(g, rows)...)
	out = append(out, c.deferred()...)
	return append(out, layout.Piece{Block: c.signers(w.CloseOut.Complete), Gap: 4})
}

// A counted thing is one line of the close-out sheet.
type counted struct{ what, printed string }

// tally is all that a pack has to have when it comes back, without the lines that
// this job has none of. What is on the pages is counted there, in the pass before.
func (c *composer) tally() []counted {
	j, w := c.Job, c.W
	var out []counted
	add := func(what string, n int) {
		if n > 0 {
			out = append(out, counted{what, strconv.Itoa(n)})
		}
	}
	add(w.CloseOut.Pages, c.total)
	add(w.CloseOut.Tags, j.Tagged())
	add(w.CloseOut.SpareTags, j.SpareTags())
	for _, sheet := range []struct{ name, values, initials string }{
		{"traveler", w.CloseOut.BoxesFound, w.CloseOut.InitialsOff}, {"reassembly", w.CloseOut.BoxesLeft, w.CloseOut.InitialsBack},
	} {
		boxes := c.boxesOn[sheet.name]
		add(sheet.values, boxes[layout.RoleValue]+boxes[layout.RoleFraction])
		add(sheet.initials, boxes[layout.RoleInitials])
	}
	add(w.CloseOut.Holds, len(holdRows(j)))
	locked := 0
	for _, x := range j.Isolations {
		locked += len(periods(x))
	}
	add(w.CloseOut.Locks, locked)
	add(w.CloseOut.Permits, len(j.Permits))
	add(w.CloseOut.Openings, len(j.Openings))
	containers := len(j.Containers)
	if slices.ContainsFunc(j.Tags, func(t *job.Tag) bool { return t.Scrap }) {
		containers++ // the bag for scrap is handed over
	}
	add(w.CloseOut.Containers, containers)
	add(w.CloseOut.Instruments, j.Supplies.InstrumentPieces())
	return append(out, counted{w.CloseOut.LeftOver, "0"}, counted{w.CloseOut.Deviations, ""})
}
