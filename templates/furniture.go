package templates

import (
	"strconv"
	"strings"

	"matchmark/layout"
)

// Measures of the head and foot of every page.
const (
	plateH      layout.Mm = 12.4
	lowPlateH   layout.Mm = 6.6 // on sheets of work, where a line stands below it
	titlesH     layout.Mm = 21  // the most that machine and job may take in the head
	runningH    layout.Mm = 5.8 // the line for the section that goes on
	stripLabelW layout.Mm = 25
)

// underHead is from the last line of the head down to the flow: the rule, the room above
// it and that below it.
const underHead, ruleGap layout.Mm = 2.05, 0.55

// head is the top of every page: the plate that names the sheet, machine, job,
// page of pages, revision, date, digest, and a code that says the same. plateW is the
// room that is kept for the plate, so that the head is as high on all pages of a run. On
// sheets of work its last line is left for the section that goes on.
func (c *composer) head(title string, plateW layout.Mm, work bool, page, total int) layout.Block {
	o := c.Job.Order
	code := c.QRModules(c.pageCode(page, total), leastModule, o.At)
	quiet := quietOf(code)
	code = code.Pad(-quiet-codeLift, -quiet, -quiet, -quiet)
	width := c.Span - code.W - codeGap
	var line layout.Block
	if work {
		line = c.workHead(title, width, page, total)
	} else {
		plate := c.plate(title, work)
		room := max(plateW-plate.W, 0)
		titles := c.titles(width-plate.W-plateGap-room, page, total)
		line = layout.Middle(0, plate, layout.Space(plateGap+room, 1), titles)
	}
	line = layout.Beside(0, line, layout.Space(codeGap, 1), code)
	// The line under the head ends where the white margin of the code begins.
	under := width + codeGap - quiet
	rule := layout.Drawn(under, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: under, Weight: layout.Rule}})
	return layout.Above(ruleGap, line, rule).Pad(0, 0, underHead-ruleGap-layout.Rule, 0)
}

// workHead is the plate, machine and job of a sheet of work in one line, and the room for
// the section that goes on. Where several sheets share a page its plate names them if the
// head is as high as elsewhere, else the one that the page begins with.
func (c *composer) workHead(title string, width layout.Mm, page, total int) layout.Block {
	edition := c.edition()
	set := func(title string) layout.Block {
		plate := c.plate(title, true)
		titles := c.titlesInLine(width - plate.W - plateGap - c.pageNoWidth() - 2)
		line := layout.Middle(0, plate, layout.Space(plateGap, 1), titles, layout.Space(2, 1), c.pageNo(page, total))
		return layout.Above(0, line, edition.Fill(width, max(runningH, edition.H), 1, 0.5))
	}
	begins, _, _ := strings.Cut(title, "\n")
	one := set(strings.TrimRight(begins, " ·–"))
	if both := set(strings.ReplaceAll(title, "\n", " ")); both.H <= one.H && both.W <= one.W+0.01 {
		return both
	}
	return one
}

// plate is the plate that names the sheets of a page, lower on sheets of work, where a line
// stands below it.
func (c *composer) plate(title string, work bool) layout.Block {
	high := plateH
	if work {
		high = lowPlateH
	}
	plate := c.plateText(title).Heading(1).Pad(0, 4, 0, 4)
	return plate.Fill(max(plate.W, 30), high, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1.5})
}

// running is the room for the section that goes on, in the last line of the head of a
// sheet of work: its width, 0 for none, and how far it begins above the flow.
func (c *composer) running() (width, up layout.Mm) {
	code := c.QRModules(c.pageCode(888, 888), leastModule, nil)
	edition := c.edition()
	if edition.H > runningH {
		return 0, 0
	}
	return c.Span - (code.W - 2*quietOf(code)) - codeGap - edition.W - titleGap, runningH + underHead
}

// codeGap is the room before the code of a page, more than its white margin, and codeLift
// how far it stands above the head, so that its margin below is white too.
const codeGap, codeLift layout.Mm = 3, 0.55

// plateGap is the room between the plate and what stands beside it.
const plateGap layout.Mm = 3

