package templates

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/layout"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// limitLadders sets the sums that give the ends of limits, and the boxes for the
// ends of a size with a tolerance.
func (c *composer) limitLadders(d *job.Dim, w job.Working, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, l := range w.Limits {
		prefix := ""
		if l.Limit != d.Left && l.Limit != d.Found {
			prefix = c.w.Common.OldPart + " "
		}
		add := func(ladder *job.Ladder, name string) {
			if ladder != nil {
				names := []string{""}
				if ladder.Each {
					names = positionNames(d.Positions)
				}
				for _, n := range names {
					out = append(out, c.rungs(d, ladder, ladderEnd{name: prefix + name, position: n}, width))
					if l.At != nil && l.Test.Rule == reading.Nominal {
						out = append(out, c.limitEnds(d, l, width))
					}
				}
			}
		}
		add(l.At, c.w.Ladder.Target)
		add(l.Low, c.w.Limit[reading.WordAtLeast])
		add(l.High, c.w.Limit[reading.WordAtMost])
	}
	return out
}

// limitEnds are the two boxes for the ends of a size that was worked out.
func (c *composer) limitEnds(d *job.Dim, l job.LimitLadder, width layout.Mm) layout.Block {
	box := l.At.Result()
	box.After = max(box.After, l.Test.Upper.Decimals(), l.Test.Lower.Decimals())
	p := reading.Part{Blank: reading.BlankResult, Box: box}
	one := func(by units.Number, name string) layout.Block {
		sentence := c.w.Ladder.TargetMore
		if by.Sign() < 0 {
			sentence = c.w.Ladder.TargetLess
		}
		return layout.Bottom(2, c.sumWords(sentence.With(strings.TrimLeft(by.Print(), "+−-")), d).Pad(0, 0, 2.2, 0), c.blank(d, p, name))
	}
	return flowRow([]layout.Block{one(l.Test.Lower, c.w.Ladder.LowEnd), one(l.Test.Upper, c.w.Ladder.HighEnd)}, width)
}

// stamped sets the box for a number that stands on a part, and the sum that makes
// a size of it.
func (c *composer) stamped(d *job.Dim, s side, width layout.Mm) layout.Block {
	number := c.Value(layout.Number{Before: d.Number.Before, Sign: true, Caption: c.w.Ladder.StampedNumber, Ref: d.At})
	size := c.Value(layout.Number{Before: d.Box.Before, After: d.Box.After, Sign: true, Caption: s.caption, Unit: d.Box.Unit.Print(), Ref: d.At})
	return flowRow([]layout.Block{layout.Middle(2, number, c.sumWords("× "+d.OneIs.Print(), d), c.sumWords("=", d), size)}, width)
}
