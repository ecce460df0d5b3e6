package templates

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
)

// Measures of the head and foot of every page.
const (
	plateH    layout.Mm = 15
	pageCodeW layout.Mm = 17
	pageNoW   layout.Mm = 32
	titlesH   layout.Mm = 21 // the most that machine and job may take in the head
)

// head is the top of every page: the plate that names the sheet, machine, job,
// page of pages, revision, date, and a code that says the same.
func (c *composer) head(title string, page, total int) layout.Block {
	o, e := c.Job.Order, c.Job.Equipment
	plate := c.Words(layout.Plate, title).Pad(0, 4, 0, 4)
	plate = plate.Fill(max(plate.W, 30), plateH, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1.5})
	code := c.pageCode(page, total)
	titleW := c.Span - plate.W - pageNoW - code.W - 10
	machine := c.Para(titleW, []layout.Run{layout.T(layout.Head, c.Breakable(layout.Head, titleW, e.Tag)+"  "+e.Name)}, layout.ParaOpts{Ref: e.At})
	number := c.Para(titleW, []layout.Run{layout.T(layout.Body, c.Breakable(layout.Body, titleW, o.Number)+"  "+o.Title)}, layout.ParaOpts{Ref: o.At})
	titles := layout.Above(0.8, machine, number)
	titles = titles.Fill(titles.W, min(titles.H, titlesH), 0, 0)
	pages := c.Line(pageNoW, []layout.Run{layout.T(layout.Head, c.W.Common.PageOf.With(strconv.Itoa(page), strconv.Itoa(total)))}, layout.ParaOpts{Align: layout.RightEnd})
	rev := c.Para(pageNoW, []layout.Run{layout.T(layout.Body, c.W.Common.Revision.With(o.Revision)+"  "+o.Issued)}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At})
	line := layout.Middle(0, plate, layout.Space(5, 1), titles, layout.Space(2, 1), layout.Above(0.8, pages, rev), layout.Space(3, 1), code)
	return layout.Above(1.5, line, c.Rule(layout.Rule)).Pad(0, 0, 3, 0)
}

// pageCode is the code of a page: machine, job, revision, page, pages and digest. It is as
// large as its text needs; its white edge above and at the right is that of the paper.
func (c *composer) pageCode(page, total int) layout.Block {
	code := c.QRModules(c.pageText(page, total), leastModule, c.Job.Order.At)
	white := layout.QuietModules * leastModule
	for i := range code.Items {
		code.Items[i].Y -= white
	}
	code.W, code.H = max(code.W-white, 0), max(code.H-white, 0)
	return code
}

// pageText is what the code of a page holds, folded as the keys of tags are.
func (c *composer) pageText(page, total int) string {
	o := c.Job.Order
	return strings.Join([]string{job.Folded(c.Job.Equipment.Tag), job.Folded(o.Number), job.Folded(o.Revision),
		strconv.Itoa(page), strconv.Itoa(total), strings.ToUpper(c.Job.Digest)}, " ")
}

// foot is the bottom of every page: two lines for deviations, on sheets where
// work stops and starts the strip for handing over, and what pack this is.
func (c *composer) foot(handover bool) layout.Block {
	deviations := layout.Above(0, c.deviation(), c.deviation())
	var strip layout.Block
	if handover {
		strip = c.handover()
	}
	o := c.Job.Order
	ident := o.Number + " " + o.Revision + " · " + c.Job.Digest
	left := c.Words(layout.Sub, c.W.Frame.WriteInInk)
	right := c.Line(c.Span-left.W-3, []layout.Run{layout.T(layout.CodeText, ident)}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At})
	return layout.Above(1, layout.Above(0, deviations, strip), layout.Beside(3, left, right)).Pad(layout.GapY, 0, 0, 0)
}

// deviation is one line to write down what was done otherwise.
func (c *composer) deviation() layout.Block {
	label := c.stripLabel(c.W.Deviations.Line, "")
	step := c.WideBox(layout.RoleWords, 18, 1, c.W.Deviations.Step, nil)
	agreed := c.WideBox(layout.RoleWords, 40, 1, c.W.Deviations.Agreed, nil)
	what := c.WideBox(layout.RoleWords, c.Span-label.W-step.W-agreed.W, 1, c.W.Deviations.What, nil)
	return layout.Beside(0, label, step, what, agreed)
}

// handover is the strip that the crew fills in when it stops, and the next crew
// reads when it starts.
func (c *composer) handover() layout.Block {
	w := c.W
	label := c.stripLabel(w.Handover.Strip, "")
	var boxes []layout.Block
	fixed := []struct {
		caption string
		width   layout.Mm
	}{{w.Handover.Reached, 18}, {w.Handover.HalfDone, 0}, {w.Handover.Next, 30}, {w.Handover.From, 20}, {w.Handover.To, 20}, {w.Handover.Time, 18}}
	rest := c.Span - label.W
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
	return layout.Beside(0, append([]layout.Block{label}, boxes...)...)
}

// stripLabel is the cell that names a strip of boxes.
func (c *composer) stripLabel(name, under string) layout.Block {
	const w = 22
	box := c.WideBox(layout.RoleWords, w, 1, "", nil)
	text := layout.Above(0, c.Line(w-2, []layout.Run{layout.T(layout.SubBold, name)}, layout.ParaOpts{}), c.small(w-2, under))
	return text.Pad(0, 1, 0, 1).Fill(w, box.H, 0, 0.5).Border(layout.Rect{Weight: layout.Outline})
}

// small is a line in the size of captions, nothing if there is no text.
func (c *composer) small(width layout.Mm, text string) layout.Block {
	if text == "" {
		return layout.Block{}
	}
	return c.Line(width, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{})
}

// joinFacts sets a dot between two texts, if there are two.
func joinFacts(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " · " + b
}
