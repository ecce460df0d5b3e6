package templates

import (
	"strconv"
	"strings"

	"matchmark/layout"
)

// Measures of the head of a page.
const (
	plateH     layout.Mm = 10.4 // beside machine and job in two lines
	linePlateH layout.Mm = 6.2  // in one line with them
	titlesH    layout.Mm = 21   // the most that machine and job may take in the head
	runningH   layout.Mm = 5.2  // the line for the section that goes on
)

// underHead is from the last line of the head down to the flow: the rule, the room above
// it and that below it.
const underHead, ruleGap layout.Mm = 1.3, 0.35

// headOf makes the heads of a sheet, with the code of the page where it lies across.
func (c *composer) headOf(k kind, title string) func(page, total int) layout.Block {
	room := plateRoom(k.name)
	return func(page, total int) layout.Block {
		head := c.head(c.pageTitle(title, page), room, k.handover, page, total)
		if landscape[k.name] {
			return c.withCodeAbove(head, page, total)
		}
		return head
	}
}

// head is the top of every page: the plate that names the sheet, machine, job, page of
// pages, revision, date, digest. It is as high on all pages of a run. On sheets of work its
// last line is left for the section that goes on.
func (c *composer) head(title string, plateW layout.Mm, work bool, page, total int) layout.Block {
	var line layout.Block
	switch {
	case work:
		line = c.workHead(title, page, total)
	case c.headInLine():
		line = c.listHead(title, page, total)
	default:
		plate := c.plate(title, plateH)
		room := max(plateW-plate.W, 0)
		titles := c.titles(c.Span-plate.W-plateGap-room, page, total)
		line = layout.Middle(0, plate, layout.Space(plateGap+room, 1), titles)
	}
	rule := layout.Drawn(c.Span, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: c.Span, Weight: layout.Rule}})
	return layout.Above(ruleGap, line, rule).Pad(0, 0, underHead-ruleGap-layout.Rule, 0)
}

// headInLine reports whether the plate of every list, the tag of the machine, the number of
// the job and the edition go into one line.
func (c *composer) headInLine() bool {
	short := c.Words(layout.Head, c.Job.Equipment.Tag).W + titleGap + c.Words(layout.Body, c.Job.Order.Number).W
	return c.edition().H <= linePlateH && short <= c.listTitles(widestTitles+plateAbout)
}

// listTitles is the room for machine and job in the head of a list beside a plate.
func (c *composer) listTitles(plateW layout.Mm) layout.Mm {
	return c.Span - plateW - plateGap - c.edition().W - 2*titleGap - c.pageNoWidth()
}

// listHead is the head of a list in one line. Where it is full the title of the job is left
// out, then the name of the machine, whose tag stays, then the further sheets of the page,
// which have their plates where they begin.
func (c *composer) listHead(title string, page, total int) layout.Block {
	begins, _, _ := strings.Cut(title, "\n")
	var plate, titles layout.Block
	for _, name := range []string{strings.ReplaceAll(title, "\n", " "), strings.TrimRight(begins, " ·–")} {
		plate = c.plate(name, linePlateH)
		for _, titles = range c.shorterTitles() {
			if titles.W <= c.listTitles(plate.W) {
				return c.inHeadLine(plate, titles, page, total)
			}
		}
	}
	return c.inHeadLine(plate, titles, page, total)
}

// shorterTitles are machine and job in one line, each shorter than the one before.
func (c *composer) shorterTitles() []layout.Block {
	o, e := layout.ParaOpts{Ref: c.Job.Order.At}, layout.ParaOpts{Ref: c.Job.Equipment.At}
	name, tag := c.Line(0, c.machine(c.Span), e), c.Words(layout.Head, c.Job.Equipment.Tag).Tagged(e.Ref)
	number := c.Words(layout.Body, c.Job.Order.Number).Tagged(o.Ref)
	return []layout.Block{
		layout.Level(titleGap, name, c.Line(0, c.number(c.Span), o)),
		layout.Level(titleGap, name, number),
		layout.Level(titleGap, tag, number),
	}
}

