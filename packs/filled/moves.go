package filled

import (
	"errors"

	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// Moves is what an alignment asks for after one set of readings.
type Moves struct {
	Of      *job.Alignment
	When    job.When
	Moves   []align.Move     // of each plane of feet, exact
	Verdict *align.Judgement // nil where there are no limits
	Checks  []align.Check
	Why     string // of none: what is missing
}

// clock is where a dial stands at the four positions of its dimension.
var clock = [4]align.Clock{align.Top, align.Right, align.Bottom, align.Left}

// moves works every alignment out whose dials were read.
func (r *Result) moves() {
	for _, a := range r.Job.Alignments {
		for _, when := range []job.When{job.AsFound, job.AsLeft} {
			readings, there := r.dials(a, when)
			if a.Hole || len(a.Ladder) == 0 || !there {
				continue
			}
			m := Moves{Of: a, When: when}
			res, err := a.Setup.Work(readings)
			if err == nil && a.Limits != nil {
				var j align.Judgement
				if j, err = a.Setup.Judge(res, *a.Limits); err == nil {
					m.Verdict = &j
				}
			}
			var no align.Refusals
			if errors.As(err, &no) && len(no) > 0 {
				m.Why = no[0].Message
			}
			m.Moves, m.Checks = res.Moves, res.Checks
			r.Moves = append(r.Moves, m)
		}
	}
}

// dials are the readings of an alignment at a time; false where none was written.
func (r *Result) dials(a *job.Alignment, when job.When) (map[align.Reading]units.Quantity, bool) {
	out := map[align.Reading]units.Quantity{}
	for dial, d := range a.Read {
		if d == nil || !r.reads(d, when) {
			continue
		}
		for i, q := range r.readings(d, when).readings {
			if q != nil && i < len(clock) {
				out[align.Reading{Dial: dial, At: clock[i]}] = *q
			}
		}
	}
	return out, len(out) > 0
}
