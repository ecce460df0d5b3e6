package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Measures of a step row.
const (
	signOffW  layout.Mm = 36 // the least for some words, as wide as initials and time
	mostExtra layout.Mm = 50 // the most that the caption of a box makes it wide
	textGap   layout.Mm = 5
)

// stepRow is the head of a step: number, what to do, the lines of its first acts, who
// did it when, and the box for readings that were not taken. The lines that do not stand
// beside the boxes are blocks below it, each of one of the runs that are told with them. Of all
// ways the one that takes least height.
func stepRow(c *block.Composer, st *job.Step, first []run, reason bool) (row layout.Block, below []layout.Piece, of []run) {
	least := layout.Mm(0)
	all := shares(c, first)
	take := func(r layout.Block, x share) {
		rest := slices.Concat(x.lines...)
		misfits := len(r.Misfits())
		for _, p := range rest {
			misfits += len(p.Block.Misfits())
		}
		h := r.H + x.high + 1000*layout.Mm(misfits) // what does not fit is told only where nothing fits
		if len(rest) > 0 && (row.Empty() || h < least-0.5) {
			h += nearer(r, rest[0])
		}
		if row.Empty() || h < least-0.5 {
			row, below, of, least = r, rest, nil, h
			for i, lines := range x.lines {
				of = append(of, slices.Repeat(x.below[i:i+1], len(lines))...)
			}
		}
	}
	words := wordsOfStep(c, st)
	for _, s := range signOffs(c, st, reason) {
		width := c.Span - block.NumberWidth - s.boxes.W - textGap
		lines := textLines(c, st, words, width)
		for _, x := range all {
			text := layout.Above(lineGap, append(lines[:len(lines):len(lines)], runLines(x.beside, width)...)...)
			text.W = width
			take(layout.Beside(0, s.number, text, layout.Space(textGap, 1), s.boxes), x)
		}
		take(around(c, st, words, s), all[0])
	}
	return row.Pad(0, 0, 0.2, 0).Anchored("step " + st.No), below, of
}

// lineGap is the room between the lines of a step.
const lineGap layout.Mm = 0.4

// A signOff is one way to set the boxes in the head of a step: those below its number,
// and those at the right end.
type signOff struct{ number, boxes layout.Block }

// signOffs are the ways to set the boxes of a step, the cells of a small table: initials and
// time with the others below them, or all in one row, for a short text; the hours worked
// below the number or in that row too.
func signOffs(c *block.Composer, st *job.Step, reason bool) []signOff {
	number := c.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At}).Heading(3)
	hours := layout.Block{}
	if st.TakesTime() {
		hours = c.WideBox(layout.RoleWords, block.NumberWidth-2, 1, c.W.Step.Hours, st.At)
	}
	below := layout.Above(0.4, number, hours)
	below.W = block.NumberWidth
	out := []signOff{{below, signColumn(c, st, reason)}}
	row, single := signRow(c, st, reason)
	if single {
		out = append(out, signOff{below, row})
	}
	if !hours.Empty() {
		out = append(out, signOff{number, signColumn(c, st, reason, hours)})
		if single {
			out = append(out, signOff{number, layout.Beside(0, hours, row)})
		}
	}
	return out
}

// An extra is a box of a step besides initials and time.
type extra struct{ role, caption string }

func extras(c *block.Composer, st *job.Step, reason bool) []extra {
	var out []extra
	if st.Check != "" {
		out = append(out, extra{layout.RoleInitials, c.W.Step.CheckedBy.With(st.Check)})
	}
	if st.Photo {
		out = append(out, extra{layout.RoleWords, c.W.Step.Photo})
	}
	if reason {
		out = append(out, extra{layout.RoleWords, c.W.Step.NotTaken})
	}
	return out
}

// extraWidth is the width of a box with its caption, no less than of some words.
func extraWidth(c *block.Composer, e extra) layout.Mm {
	return max(signOffW, min(c.Width(layout.Caption, e.caption)+2.2, mostExtra))
}

// signColumn are the boxes below each other, initials and time in the first row after those
// that are given.
func signColumn(c *block.Composer, st *job.Step, reason bool, before ...layout.Block) layout.Block {
	signed := layout.Beside(0, append(before, c.Box(layout.RoleInitials, c.W.Common.Initials, st.At))...)
	width := signed.W + c.Box(layout.RoleTime, "", st.At).W
	for _, e := range extras(c, st, reason) {
		width = max(width, extraWidth(c, e))
	}
	out := []layout.Block{layout.Beside(0, signed, c.WideBox(layout.RoleTime, width-signed.W, 1, c.W.Common.Time, st.At))}
	for _, e := range extras(c, st, reason) {
		out = append(out, c.WideBox(e.role, width, 1, e.caption, st.At))
	}
	return layout.Above(0, out...)
}

// signRow are the boxes in one row, where there is a single one besides initials and time.
func signRow(c *block.Composer, st *job.Step, reason bool) (row layout.Block, single bool) {
	all := extras(c, st, reason)
	if len(all) != 1 {
		return layout.Block{}, false
	}
	return layout.Beside(0, c.WideBox(all[0].role, extraWidth(c, all[0]), 1, all[0].caption, st.At),
		c.Box(layout.RoleInitials, c.W.Common.Initials, st.At), c.Box(layout.RoleTime, c.W.Common.Time, st.At)), true
}

