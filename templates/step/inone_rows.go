package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// signBoxes are the boxes in the row of a place: who did it when, and how long it took. In
// half the width the box for that may stand below the number.
func (t *together) signBoxes(st *job.Step) (number, boxes layout.Block) {
	c := t.Composer
	number = t.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At}).Heading(3)
	if !st.TakesTime() {
		return number, signColumn(c, st, false)
	}
	hours := c.WideBox(layout.RoleWords, block.NumberWidth-2, 1, c.W.Step.Hours, st.At)
	if t.half {
		number = layout.Above(0.4, number, hours)
		number.W = block.NumberWidth
		return number, signColumn(c, st, false)
	}
	return number, signColumn(c, st, false, hours)
}

// placeLines are the place of a step and what is said of it alone.
func (t *together) placeLines(st *job.Step, width layout.Mm) []layout.Block {
	c := t.Composer
	runs := []layout.Run{layout.T(layout.Strong, placeOf(st))}
	if !t.sameText() {
		runs = append(runs, layout.T(layout.Body, "  "+Text(c, st)))
		runs = append(runs, second(c, st)...)
	}
	if st.Missed != "" && !alike(t.steps, func(st *job.Step) string { return st.Missed }) {
		runs = append(runs, layout.T(layout.Body, "  "), missed(c, st))
	}
	var own []string
	for _, x := range noteParts(c, st) {
		if !slices.Contains(t.common, x) {
			own = append(own, x)
		}
	}
	if len(own) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(own, " · ")))
	}
	words := c.Para(width, runs, layout.ParaOpts{Ref: st.At})
	return slices.Concat([]layout.Block{words}, goneLines(c, st, width), underWords(c, st, width))
}

// signedRows are the rows of the places with the boxes of who did it, two beside each other
// where that saves height; a page may end between the two, which then have the whole width.
func (t *together) signedRows(lines [][]run) []layout.Piece {
	half := *t.Composer
	half.Span = (t.Span - textGap) / 2
	narrow := *t
	narrow.Composer, narrow.half = &half, true
	var out []layout.Piece
	for i := 0; i < len(t.steps); i += 2 {
		var full []layout.Piece
		var rows, cells []layout.Block
		wide := false
		for k := i; k < min(i+2, len(t.steps)); k++ {
			row := t.signedRow(k, lines[k])
			full, rows = append(full, row...), append(rows, stacked(row))
			cell := stacked(narrow.signedRow(k, lines[k]))
			wide = wide || !cell.W.Fits(half.Span) || len(cell.Misfits()) > 0
			cell.W = half.Span
			cells = append(cells, cell)
		}
		pair := layout.Piece{Block: layout.Beside(textGap, cells...), Gap: placeGap, Group: i}
		if wide || len(cells) < 2 || pair.Gap+pair.Block.H > Height(full)-rowSaves {
			out = append(out, full...)
			continue
		}
		pair.Block.SetPartings([]layout.Parting{{Upper: rows[0], Lower: rows[1], Apart: true, Led: true}})
		out = append(out, pair)
	}
	return out
}

// placeGap is the room above the row of a place, more where boxes stand right above.
const placeGap layout.Mm = 1.2

// rowSaves is how much height places must save to stand beside each other: below each other
// they are found faster.
const rowSaves layout.Mm = 4

// stacked is one block of pieces, those that are too near each other apart.
func stacked(ps []layout.Piece) layout.Block {
	ps = slices.Clone(ps)
	apart(ps)
	var blocks []layout.Block
	for i, p := range ps {
		if i > 0 {
			p.Block = p.Block.Pad(p.Gap, 0, 0, 0)
		}
		blocks = append(blocks, p.Block)
	}
	return layout.Above(0, blocks...)
}

