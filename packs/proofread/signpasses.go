package proofread

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// swings are the kinds of reading that go to either side of nought, where how far counts and not
// which way: a dial on a rim, a level on a face. Common practice, no source.
var swings = []string{"runout", "angle"}

// checkSignPasses warns of a run-out or a level that can be read below nought and has "at most"
// for its limit: every negative reading is in then, however far it is off.
func (b *proofreader) checkSignPasses(d *job.Dim, dd *def.Dimension) {
	if dd.Sign.Value != "yes" || !slices.Contains(swings, d.Kind) {
		return
	}
	limits := d.LeftLimits()
	if d.JudgedFound() {
		limits = append(limits, d.Found)
	}
	for _, l := range limits {
		for _, t := range l.Tests {
			if t.Rule == reading.AtMost && t.Group == reading.Each {
				b.Problems.Warn(d.LimitPos(), "sign-passes", d.Mark+" can be negative, and its limit says at most: every negative reading is in, however far it is off",
					"for example 0.00 +/- … "+d.Box.Unit.Text()+", or take sign: away")
				return
			}
		}
	}
}
