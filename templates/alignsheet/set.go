package alignsheet

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/align"
	"matchmark/packs/units"
)

// sets are the sets of readings: 0 for that as found, then the tries. That as found is worked
// out by hand only where it has room beside the others: nothing is moved by it, and its
// readings stand at their step.
func (s sheet) sets(across int) []int {
	var out []int
	if s.foundFirst() && (s.a.Tries+1)%across != 1 {
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

// A setTable sets some sets of readings beside each other: the text of a line once, and
// a box of each set to its right.
type setTable struct {
	sheet
	sets []int
	text layout.Mm // the width of the text
	col  layout.Mm // and of what one set has in a line
}

// leastSetText is the least width of the text of a line, and boxGap the room to its
// boxes and between them.
const (
	leastSetText layout.Mm = 40
	boxGap                 = layout.GapX
)

// tables sets all sets, as many beside each other as there is room for.
func (s sheet) tables(under ...*layout.Block) []layout.Piece {
	var out []layout.Piece
	col := s.rungBox().W
	across := max(int((s.Span-leastSetText)/(col+boxGap)), 1)
	sets := s.sets(across)
	for len(sets) > 0 {
		n := min(across, len(sets))
		t := setTable{sheet: s, sets: sets[:n], col: col}
		t.text = s.Span - layout.Mm(n)*(col+boxGap)
		out = append(out, t.pieces(under...)...)
		sets = sets[n:]
	}
	return out
}

func (t setTable) pieces(under ...*layout.Block) []layout.Piece {
	w := t.W
	head := layout.Above(1, t.row(t.words(layout.Sub, t.a.Setup.Unit.Print()), t.title), t.Rule(layout.Rule)).Pad(0, 0, 1, 0)
	zero := t.line(layout.Sub, w.Alignment.Zero+" "+w.Alignment.Closes.With(t.twoSteps()))
	out := []layout.Piece{{Block: zero, Gap: 3, KeepNext: true, Under: under}, {Block: head, Gap: 1.5, KeepNext: true, Under: under}}
	under = append(under[:len(under):len(under)], &head)
	add := func(gap layout.Mm, keep bool, b layout.Block) {
		out = append(out, layout.Piece{Block: b, Gap: gap, KeepNext: keep, Under: under})
	}
	for _, d := range t.a.Setup.Dials() {
		for i, at := range clock {
			runs := []layout.Run{layout.T(layout.Strong, w.Alignment.Dial[d]), layout.T(layout.Body, "  "+w.Alignment.Clock[at])}
			text := t.Para(t.text, runs, layout.ParaOpts{Ref: t.a.At})
			add(layout.GapY, i < len(clock)-1, t.row(text, func(n int) layout.Block { return t.reading(n, d) }))
		}
	}
	above := layout.Mm(0)
	lines := func(keep func(i int) bool, box layout.Mm, rows ...layout.Block) {
		for i, b := range rows {
			over := max(b.H-box, 0) / 2
			add(max(layout.GapY-above-over, textGap), keep(i), b)
			above = over
		}
	}
	rungs := t.rungs()
	lines(func(i int) bool { return i == len(rungs)-1 && t.a.Row != nil }, t.rungBox().H, rungs...)
	verdicts, signs := t.verdicts(), t.signRows()
	lines(func(i int) bool { return i < len(verdicts)-1 }, t.Tick(layout.Strong, w.Alignment.In, t.a.At).H, verdicts...)
	for i, b := range signs {
		lines(func(int) bool { return i < len(signs)-1 }, b.H, b)
	}
	return out
}

// textGap is the room between lines whose text is higher than their boxes, if the boxes are
// GapY apart or more.
const textGap layout.Mm = 1.2

// rungs are the lines of the ladder, up and down before sideways.
func (t setTable) rungs() []layout.Block {
	var out []layout.Block
	for _, aside := range []bool{false, true} {
		title := map[bool]string{false: t.W.Alignment.UpTitle, true: t.W.Alignment.RightTitle}[aside]
		for i, r := range t.a.Ladder {
			if sideways(r.Code) == aside {
				out = append(out, t.rung(i, r, title))
				title = ""
			}
		}
	}
	return out
}

// row sets what every set has in a line to the right of its text.
func (t setTable) row(text layout.Block, of func(set int) layout.Block) layout.Block {
	blocks := []layout.Block{text.Fill(t.text, text.H, 0, 0)}
	for _, n := range t.sets {
		b := of(n)
		blocks = append(blocks, b.Fill(t.col, b.H, 0, 0).Pad(0, 0, 0, boxGap))
	}
	return layout.Middle(0, blocks...)
}

// words is a text in the column of texts.
func (t setTable) words(st layout.Style, text string) layout.Block {
	return t.Para(t.text, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: t.a.At})
}

// title is the name of a set. What is read as found stands in the boxes of dimensions and
// is copied from there.
func (t setTable) title(n int) layout.Block {
	w := t.W
	title := w.Alignment.FoundTitle
	if n > 0 {
		title = w.Alignment.SetTitle.With(strconv.Itoa(n))
	}
	name := t.Para(t.col, []layout.Run{layout.T(layout.Strong, title)}, layout.ParaOpts{Ref: t.a.At})
	var from []string
	for _, d := range t.a.Setup.Dials() {
		if x := t.a.Read[d]; x != nil && n == 0 && x.FoundAt != nil {
			from = append(from, w.Common.StepPage.With(x.Mark, t.Page("found "+x.Mark)))
		}
	}
	if len(from) == 0 {
		return name
	}
	text := w.Alignment.CopiedFrom.With(strings.Join(slices.Compact(from), ", "))
	return layout.Above(0.2, name, t.Para(t.col, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: t.a.At}))
}

