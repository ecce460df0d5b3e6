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

// checkSignPasses warns of a run-out or a level that can be read below nought and has one end
// alone for its limit: every reading to the other side is in then, however far it is off. An end
// beyond nought says which way it is to be, as the fall of a drain, and is meant.
func (b *proofreader) checkSignPasses(d *job.Dim, dd *def.Dimension) {
	if dd.Sign.Value != "yes" || !slices.Contains(swings, d.Kind) {
		return
	}
	limits := d.LeftLimits()
	if d.JudgedFound() {
		limits = append(limits, d.Found)
	}
	for _, l := range limits {
		low, high, other := ends(l.Tests)
		switch {
		case other || low != nil && high != nil:
		case high != nil && side(high) > 0:
			b.signPasses(d, "at most: every negative")
			return
		case low != nil && side(low) < 0:
			b.signPasses(d, "at least, from below nought: every positive")
			return
		}
	}
}

// signPasses tells of one dimension.
func (b *proofreader) signPasses(d *job.Dim, passes string) {
	b.Problems.Warn(d.LimitPos(), "sign-passes", d.Mark+" can be negative, and its limit says "+passes+" reading is in, however far it is off",
		"for example 0.00 +/- … "+d.Box.Unit.Text()+", or take sign: away")
}

// ends are the ends that tests set to each reading; other tells of a test of it that has both.
func ends(tests []reading.Test) (low, high *reading.Value, other bool) {
	for _, t := range tests {
		switch {
		case t.Group != reading.Each:
		case t.Rule == reading.AtLeast:
			low = t.Low
		case t.Rule == reading.AtMost:
			high = t.High
		default:
			other = true
		}
	}
	return low, high, other
}

// side is the sign of an end: of one that hangs on a reading, which is not known yet, that of a
// size, which it usually is.
func side(v *reading.Value) int {
	q, err := v.Work(reading.Env{})
	if err != nil {
		return 1
	}
	return q.Number.Sign()
}
