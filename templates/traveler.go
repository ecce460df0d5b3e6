package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// traveler sets the sheets for taking apart: every step with its boxes, its
// cautions before it and its hold after it.
func traveler(c *composer) []layout.Piece { return c.work(false) }

// reassembly sets the sheets for putting back.
func reassembly(c *composer) []layout.Piece { return c.work(true) }

// work sets the sections of one of the two sheets of work. Where the order of
// work goes over to the other sheet, a line says so.
func (c *composer) work(back bool) []layout.Piece {
	var out []layout.Piece
	group := 0
	var before *job.Section
	for _, s := range c.job.Sections {
		if s.Back != back {
			if before != nil && before.Back == back {
				out = append(out, c.goOn(s))
			}
			before = s
			continue
		}
		before = s
		head := c.sectionHead(s)
		out = append(out, layout.Piece{Block: head.Anchored("section " + s.No), Gap: 4, KeepNext: true, Title: s.No + "  " + sectionTitle(s), Level: 1})
		for i := 0; i < len(s.Steps); i++ {
			group++
			st := s.Steps[i]
			if n := tabled(s.Steps[i:]); n > 0 {
				for _, p := range c.stepTable(s.Steps[i : i+n]) {
					p.Under = append([]*layout.Block{head}, p.Under...)
					out = append(out, p)
				}
				i += n - 1
				continue
			}
			if st.Later != "" && st.Undoes == nil {
				out = append(out, layout.Piece{Block: c.waitsLine(st), Gap: 2, Under: []*layout.Block{head}})
				continue
			}
			pieces := c.step(st)
			goesOn := c.goesOn(st)
			for i, p := range pieces {
				if stacked(pieces) <= togetherMm {
					p.Group = group
				}
				p.Under = []*layout.Block{head}
				if i >= len(st.Cautions) {
					p.Under = append(p.Under, goesOn)
				}
				out = append(out, p)
			}
		}
	}
	return out
}

// tabled counts the steps at the head of a list that are one step at several places,
// to be printed in one table.
func tabled(steps []*job.Step) int {
	n := 0
	for n < len(steps) && steps[n].Table && (steps[n].Undoes == nil) == (steps[0].Undoes == nil) && steps[n].At == steps[0].At {
		n++
	}
	return n
}

// togetherMm is the height up to which a step stays on one page with all its
// boxes. A taller one may go on to the next page between two dimensions, where its
// number stands once more.
const togetherMm layout.Mm = 80

// goesOn is the line above the boxes of a step on the page that it goes on to.
func (c *composer) goesOn(st *job.Step) *layout.Block {
	runs := []layout.Run{layout.T(layout.StepNo, st.No+"  "), layout.T(layout.Sub, c.w.stepGoesOn)}
	if p := ownPlace(st); p != "" {
		runs = append(runs, layout.T(layout.Sub, "  "), layout.Run{Text: p, Style: layout.SubBold, Deco: layout.Boxed})
	}
	b := c.Para(c.width, runs, layout.ParaOpts{Ref: st.At}).Pad(1, 0, 1, 0)
	return &b
}

func stacked(ps []layout.Piece) layout.Mm {
	h := layout.Mm(0)
	for _, p := range ps {
		h += p.Gap + p.Block.H
	}
	return h
}

func sectionTitle(s *job.Section) string {
	if s.Place.Label == "" {
		return s.Name
	}
	return s.Name + ", " + s.Place.Label
}

// goOn is the line that sends the reader to the other sheet of work.
func (c *composer) goOn(s *job.Section) layout.Piece {
	sentence := c.w.doTraveler
	if s.Back {
		sentence = c.w.doReassembly
	}
	text := c.Para(c.width-8, []layout.Run{layout.T(layout.Strong, "▶ "+fill(sentence, s.No, c.page("section "+s.No)))}, layout.ParaOpts{})
	return layout.Piece{Block: text.Pad(2, 4, 2, 4).Border(layout.Rect{Weight: layout.Heavy}), Gap: 4}
}

