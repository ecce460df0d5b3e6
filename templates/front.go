package templates

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
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
		lines = append(lines, c.Para(c.Span, []layout.Run{layout.T(layout.Strong, w.Front.Scope+": "), layout.T(layout.Body, o.Scope)}, layout.ParaOpts{Ref: o.At}))
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

// legend explains the marks.
func (c *composer) legend() layout.Block {
	var runs []layout.Run
	for _, l := range c.W.Front.Marks {
		if !marksOf(c.Job)[l.Letter] {
			continue
		}
		sep := ""
		if len(runs) > 0 {
			sep = " · "
		}
		runs = append(runs, layout.T(layout.Body, sep), layout.T(layout.Strong, l.Letter), layout.T(layout.Body, " "+l.Means))
	}
	runs = append(runs, append(c.placeLegend(), c.spotLegend()...)...)
	runs = append(runs, layout.T(layout.Body, ". "+c.markSentence()+" "), layout.T(layout.CodeText, c.Job.Digest), layout.T(layout.Body, " "+c.W.Front.PackSign))
	return layout.Above(1, c.Heading(c.W.Front.HowToRead),
		c.Para(c.Span, runs, layout.ParaOpts{}),
		c.Para(c.Span, []layout.Run{layout.T(layout.Strong, c.W.Front.Planning)}, layout.ParaOpts{}))
}

// marksOf are the letters of the marks that a pack has. Lines for what is found on the day are
// in each.
func marksOf(j *job.Job) map[string]bool {
	out := map[string]bool{
		"D": len(j.Dims) > 0, "C": len(j.Containers) > 0, "B": len(j.Bigs) > 0, "Y": len(j.Spots) > 0, "W": len(j.Holds) > 0,
		"S": len(j.Sets) > 0, "K": len(j.Stacks) > 0, "J": len(j.Joints) > 0, "A": len(j.Alignments) > 0, "L": len(j.Lifts) > 0,
		"H": len(j.Heats) > 0, "X": true, spareBackKey: true,
	}
	for _, s := range j.Sections {
		out["R"] = out["R"] || s.Back
	}
	for _, t := range j.Tags {
		out["SCRAP"] = out["SCRAP"] || t.Scrap
	}
	return out
}

// markSentence says how marks are read, with a place of this job.
func (c *composer) markSentence() string {
	for _, p := range c.placesUsed() {
		return c.W.Front.MarkStays + " " + c.W.Front.PlaceBehindMark.With(p.Label)
	}
	return c.W.Front.MarkStays
}

// placesUsed are the places that something of the job stands at.
func (c *composer) placesUsed() []job.Place {
	used := map[string]bool{}
	add := func(p job.Place) {
		for _, k := range p.Keys {
			used[k] = true
		}
	}
	j := c.Job
	for _, d := range j.Dims {
		add(d.Place)
	}
	for _, p := range j.Parts {
		add(p.Place)
	}
	for _, x := range j.Containers {
		add(x.Place)
	}
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			add(st.Place)
		}
	}
	for _, x := range j.Joints {
		add(x.Place)
	}
	for _, o := range j.Openings {
		add(o.Place)
	}
	return slices.DeleteFunc(slices.Clone(j.Places), func(p job.Place) bool { return !used[p.Label] })
}

// placeLegend says what the short names of places mean and from where they are seen; of
// those that are told by a number, from where they are counted and seen, if that is said.
func (c *composer) placeLegend() []layout.Run {
	var out []string
	var at source.Pos // of the first: they are told in one line
	seen := ""
	used := c.placesUsed()
	for i, p := range used {
		if len(p.Label) > 0 && unicode.IsDigit(rune(p.Label[0])) || p.Name == p.Label {
			if i == 0 || !sameSides(used[i-1], p) {
				out, seen = append(out, c.numberedPlaces(used[i:])...), p.ViewedFrom
			}
			continue
		}
		text := p.Label + " " + p.Name
		if p.ViewedFrom != "" && p.ViewedFrom != seen {
			text += ", " + c.W.Common.SeenFrom.With(p.ViewedFrom)
		}
		seen = p.ViewedFrom
		out = append(out, text)
	}
	if len(used) > 0 {
		at = used[0].At
	}
	if len(out) == 0 {
		return nil
	}
	return []layout.Run{{Text: " · " + strings.Join(out, " · "), Style: layout.Body, Ref: at}}
}

// spotLegend says of lay-down spots on what a part is laid there and what the floor carries,
// unless the sheet of a lift tells it.
func (c *composer) spotLegend() []layout.Run {
	var out []layout.Run
	for _, s := range c.Job.Spots {
		var facts []string
		if s.Support != "" {
			facts = append(facts, c.W.Common.On.With(s.Support))
		}
		if s.Floor != "" {
			facts = append(facts, c.W.Step.Floor.With(s.Floor))
		}
		if len(facts) > 0 && !slices.ContainsFunc(c.Job.Lifts, func(l *job.Lift) bool { return l.LayDown == s }) {
			out = append(out, layout.Run{Text: " · " + s.Mark + " " + strings.Join(facts, ", "), Style: layout.Body, Ref: s.At})
		}
	}
	return out
}

// sameSides reports whether two places are counted and seen from the same side.
func sameSides(a, b job.Place) bool {
	return a.CountedFrom == b.CountedFrom && a.ViewedFrom == b.ViewedFrom
}

// numberedPlaces says from where the first of some places, and those behind it of the same
// sides, are counted and seen; nothing where neither is said.
func (c *composer) numberedPlaces(list []job.Place) []string {
	first, last := list[0], list[0]
	for _, p := range list[1:] {
		if !sameSides(first, p) {
			break
		}
		last = p
	}
	text := first.Label
	if last.Label != first.Label {
		text += " – " + last.Label
	}
	if first.CountedFrom != "" {
		text += ", " + c.W.Common.CountedFrom.With(first.CountedFrom)
	}
	if first.ViewedFrom != "" {
		text += ", " + c.W.Common.SeenFrom.With(first.ViewedFrom)
	}
	if first.CountedFrom+first.ViewedFrom == "" {
		return nil
	}
	return []string{text}
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