// inHeadLine sets the line: the plate, machine and job, and at the right end the edition and
// the page.
func (c *composer) inHeadLine(plate, titles layout.Block, page, total int) layout.Block {
	room := c.listTitles(plate.W)
	return layout.Middle(0, plate, layout.Space(plateGap, 1), titles.Fill(room, titles.H, 0, 0), layout.Space(titleGap, 1),
		layout.Level(titleGap, c.edition(), c.pageNo(page, total)))
}

// workHead is the plate, machine and job of a sheet of work in one line, and the room for
// the section that goes on. Where several sheets share a page its plate names them if the
// head is as high as elsewhere, else the one that the page begins with.
func (c *composer) workHead(title string, page, total int) layout.Block {
	edition := c.edition()
	set := func(title string) layout.Block {
		plate := c.plate(title, linePlateH)
		titles := c.titlesInLine(c.Span - plate.W - plateGap - c.pageNoWidth() - 2)
		line := layout.Middle(0, plate, layout.Space(plateGap, 1), titles, layout.Space(2, 1), c.pageNo(page, total))
		return layout.Above(0, line, edition.Fill(c.Span, max(runningH, edition.H), 1, 0.5))
	}
	begins, _, _ := strings.Cut(title, "\n")
	one := set(strings.TrimRight(begins, " ·–"))
	if both := set(strings.ReplaceAll(title, "\n", " ")); both.H <= one.H && both.W <= one.W+0.01 {
		return both
	}
	return one
}

// plate is the plate that names the sheets of a page.
func (c *composer) plate(title string, high layout.Mm) layout.Block {
	plate := c.plateText(title).Heading(1).Pad(0, plateAbout/2, 0, plateAbout/2)
	return plate.Fill(max(plate.W, 30), high, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1.5})
}

// plateAbout is the room of a plate left and right of its text together.
const plateAbout layout.Mm = 8

// running is the room for the section that goes on, in the last line of the head of a
// sheet of work: its width, 0 for none, and how far it begins above the flow.
func (c *composer) running() (width, up layout.Mm) {
	edition := c.edition()
	if edition.H > runningH {
		return 0, 0
	}
	return c.Span - edition.W - titleGap, runningH + underHead
}

// The code of a page stands in the margin for the binder at the foot of the page: there it
// takes no room of the sheet, and is clear of the holes (ISO 838, four of them, or the three
// of North America) and of a staple at the top. Its white margin ends where the sheet begins.

// withCode sets the code of a page beside the end of its foot.
func (c *composer) withCode(foot layout.Block, page, total int) layout.Block {
	code := c.QRModules(c.pageCode(page, total), leastModule, c.Job.Order.At)
	at := code.At(-code.W, foot.H-code.H+quietOf(code))
	at.W, at.H = foot.W, foot.H
	return layout.Overlay(foot, at)
}

// withCodeAbove sets the code of a page across above the left end of its head: on the paper
// it stands where it stands on all others.
func (c *composer) withCodeAbove(head layout.Block, page, total int) layout.Block {
	code := c.QRModules(c.pageCode(page, total), leastModule, c.Job.Order.At)
	at := code.At(-quietOf(code), -code.H)
	at.W, at.H = head.W, head.H
	return layout.Overlay(head, at)
}

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
func (c *composer) edition() layout.Block { return c.Fixed(editionKey{}, c.setEdition) }

type editionKey struct{}

func (c *composer) setEdition() layout.Block {
	at := layout.ParaOpts{Align: layout.RightEnd, Ref: c.Job.Order.At}
	runs := []layout.Run{layout.T(layout.Body, c.revision()+"  "), layout.T(layout.CodeText, c.Job.Digest)}
	if one := c.Line(0, runs, at); one.W <= editionW {
		return one
	}
	return c.Para(editionW, runs, at)
}

// editionW is the most that they take in one line.
const editionW layout.Mm = 54

// quietOf is the white margin of a code, in which nothing is printed.
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
