package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkAdjuster sees that it is said how far what sets a reading moves it: by its thread, or
// by moves:. A thread that is not of a face of the reading may stay unsaid: nothing is printed.
func (b *proofreader) checkAdjuster(d *job.Dim, dd *def.Dimension) {
	if d.Adjuster == nil || d.Adjuster.Thread != nil {
		return
	}
	for _, dp := range b.Def.Parts {
		if dp.Key.Value == d.Adjuster.Key && !dp.Moves.Written() {
			b.Problems.AddWith(dd.Adjust.At, "no-travel", d.Adjuster.Called()+" sets "+d.Mark+", but how far it moves is not said", d.Adjuster.At, "the adjuster", "for example thread: at the part, or moves: 1 turn gives … mm")
		}
	}
}

// checkTwoMovements sees that a part with a thread says what one turn moves only where it
// sets a reading that is not to a face of its own: of any other its thread tells it.
func (b *proofreader) checkTwoMovements() {
	for _, dp := range b.Def.Parts {
		if !dp.Moves.Written() || !dp.Thread.Written() {
			continue
		}
		var last *job.Dim // of those that it sets, all by its thread
		for _, d := range b.Job.Dims {
			if d.Adjuster == nil || d.Adjuster.Key != dp.Key.Value {
				continue
			}
			if last = d; !d.Threaded() {
				last = nil
				break
			}
		}
		if last != nil {
			b.Problems.Add(dp.Moves.At, "two-movements", source.Quote(dp.Key.Value)+" has a thread, which tells what one turn moves "+last.Mark, "take moves: out, or the thread",
				"moves: is for a reading that is to no face of it")
		}
	}
}
