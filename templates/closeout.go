package templates

import (
	"strconv"

	"matchmark/layout"
)

// closeOut sets the sheet by which the pack is found complete: everything that it
// holds with its number as printed, to be counted, and who says so.
func closeOut(c *composer) []layout.Piece {
	w := c.w
	g := c.grid(column{w.whatIsCounted, 0}, column{w.printed, 20}, column{w.counted, 24}, column{w.initialsDate, 36})
	g.t.MinH -= 2 // a count needs no more than a line
	var rows []layout.Row
	for _, x := range c.tally() {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, x.what, nil), g.text(1, layout.Strong, x.printed, nil)))
	}
	if c.job.Hours.Sign() > 0 {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, w.hoursAll, nil), g.text(1, layout.Strong, c.job.Hours.Print(), nil)))
	}
	out := c.listSheet(w.closeOutRule, g, rows)
	out = append(out, c.deferred()...)
	return append(out, layout.Piece{Block: c.signers(w.complete), Gap: 4})
}

// A counted thing is one line of the close-out sheet.
type counted struct{ what, printed string }

// tally is all that a pack has to have when it comes back, without the lines that
// this job has none of. What is on the pages is counted there, in the pass before.
func (c *composer) tally() []counted {
	j, w := c.job, c.w
	var out []counted
	add := func(what string, n int) {
		if n > 0 {
			out = append(out, counted{what, strconv.Itoa(n)})
		}
	}
	add(w.countPages, c.total)
	add(w.countTags, j.Tagged())
	add(w.countStubs, len(j.Tags)-j.Tagged())
	for _, sheet := range []struct{ name, values, initials string }{
		{"traveler", w.countFound, w.countStepsOff}, {"reassembly", w.countLeft, w.countStepsBack},
	} {
		boxes := c.boxesOn[sheet.name]
		add(sheet.values, boxes[layout.RoleValue]+boxes[layout.RoleFraction])
		add(sheet.initials, boxes[layout.RoleInitials])
	}
	add(w.countHolds, len(holdRows(j)))
	locked := 0
	for _, x := range j.Isolations {
		locked += len(periods(x))
	}
	add(w.countLocks, locked)
	add(w.countPermits, len(j.Permits))
	add(w.countOpenings, len(j.Openings))
	add(w.countContainers, len(j.Containers))
	add(w.countInstruments, len(j.Supplies.Instruments))
	return append(out, counted{w.countLeftOver, "0"}, counted{w.countDeviations, ""})
}

// boxesBySheet counts the write-in boxes of each role on each sheet.
func boxesBySheet(frames []layout.Frame) map[string]map[string]int {
	out := map[string]map[string]int{}
	for _, f := range frames {
		if out[f.Sheet] == nil {
			out[f.Sheet] = map[string]int{}
		}
		for _, it := range f.Items {
			if it.Role != "" {
				out[f.Sheet][it.Role]++
			}
		}
	}
	return out
}
