package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// Measures of a ladder: the column of operation signs, and the width of one digit.
const (
	signCol layout.Mm = 6
	digitW  layout.Mm = 5.5
)

// ladders sets what is worked out by hand, once or for every position, the result box
// with its limit beside it if that is not told elsewhere.
func ladders(c *block.Composer, d *job.Dim, l *job.Ladder, s Side, told bool, width layout.Mm) []layout.Block {
	var out []layout.Block
	limit := ""
	switch {
	case told:
	case s.work.Late != nil:
	case d.Left != nil && d.Left.Kind == reading.Record:
	case d.Left != nil:
		limit = eachLimit(c.W, d.Left)
	case d.WatchedOnly():
		limit = eachLimit(c.W, d.Found)
	}
	names := []string{""}
	if l.Each {
		names = PositionNames(d.Positions)
	}
	for i, n := range names {
		end := ladderEnd{name: s.caption, position: n, at: i, limit: limit}
		if s.When != job.NoTime && !s.Copied {
			end.key = job.BlankKey(d.Mark, s.When, job.ResultBlank, i)
		}
		out = append(out, rungs(c, d, l, end, width))
	}
	return out
}

// eachLimit is the limit of each result; that of their mean, spread or sum stands
// beside the box of that.
func eachLimit(w *words.Catalogue, l *reading.Limit) string {
	one := *l
	one.Tests = slices.DeleteFunc(slices.Clone(l.Tests), func(t reading.Test) bool { return t.Group != reading.Each })
	if len(one.Tests) == 0 && len(l.Tests) > 0 {
		return ""
	}
	return PlainWords(w, &one)
}

// sumText is a sum in one line, with its signs.
func sumText(c *block.Composer, mark string, l *job.Ladder) string {
	return c.W.Ladder.ByHand.With(mark + " = " + strings.ReplaceAll(l.Text, " - ", " − "))
}

// roleSum is on the texts of ladders, so that a reader of the page can do the sums.
const roleSum = "sum"

// A ladderEnd is what is said of the result of a ladder: its name, the position
// it is for, the limit beside it, and the key of its box if it has one.
type ladderEnd struct {
	name, position, limit, key string
	at                         int // which position, from 0
}

// rungs sets the lines of one ladder below each other, or beside each other where that takes
// less height.
func rungs(c *block.Composer, d *job.Dim, l *job.Ladder, end ladderEnd, width layout.Mm) layout.Block {
	value, done := c.Shared(ladderKey{d, l, end}, func() any { return ladderSet{rungLines(c, d, l, end), rungsAcross(c, d, l, end)} })
	defer done()
	set := value.(ladderSet)
	best, saves := rungsBelow(c, d, set.lines, end, width), acrossSaves
	for _, across := range set.across {
		if one := rungsInRows(c, d, across, end, width); !one.Empty() && one.H < best.H-saves {
			best, saves = one, 0.5
		}
	}
	return best
}

// acrossSaves is how much height the lines of a sum must save to stand beside each other:
// below each other they are added up faster.
const acrossSaves layout.Mm = 1

// rungsBelow sets the lines of one ladder below each other, the decimal points of their
// last boxes in one column, the unit and the limit behind the result.
func rungsBelow(c *block.Composer, d *job.Dim, lines []rungLine, end ladderEnd, width layout.Mm) layout.Block {
	after := 0
	for _, r := range lines {
		after = max(after, lastAfter(r.Rung))
	}
	tail := unitAndLimit(c, d, end.limit, width)
	edge := width - signCol - tail.W - 2 - digitsBehind(after)
	out := layout.Block{}
	if end.position != "" {
		out = c.Words(layout.Strong, end.position)
	}
	for i, r := range lines {
		last := i == len(lines)-1
		row := besideBoxes(c, d, r.label, r.boxes, edge+digitsBehind(lastAfter(r.Rung)), width-signCol)
		sign := c.Line(signCol, []layout.Run{layout.T(layout.Limit, signText[r.Sign])}, layout.ParaOpts{Ref: d.At, Role: roleSum})
		if row.H <= lowBoxes {
			sign = sign.Pad(max(row.H-7, 0), 0, 0, 0)
		}
		row = layout.Beside(0, sign, row)
		if last && (row.W + 2 + tail.W).Fits(width) {
			row = layout.Beside(2, row, tail.Pad(max(row.H-7, 0), 0, 0, 0))
		} else if last {
			row = layout.Above(1, row, tail.Right(width))
		}
		gap := layout.GapY
		if i > 0 && !(hasBlank(r.Parts) && hasBlank(lines[i-1].Parts)) {
			gap = 0.8 // no box comes near another
		}
		out = layout.Above(gap, out, row)
	}
	return out
}

// unitAndLimit is what stands behind a result: its unit, and the limit beside it, as wide
// as they are or as there is room for.
func unitAndLimit(c *block.Composer, d *job.Dim, limit string, width layout.Mm) layout.Block {
	most := width / 3
	unit, opts := layout.T(layout.Body, c.W.Unit(d.Box.Unit.Print())), layout.ParaOpts{Ref: d.At}
	runs := []layout.Run{unit, layout.T(layout.Limit, "  "+limit)}
	if one := c.Line(0, runs, opts); one.W <= most {
		return one
	}
	// Below the unit rather than parted from its own.
	if whole := c.Line(0, []layout.Run{layout.T(layout.Limit, limit)}, opts); whole.W <= width/2 {
		return layout.Above(0, c.Line(0, []layout.Run{unit}, opts), whole)
	}
	return c.Para(most, runs, opts)
}

