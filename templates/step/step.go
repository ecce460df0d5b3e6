package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Together is the height up to which a step stays on one page with all its
// boxes. A taller one may go on to the next page between two dimensions, where its
// number stands once more.
const Together layout.Mm = 40

// Running is the line of the section on a page that it goes on to: how much of it is
// taken, where it ends, how far it begins above the steps, and its height.
type Running struct{ Taken, Right, Up, H layout.Mm }

// ContinuedLine says on the page that a step goes on to which one it is: in the line of its
// section, or below it where that is long.
func ContinuedLine(c *block.Composer, st *job.Step, line Running) *layout.Block {
	b := c.Fixed(continuedKey{st, line, false}, func() layout.Block { return continuedLine(c, st, line) })
	return &b
}

// A continuedKey tells such a line, of a step or of all steps that are told with it.
type continuedKey struct {
	st   *job.Step
	line Running
	all  bool
}

func continuedLine(c *block.Composer, st *job.Step, line Running) layout.Block {
	runs := []layout.Run{layout.T(layout.StepNo, st.No+"  "), layout.T(layout.Sub, c.W.Step.Continued)}
	if p := ownPlace(st); p != "" {
		runs = append(runs, layout.T(layout.Sub, "  "), layout.Run{Text: p, Style: layout.SubBold, Deco: layout.Boxed})
	}
	if one := c.Line(0, runs, layout.ParaOpts{Ref: st.At}); line.Taken+textGap+one.W <= line.Right {
		beside := layout.Overlay(one.At(line.Right-one.W, (line.H-one.H)/2-line.Up))
		beside.H = 0
		return beside
	}
	return c.Para(c.Span, runs, layout.ParaOpts{Ref: st.At}).Pad(0, 0, 1, 0)
}

// Height is the height of pieces below each other, with the gaps between them.
func Height(ps []layout.Piece) layout.Mm {
	h := layout.Mm(0)
	for _, p := range ps {
		h += p.Gap + p.Block.H
	}
	return h
}

// Pieces sets one step: cautions, the row with what to do, its acts in the order in
// which they are done, what must be empty, hold.
func Pieces(c *block.Composer, st *job.Step) []layout.Piece {
	out := notesAbove(c, notesOf(st))
	room := reasonHasRoom(st)
	reason := room && asksReason(c, st)
	rs := runs(c, st, room)
	n := inRow(rs)
	row := len(out)
	head, below, of := stepRow(c, st, rs[:n], reason)
	out = append(out, layout.Piece{Block: head, Gap: headGap})
	out = append(out, below...)
	lines := map[int]run{} // pieces that are lines, which may share a row
	for i, r := range of {
		lines[row+1+i] = r
	}
	lost, until := false, 0 // a box waits for the line that ends its chance, and where that is
	held := map[int]bool{}  // pieces that stay with the next for that alone
	for _, r := range flowedRuns(c, rs[n:]) {
		pieces := runPieces(c, r)
		if lost {
			last := len(out) - 1
			held[last] = !out[last].KeepNext
			out[last].KeepNext, out[last].MayPart = true, false
			lost = len(r.blocks) > 0 || r.at < until
		}
		lost, until = lost || r.last, max(until, r.until)
		for i := range pieces {
			pieces[i].KeepNext = pieces[i].KeepNext || lost && i < len(pieces)-1
			if lost {
				pieces[i].MayPart = false
				pieces[i].Block.SetPartings(nil) // nor is one place of it left behind
			}
			if r.lines != nil || r.ticks {
				lines[len(out)+i] = r
			}
		}
		out = append(out, pieces...)
	}
	empty := unticked(st)
	if len(empty) > 0 {
		lines[len(out)] = run{}
		out = append(out, layout.Piece{Block: emptyLine(c, empty), Gap: 1})
	}
	out = inOneRow(c, out, lines, held)
	if st.Hold != nil {
		out = append(out, layout.Piece{Block: holdBar(c, st), Gap: 1})
	}
	if n := len(out); n-1 > row && oneTick(out[n-1].Block) {
		out[n-2].KeepNext, out[n-2].MayPart = true, !out[n-2].KeepNext || out[n-2].MayPart // unless it saves a page
	}
	for i := range out[:len(out)-1] {
		// The row stays with its first boxes, and the last ones with the hold and
		// the line of what must be empty.
		last := i == len(out)-2 && (st.Hold != nil || len(empty) > 0)
		if i == row || last {
			out[i].MayPart = i == row && !last && Height(out) > Together
		}
		out[i].KeepNext = out[i].KeepNext || i == row || last
	}
	apart(out[row:])
	gap := closingGap(out[len(out)-1].Block, endGap)
	out = append(out, layout.Piece{Block: c.Rule(layout.Inner).Tagged(st.At), Gap: gap, Closes: true})
	out[len(out)-2].KeepNext = true
	return out
}

