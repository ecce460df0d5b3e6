package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs"
)

// register sets the container register: one row a tag, with boxes for what was
// counted in and out and where it is shelved, and spare rows.
func register(c *composer) []layout.Piece {
	w := c.w
	widths := []layout.Mm{11, 29, 0, 22, 22, 19.5, 19.5, 19.5}
	rest := c.width
	for _, x := range widths {
		rest -= x
	}
	widths[2] = rest
	heads := []string{w.number, w.mark, w.contents, w.offAt, w.backAt, w.countedIn, w.countedOut, w.shelf}
	t := layout.Table{PadX: 1.2, PadY: 1, Grid: true, MinH: 11}
	for i, x := range widths {
		t.Columns = append(t.Columns, layout.Column{Width: x, Head: c.Para(x-2.4, []layout.Run{layout.T(layout.SubBold, heads[i])}, layout.ParaOpts{})})
	}
	cell := func(i int, st layout.Style, text string, ref layout.Ref) layout.Block {
		return c.Para(widths[i]-2.4, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: ref})
	}
	var rows []layout.Row
	for _, tag := range c.job.Tags {
		if tag.Spare {
			rows = append(rows, layout.Row{Ref: tag.At, Anchor: "register " + tag.Mark, Cells: []layout.Block{{}, cell(1, layout.Strong, tag.Mark, tag.At)}})
			continue
		}
		rows = append(rows, layout.Row{Ref: tag.At, Anchor: "register " + tag.Mark, Cells: []layout.Block{
			cell(0, layout.Sub, strconv.Itoa(tag.N), tag.At), cell(1, layout.Strong, tag.Mark, tag.At),
			layout.Above(0.5, cell(2, layout.Strong, tag.Name, tag.At), cell(2, layout.Sub, c.registerContents(tag), tag.At)),
			cell(3, layout.Body, c.stepsAndPages(tag.In), tag.At), cell(4, layout.Body, c.stepsAndPages(tag.Out), tag.At),
		}})
	}
	return t.Pieces(rows)
}

// registerContents is what is in a container and how many pieces.
func (c *composer) registerContents(t *packs.Tag) string {
	s := partList(t.In)
	if n := packs.Pieces(t.In); n > 1 {
		s += " (" + c.w.count(n) + ")"
	}
	s = joined(s, c.bagsInside(t))
	for _, x := range t.Sets {
		s += " · " + fill(c.w.matchedSet, x.Mark)
	}
	return s
}

// stepsAndPages lists where parts come off or go back: 3.2 p. 9.
func (c *composer) stepsAndPages(ms []*packs.Move) string {
	s, last := "", ""
	for _, m := range ms {
		if m.Step.No == last {
			continue
		}
		if s != "" {
			s += ", "
		}
		last = m.Step.No
		s += fill(c.w.stepPage, m.Step.No, c.page("step "+m.Step.No))
	}
	return s
}
