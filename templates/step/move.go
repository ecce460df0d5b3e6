package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// removalRun are the lines of what goes into each container, their words cut once for all widths.
func removalRun(c *block.Composer, st *job.Step) run {
	var texts []*layout.Paragraph
	for _, g := range groupByPlace(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		texts = append(texts, moveText(c, c.W.Common.Into, g, false))
	}
	return inWidths(func(width layout.Mm) []layout.Block {
		var out []layout.Block
		for _, t := range texts {
			out = append(out, t.Set(width))
		}
		return out
	})
}

// fetchVerb is what stands before where parts come from; nothing for new ones that come
// from no place of the job.
func fetchVerb(c *block.Composer, g moveGroup) string {
	if g.where.Scrap {
		return ""
	}
	return c.W.Common.From
}

// A moveGroup is what goes to or comes from one place.
type moveGroup struct {
	at    layout.Ref
	off   bool // taken off
	where job.Where
	moves []*job.Move
}

// groupByPlace groups moves by the place they go to or come from, in order.
func groupByPlace(ms []*job.Move, where func(*job.Move) job.Where) []moveGroup {
	var out []moveGroup
next:
	for _, m := range ms {
		for i := range out {
			if out[i].where == where(m) {
				out[i].moves = append(out[i].moves, m)
				continue next
			}
		}
		out = append(out, moveGroup{at: m.At, off: m.Undo == nil && m.From == (job.Where{}), where: where(m), moves: []*job.Move{m}})
	}
	return out
}

// moveLine is one line of the kind: into [C2/DE] 1 Lock nut, 1 Tab washer (2
// pieces); of one kind the pieces are told once. In putting back it says what is renewed.
func moveLine(c *block.Composer, verb string, g moveGroup, width layout.Mm, back bool) layout.Block {
	return moveText(c, verb, g, back).Set(width)
}

func moveText(c *block.Composer, verb string, g moveGroup, back bool) *layout.Paragraph {
	var runs []layout.Run
	if verb != "" {
		runs = append(runs, layout.T(layout.Body, verb+" "), layout.Run{Text: whereMark(c, g.where), Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, " "))
		if g.where.Spot != nil && g.off {
			runs = append(runs, layout.T(layout.Body, g.where.Spot.What+c.W.Common.Colon))
		}
	}
	runs = append(runs, layout.T(layout.Body, block.PartList(g.moves, calledHere(c, g.moves))))
	if n := job.Pieces(g.moves); !oneKind(g.moves) { // else the list has told how many
		runs = append(runs, layout.T(layout.Body, " ("+c.W.Pieces(n)+")"))
	}
	for _, s := range setMarks(g.moves) {
		runs = append(runs, layout.T(layout.Body, " "), layout.Run{Text: c.W.Common.MatchedSet.With(s), Style: layout.SubBold, Deco: layout.Boxed})
	}
	runs = append(runs, tagRuns(c, g.moves)...)
	for _, text := range saidOf(c, g.moves, g.off) {
		runs = append(runs, layout.T(layout.Body, " · "+text))
	}
	runs = append(runs, turning(c, untold(g.moves), g.off)...)
	for _, text := range block.OldPieces(c, g.moves) {
		runs = append(runs, layout.T(layout.Strong, " · "+text))
	}
	for _, text := range renewed(c, g.moves) {
		runs = append(runs, layout.T(layout.Strong, " · "+text))
	}
	if s := renewals(c, g.moves); len(s) > 0 && back {
		runs = append(runs, layout.T(layout.Strong, " · "+strings.Join(s, " · ")))
	}
	return c.Paragraph(runs, layout.ParaOpts{Ref: g.at})
}

// calledHere names what a line moves. An old piece that was kept until its new one goes on is
// called old: a mechanic took it out of its container and fitted it again.
func calledHere(c *block.Composer, ms []*job.Move) func(string) string {
	return func(name string) string {
		if slices.ContainsFunc(ms, func(m *job.Move) bool { return m.Part.Name == name && m.New && m.Undo != nil && !m.Undo.To.Scrap }) {
			return c.W.Step.OldPiece.With(name)
		}
		return name
	}
}

// oneKind reports whether moves are of parts of one name, which a line tells once.
func oneKind(ms []*job.Move) bool { return len(job.Contents(ms)) == 1 }

// renewed say which parts come new, those apart whose old pieces were kept until now.
func renewed(c *block.Composer, ms []*job.Move) []string {
	var fresh, kept []string
	for _, m := range ms {
		list := &fresh
		if m.Undo != nil && !m.Undo.To.Scrap {
			list = &kept
		}
		if m.New && !slices.Contains(*list, m.Part.Name) {
			*list = append(*list, m.Part.Name)
		}
	}
	var out []string
	switch {
	case len(fresh) == 1 && oneKind(ms):
		out = append(out, c.W.Step.FitNewOne)
	case len(fresh) > 0:
		out = append(out, c.W.Step.FitNew.With(strings.Join(fresh, ", ")))
	}
	if len(kept) > 0 {
		out = append(out, c.W.Step.FitNewScrap.With(strings.Join(kept, ", ")))
	}
	return out
}

// whereMark is a place as printed: its mark, or bench or scrap.
func whereMark(c *block.Composer, w job.Where) string {
	switch {
	case w.Mark() != "":
		return w.Mark()
	case w.Scrap:
		return job.ScrapMark
	}
	return c.W.Step.Bench
}

// setMarks are the matched sets of what is moved, each once.
func setMarks(ms []*job.Move) []string {
	var out []string
	for _, m := range ms {
		if m.Part.Set != nil && !slices.Contains(out, m.Part.Set.Mark) {
			out = append(out, m.Part.Set.Mark)
		}
	}
	return out
}
