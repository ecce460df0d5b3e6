package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// counts sets the list by which the storeroom counts every container twice: when
// all is apart, and when all is back and nothing may be left over.
func counts(c *composer) []layout.Piece {
	w := c.W
	if c.Job.Tagged() == 0 {
		return nil
	}
	g := c.Grid(block.Col(w.Common.Mark, c.tagMarkWidth()), block.Col(w.Common.Contents, 0), block.Col(w.Counts.StubSeen, 12), block.Col(w.Counts.Expected, 14), block.Col(w.Counts.CountedApart, 18), block.Col(w.Common.InitialsDate, 20),
		block.Col(w.Common.CountOut, 16), block.Col(w.Common.Scrap, 16), block.Col(w.Counts.LeftOver, 16))
	var rows []layout.Row
	for _, t := range c.Job.Tags {
		if t.Spare {
			rows = append(rows, g.Row(t.At, g.Text(0, layout.Strong, t.Mark, t.At), layout.Block{}, c.Tick(layout.Body, "", t.At)))
			continue
		}
		rows = append(rows, g.Row(t.At, g.Text(0, layout.Strong, t.Mark, t.At), g.Text(1, layout.Sub, joinFacts(c.tagName(t), bagParts(t)), t.At), c.Tick(layout.Body, "", t.At),
			g.Text(3, layout.Strong, c.expected(t), t.At)))
	}
	out := c.ListSheet(w.Counts.Rule, g, rows)
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
	return block.PartList(t.In)
}