// signedRow is the row of a place: the number, the place, what is said of it alone, and what
// is done there first.
func (t *together) signedRow(i int, rs []run) []layout.Piece {
	st := t.steps[i]
	number, boxes := t.signBoxes(st)
	width := t.Span - block.NumberWidth - boxes.W - textGap
	text := t.placeLines(st, width)
	n := inRow(rs)
	beside := layout.Above(lineGap, text...)
	below := t.belowRow(rs[:n])
	height := func(lines layout.Block, rest []layout.Piece) layout.Mm {
		h := max(lines.H, boxes.H) + Height(rest)
		if len(rest) > 0 {
			h += nearer(layout.Beside(0, lines, boxes), rest[0])
		}
		return h
	}
	least := height(beside, below)
	for _, x := range shares(t.Composer, rs[:n])[1:] {
		lines := layout.Above(lineGap, append(text[:len(text):len(text)], runLines(x.beside, width)...)...)
		rest := t.belowRow(x.below)
		if h := height(lines, rest); h <= least+0.01 && len(lines.Misfits()) == 0 {
			beside, below, least = lines, rest, h
		}
	}
	row := layout.Beside(0, number, beside, layout.Space(textGap, 1), boxes)
	out := []layout.Piece{{Block: row.Anchored("step " + st.No), Gap: placeGap, Group: i}}
	for _, p := range append(below, t.belowRow(rs[n:])...) {
		out[len(out)-1].KeepNext = true
		p.Group = i
		out = append(out, p)
	}
	return out
}

// belowRow are the pieces of runs below the row of a place. In half the width they begin
// below the number, so that they take as few lines as they do below each other.
func (t *together) belowRow(rs []run) []layout.Piece {
	if !t.half {
		return t.piecesOf(t.Composer, rs)
	}
	const out = block.NumberWidth - 4
	wider := *t.Composer
	wider.Span += out
	ps := t.piecesOf(&wider, rs)
	for i := range ps {
		ps[i].Block = ps[i].Block.At(-out, 0)
	}
	return ps
}

// piecesOf are the pieces of runs, in the column of the boxes, low lines beside each other.
func (t *together) piecesOf(c *block.Composer, rs []run) []layout.Piece {
	var out []layout.Piece
	lines := map[int]run{}
	for _, r := range rs {
		if r.noted != nil {
			r.blocks = r.noted(c)
		}
		for _, p := range runPieces(c, r) {
			if r.lines != nil || r.ticks {
				lines[len(out)] = r
			}
			out = append(out, p)
		}
	}
	return inOneRow(c, out, lines, nil)
}

// label is the number of a step with its place below it, in the column of the numbers.
func (t *together) label(st *job.Step) layout.Block {
	opts := layout.ParaOpts{Ref: st.At}
	place := t.Para(block.NumberWidth-1, []layout.Run{layout.T(layout.Sub, ownLabel(st))}, opts)
	return layout.Above(0, t.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, opts).Heading(3), place)
}

// ownLabel is the label of a step's place, without that of its section.
func ownLabel(st *job.Step) string {
	return strings.TrimPrefix(st.Place.Label, st.Section.Place.Label+"-")
}

// placeRows are the rows of the places with what is done there later, each with its number;
// short ones two beside each other.
func (t *together) placeRows(lines [][]run) []layout.Piece {
	units := func(c *block.Composer) (out []layout.Block, high layout.Mm, wide bool) {
		for i, rs := range lines {
			if len(rs) == 0 {
				continue
			}
			var blocks []layout.Block
			for _, p := range t.piecesOf(c, rs) {
				if len(blocks) > 0 {
					p.Block = p.Block.Pad(p.Gap, 0, 0, 0)
				}
				blocks = append(blocks, p.Block)
			}
			unit := layout.Overlay(t.label(t.steps[i]), layout.Above(0, blocks...))
			wide = wide || !unit.W.Fits(c.Span) || len(unit.Misfits()) > 0
			unit.W = c.Span
			out, high = append(out, unit), high+unit.H+1
		}
		return out, high, wide
	}
	rows, high, _ := units(t.Composer)
	half := *t.Composer
	half.Span = (t.Span - textGap) / 2
	if two, h, wide := units(&half); !wide && h/2 < high {
		rows = nil
		for i := 0; i < len(two); i += 2 {
			rows = append(rows, layout.Beside(textGap, two[i:min(i+2, len(two))]...))
		}
	}
	var out []layout.Piece
	for _, b := range rows {
		out = append(out, layout.Piece{Block: b, Gap: 1.5})
	}
	return out
}
