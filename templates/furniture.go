package templates

import "matchmark/layout"

// stripLabelW is the width of the cells that name the strips at the foot of a page.
const stripLabelW layout.Mm = 25

// footOf makes the feet of a sheet, with the code of the page beside them where it is upright.
func (c *composer) footOf(k kind) func(page, total int) layout.Block {
	return func(page, total int) layout.Block {
		foot := c.foot(k.handover)
		if landscape[k.name] {
			return foot
		}
		return c.withCode(foot, page, total)
	}
}

// foot is the bottom of every page: two lines for deviations with how to write, and on
// sheets where work stops and starts the strip for handing over.
func (c *composer) foot(handover bool) layout.Block {
	deviations := layout.Above(0, c.deviation(), c.deviation())
	deviations = layout.Beside(0, c.stripLabel(c.W.Deviations.Line, c.W.Frame.WriteInInk, deviations.H), deviations)
	var strip layout.Block
	if handover {
		strip = c.handover()
	}
	if c.Filled != nil {
		strip = layout.Above(1, strip, c.typedBy(c.Span))
	}
	return layout.Above(0, deviations, strip).Pad(layout.GapY, 0, 0, 0)
}

// deviation is one line to write down what was done otherwise.
func (c *composer) deviation() layout.Block {
	step := c.WideBox(layout.RoleWords, 18, 1, c.W.Deviations.Step, nil)
	agreed := c.WideBox(layout.RoleWords, 40, 1, c.W.Deviations.Agreed, nil)
	what := c.WideBox(layout.RoleWords, c.Span-stripLabelW-step.W-agreed.W, 1, c.W.Deviations.What, nil)
	return layout.Beside(0, step, what, agreed)
}

// handover is the strip that the crew fills in when it stops, and the next crew
// reads when it starts.
func (c *composer) handover() layout.Block {
	w := c.W
	var boxes []layout.Block
	fixed := []struct {
		caption string
		width   layout.Mm
	}{{w.Handover.Reached, 18}, {w.Handover.HalfDone, 0}, {w.Handover.Next, 30}, {w.Handover.From, 20}, {w.Handover.To, 20}, {w.Handover.Time, 18}}
	rest := c.Span - stripLabelW
	for _, f := range fixed {
		rest -= f.width
	}
	for _, f := range fixed {
		width := f.width
		if width == 0 {
			width = rest
		}
		boxes = append(boxes, c.WideBox(layout.RoleWords, width, 1, f.caption, nil))
	}
	row := layout.Beside(0, boxes...)
	return layout.Beside(0, c.stripLabel(w.Handover.Strip, "", row.H), row)
}

// stripLabel is the cell that names the boxes beside it, with a few words below the name.
func (c *composer) stripLabel(name, under string, high layout.Mm) layout.Block {
	const pad = 1
	text := c.Line(stripLabelW-2*pad, []layout.Run{layout.T(layout.SubBold, name)}, layout.ParaOpts{})
	if under != "" {
		text = layout.Above(0, text, c.Para(stripLabelW-2*pad, []layout.Run{layout.T(layout.Caption, under)}, layout.ParaOpts{}))
	}
	return text.Pad(0, pad, 0, pad).Fill(stripLabelW, high, 0, 0.5).Border(layout.Rect{Weight: layout.Outline})
}

// joinFacts sets a dot between two texts, if there are two.
func joinFacts(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " · " + b
}

// cleared are pieces that know how much of each is clear of boxes at its foot.
func cleared(ps []layout.Piece) []layout.Piece {
	for i := range ps {
		if ps[i].Clear == 0 {
			_, ps[i].Clear = ps[i].Block.BoxRoom()
		}
	}
	return ps
}
