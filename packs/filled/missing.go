package filled

import (
	"matchmark/packs/job"
)

// missing lists the boxes that have no value though a person has to write one. What a
// person works out, a spare box, and the leaves of a pack whose sum is known are not
// missing, nor the temperature of a part that may have been at 20 °C.
func (r *Result) missing() {
	for _, b := range r.Job.Blanks() {
		d := b.Dim
		if _, there := r.Values.entries[b.Key()]; there || b.Whole() || b.Kind == job.SpareBlank {
			continue
		}
		known := r.readings(d, b.When)
		switch b.Kind {
		case job.ReadingBlank:
			if known.readings[b.N] != nil || known.answers[b.N] != "" {
				continue
			}
		case job.LeafBlank:
			continue // the sum is missing
		case job.NumberBlank:
			if known.readings[0] != nil {
				continue
			}
		case job.PartBlank:
			if d.Warm != nil {
				continue
			}
		}
		r.Missing = append(r.Missing, b)
	}
}

// Position names a box among those of its dimension as its row in the file does.
func Position(b job.Blank) string { return position(b) }
