package templates

import (
	"path"
	"slices"
	"sort"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// cameBack sets the sheet of what the readings that came back ask for: what is out, with
// what to do and the tag to tick; the moves at the feet; how the others stand; what is
// missing, by page; and all that could not be taken.
func cameBack(c *composer) []layout.Piece {
	r := c.Filled
	w := c.W
	out := []layout.Piece{c.RuleLine(w.Filled.Typed.With(strings.Join(r.Values.Typed(), w.Common.Semicolon)) + ". " + w.Filled.Rule)}
	out = append(out, c.outTable()...)
	out = append(out, c.movesTable()...)
	for _, list := range []struct {
		head    string
		outcome filled.Outcome
	}{{w.Filled.InLimits, filled.In}, {w.Filled.OldGoesBack, filled.OldIn}, {w.Filled.OnlyRecorded, filled.Recorded}, {w.Filled.Open, filled.Open}, {w.Filled.NotTakenHead, filled.NotTaken}} {
		out = append(out, c.list(list.head, c.outcomes(list.outcome))...)
	}
	out = append(out, c.missing()...)
	out = append(out, c.list(w.Filled.LostHead, c.lost())...)
	out = append(out, c.list(w.Filled.DayHead, c.foundOnDay())...)
	return append(out, c.list(w.Filled.RefusedHead, c.refused())...)
}

// longTyped is the longest word of what was typed that stays together in a list.
const longTyped = 40

// typedBy says who typed the values, in a frame where that goes into one line.
func (c *composer) typedBy(width layout.Mm) layout.Block {
	run := layout.Run{Text: c.W.Filled.Typed.With(strings.Join(c.Filled.Values.Typed(), c.W.Common.Semicolon)), Style: layout.SubBold, Deco: layout.Boxed}
	if c.Line(0, []layout.Run{run}, layout.ParaOpts{}).W > width {
		run = layout.T(layout.SubBold, layout.Loose(run.Text, longTyped))
	}
	return c.Para(width, []layout.Run{run}, layout.ParaOpts{})
}

// list is a heading with lines below it; nothing where there are none.
func (c *composer) list(head string, lines []string) []layout.Piece {
	if len(lines) == 0 {
		return nil
	}
	out := []layout.Piece{{Block: c.Heading(head), Gap: 4, KeepNext: true}}
	for _, l := range lines {
		out = append(out, layout.Piece{Block: c.Para(c.Span, []layout.Run{layout.T(layout.Body, layout.Loose(l, longTyped))}, layout.ParaOpts{Hang: 4}), Gap: 0.8})
	}
	return out
}

// outTable lists what is out: first what stays so unless somebody decides, then what can be
// mended, then what was found out and is set later on the job.
func (c *composer) outTable() []layout.Piece {
	w := c.W.Filled
	var out, mend, later []filled.Verdict
	for _, v := range c.Filled.Verdicts {
		switch {
		case v.Outcome == filled.Mend:
			mend = append(mend, v)
		case v.SetLater() != nil:
			later = append(later, v)
		case v.Bad():
			out = append(out, v)
		}
	}
	var pieces []layout.Piece
	if len(out)+len(mend)+len(later) == 0 {
		none := c.Para(c.Span, []layout.Run{layout.T(layout.Body, w.OutNone)}, layout.ParaOpts{})
		return []layout.Piece{{Block: c.Heading(w.Out), Gap: 2, KeepNext: true}, {Block: none, Gap: 1}}
	}
	for _, part := range []struct {
		head string
		list []filled.Verdict
	}{{w.Out, out}, {w.Mend, mend}, {w.SetLater, later}} {
		if len(part.list) > 0 {
			pieces = append(append(pieces, layout.Piece{Block: c.Heading(part.head), Gap: 2, KeepNext: true}), c.outRows(part.list)...)
		}
	}
	return pieces
}

// outRows are the rows of some verdicts: the values, the limit, what to do and where it is
// set, and the tags to tick.
func (c *composer) outRows(list []filled.Verdict) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(c.W.Common.Mark, 21), block.Col(w.Filled.Values, 48), block.Col(c.W.Common.Limit, 36), block.Col(w.Filled.ToDo, 0), block.Col(w.Filled.Tags, 26))
	var rows []layout.Row
	for _, v := range list {
		mark := layout.Above(0.3, g.Mark(0, layout.StepNo, v.Dim.Mark, v.Dim.At), g.Text(0, layout.Sub, c.sideWord(v.When), v.Dim.At))
		values := layout.Above(0.4, g.Text(1, layout.Sub, v.Dim.What, v.Dim.At), g.Text(1, layout.Strong, c.outValues(v), v.Dim.At))
		action := strings.Join(v.Actions, w.Common.Semicolon)
		if action == "" {
			action = w.Filled.NoAction
		}
		todo := g.Text(3, layout.Strong, action, v.Dim.At)
		if st := v.SetLater(); st != nil {
			todo = layout.Above(0.4, todo, g.Text(3, layout.Sub, w.Filled.SetAt.With(c.whereRead(v.Dim, st, "left ")), v.Dim.At))
		}
		rows = append(rows, g.Row(v.Dim.At, mark, values, g.Text(2, layout.Body, dimension.PlainWords(c.W, v.Limit), v.Dim.At), todo, c.tagTicks(v, g.Table.Room(4))))
	}
	return g.Table.Pieces(rows)
}

