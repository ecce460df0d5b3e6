package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// checkHoldPast sees that a reading as left, which is out, does not send to a hold that was
// released above it: the one who releases it has gone by then.
func (r *report) checkHoldPast() {
	for _, h := range r.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		for _, d := range r.leftTo(h) {
			// One that is read nowhere above it is told of as hold-early.
			if set := r.walk.Set(d); set.Index > e.Index && !below(r.readingsOf(d, nil), e) {
				r.past(h, d, e.Step, set.Step)
			}
		}
	}
}

// leftTo lists what is set and, as left, sends somebody to a hold.
func (r *report) leftTo(h *job.Hold) []*job.Dim {
	there, done := phrase.Of(`\bat `+phrase.Quoted(h.Mark)+`\b`), doneAt(h)
	var out []*job.Dim
	for _, d := range r.job.Dims {
		if d.Merged == nil && r.walk.Set(d) != nil && slices.ContainsFunc([]string{d.Over, d.Under, d.Out}, func(text string) bool {
			return there.MatchString(done.ReplaceAllString(r.job.InEnglish(text), ""))
		}) {
			out = append(out, d)
		}
	}
	return out
}

// past tells of one reading.
func (r *report) past(h *job.Hold, d *job.Dim, released, set *job.Step) {
	help := []string{"write whom to tell without at " + h.Mark + ", as tell the engineer"}
	if d.FoundOut == "" {
		help = append(help, "for the reading as found alone write found-out: tell the engineer at "+h.Mark)
	}
	r.problems.WarnWith(d.At, "hold-past", d.Mark+" as left sends to "+h.Mark+", "+source.Quote(h.What)+", when it is out, and that is released by "+released.Name()+" when it is read at "+set.Name(), released.At, "released here",
		help...)
}

// holdPast binds a hold to the readings as left above it that send to it.
func (b *binder) holdPast() {
	r := &report{walk: b.walk, job: b.job}
	for _, h := range b.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		for _, d := range r.leftTo(h) {
			if set := b.walk.Set(d); set.Index < e.Index {
				b.before(set.Step, e.Step, job.Bind{Kind: job.BoundReading, Dim: d})
			}
		}
	}
}
