package alignsheet

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// Sheet sets the alignment sheets.
func Sheet(c *block.Composer) []layout.Piece {
	var out []layout.Piece
	for i, a := range c.Job.Alignments {
		ps := sheet{c, a}.pieces()
		if i > 0 {
			ps[0].Gap = 6
		}
		out = append(out, ps...)
	}
	if len(out) == 0 {
		return nil
	}
	return append([]layout.Piece{c.RuleLine(c.W.Alignment.Rule)}, out...)
}

// Lines are the lines of a step that point to the sheet.
func Lines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, a := range st.Align {
		runs := []layout.Run{{Text: a.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, " "+a.What+c.W.Common.Colon+c.W.Alignment.OnSheet.With(c.Page("alignment "+a.Mark)))}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: a.At}))
	}
	return out
}

// A sheet sets one alignment.
type sheet struct {
	*block.Composer
	a *job.Alignment
}

func (s sheet) pieces() []layout.Piece {
	a, w := s.a, s.W
	first, head := s.heading()
	out := []layout.Piece{{Block: first.Heading(2).Anchored("alignment " + a.Mark), KeepNext: true, Title: a.Mark + "  " + a.What, Level: 1}}
	add := func(gap layout.Mm, blocks ...layout.Block) {
		for _, b := range blocks {
			if !b.Empty() {
				out = append(out, layout.Piece{Block: b, Gap: gap, Under: []*layout.Block{&head}})
			}
		}
	}
	if len(a.Ladder) == 0 {
		add(1, s.line(layout.Limit, w.Alignment.NotWorked))
		return out
	}
	add(2, picture.Alignment(s.Setter, w, a, s.Span))
	add(1.2, s.facts()...)
	for _, ps := range [][]layout.Piece{s.softFoot(&head), s.example(&head)} {
		out = append(out, ps...)
	}
	return append(out, s.tables(&head)...)
}

func (s sheet) line(st layout.Style, text string) layout.Block {
	return s.Para(s.Span, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: s.a.At})
}

// heading names the alignment and the steps that make it, and as it is drawn again on each
// of its pages.
func (s sheet) heading() (first, again layout.Block) {
	runs := []layout.Run{layout.T(layout.Section, "▶ "+s.a.Mark+"  "+s.a.What)}
	if len(s.a.Steps) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+s.W.Alignment.MadeAt.With(s.StepRefs(s.a.Steps))))
	}
	return s.Headed(runs, s.a.At)
}

// facts say how the dials are set up, where the cold shaft is to stand, and how near.
func (s sheet) facts() []layout.Block {
	a, w, set := s.a, s.W, s.a.Setup
	lines := []string{w.Alignment.Stays.With(a.Stationary, a.Movable)}
	if set.Method == align.RimFace {
		bracket, dials := a.Movable, a.Stationary
		if set.DialsOn == align.Movable {
			bracket, dials = dials, bracket
		}
		lines = append(lines, w.Alignment.RimFace.With(bracket, dials, print(set.FaceDiameter)), w.Alignment.Sag.With(print(set.Sag)))
		if set.FaceBack {
			lines = append(lines, w.Alignment.FaceBack)
		}
		if set.TwoFaceDials {
			lines = append(lines, w.Alignment.TwoFaces)
		}
	} else {
		lines = append(lines, w.Alignment.Reverse.With(print(set.Span)), w.Alignment.SagBoth.With(print(set.Sag), a.Stationary, print(set.SagOther), a.Movable))
	}
	lines = append(lines, s.targetLine())
	if a.Note != "" {
		lines = append(lines, a.Note)
	}
	limits := w.Alignment.NoLimits
	if l := a.Limits; l != nil && a.Row != nil {
		limits = w.Alignment.LimitsAre.With(strconv.Itoa(l.Speed), strconv.Itoa(a.Row.UpTo), a.Row.Offset.Print(), a.Row.Angle.Print(), print(l.Over), l.Source)
	}
	return []layout.Block{s.line(layout.Body, strings.Join(lines, " ")), layout.Above(0.8, s.line(layout.Limit, limits), s.line(layout.Strong, w.Alignment.Signs))}
}

// targetLine says where the cold shaft is to stand.
func (s sheet) targetLine() string {
	t, w := s.a.Setup.Target, s.W
	if t == nil {
		return w.Alignment.InLine
	}
	list := func(qs []units.Quantity) string {
		var out []string
		for i, q := range qs {
			if i < len(s.a.Setup.Feet) {
				out = append(out, s.a.Setup.Feet[i].Name+" "+signed(s.a.Setup.Told(q.Number).Number)+"\u00a0"+q.Unit.Print())
			}
		}
		return strings.Join(out, ", ")
	}
	var out []string
	if len(t.Up) > 0 {
		out = append(out, w.Alignment.StandsUp.With(list(t.Up), t.Source))
	}
	if len(t.Right) > 0 {
		out = append(out, w.Alignment.StandsRight.With(list(t.Right)))
	}
	return strings.Join(out, " ")
}

// print is a quantity on paper, a dash where it is not told.
func print(q *units.Quantity) string {
	if q == nil {
		return "—"
	}
	return q.Print()
}

// signed is a number with its sign, + as well; 0 has none.
func signed(n units.Number) string {
	if n.Sign() > 0 {
		return "+" + n.Print()
	}
	return n.Print()
}

// softFoot is the table of feet that spring up.
func (s sheet) softFoot(head *layout.Block) []layout.Piece {
	a, w := s.a, s.W
	if a.SoftFoot == nil {
		return nil
	}
	const name layout.Mm = 24
	width := (s.Span - name) / 4
	t := layout.Table{PadX: 1.5, PadY: 1.5, Grid: true, Columns: []layout.Column{{Width: name, Head: s.Words(layout.SubBold, w.Alignment.SoftFoot)}}}
	for _, side := range []align.Clock{align.Left, align.Right} {
		for _, what := range []string{w.Alignment.SoftFound, w.Alignment.SoftLeft} {
			head := s.Para(width-3, []layout.Run{layout.T(layout.SubBold, w.Alignment.FootSide[side]+w.Common.Colon+what)}, layout.ParaOpts{Ref: a.At})
			t.Columns = append(t.Columns, layout.Column{Width: width, Head: head})
		}
	}
	var rows []layout.Row
	for _, f := range a.Setup.Feet {
		cells := []layout.Block{s.Para(name-3, []layout.Run{layout.T(layout.Strong, f.Name)}, layout.ParaOpts{Ref: a.At})}
		for range t.Columns[1:] {
			cells = append(cells, s.Value(layout.Number{Before: s.before(), After: s.after(), Unit: a.Setup.Unit.Print(), Ref: a.At}))
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true})
	}
	rule := layout.Above(1.2, s.Heading(w.Alignment.SoftTitle), s.line(layout.Body, w.Alignment.SoftRule.With(a.SoftFoot.Print(), a.SoftFootSource)))
	table := t.Pieces(rows, head)
	table[0].Gap = 1.2
	return append([]layout.Piece{{Block: rule, Gap: 3, KeepNext: true, Under: []*layout.Block{head}}}, table...)
}

// after is how many decimals a reading has, before how many digits stand before them:
// a coupling that is farther out is moved by eye first.
func (s sheet) after() int {
	if s.a.Setup.Reads == nil {
		return 2
	}
	return s.a.Setup.Reads.Number.Decimals()
}

func (s sheet) before() int {
	return map[units.Unit]int{units.Micrometre: 4, units.Mil: 3}[s.a.Setup.Unit] + map[bool]int{true: 1}[s.a.Setup.Unit != units.Micrometre && s.a.Setup.Unit != units.Mil]
}
