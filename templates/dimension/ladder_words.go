package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// blankCaption says which of several readings is copied, by its mark and position,
// or that it is one number made of all of them.
func blankCaption(c *block.Composer, l *job.Ladder, p reading.Part) string {
	for _, x := range []reading.Word{reading.WordLargestOf, reading.WordSmallestOf} {
		if p.Index == reading.WholeOf(x) {
			return c.W.Limit[x].With(string(p.Mark))
		}
	}
	n := p.Index - 1
	for _, u := range l.Uses {
		for _, d := range u.Dims {
			if u.Mark != p.Mark || p.Index < 1 {
				continue
			}
			if n < d.Positions.Boxes() {
				if names := PositionNames(d.Positions); n < len(names) {
					return d.Mark + " " + names[n]
				}
				return d.Mark
			}
			n -= d.Positions.Boxes()
		}
	}
	return ""
}

// sumWords is a piece of a sum: a sign, a factor, a size.
func sumWords(c *block.Composer, text string, d *job.Dim) layout.Block {
	return c.Line(0, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: d.At, Role: roleSum})
}

// rungLabel says what a line takes: the reading by its mark and name, and the page
// where it was written; or what the result is.
func rungLabel(c *block.Composer, l *job.Ladder, label []reading.Part, last bool, end ladderEnd) string {
	if last && len(label) == 0 {
		return end.name
	}
	return labelWords(c, l, label)
}

// labelWords are pieces of a line as text, each reading with what it is and where it was
// written.
func labelWords(c *block.Composer, l *job.Ladder, label []reading.Part) string {
	var out []string
	for _, p := range label {
		switch {
		case p.Mark != "":
			for _, u := range l.Uses {
				if u.Mark == p.Mark {
					out = append(out, useWords(c, u))
				}
			}
		case len(p.Args) > 0:
			args := make([]string, len(p.Args))
			for i, a := range p.Args {
				args[i] = labelWords(c, l, a)
			}
			out = append(out, c.W.Limit[p.Word].With(args...))
		default:
			out = append(out, PartWords(c.W, []reading.Part{p}))
		}
	}
	return strings.Join(out, " ")
}

// useWords names a reading that is copied: its mark, what it is, and where it was
// written last.
func useWords(c *block.Composer, u job.Use) string {
	caption, anchor := c.W.Common.AsFound, "found "
	if u.Left {
		caption, anchor = c.W.Common.AsLeft, "left "
	}
	var marks, pages []string
	for i, d := range u.Dims {
		marks = append(marks, d.Mark)
		if i == 0 || !c.SamePage(anchor+d.Mark, anchor+u.Dims[i-1].Mark) {
			pages = append(pages, c.Page(anchor+d.Mark))
		}
	}
	return c.W.Common.TakenFrom.With(strings.Join(marks, ", "), u.Dims[0].What, caption, strings.Join(pages, ", "))
}