// oneTick reports whether a block has a box to tick and no other: alone on the next page it is
// overlooked.
func oneTick(b layout.Block) bool {
	ticks, boxes := 0, 0
	b.Each(func(it layout.Item) {
		switch {
		case it.Role == layout.RoleTick:
			ticks++
		case strings.HasPrefix(it.Role, "box:"):
			boxes++
		}
	})
	return ticks == 1 && boxes == 0
}

// stoodBefore reports whether a hazard note stands before an earlier step of the section
// of a step: whoever opens the section has read it there in full.
func stoodBefore(st *job.Step, n *job.Caution) bool {
	for _, x := range st.Section.Steps {
		switch {
		case x == st:
			return false
		case x.Later != "" && x.Undoes == nil:
			// It waits, and is printed elsewhere.
		case slices.ContainsFunc(x.Cautions, func(c *job.Caution) bool { return c.Key == n.Key }):
			return true
		}
	}
	return false
}

// runPieces sets one run below the row of a step: blocks each on its own, lines
// together.
func runPieces(c *block.Composer, r run) []layout.Piece {
	var out []layout.Piece
	for i, b := range r.blocks {
		p := layout.Piece{Block: b, Gap: blockGap}
		if r.ticks {
			p.Gap = tickGap
		}
		if i > 0 && b.W == c.Span && r.blocks[i-1].W == c.Span {
			p.Gap = 0 // frames share their line
		}
		out = append(out, p)
	}
	if n := len(out); r.reason && n > 1 {
		// Why a reading was not taken is written below its boxes, rather than that there is a
		// page more.
		out[n-2].KeepNext, out[n-2].MayPart = true, true
	}
	if r.lines != nil {
		out = append(out, linesBelow(c, []run{r})...)
	}
	return out
}

// unticked are the containers that must be empty when a step is done and have no box to
// tick in the row of what comes out of them.
func unticked(st *job.Step) []job.Emptied {
	return slices.DeleteFunc(slices.Clone(st.Empty), func(x job.Emptied) bool {
		return slices.ContainsFunc(st.Fit, func(m *job.Move) bool {
			return m.From.Container == x.In && emptied(st, moveGroup{where: m.From})
		})
	})
}

// emptyLine lists the containers that must be empty.
func emptyLine(c *block.Composer, list []job.Emptied) layout.Block {
	row := []layout.Block{c.Words(layout.Strong, c.W.Step.EmptyNow)}
	for _, x := range list {
		row = append(row, c.Tick(layout.Strong, x.In.Mark, x.In.At))
	}
	return block.FlowRow(row, c.Span-block.NumberWidth).At(block.NumberWidth, 0)
}

// cautionGap is the room above the first hazard note of a step; the others are strips of
// the same frame.
const cautionGap layout.Mm = 0.6

// headGap is the room above the head of a step, endGap that above the line that ends it.
const headGap, endGap layout.Mm = 0.5, 0.4

// blockGap is the room above a block of a step, tickGap that above a row of boxes to tick.
const blockGap, tickGap layout.Mm = 0.5, 1.2

// nearer is how much wider the gap above a piece becomes where its boxes would be too near those
// of the block above it.
func nearer(above layout.Block, p layout.Piece) layout.Mm {
	return layout.GapBelow(above, p.Block, p.Gap) - p.Gap
}

// apart widens the gaps between pieces where their boxes are too near each other, and tells
// how much of each is clear of boxes at its foot.
func apart(ps []layout.Piece) {
	for i := range ps {
		_, ps[i].Clear = ps[i].Block.BoxRoom()
		if i > 0 {
			ps[i].Gap = layout.GapBelow(ps[i-1].Block, ps[i].Block, ps[i].Gap)
		}
	}
}

// closingGap is the room above the line that ends a step, at the least so much: the boxes of
// the next step stand as far from the last of it as boxes do.
func closingGap(last layout.Block, least layout.Mm) layout.Mm {
	_, free := last.BoxRoom()
	return max(least, layout.GapY-layout.Inner-headGap-free)
}