// twoSteps is how far the readings of a dial may miss: one step at each end.
func (s sheet) twoSteps() string {
	q := *s.a.Setup.Reads
	q.Number = units.Exact(q.Number.Mul(units.Whole(2)).Rat(), q.Number.Decimals())
	return q.Print()
}

// reading is the box of a reading of a dial.
func (t setTable) reading(n int, d align.Dial) layout.Block {
	x := t.a.Read[d]
	copied := x != nil && n == 0 && x.FoundAt != nil
	return t.Value(layout.Number{Before: t.before(), After: t.after(), Sign: true, Copied: copied, Ref: t.a.At})
}

// verdicts are the lines of the limits with their ticks.
func (t setTable) verdicts() []layout.Block {
	if t.a.Row == nil {
		return nil
	}
	w := t.W
	row := func(letters, text string) layout.Block {
		limit := t.Para(t.text, []layout.Run{layout.T(layout.Limit, letters+w.Common.Colon+text+" "), layout.T(layout.Caption, w.Alignment.BothWays)}, layout.ParaOpts{Ref: t.a.At})
		return t.row(limit, func(int) layout.Block {
			return layout.Middle(layout.GapX, t.Tick(layout.Strong, w.Alignment.In, t.a.At), t.Tick(layout.Strong, w.Alignment.Out, t.a.At))
		})
	}
	return []layout.Block{
		row(t.judgedBy(align.OffsetAtUp, align.OffsetAtRight, align.OffsetUp, align.OffsetRight), w.Alignment.OffsetAtMost.With(t.a.Row.Offset.Print())),
		row(t.judgedBy(align.AngleUp, align.AngleRight, align.FaceUp, align.FaceRight), w.Alignment.AngleAtMost.With(t.a.Row.Angle.Print(), print(t.a.Limits.Over))),
	}
}

// judgedBy are the letters of the lines that a limit judges, up and sideways: those of a
// verdict, or the readings themselves where they say it.
func (t setTable) judgedBy(up, right, readUp, readRight align.RungCode) string {
	of := func(code, read align.RungCode) string {
		for _, c := range []align.RungCode{code, read} {
			if i := slices.IndexFunc(t.a.Ladder, func(r align.Rung) bool { return r.Code == c }); i >= 0 {
				return t.letter(i)
			}
		}
		return ""
	}
	return of(up, readUp) + ", " + of(right, readRight)
}

// signRows are the boxes of who read, with what, and what was done; beside them is said
// where the last set goes.
func (t setTable) signRows() []layout.Block {
	w := t.W
	var into []string
	for _, d := range t.a.Setup.Dials() {
		if x := t.a.Read[d]; x != nil && x.LeftAt != nil && t.sets[len(t.sets)-1] > 0 {
			into = append(into, w.Common.StepPage.With(x.Mark, t.Page("left "+x.Mark)))
		}
	}
	last := layout.Block{W: t.text}
	if len(into) > 0 {
		last = t.words(layout.Strong, w.Alignment.LastInto.With(strings.Join(into, ", ")))
	}
	return []layout.Block{
		t.row(last, func(int) layout.Block { return t.WideBox(layout.RoleWords, t.col, 2, w.Alignment.ShimsIn, t.a.At) }),
		t.row(layout.Block{W: t.text}, func(int) layout.Block {
			return t.WideBox(layout.RoleWords, t.col, 1, w.Alignment.MeterNo, t.a.At)
		}),
		t.row(layout.Block{W: t.text}, func(int) layout.Block {
			return layout.Beside(layout.GapX, t.Box(layout.RoleInitials, w.Common.Initials, t.a.At), t.Box(layout.RoleTime, w.Common.Time, t.a.At))
		}),
	}
}
