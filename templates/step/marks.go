package step

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Widths of the boxes for a mark across a joint, where one stands in a row or two.
const (
	markUsedW layout.Mm = 24
	markAtW   layout.Mm = 32
)

// matchMarks are the boxes for the marks across the joints of parts: a ruled table of one
// column or two.
func matchMarks(c *block.Composer, st *job.Step, width layout.Mm) layout.Block {
	if len(st.Marks) == 1 {
		return markCell(c, st, c.W.Step.MatchMark.With(joinOf(c, st.Marks[0], st)), width, 0)
	}
	names := make([]string, len(st.Marks))
	for i, p := range st.Marks {
		names[i] = joinOf(c, p, st)
	}
	var best layout.Block
	for n := range 2 {
		var rows []layout.Block
		for i := 0; i < len(names); i += n + 1 {
			one, high := width/layout.Mm(n+1), layout.Mm(0)
			var cells []layout.Block
			for _, name := range names[i:min(i+n+1, len(names))] {
				high = max(high, markCell(c, st, name, one, 0).H)
			}
			for _, name := range names[i:min(i+n+1, len(names))] {
				cells = append(cells, markCell(c, st, name, one, high))
			}
			rows = append(rows, layout.Beside(0, cells...))
		}
		if all := layout.Above(0, rows...); n == 0 || all.H < best.H-0.5 && len(all.Misfits()) == 0 {
			best = all
		}
	}
	head := c.Para(width, []layout.Run{layout.T(layout.Body, c.W.Step.MatchMarks)}, layout.ParaOpts{Ref: st.At})
	return layout.Above(0.5, head, best)
}

// joinOf names the parts on both sides of the joint that a mark stands on, or the marked one
// where the other is not told.
func joinOf(c *block.Composer, p *job.Part, st *job.Step) string {
	if p.Across == nil {
		return partAt(c, p, st)
	}
	return c.W.Step.BothParts.With(partAt(c, p, st), partAt(c, p.Across, st))
}

// markCell is the cell for one mark: what it is of, the mark that is used and where it
// stands.
func markCell(c *block.Composer, st *job.Step, name string, width, high layout.Mm) layout.Block {
	used, at := markUsedW, markAtW
	if spare := width - used - at - stackName*3; spare > 0 {
		used, at = used+spare/3, at+spare/3
	}
	text := c.Para(width-used-at-2*cellPad, []layout.Run{layout.T(layout.Body, name)}, layout.ParaOpts{Ref: st.At})
	least := c.WideBox(layout.RoleWords, used, 1, "", st.At).H
	high = max(high, least, text.H+cellHigh)
	return cell(text, width, high, c.CellBox(layout.RoleWords, used, high, c.W.Step.MarkUsed, st.At), c.CellBox(layout.RoleWords, at, high, c.W.Step.WhereMarked, st.At))
}
