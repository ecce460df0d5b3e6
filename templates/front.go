package templates

import (
	"strconv"
	"strings"

	"matchmark/layout"
)

// front sets the front sheet: what the job is, what the pack holds, what the
// check warned of, how to read the marks, and who released it.
func front(c *composer) []layout.Piece {
	blocks := []layout.Block{layout.Above(1, c.identity(), c.changedSince())}
	blocks = append(blocks, c.chosen())
	blocks = append(blocks, c.warningList()...)
	listed := len(blocks) - 1 // rows of the list stand close below each other
	blocks = append(blocks, c.inThePack())
	blocks = append(blocks, c.sectionList()...)
	blocks = append(blocks, c.legend(), c.checkBar(), c.release())
	var out []layout.Piece
	for i, b := range blocks {
		gap := layout.Mm(1.8)
		if i == 0 || i > 1 && i <= listed {
			gap = 1.5
		}
		out = append(out, layout.Piece{Block: b, Gap: gap, KeepNext: i < len(blocks)-1}) // on one page, where it goes on one
	}
	return out
}

// identity is machine and job in full.
func (c *composer) identity() layout.Block {
	e, o, w := c.Job.Equipment, c.Job.Order, c.W
	var facts []string
	add := func(name, value string) {
		if value != "" {
			facts = append(facts, name+" "+value)
		}
	}
	add(w.Front.Serial, e.Serial)
	add(w.Front.Maker, e.Maker)
	add(w.Front.MachineType, e.Type)
	add(w.Front.Location, e.Location)
	issued := w.Common.Revision.With(o.Revision) + " · " + w.Front.Issued + " " + o.Issued
	if o.Planner != "" {
		issued += " · " + w.Front.PlannedBy + " " + o.Planner
	}
	var lines []layout.Block
	if site := c.Job.Site; site.Logo != nil {
		lines = append(lines, logo(site))
	}
	if company := c.Job.Site.Company; company != "" {
		lines = append(lines, c.Para(c.Span, []layout.Run{layout.T(layout.Strong, company)}, layout.ParaOpts{}))
	}
	lines = append(lines,
		c.Para(c.Span, []layout.Run{layout.T(layout.Section, e.Tag+"  "+e.Name)}, layout.ParaOpts{Ref: e.At}).Heading(2),
		c.Para(c.Span, []layout.Run{layout.T(layout.Body, strings.Join(facts, " · "))}, layout.ParaOpts{Ref: e.At}),
		c.Para(c.Span, []layout.Run{layout.T(layout.Section, o.Number+"  "+o.Title),
			layout.T(layout.Body, "  "+issued)}, layout.ParaOpts{Ref: o.At}).Heading(2))
	if o.Scope != "" {
		lines = append(lines, c.Para(c.Span, []layout.Run{layout.T(layout.Strong, w.Front.Scope+w.Common.Colon), layout.T(layout.Body, o.Scope)}, layout.ParaOpts{Ref: o.At}))
	}
	return layout.Above(1, lines...)
}

// inThePack lists the sheets with their pages, in columns, and how many tags
// there are.
func (c *composer) inThePack() layout.Block {
	const columns = 3
	width := (c.Span - (columns-1)*layout.GapX) / columns
	var lines []layout.Block
	for _, k := range kinds() {
		span, ok := c.sheet[k.name]
		if !ok && c.sheet != nil {
			continue // this job has no such sheet
		}
		pages := "00"
		if ok {
			pages = strconv.Itoa(span[0])
			if span[1] > span[0] {
				pages += "–" + strconv.Itoa(span[1])
			}
		}
		lines = append(lines, c.Line(width, []layout.Run{layout.T(layout.Body, c.W.Front.SheetLine.With(k.title(c.W), pages))}, layout.ParaOpts{}))
	}
	n := strconv.Itoa(c.Job.Tagged())
	tags := c.W.Front.TagsLine.With(n, n)
	if spare := c.Job.SpareTags(); spare > 0 {
		tags += c.W.Front.SpareTags.With(strconv.Itoa(spare))
	}
	lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Body, tags)}, layout.ParaOpts{}))
	return layout.Above(1, c.Heading(c.W.Front.InThisPack), columnsOf(lines, columns, width, 0.2))
}

// checkBar is a bar of 50 mm that shows whether the printer has scaled the page; beside it
// stands on how many sides of the paper the pack goes.
func (c *composer) checkBar() layout.Block {
	const long = 50
	bar := layout.Drawn(long, 5,
		layout.Item{Role: "check bar", Y: 2.5, Shape: layout.Line{DX: long, Weight: layout.Outline}},
		layout.Item{Shape: layout.Line{DY: 5, Weight: layout.Outline}},
		layout.Item{X: long, Shape: layout.Line{DY: 5, Weight: layout.Outline}})
	sides := c.W.Front.SingleSided
	if c.duplex {
		sides = c.W.Front.BothSides
	}
	text := c.Para(c.Span-long-8, []layout.Run{layout.T(layout.Body, c.W.Front.CheckBar+" "), layout.T(layout.Strong, sides)}, layout.ParaOpts{})
	return layout.Middle(8, bar, text)
}

// release is who released the pack for work.
func (c *composer) release() layout.Block { return c.signers(c.W.Front.Released) }

// signers are two rows for role, name, signature and date under a heading.
func (c *composer) signers(heading string) layout.Block {
	row := func() layout.Block {
		role := c.WideBox(layout.RoleWords, 45, 1, c.W.Common.Role, nil)
		name := c.WideBox(layout.RoleName, c.Span-45-24-2*layout.GapX, 1, c.W.Common.NameSign, nil)
		return layout.Beside(layout.GapX, role, name, c.Box(layout.RoleDate, c.W.Common.Date, nil))
	}
	return layout.Above(layout.GapY, c.Heading(heading), row(), row())
}
