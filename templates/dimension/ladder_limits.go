package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// limitLadders sets the sums that give the ends of limits, and the boxes for the
// ends of a size with a tolerance, their names above them or before: those of one of several
// with its sum, others apart.
func limitLadders(c *block.Composer, d *job.Dim, w job.Working, before bool, width layout.Mm) (out, last []layout.Block) {
	for _, l := range w.Limits {
		prefix := ""
		switch l.Limit {
		case d.Reuse:
			prefix = c.W.Common.OldPart + " "
		case d.Repair:
			prefix = c.W.Common.Mended + " "
		}
		add := func(ladder *job.Ladder, name string) {
			if ladder != nil {
				names := []string{""}
				if ladder.Each {
					names = PositionNames(d.Positions)
				}
				for i, n := range names {
					out = append(out, rungs(c, d, ladder, ladderEnd{name: prefix + name, position: n, at: i}, width))
					if l.At != nil && l.Test.Rule == reading.Nominal {
						ends := limitEnds(c, d, l, i, before)
						if d.Shims != nil || !ladder.Each && len(w.Limits) == 1 {
							last = append(last, ends...)
						} else {
							out = append(out, block.FlowRow(ends, width))
						}
					}
				}
			}
		}
		add(l.At, c.W.Ladder.Target)
		add(l.Low, c.W.Ladder.LowEnd)
		add(l.High, c.W.Ladder.HighEnd)
	}
	return out, last
}

// limitEnds are the two boxes for the ends of a size that was worked out.
func limitEnds(c *block.Composer, d *job.Dim, l job.LimitLadder, at int, before bool) []layout.Block {
	rungs := c.Filled.Rungs(l.At, at)
	last := rungs[len(rungs)-1]
	target := last.Parts[lastBlank(last)].Value
	box := l.At.Result()
	box.After = max(box.After, l.Test.Upper.Decimals(), l.Test.Lower.Decimals())
	p := reading.Part{Blank: reading.BlankResult, Box: box}
	one := func(by units.Number, name string) layout.Block {
		sentence := c.W.Ladder.TargetMore
		if by.Sign() < 0 {
			sentence = c.W.Ladder.TargetLess
		}
		if p.Value = nil; target != nil {
			end := target.Add(by)
			p.Value = &end
		}
		return endBox(c, d, name, sentence, by, before, ladderBox(c, d, p, ""))
	}
	return []layout.Block{one(l.Test.Lower, c.W.Ladder.LowEnd), one(l.Test.Upper, c.W.Ladder.HighEnd)}
}

// stampedBoxes sets the box for a number that stands on a part, and the sum that makes
// a size of it.
func stampedBoxes(c *block.Composer, d *job.Dim, s Side, width layout.Mm) layout.Block {
	number := named(c.Value(layout.Number{Before: d.Number.Before, Sign: true, Caption: c.W.Ladder.StampedNumber, Ref: d.At}), d, s, job.NumberBlank, 0)
	size := named(c.Value(layout.Number{Before: d.Box.Before, After: d.Box.After, Sign: true, Caption: s.caption, Unit: c.W.Unit(d.Box.Unit.Print()), Ref: d.At}), d, s, job.ReadingBlank, 0)
	return block.FlowRow([]layout.Block{layout.Middle(2, number, sumWords(c, "× "+d.OneIs.Print(), d), sumWords(c, "=", d), size)}, width)
}

// foundEnds are the boxes for the two ends of a limit about the value found, each with its
// sum above it or before.
func foundEnds(c *block.Composer, d *job.Dim, l *reading.Limit, line []reading.Part, before bool) []layout.Block {
	typed := append(typedEnds(c, d, line), "", "")
	one := func(by units.Number, name, typed string) layout.Block {
		sentence := c.W.Ladder.FoundMore
		if by.Sign() < 0 {
			sentence = c.W.Ladder.FoundLess
		}
		return endBox(c, d, name, sentence, by, before, Box(c, d, Side{typed: typed}, "", false))
	}
	for _, t := range l.Tests {
		if t.Rule == reading.Nominal && t.At != nil && t.At.JustFound() {
			ends := []layout.Block{one(t.Lower, c.W.Ladder.LowEnd, typed[0]), one(t.Upper, c.W.Ladder.HighEnd, typed[1])}
			if before {
				return ends
			}
			return []layout.Block{layout.Bottom(layout.GapX, ends...)}
		}
	}
	return nil
}

// endBox is the box of an end of a limit, with its name and its sum above it, or before it
// in two lines.
func endBox(c *block.Composer, d *job.Dim, name string, sum words.Sentence, by units.Number, before bool, box layout.Block) layout.Block {
	line := func(runs ...layout.Run) layout.Block {
		return c.Line(0, runs, layout.ParaOpts{Ref: d.At, Role: roleSum})
	}
	label := layout.T(layout.Caption, name+" ")
	work := layout.T(layout.SubBold, sum.With(strings.TrimLeft(by.Print(), "+−-")))
	if before {
		return layout.Middle(nameGap, layout.Above(0, line(label), line(work)), box)
	}
	return layout.Above(0.3, line(label, work), box)
}
