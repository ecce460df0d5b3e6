package dimension

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A reason is the box for why readings were not taken: its caption, and what it belongs to.
// The zero one is none.
type reason struct {
	caption string
	at      layout.Ref
}

// Widths of the box for why a reading was not taken, at the least and at the most; rowSaves
// is how much height it must save to stand in a block and not in a row for itself.
const (
	leastReason layout.Mm = 34
	longReason  layout.Mm = 120
	rowSaves    layout.Mm = 2
)

// reasonOf is the box for why readings of one step were not taken; of a job of very many
// dimensions one of several readings is not tried in their blocks.
func reasonOf(c *block.Composer, written []*job.Dim, at layout.Ref) reason {
	switch {
	case len(written) == 0 || len(written) > 1 && len(c.Job.Dims) > Many:
		return reason{}
	case len(written) == 1:
		return reason{c.W.Common.NotTaken, written[0].At}
	}
	return reason{c.W.Step.NotTaken, at}
}

// free reports whether blocks with the box for the reason are no higher than without it, and
// hold it: in another language its words are longer.
func free(plain, within []layout.Block) bool {
	return len(within) > 0 && heightOf(within) <= heightOf(plain)+0.5 && misfitsOf(within) <= misfitsOf(plain)
}

func misfitsOf(bs []layout.Block) (n int) {
	for _, b := range bs {
		n += len(b.Misfits())
	}
	return n
}

// A place is where the box for the reason stands.
type place int

const (
	noPlace   place = iota // nothing is written
	inBlocks               // in the last block
	inRow                  // in a row below the blocks
	elsewhere              // where the step has a place for it
)

// AsksReason reports whether the readings of a step need the place that it has for the box for
// why they were not taken.
func AsksReason(c *block.Composer, ds []*job.Dim, kind Kind, at layout.Ref) bool {
	_, where := blocks(c, setOf{ds, kind, at, true})
	return where == elsewhere
}

// reasonRow is the row below the blocks of a step for why readings were not taken.
func reasonRow(c *block.Composer, written []*job.Dim, at layout.Ref) layout.Block {
	return notTaken(c, written, at, c.Span-block.NumberWidth).Pad(2, 0, 0, 0).At(block.NumberWidth, 0)
}

// leastReason is the least width of the box for the reason: that of its caption, if that is
// longer.
func (k content) leastReason() layout.Mm {
	const ends = 1.5
	return max(leastReason, k.Width(layout.Caption, k.reason.caption)+ends)
}

// reasoned sets pieces in rows, between them the box for the reason, which takes what its row
// leaves.
func (k content) reasoned(width layout.Mm, before [][]layout.Block, after []layout.Block) sized {
	box := func(w layout.Mm) layout.Block {
		return k.WideBox(layout.RoleWords, w, 1, k.reason.caption, k.reason.at)
	}
	least := min(k.leastReason(), width)
	own := []layout.Block{box(least)}
	lists := append(before[:len(before):len(before)], own, after)
	for row := range rowsIn(width, lists) {
		if slices.Contains(row, &own[0]) {
			own[0] = box(min(least+width-rowWidth(row), longReason) - 0.01)
			break
		}
	}
	return flowRow(width, lists...)
}

// lastRow has the box for why readings at like places were not taken behind the last
// pieces below them.
func (k content) lastRow(items []layout.Block, width layout.Mm) sized {
	if k.reason == (reason{}) {
		return flowRow(width, items)
	}
	return k.reasoned(width, [][]layout.Block{items}, nil)
}

// notTaken is the row in which a step says once which of its readings were not taken,
// and why.
func notTaken(c *block.Composer, ds []*job.Dim, at layout.Ref, width layout.Mm) layout.Block {
	caption := c.W.Common.NotTaken
	var items []layout.Block
	switch {
	case len(ds) > mostMarks:
		caption = c.W.Step.NotTaken
	case len(ds) > 1:
		caption = c.W.Step.NotTaken // ticked before it
		for _, d := range ds {
			items = append(items, c.Tick(layout.SubBold, d.Mark, d.At).Pad(0, 0, 1.5, 0))
		}
	}
	rest := width
	for _, r := range block.Rows(items, width) {
		rest = width - block.RowWidth(r) - layout.GapX
	}
	if len(items) == 0 || rest < leastReason {
		rest = width
	}
	return block.FlowRow(append(items, c.WideBox(layout.RoleWords, rest-0.01, 1, caption, at)), width)
}

// mostMarks is of how many readings each has its mark to tick before the reason.
const mostMarks = 4
