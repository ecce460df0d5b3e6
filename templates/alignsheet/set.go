package alignsheet

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/align"
	"matchmark/packs/units"
	"matchmark/templates/block"
)

// sets are the sets of readings that have a page: 0 for that as found, then the tries.
func (s sheet) sets() []int {
	var out []int
	if s.foundFirst() {
		out = append(out, 0)
	}
	for i := range s.a.Tries {
		out = append(out, i+1)
	}
	return out
}

// foundFirst reports whether the alignment is read before it is made: a step of it
// measures as found, or it has more than one step.
func (s sheet) foundFirst() bool {
	for _, d := range s.a.Read {
		for _, st := range s.a.Steps {
			if d.FoundAt == st {
				return true
			}
		}
	}
	return len(s.a.Read) == 0 && len(s.a.Steps) > 1
}

// set is the page of one set of readings: the boxes, the lines of the ladder, the
// verdict, and who did it.
func (s sheet) set(n int) []layout.Block {
	w := s.W
	title := w.Alignment.SetTitle.With(strconv.Itoa(n))
	if n == 0 {
		title = w.Alignment.FoundTitle
	}
	zero := s.line(layout.Sub, w.Alignment.Zero+" "+w.Alignment.Closes.With(s.twoSteps()))
	out := []layout.Block{layout.Above(0.8, s.Heading(title), zero)}
	for _, d := range s.a.Setup.Dials() {
		out = append(out, s.dial(n, d))
	}
	return append(out, s.ladder(), s.verdict(), s.signRow(n))
}

// twoSteps is how far the readings of a dial may miss: one step at each end.
func (s sheet) twoSteps() string {
	q := *s.a.Setup.Reads
	q.Number = units.Exact(q.Number.Mul(units.Whole(2)).Rat(), q.Number.Decimals())
	return q.Print()
}

// dial is the row of boxes of one dial. What is read as found stands in the box of a
// dimension and is copied from there.
func (s sheet) dial(n int, d align.Dial) layout.Block {
	name, copied := s.W.Alignment.Dial[d], false
	if x := s.a.Read[d]; x != nil && n == 0 && x.FoundAt != nil {
		name += ", " + s.W.Alignment.CopiedFrom.With(s.W.Common.StepPage.With(x.Mark, s.Page("found "+x.Mark)))
		copied = true
	}
	var boxes []layout.Block
	for _, at := range clock {
		boxes = append(boxes, s.Value(layout.Number{Before: s.before(), After: s.after(), Sign: true, Caption: s.W.Alignment.Clock[at], Copied: copied, Ref: s.a.At}))
	}
	row := append(boxes, s.Words(layout.Body, s.a.Setup.Unit.Print()).Pad(0, 0, 2.5, 0))
	return layout.Above(0.5, s.Para(s.Span, []layout.Run{layout.T(layout.Strong, name)}, layout.ParaOpts{Ref: s.a.At}), layout.Bottom(layout.GapX, row...))
}

// verdict is the line of limits with its ticks.
func (s sheet) verdict() layout.Block {
	if s.a.Row == nil {
		return layout.Block{}
	}
	w := s.W
	row := func(text string) layout.Block {
		ticks := layout.Middle(layout.GapX, s.Tick(layout.Strong, w.Alignment.In, s.a.At), s.Tick(layout.Strong, w.Alignment.Out, s.a.At))
		return layout.Middle(3, s.Para(s.Span-ticks.W-3, []layout.Run{layout.T(layout.Limit, text)}, layout.ParaOpts{Ref: s.a.At}), ticks)
	}
	return layout.Above(layout.GapY, row(w.Alignment.OffsetAtMost.With(s.a.Row.Offset.Print())), row(w.Alignment.AngleAtMost.With(s.a.Row.Angle.Print(), print(s.a.Limits.Over))))
}

// signRow are the boxes of who read, with what, and what was done; below the tries is
// said where the last one goes.
func (s sheet) signRow(n int) layout.Block {
	w := s.W
	boxes := []layout.Block{
		s.WideBox(layout.RoleWords, 34, 1, w.Alignment.MeterNo, s.a.At),
		s.WideBox(layout.RoleWords, 60, 1, w.Alignment.ShimsIn, s.a.At),
		s.Box(layout.RoleInitials, w.Common.Initials, s.a.At), s.Box(layout.RoleTime, w.Common.Time, s.a.At),
	}
	row := block.FlowRow(boxes, s.Span)
	var into []string
	for _, d := range s.a.Setup.Dials() {
		if x := s.a.Read[d]; x != nil && x.LeftAt != nil && n > 0 {
			into = append(into, s.W.Common.StepPage.With(x.Mark, s.Page("left "+x.Mark)))
		}
	}
	if len(into) > 0 {
		row = layout.Above(1.5, row, s.line(layout.Strong, w.Alignment.LastInto.With(strings.Join(into, ", "))))
	}
	return row
}
