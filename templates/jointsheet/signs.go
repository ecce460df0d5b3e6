package jointsheet

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
)

// measured reports whether a joint is tightened with a tool that measures: what is drawn up by
// hand or by feel has no tool with a number that was calibrated.
func measured(j *job.Joint) bool {
	return j.Torque != "" || j.Wanted != "" || slices.ContainsFunc(j.Rounds, func(r joint.Round) bool { return r.Setting != nil })
}

// toolHead is the head of the cell for the tool.
func toolHead(c *block.Composer, j *job.Joint) string {
	if measured(j) {
		return c.W.Tightening.ToolAndDate
	}
	return c.W.Tightening.Tool
}

// signs are the boxes of who tightened with what, and who checked.
func signs(c *block.Composer, j *job.Joint) []layout.Block {
	w := c.W
	out := []layout.Block{
		c.WideBox(layout.RoleInitials, signCol, 1, w.Tightening.FinalBy, j.At), c.WideBox(layout.RoleInitials, signCol, 1, w.Tightening.CheckedBy, j.At),
	}
	if measured(j) {
		out = append([]layout.Block{c.WideBox(layout.RoleWords, signCol, 1, w.Tightening.ToolNo, j.At), c.Box(layout.RoleDate, w.Tightening.Calibrated, j.At)}, out...)
	}
	if j.Spec.BreaksLoose != nil {
		out = append(out, c.WideBox(layout.RoleWords, signCol, 1, w.Tightening.BelowIt, j.At))
	}
	return out
}

// withSigns sets the boxes of who did it beside the last of some tables, or below it.
func withSigns(c *block.Composer, j *job.Joint, tables []layout.Block) []layout.Block {
	if len(tables) == 0 {
		return []layout.Block{signRow(c, j)}
	}
	last := &tables[len(tables)-1]
	for _, beside := range []layout.Block{signBoxes(c, j, len(signs(c, j))), signBoxes(c, j, 2)} {
		if last.W+tableGap+beside.W <= c.Span && beside.H <= last.H+tickRow {
			*last = layout.Beside(tableGap, *last, beside)
			return tables
		}
	}
	*last = layout.Above(layout.GapY, *last, signRow(c, j))
	return tables
}

// signBoxes set them below each other, so many in a row.
func signBoxes(c *block.Composer, j *job.Joint, across int) layout.Block {
	all := signs(c, j)
	var rows []layout.Block
	for i := 0; i < len(all); i += across {
		rows = append(rows, layout.Beside(layout.GapX, all[i:min(i+across, len(all))]...))
	}
	return layout.Above(layout.GapY, rows...)
}

// signRow sets them beside each other.
func signRow(c *block.Composer, j *job.Joint) layout.Block {
	return block.FlowRow(signs(c, j), c.Span)
}