// step sets one step: cautions, row, dimensions, hold.
func (c *composer) step(st *job.Step) []layout.Piece {
	var out []layout.Piece
	for i, n := range st.Cautions {
		gap := layout.Mm(1)
		if i == 0 {
			gap = 2
		}
		out = append(out, layout.Piece{Block: c.caution(n).Tagged(st.At), Gap: gap, KeepNext: true})
	}
	out = append(out, layout.Piece{Block: c.stepRow(st), Gap: 1.5})
	for _, b := range c.noted(st) {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	for _, d := range st.Measure {
		out = append(out, stack(c.foundBlocks(d))...)
	}
	for _, d := range st.Set {
		out = append(out, stack(c.leftBlocks(d))...)
	}
	for _, b := range c.judged(st) {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	if st.Until != nil {
		out = append(out, layout.Piece{Block: c.loopBlock(st), Gap: 1})
	}
	for _, d := range st.Recall {
		out = append(out, layout.Piece{Block: c.recallBlock(d), Gap: 1})
	}
	if len(st.Empty) > 0 {
		out = append(out, layout.Piece{Block: c.emptyLine(st), Gap: 1})
	}
	if st.Hold != nil {
		out = append(out, layout.Piece{Block: c.holdBar(st), Gap: 2})
	}
	for i, p := range out[:len(out)-1] {
		// The row stays with its first boxes, and the last ones with the hold and
		// the line of what must be empty.
		row := i == len(st.Cautions)
		last := i == len(out)-2 && (st.Hold != nil || len(st.Empty) > 0)
		out[i].KeepNext = p.KeepNext || row || last
		out[i].MayPart = row && !last && stacked(out) > togetherMm
	}
	out = append(out, layout.Piece{Block: c.rule(layout.Inner).Tagged(st.At), Gap: 1, Closes: true})
	out[len(out)-2].KeepNext = true
	return out
}

// stack sets the blocks of one dimension below each other.
func stack(blocks []layout.Block) []layout.Piece {
	var out []layout.Piece
	for _, b := range blocks {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	return out
}

// foundBlocks is a dimension on the traveler: measured before parting.
func (c *composer) foundBlocks(d *job.Dim) []layout.Block {
	if d.Sheet {
		return []layout.Block{c.sheetLine(d, false)}
	}
	return c.dimensionBlocks(d, []side{{caption: c.w.asFound, work: &d.FoundWork}}, false, c.lastChanceNote(d), "found ")
}

// dimensionBlocks is a dimension in one block, or in several where it is worked out
// by hand in more lines than go well on a page.
func (c *composer) dimensionBlocks(d *job.Dim, sides []side, back bool, note, anchor string) []layout.Block {
	var blocks []layout.Block
	if byHand(d, sides) {
		blocks = c.handBlocks(d, sides, back, note)
	} else {
		blocks = append(blocks, c.dimension(d, sides, back, note))
	}
	blocks[0] = c.anchors(blocks[0], d, anchor)
	return blocks
}

// lastChanceNote says which step takes the reading away for good.
func (c *composer) lastChanceNote(d *job.Dim) string {
	switch {
	case d.LastChance == nil:
		return ""
	case d.LastChance == d.FoundAt:
		return c.w.lastChanceSame
	}
	return fill(c.w.lastChance, d.LastChance.No)
}

// leftBlocks is a dimension on the reassembly sheet: the found value copied, the
// value left, and their difference.
func (c *composer) leftBlocks(d *job.Dim) []layout.Block {
	if d.Sheet {
		return []layout.Block{c.sheetLine(d, true)}
	}
	var sides []side
	if d.FoundAt != nil && d.Box.Form != reading.Grid {
		sides = append(sides, side{caption: fill(c.w.copyFrom, c.page("found "+d.Mark)), copied: true})
	}
	sides = append(sides, side{caption: c.w.asLeft, work: &d.LeftWork})
	if len(sides) == 2 && d.Formula == nil && d.OneIs == nil && d.Box.Form == reading.Digits && c.room(d, 3) {
		sides = append(sides, side{caption: c.w.difference, signed: true})
	}
	return c.dimensionBlocks(d, sides, true, "", "left ")
}

// room reports whether so many boxes of a dimension go beside each other.
func (c *composer) room(d *job.Dim, n int) bool {
	if d.Left != nil && d.Left.NeedsFound() {
		return true
	}
	label := c.labelWidth(positionNames(d.Positions))
	one := layout.ValueWidth(d.Box.Before + d.Box.After + 1)
	if d.Box.Signed {
		one += 10
	}
	inner := c.width - pictureW - 3 - 2*cellPad
	return label+2+layout.Mm(n)*one+layout.Mm(n-1)*layout.GapX+10 <= inner
}

// recallBlock is a dimension that was only recorded: nothing to set, but the value
// found is worth a look when the parts are together again.
func (c *composer) recallBlock(d *job.Dim) layout.Block {
	if d.Sheet || d.Box.Form == reading.Grid || d.Box.Form == reading.Line {
		text := fill(c.w.dims.lookAt, d.Mark+"  "+d.What, c.page("found "+d.Mark))
		return c.Para(c.width-numberW, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: d.At}).At(numberW, 0).Anchored("left " + d.Mark)
	}
	s := []side{{caption: fill(c.w.copyFrom, c.page("found "+d.Mark)), copied: true}}
	return c.dimension(d, s, true, "").Anchored("left " + d.Mark)
}

// emptyLine lists the containers that must be empty when the step is done.
func (c *composer) emptyLine(st *job.Step) layout.Block {
	row := []layout.Block{c.Words(layout.Strong, c.w.emptyNow)}
	for _, x := range st.Empty {
		row = append(row, c.Tick(layout.Strong, x.In.Mark, x.In.At))
	}
	return flowRow(row, c.width-numberW).At(numberW, 0)
}
