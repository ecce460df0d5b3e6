package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// A spoilt is a reading that is told of, and where: a put-back row takes several at the place
// of its step.
type spoilt struct {
	at   source.Pos
	base string
}

// checkTurnedAgain sees that what sets one reading is not turned, to set another, when a
// reading that hangs on it is written down as left: a nut was run up to its found stand-off,
// which was written down, and turned once more to set the lift of the impeller. In one step
// their author sees both.
func (r *report) checkTurnedAgain() {
	told := map[spoilt]bool{} // once for all places
	for _, d := range r.job.Dims {
		e := r.walk.Set(d)
		if e == nil || !d.Adjusted() || d.Adjuster == nil {
			continue
		}
		for _, x := range r.job.Dims {
			before := r.walk.Set(x)
			if x == d || before == nil || before.Step.Index >= e.Step.Index || told[spoilt{before.At, x.Base}] || !slices.Contains(walk.HangsOn(x), d.Adjuster) {
				continue
			}
			told[spoilt{before.At, x.Base}] = true
			r.problems.WarnWith(before.At, "turned-again", x.Mark+" is set at "+before.Step.Name()+", and "+e.Step.Name()+" turns "+d.Adjuster.Called()+" to set "+d.Mark+": it will read otherwise then", e.At, "turned here",
				"set: ["+x.Base+"] at "+e.Step.No+" or below it", "or, if it is only a start: found: at "+x.Base+" in place of left:")
		}
	}
}

// turnedAgain binds a step that turns what sets a reading to those that write down one that
// hangs on it.
func (b *binder) turnedAgain() {
	for _, d := range b.job.Dims {
		if d.LeftAt == nil || !d.Adjusted() || d.Adjuster == nil {
			continue
		}
		for _, x := range b.job.Dims {
			if x != d && x.LeftAt != nil && slices.Contains(walk.HangsOn(x), d.Adjuster) {
				b.before(d.LeftAt, x.LeftAt, job.Bind{Kind: job.BoundReading, Dim: d})
			}
		}
	}
}