// tagTicks are a box to tick for each tag. The mark of one that is longer than its column
// goes on in a second line.
func (c *composer) tagTicks(v filled.Verdict, room layout.Mm) layout.Block {
	var out layout.Block
	for _, t := range v.Tags {
		tick := c.Tick(layout.SubBold, t.Mark, t.At)
		if tick.W > room {
			box := c.Tick(layout.SubBold, "", t.At)
			tick = layout.Middle(1.2, box, c.Para(room-box.W-1.2, []layout.Run{layout.T(layout.SubBold, layout.Loose(t.Mark, 6))}, layout.ParaOpts{Ref: t.At}))
		}
		out = layout.Above(layout.GapY, out, tick)
	}
	if out.Empty() {
		return c.Words(layout.Sub, c.W.Filled.NoTag)
	}
	return out
}

func (c *composer) sideWord(when job.When) string {
	if when == job.AsLeft {
		return c.W.Common.AsLeft
	}
	return c.W.Common.AsFound
}

// outValues are the readings that are out, with their positions.
func (c *composer) outValues(v filled.Verdict) string {
	names := v.Dim.Positions.Labels()
	var out []string
	for _, f := range v.Findings {
		text := ""
		switch {
		case f.Value != nil && f.Position < 0 && f.Test < len(v.Limit.Tests):
			text = c.W.Common.Group[v.Limit.Tests[f.Test].Group] + " " + filled.Exactly(*f.Value, v.Dim.Box, units.Nearest).Print()
		case f.Value != nil:
			text = filled.Exactly(*f.Value, v.Dim.Box, units.Nearest).Print()
		case f.Position >= 0:
			text = c.Filled.Typed(job.BlankKey(v.Dim.Mark, v.When, job.ReadingBlank, f.Position))
		}
		if f.Position >= 0 && f.Position < len(names) {
			text = c.W.Filled.Position.With(names[f.Position], text)
		}
		if !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return strings.Join(out, c.W.Common.Semicolon)
}

// outcomes are the dimensions of one outcome, found and left apart, with their values.
func (c *composer) outcomes(o filled.Outcome) []string {
	var out []string
	for _, when := range []job.When{job.AsFound, job.AsLeft} {
		var marks []string
		for _, v := range c.Filled.Verdicts {
			if v.Outcome != o || v.When != when {
				continue
			}
			text := v.Dim.Mark
			switch {
			case o == filled.Open, o == filled.NotTaken:
				text += " (" + v.Why + ")"
			case v.Dim.Positions.Boxes() == 1 && v.Dim.Box.Form == reading.Digits:
				text += " " + dimension.ReadingsText(c.W, v.Dim, c.Filled.Readings(v.Dim, when))
			}
			marks = append(marks, text)
		}
		if len(marks) > 0 {
			out = append(out, c.W.Filled.Position.With(c.sideWord(when), strings.Join(marks, ", ")))
		}
	}
	return out
}

// missing lists the boxes found that have no value, by page; those left are counted, for
// they are written last.
func (c *composer) missing() []layout.Piece {
	w := c.W
	byPage := map[int][]string{}
	var pages, leftPages []int
	left := 0
	for _, b := range c.Filled.Missing {
		p := c.written[b.Key()]
		if b.When == job.AsLeft {
			left++
			if !slices.Contains(leftPages, p) {
				leftPages = append(leftPages, p)
			}
			continue
		}
		if !slices.Contains(pages, p) {
			pages = append(pages, p)
		}
		text := b.Dim.Mark
		if at := filled.Position(b); at != "" {
			text += " " + at
		}
		byPage[p] = append(byPage[p], text)
	}
	sort.Ints(pages)
	sort.Ints(leftPages)
	var lines []string
	for _, p := range pages {
		lines = append(lines, w.Filled.Missing.With(strconv.Itoa(p), strings.Join(byPage[p], ", ")))
	}
	if len(lines) == 0 {
		lines = append(lines, w.Filled.NothingMissing)
	}
	if left > 0 {
		lines = append(lines, w.Filled.MissingLeft.With(strconv.Itoa(left), runs(leftPages)))
	}
	return c.list(w.Filled.MissingHead, lines)
}

// runs writes numbers in order, those that follow each other as one run: 9–12, 14.
func runs(list []int) string {
	var out []string
	for i := 0; i < len(list); {
		k := i
		for k+1 < len(list) && list[k+1] == list[k]+1 {
			k++
		}
		text := strconv.Itoa(list[i])
		if k > i {
			text += "–" + strconv.Itoa(list[k])
		}
		out = append(out, text)
		i = k + 1
	}
	return strings.Join(out, ", ")
}

// lost are the values that have no box.
func (c *composer) lost() []string {
	var out []string
	for _, l := range c.Filled.Values.Lost {
		out = append(out, strings.Join(strings.Fields(l.Mark+" "+l.Side+" "+l.Position), " ")+c.W.Common.Colon+l.Text+" ("+place(l.At)+")")
	}
	return out
}

// foundOnDay are the lines that nobody planned.
func (c *composer) foundOnDay() []string {
	var out []string
	for _, d := range c.Filled.Values.Day {
		out = append(out, d.Mark+" "+d.Side+c.W.Common.Colon+d.Text)
	}
	return out
}

// refused are the rows that were not taken, and what the values say of each other.
func (c *composer) refused() []string {
	var all source.Problems
	for _, f := range c.Filled.Values.Files {
		all = append(all, f.Told...)
	}
	all = append(append(all, c.Filled.Values.Told...), c.Filled.Problems...)
	var out []string
	for _, p := range all {
		if p.Code != "box-gone" { // listed as lost
			out = append(out, place(p.Pos)+c.W.Common.Colon+p.In(c.W))
		}
	}
	return out
}

// place is a line of a file for paper.
func place(p source.Pos) string {
	name := path.Base(p.File)
	if p.Line == 0 {
		return name
	}
	return name + " " + strconv.Itoa(p.Line)
}
