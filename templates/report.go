package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// ComposeReport sets the report of what was found and left, for the history of the
// machine: o.Filled is what was read, o.Last what was read at earlier outages.
func ComposeReport(j *job.Job, o Options, m layout.Measurer) (*layout.Doc, source.Problems) {
	w, _ := o.Paper.Inner()
	c := &composer{
		Composer: &block.Composer{Setter: layout.NewSetter(m, layout.Pen{Comma: decimalComma(j, inLanguage(j))}), Job: j, W: inLanguage(j), Span: w, Filled: o.Filled, Last: o.Last},
		faces:    m, paper: o.Paper, draft: o.Draft,
	}
	title := c.W.Report.Title
	pages := layout.Paginate(o.Paper, []layout.Sheet{{
		Name: "report", Title: title, Pieces: c.report(),
		Head: func(page, total int) layout.Block { return c.head(title, 0, false, page, total) },
		Foot: func(page, total int) layout.Block { return c.reportFoot() },
	}})
	return c.doc(pages.Frames, pages.Outline), problems(j, false, pages.Misfits, nil)
}

// reportFoot says who typed what the report tells.
func (c *composer) reportFoot() layout.Block {
	o := c.Job.Order
	ident := o.Number + " " + o.Revision + " · " + c.Job.Digest
	left := c.typedBy(c.Span - c.Width(layout.CodeText, ident) - 6)
	right := c.Line(c.Span-left.W-3, []layout.Run{layout.T(layout.CodeText, ident)}, layout.ParaOpts{Align: layout.RightEnd, Ref: o.At})
	return layout.Beside(3, left, right).Pad(layout.GapY, 0, 0, 0)
}

// The columns of the report beside that of the position, which takes the rest.
var reportWidths = []layout.Mm{17, 22, 17, 22, 30, 17, 19}

// report is every reading of the job, dimension by dimension, then the plots.
func (c *composer) report() []layout.Piece {
	w := c.W
	out := []layout.Piece{c.RuleLine(w.Report.Rule + c.reportFacts())}
	head := c.reportLine([]string{"", w.Report.Found, w.Report.Verdict, w.Report.Left, w.Report.Verdict, w.Report.Last, w.Report.Change, w.Report.Wear}, layout.SubBold)
	head = layout.Above(0.5, head, c.Rule(layout.Heavy))
	out = append(out, layout.Piece{Block: head, KeepNext: true})
	lines := c.Filled.Lines(c.Last)
	for i := 0; i < len(lines); {
		k := i
		for k < len(lines) && lines[k].Dim == lines[i].Dim {
			k++
		}
		out = append(out, c.reportDim(&head, lines[i:k])...)
		i = k
	}
	return append(out, c.plots(lines)...)
}

// reportFacts are the running hours, and the outage that this one is compared with.
func (c *composer) reportFacts() string {
	w := c.W
	text := ""
	if h := c.Filled.Values.Hours; h != nil {
		text += " " + w.Report.Hours.With(h.Print())
	} else {
		text += " " + w.Report.HoursMissing
	}
	if c.Last == nil {
		return text + " " + w.Report.NoLast
	}
	return text
}

// reportDim is one dimension: its name, limit and verdict, then a line a reading.
func (c *composer) reportDim(head *layout.Block, lines []filled.Line) []layout.Piece {
	d := lines[0].Dim
	runs := []layout.Run{layout.T(layout.Strong, d.Mark), layout.T(layout.SubBold, "  "+d.What)}
	limit := c.W.Common.RecordOnly
	switch {
	case len(d.LeftBy) > 0:
		limit = dimension.ByPosition(c.Composer, d, d.LeftBy)
	case d.Left != nil:
		limit = dimension.PlainWords(c.W, d.Left)
	case len(d.FoundBy) > 0:
		limit = dimension.ByPosition(c.Composer, d, d.FoundBy)
	case d.Found != nil && d.Found.Kind != reading.Record:
		limit = dimension.PlainWords(c.W, d.Found)
	}
	if d.Reuse != nil {
		limit += c.W.Common.Semicolon + dimension.OldWords(c.W, c.W.Common.OldPart, d.Reuse, dimension.WornWords(c.Composer, d, d.Reuse))
	}
	runs = append(runs, layout.T(layout.Sub, "  "+limit))
	if digits := d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction; digits && limit == c.W.Common.RecordOnly {
		runs = append(runs, layout.T(layout.Sub, ", "+c.W.Unit(d.Box.Unit.Print())))
	}
	for _, when := range []job.When{job.AsFound, job.AsLeft} {
		if v, there := c.Filled.Verdict(d, when); there && v.Bad() && len(v.Actions) > 0 {
			runs = append(runs, layout.T(layout.Sub, "  "), layout.Run{Text: strings.TrimRight(c.sideWord(when)+c.W.Common.Colon, " "), Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.SubBold, " "+strings.Join(v.Actions, c.W.Common.Semicolon)))
		}
	}
	name := c.Para(c.Span, runs, layout.ParaOpts{Ref: d.At})
	out := []layout.Piece{{Block: name, Gap: 2.2, KeepNext: true, Under: []*layout.Block{head}}}
	for _, l := range lines {
		out = append(out, layout.Piece{Block: c.reading(l), Gap: 0.3, Under: []*layout.Block{head, &name}})
	}
	return out
}

// reading is the line of one reading.
func (c *composer) reading(l filled.Line) layout.Block {
	w := c.W
	cells := []string{l.Position, l.FoundText, w.Report.Outcome[l.FoundVerdict], l.LeftText, w.Report.Outcome[l.LeftVerdict], "", "", filled.RateText(l)}
	if _, reads := c.Filled.Verdict(l.Dim, job.AsFound); !reads {
		cells[2] = ""
	}
	if _, reads := c.Filled.Verdict(l.Dim, job.AsLeft); !reads {
		cells[4] = ""
	}
	if l.Last != "" {
		cells[5] = l.Last + ", " + l.LastOn[:min(len(l.LastOn), len("2026-03"))]
	}
	if text := filled.ChangeText(l); text != "" {
		cells[6] = text
	}
	return c.reportLine(cells, layout.Sub)
}

// widestInReport is wider than any letter of a cell.
const widestInReport layout.Mm = 2.8

// reportLine sets the cells of one line beside each other; a verdict that is out is set
// white on black.
func (c *composer) reportLine(cells []string, st layout.Style) layout.Block {
	rest := c.Span
	for _, w := range reportWidths {
		rest -= w
	}
	var row []layout.Block
	for i, text := range cells {
		w := rest
		if i > 0 {
			w = reportWidths[i-1]
		}
		run := layout.T(st, layout.Loose(text, int((w-2)/widestInReport)))
		switch text {
		case c.W.Report.Outcome[filled.Out], c.W.Report.Outcome[filled.Mend]:
			run = layout.Run{Text: text, Style: layout.SubBold, Deco: layout.Inverse}
		}
		b := c.Para(w-2, []layout.Run{run}, layout.ParaOpts{})
		row = append(row, b.Fill(w, b.H, 0, 0))
	}
	line := layout.Beside(0, row...)
	return line.Under(layout.Drawn(c.Span, line.H, layout.Item{Y: line.H + 0.15, Shape: layout.Line{DX: c.Span, Weight: layout.Inner, Ink: layout.Faint}}))
}
