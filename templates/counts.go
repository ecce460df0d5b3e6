package templates

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/layout"
)

// counts sets the list by which the storeroom counts every container twice: when
// all is apart, and when all is back and nothing may be left over.
func counts(c *composer) []layout.Piece {
	w := c.w
	if c.job.Tagged() == 0 {
		return nil
	}
	g := c.grid(col(w.Common.Mark, 30), col(w.Common.Contents, 0), col(w.Counts.StubSeen, 14), col(w.Counts.Expected, 14), col(w.Counts.CountMid, 18), col(w.Common.InitialsDate, 20),
		col(w.Common.CountOut, 16), col(w.Common.Scrap, 16), col(w.Counts.LeftOver, 16))
	var rows []layout.Row
	for _, t := range c.job.Tags {
		if t.Spare {
			rows = append(rows, g.row(t.At, g.text(0, layout.Strong, t.Mark, t.At), layout.Block{}, c.Tick(layout.Body, "", t.At)))
			continue
		}
		rows = append(rows, g.row(t.At, g.text(0, layout.Strong, t.Mark, t.At), g.text(1, layout.Sub, joined(c.tagName(t), bagParts(t)), t.At), c.Tick(layout.Body, "", t.At),
			g.text(3, layout.Strong, c.expected(t), t.At)))
	}
	out := c.listSheet(w.Counts.Rule, g, rows)
	out[0].Block = out[0].Block.Anchored("counts")
	return out
}

// expected is how many pieces there must be, or bags where there is nothing else.
func (c *composer) expected(t *job.Tag) string {
	if bagsOnly(t) > 0 {
		return c.inIt(t)
	}
	return strconv.Itoa(job.Pieces(t.In))
}

// bagParts are the parts in a bag that lies in a container.
func bagParts(t *job.Tag) string {
	if t.Pocket == "" {
		return ""
	}
	return partList(t.In)
}