// signText are the operation signs as they stand before a line.
var signText = map[reading.Sign]string{reading.Plus: "+", reading.Minus: "−", reading.Equals: "="}

// lastAfter is how many decimals the last number of a line has.
func lastAfter(r reading.Rung) int {
	for i := len(r.Parts) - 1; i >= 0; i-- {
		if p := r.Parts[i]; p.Blank != reading.NoBlank && p.Box.Form == reading.Digits {
			return p.Box.After
		}
	}
	return 0
}

// digitsBehind is the width of the point and what stands behind it.
func digitsBehind(after int) layout.Mm {
	if after == 0 {
		return 0
	}
	return digitW * layout.Mm(after+1)
}

// rungPieces are the boxes of one line with the signs before them, and what it takes, to
// stand beside the boxes or above the first.
func rungPieces(c *block.Composer, d *job.Dim, l *job.Ladder, r reading.Rung, last bool, end ladderEnd, below bool) (boxes []layout.Block, what string) {
	var label, text []reading.Part
	flush := func(box layout.Block) {
		// The sign stays with the box behind it when a line ends.
		if s := PartWords(c.W, text); s != "" {
			box = layout.Bottom(2, sumWords(c, s, d).Pad(0, 0, 2.2, 0), box)
		}
		if !box.Empty() {
			boxes = append(boxes, box)
		}
		text = nil
	}
	for i, p := range r.Parts {
		switch {
		case p.Blank != reading.NoBlank:
			caption := blankCaption(c, l, p)
			if below && len(boxes) == 0 && len(label) > 0 {
				caption = "" // it is told above the box
			}
			if last && len(label) > 0 && lastBlank(r) == i {
				caption = end.name // before the line stands what it takes
			}
			box := ladderBox(c, d, p, caption)
			if last && end.key != "" && lastBlank(r) == i {
				box = box.Named(end.key)
			}
			flush(box)
		case p.Word == reading.WordRounded && i > 0 && r.Parts[i-1].Blank != reading.NoBlank:
			boxes = append(boxes, roundedTo(c, d, r.Parts[i-1].Box))
		case p.Word == reading.WordRounded || p.Word == reading.Literal && p.Mark == "":
			text = append(text, p)
		case len(boxes) == 0:
			label = append(label, p)
		}
	}
	flush(layout.Block{})
	if r.Name != "" {
		boxes = append(boxes, sumWords(c, "= "+r.Name, d).Pad(0, 0, 2.2, 0))
	}
	return boxes, rungLabel(c, l, label, last, end)
}

// lastBlank is which part of a line is its last box, -1 if it has none.
func lastBlank(r reading.Rung) int {
	for i := len(r.Parts) - 1; i >= 0; i-- {
		if r.Parts[i].Blank != reading.NoBlank {
			return i
		}
	}
	return -1
}

// besideBoxes sets a label and boxes that end at an edge, or if they are too many
// for that within a width.
func besideBoxes(c *block.Composer, d *job.Dim, label string, boxes []layout.Block, edge, width layout.Mm) layout.Block {
	const gap, leastLabel = 2, 30
	para := func(w layout.Mm) layout.Block {
		return c.Para(w, []layout.Run{layout.T(layout.Sub, label)}, layout.ParaOpts{Ref: d.At})
	}
	row := layout.Bottom(gap, boxes...)
	if room := edge - row.W - gap; room >= leastLabel || label == "" && room >= 0 {
		name := layout.Space(room, 1)
		if label != "" {
			name = para(room)
		}
		return layout.Bottom(gap, name.Pad(0, 0, 2.5, 0), row)
	}
	if room := width - row.W - gap; label != "" && room >= leastLabel {
		return layout.Bottom(gap, para(room).Pad(0, 0, 0.5, 0), row)
	}
	if row.W <= edge {
		return layout.Above(1, para(edge), row.Right(edge))
	}
	if row.W <= width {
		return layout.Above(1, para(width), row)
	}
	return layout.Above(1, para(width), flowTight(boxes, width))
}

// flowTight sets the pieces of a sum from left to right, with no more room between
// them than a pen needs.
func flowTight(all []layout.Block, width layout.Mm) layout.Block {
	const gap = 2
	var rows, row []layout.Block
	used := layout.Mm(0)
	for _, b := range all {
		if len(row) > 0 && used+gap+b.W > width {
			rows = append(rows, layout.Bottom(gap, row...))
			row, used = nil, 0
		}
		row = append(row, b)
		used += gap + b.W
	}
	return layout.Above(layout.GapY, append(rows, layout.Bottom(gap, row...))...)
}

// ladderBox is a box on a ladder.
func ladderBox(c *block.Composer, d *job.Dim, p reading.Part, caption string) layout.Block {
	typed := ""
	if p.Value != nil {
		typed = p.Value.Print()
	}
	if p.Box.Form == reading.Fraction && typed != "" {
		return c.TypedFraction(caption, "", typed, p.Blank != reading.BlankResult, d.At)
	}
	if p.Box.Form == reading.Fraction {
		return c.Fraction(caption, "", p.Blank != reading.BlankResult, d.At)
	}
	return c.Value(layout.Number{
		Before: p.Box.Before, After: p.Box.After, Sign: p.Box.Signed, Caption: caption,
		Copied: p.Blank != reading.BlankResult, Typed: typed, Ref: d.At,
	})
}