// around is the head of a step whose words run on below the boxes over the whole width.
func around(c *block.Composer, st *job.Step, words stepWords, s signOff) layout.Block {
	width := c.Span - block.NumberWidth
	beside := width - s.boxes.W - textGap
	asked := layout.Above(lineGap, branchLines(c, st, beside)...)
	notch := s.boxes.H
	if !asked.Empty() {
		notch = max(0, notch-asked.H-lineGap)
	}
	text := c.Para(width, words.in(beside), layout.ParaOpts{Ref: st.At, NotchW: s.boxes.W + textGap, NotchH: notch})
	text = layout.Above(lineGap, asked, text.Pad(0, 0, max(0, notch-text.H), 0))
	text = layout.Above(lineGap, append([]layout.Block{text}, underWords(c, st, width)...)...)
	row := layout.Overlay(s.number, text.At(block.NumberWidth, 0), s.boxes.At(c.Span-s.boxes.W, 0))
	row.W, row.H = c.Span, max(s.number.H, text.H)
	return row
}

// textLines are the lines of a step that say what to do, after what it comes and where it
// may be moved, and what is gone after it.
func textLines(c *block.Composer, st *job.Step, words stepWords, width layout.Mm) []layout.Block {
	lines := append(branchLines(c, st, width), c.Para(width, words.in(width), layout.ParaOpts{Ref: st.At}))
	return append(lines, underWords(c, st, width)...)
}

// underWords are the lines below the words of a step: the author's remark, the loads that
// hang, the guards that a put-back row has not.
func underWords(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var lines []layout.Block
	if st.Note != "" {
		lines = append(lines, c.Para(width, remark(c, st), layout.ParaOpts{Ref: st.At}))
	}
	lines = append(lines, hangingLines(c, st, width)...)
	return append(lines, without(c, st, width)...)
}

// runLines are the lines of some runs in one width. A ruled table stands below a line with boxes
// as boxes stand below each other.
func runLines(rs []run, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, r := range rs {
		lines := r.lines(width)
		if !r.ruled || len(lines) == 0 {
			out = append(out, lines...)
			continue
		}
		table, gap := layout.Above(0, lines...), blockGap
		if n := len(out); n > 0 {
			gap += nearer(out[n-1], layout.Piece{Block: table, Gap: gap})
		}
		out = append(out, table.Pad(gap-lineGap, 0, 0, 0))
	}
	return out
}

// linesBelow are the lines of runs over the whole width beside the numbers of steps,
// short ones several in a row. A page may end between the rows of a ruled table, and between
// those of boxes to tick.
func linesBelow(c *block.Composer, rs []run) []layout.Piece {
	width := c.Span - block.NumberWidth
	var out []layout.Piece
	for _, r := range rs {
		if r.ruled {
			for i, row := range r.lines(width) {
				p := layout.Piece{Block: row.At(block.NumberWidth, 0)}
				if i == 0 {
					p.Gap = blockGap // more where boxes stand right above
				}
				out = append(out, p)
			}
			continue
		}
		for _, row := range rowsOf(r, width) {
			out = append(out, layout.Piece{Block: row.At(block.NumberWidth, 0), Gap: lineGap})
		}
	}
	return out
}

// inPairs sets the lines of a run in two columns, read from left to right.
func inPairs(r run, width layout.Mm) []layout.Block {
	half := (width - textGap) / 2
	lines := slices.Clone(r.lines(half))
	for i, l := range lines {
		lines[i] = l.Fill(half, l.H, 0, 0)
	}
	return besideAndBelow(lines, width)
}

// asWide sets the lines from left to right, each as wide as what stands in it.
func asWide(lines []layout.Block, width layout.Mm) []layout.Block {
	out := slices.Clone(lines)
	for i, l := range out {
		out[i].W = block.InkRight(l)
	}
	return besideAndBelow(out, width)
}

// twoLines is the height of two lines of text, that of a box for a count.
const twoLines layout.Mm = 9.1

// inRows sets the lines of a run from left to right, each as narrow as goes in two lines
// of text, or in as many as it takes over the whole width.
func inRows(r run, width layout.Mm) []layout.Block {
	const parts = 12
	lines := slices.Clone(r.lines(width))
	if len(lines) < 2 {
		return lines
	}
	most := make([]layout.Mm, len(lines))
	for i, l := range lines {
		most[i] = max(l.H, twoLines) + 0.05
		lines[i] = l.Fill(width, l.H, 0, 0)
	}
	for n := parts - 1; n >= 3; n-- {
		one := (width+layout.GapX)*layout.Mm(n)/parts - layout.GapX // so that halves and thirds fill a row
		some := false
		for i, l := range r.lines(one) {
			if l.H <= most[i] && l.W.Fits(one) && len(l.Misfits()) == 0 && lines[i].W > one {
				lines[i], some = l.Fill(one, l.H, 0, 0), true
			}
		}
		if !some {
			break // nor in less
		}
	}
	return besideAndBelow(lines, width)
}
