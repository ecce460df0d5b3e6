package templates

import (
	"strconv"
	"strings"

	"matchmark/layout"
)

// Measures of the head and foot of every page.
const (
	plateH      layout.Mm = 14
	pageNoW     layout.Mm = 32
	titlesH     layout.Mm = 21 // the most that machine and job may take in the head
	stripLabelW layout.Mm = 25
)

// head is the top of every page: the plate that names the sheet, machine, job,
// page of pages, revision, date, digest, and a code that says the same. plateW is the
// room that is kept for the plate, so that the head is as high on all pages of a run.
func (c *composer) head(title string, plateW layout.Mm, page, total int) layout.Block {
	o, e := c.Job.Order, c.Job.Equipment
	plate := c.plateText(title).Heading(1).Pad(0, 4, 0, 4)
	plate = plate.Fill(max(plate.W, 30), plateH, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1.5})
	code := c.QRModules(c.pageCode(page, total), leastModule, o.At)
	quiet := quietOf(code)
	code = code.Pad(-quiet, -quiet, -quiet, -quiet)
	titleW := c.Span - max(plate.W, plateW) - pageNoW - code.W - 10
	machine := c.Para(titleW, []layout.Run{layout.T(layout.Head, c.Breakable(layout.Head, titleW, e.Tag)+"  "+e.Name)}, layout.ParaOpts{Ref: e.At})
	number := c.Para(titleW, []layout.Run{layout.T(layout.Body, c.Breakable(layout.Body, titleW, o.Number)+"  "+o.Title)}, layout.ParaOpts{Ref: o.At})
	titles := layout.Above(0.8, machine, number)
	titles = titles.Fill(titles.W, min(titles.H, titlesH), 0, 0)
	pages := c.Line(pageNoW, []layout.Run{layout.T(layout.Head, c.W.Common.PageOf.With(strconv.Itoa(page), strconv.Itoa(total)))}, layout.ParaOpts{Align: layout.RightEnd})
	rev := c.Para(pageNoW, []layout.Run{layout.T(layout.Body, c.W.Common.Revision.With(o.Revision)+"  "+o.Issued)}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At})
	digest := c.Line(pageNoW, []layout.Run{layout.T(layout.CodeText, c.Job.Digest)}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At})
	line := layout.Middle(0, plate, layout.Space(5+max(plateW-plate.W, 0), 1), titles, layout.Space(2, 1), layout.Above(0, pages, rev, digest), layout.Space(3, 1), code)
	// The line under the head ends where the white margin of the code begins.
	under := c.Span - code.W - quiet
	rule := layout.Drawn(under, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: under, Weight: layout.Rule}})
	return layout.Above(0.8, line, rule).Pad(0, 0, 1.2, 0)
}

// quietOf is the white margin of a code, in which nothing is printed: at the top and
// the right of the head it lies in the margin of the page.
func quietOf(code layout.Block) layout.Mm {
	for _, it := range code.Items {
		if m, ok := it.Shape.(layout.Modules); ok && m.Count() > 0 {
			return m.Size * layout.QuietModules / layout.Mm(m.Count())
		}
	}
	return 0
}

// pageCode is what the code of a page holds: the digest of the pack, which stands for
// machine, job and revision, the page and the pages. It is the smallest symbol there is.
func (c *composer) pageCode(page, total int) string {
	return strings.ToUpper(c.Job.Digest) + " " + strconv.Itoa(page) + " " + strconv.Itoa(total)
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
		runs := []layout.Run{{Text: c.W.Filled.Typed.With(c.Filled.Values.Typed()), Style: layout.SubBold, Deco: layout.Boxed}}
		strip = layout.Above(1, strip, c.Para(c.Span, runs, layout.ParaOpts{}))
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