// machine and number are the runs for the machine and for the job.
func (c *composer) machine(width layout.Mm) []layout.Run {
	e := c.Job.Equipment
	return []layout.Run{layout.T(layout.Head, c.Breakable(layout.Head, width, e.Tag)+"  "+e.Name)}
}

func (c *composer) number(width layout.Mm) []layout.Run {
	o := c.Job.Order
	return []layout.Run{layout.T(layout.Body, c.Breakable(layout.Body, width, o.Number)+"  "+o.Title)}
}

// titles are machine and job below each other, and at their right ends page, digest,
// revision and date.
func (c *composer) titles(width layout.Mm, page, total int) layout.Block {
	o, e := c.Job.Order, c.Job.Equipment
	right := []layout.Block{
		layout.Level(2, c.Line(0, []layout.Run{layout.T(layout.CodeText, c.Job.Digest)}, layout.ParaOpts{Ref: o.At}), c.pageNo(page, total)),
		c.Para(min(editionW, c.Width(layout.Body, c.revision())+0.1), []layout.Run{layout.T(layout.Body, c.revision())}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At}),
	}
	first, second := width-right[0].W-2, width-right[1].W-2
	one := layout.Beside(2, c.Para(first, c.machine(first), layout.ParaOpts{Ref: e.At}), right[0])
	two := layout.Beside(2, c.Para(second, c.number(second), layout.ParaOpts{Ref: o.At}), right[1])
	titles := layout.Above(0.4, one, two)
	return titles.Fill(width, min(titles.H, titlesH), 0, 0)
}

// titlesInLine are machine and job in one line. Where they are long the number alone stands
// for the job, whose title is on all other sheets; or they stand below each other.
func (c *composer) titlesInLine(width layout.Mm) layout.Block {
	o, e := layout.ParaOpts{Ref: c.Job.Order.At}, layout.ParaOpts{Ref: c.Job.Equipment.At}
	name, no := c.Line(0, c.machine(width), e), c.Job.Order.Number
	titles := layout.Level(titleGap, name, c.Line(0, c.number(width), o))
	if titles.W > width {
		titles = layout.Level(titleGap, name, c.Words(layout.Body, no).Tagged(c.Job.Order.At))
	}
	if titles.W > width {
		titles = layout.Above(0, c.Para(width, c.machine(width), e), c.Para(width, c.number(width), o))
	}
	return titles.Fill(width, min(titles.H, titlesH), 0, 0)
}

// titleGap is the room between machine and job in one line.
const titleGap layout.Mm = 3

// pageNoWidth is the width of the number of a page of pages, whatever they are.
func (c *composer) pageNoWidth() layout.Mm {
	return c.Width(layout.Head, c.W.Common.PageOf.With("888", "888"))
}

// pageNo is the number of a page of pages.
func (c *composer) pageNo(page, total int) layout.Block {
	text := c.W.Common.PageOf.With(strconv.Itoa(page), strconv.Itoa(total))
	return c.Line(c.pageNoWidth(), []layout.Run{layout.T(layout.Head, text)}, layout.ParaOpts{Align: layout.RightEnd})
}

// revision is the revision with its date.
func (c *composer) revision() string {
	return c.W.Common.Revision.With(c.Job.Order.Revision) + "  " + c.Job.Order.Issued
}

// edition is the revision, its date and the digest of the pack.
func (c *composer) edition() layout.Block {
	at := layout.ParaOpts{Align: layout.RightEnd, Ref: c.Job.Order.At}
	runs := []layout.Run{layout.T(layout.Body, c.revision()+"  "), layout.T(layout.CodeText, c.Job.Digest)}
	if one := c.Line(0, runs, at); one.W <= editionW {
		return one
	}
	return c.Para(editionW, runs, at)
}

// editionW is the most that they take in one line.
const editionW layout.Mm = 54

// quietOf is the white margin of a code, in which nothing is printed: at the top and
// the right of the head it lies in the margin of the page.
func quietOf(code layout.Block) layout.Mm {
	for _, it := range code.Items() {
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
