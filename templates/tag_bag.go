package templates

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// bagLabel is small: mark, place, what is in it, where it comes from and goes.
func (c *composer) bagLabel(t *job.Tag) layout.Block {
	const edge, side = 1.5, 16.5
	const inner = bagW - 2*edge
	code := c.QR(t.Code, side, leastModule, t.At)
	left := layout.Mm(inner) - side - 1
	mark := c.Words(layout.MarkTag(layout.Bold, smallMark), t.Base)
	mark = layout.Block{W: mark.W, H: smallMark + 1, Items: mark.At(0, smallMark+0.5-mark.Base).Items}
	place := c.Para(left-mark.W-2, []layout.Run{layout.T(layout.Strong, t.Detail)}, layout.ParaOpts{Ref: t.At})
	head := layout.Above(0.3, layout.Beside(2, mark, place),
		c.Line(left, []layout.Run{layout.T(layout.SubBold, c.numbered(t)+" · "+c.inIt(t))}, layout.ParaOpts{Ref: t.At}))
	spelled := c.Para(20, []layout.Run{layout.T(layout.Caption.With(layout.Mono), t.Code)}, layout.ParaOpts{Ref: t.At})
	low := layout.Middle(2, layout.Beside(layout.GapX, c.WideBox(layout.RoleWords, 15, 1, c.W.Common.CountedIn, t.At), c.WideBox(layout.RoleWords, 15, 1, c.W.Common.CountedOut, t.At)), spelled)
	content := c.minded(t, inner, c.bagContent)
	head, steps := c.bagSteps(t, head, left, inner, side, bagH-2*edge-low.H-content.H)
	head.W = left
	body := layout.Above(0, layout.Beside(1, head, code), steps, content).Fill(inner, bagH-2*edge-low.H, 0, 0)
	return layout.Above(0, body, low).Inset(edge).Fill(bagW, bagH, 0, 0).Border(layout.Rect{Weight: layout.Rule, Radius: 2})
}

// bagSteps sets where the parts in a bag come off and go back beside the code, if it
// goes there, else in a line of its own below it. Where the label has no room for that
// line, the step numbers alone stand beside the code.
func (c *composer) bagSteps(t *job.Tag, head layout.Block, left, inner, side, room layout.Mm) (above, below layout.Block) {
	line := func(text string, width layout.Mm) layout.Block {
		return c.Line(width, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: t.At})
	}
	full := c.offBackLine(t, inner)
	own := line(full, inner)
	if head.H+own.H > side || c.Width(layout.Caption, c.offBackLine(t, left)) > left {
		return head, own
	}
	if c.Width(layout.Caption, full) > left && side+own.H <= room {
		return head, own
	}
	return layout.Above(0, head, line(c.offBackLine(t, left), left)), layout.Block{}
}

// offBackLine is where the parts in a bag come off and go back, with the pages where
// there is room for them. The step numbers alone find the place as well.
func (c *composer) offBackLine(t *job.Tag, width layout.Mm) string {
	text := c.W.Common.OffAt + " " + c.stepsAndPages(t.In) + " · " + c.W.Common.BackAt + " " + c.stepsAndPages(t.Out)
	if c.Width(layout.Caption, text) <= width {
		return text
	}
	return c.W.Common.OffAt + " " + stepNos(t.In) + " · " + c.W.Common.BackAt + " " + stepNos(t.Out)
}

// stepNos lists the steps of some moves, each once.
func stepNos(ms []*job.Move) string {
	var out []string
	for _, m := range ms {
		if !slices.Contains(out, m.Step.No) {
			out = append(out, m.Step.No)
		}
	}
	return strings.Join(out, ", ")
}

// bagContent is what is in a bag, how it is kept, and what is easily missed.
func (c *composer) bagContent(t *job.Tag, minded bool) []layout.Run {
	runs := []layout.Run{layout.T(layout.Caption.With(layout.Bold), t.Name+": "), layout.T(layout.Caption, block.PartList(t.In))}
	if t.Keep != "" {
		runs = append(runs, layout.T(layout.Caption.With(layout.Bold), " · "+c.W.Tag.Keep+" "+t.Keep))
	}
	for _, text := range c.waysRound(t) {
		runs = append(runs, layout.T(layout.Caption.With(layout.Bold), " · "+text))
	}
	for _, text := range c.oldPieces(t) {
		runs = append(runs, layout.T(layout.Caption.With(layout.Bold), " · "+text))
	}
	for _, s := range t.Sets {
		runs = append(runs, layout.T(layout.Caption, " "), layout.Run{Text: s.Mark, Style: layout.Caption.With(layout.Bold), Deco: layout.Boxed})
	}
	for _, m := range missedOf(t) {
		mind := " "
		if minded {
			mind = " " + c.W.Tag.Mind + "\u00a0"
		}
		runs = append(runs, layout.T(layout.Caption, mind), layout.Run{Text: m, Style: layout.Caption.With(layout.Bold), Deco: layout.Inverse})
	}
	return runs
}
